package org.duskloom.engine.problem;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class TextFormatExceptionTest {
    @Test
    void becomesAProblemWhereTheTextStands() {
        TextFormatException fault = new TextFormatException("\"rde\" is no colour", "did you mean \"red\"?");
        assertThat(fault.at(new Location("show.json", 3, 14)))
                .hasToString("show.json:3:14: error: \"rde\" is no colour; did you mean \"red\"?");
    }
}
