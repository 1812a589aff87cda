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

    /** What is told elsewhere still says all it said, for whoever asks. */
    @Test
    void keepsItsWordsWhereItIsToldElsewhere() {
        TextFormatException fault = new TextFormatException("no mark \"fish\"", "did you mean \"finish\"?");
        assertThat(fault.isToldElsewhere()).isFalse();
        TextFormatException told = fault.toldElsewhere();
        assertThat(told.isToldElsewhere()).isTrue();
        assertThat(told).hasMessage(fault.getMessage());
        assertThat(told.hint()).isEqualTo("did you mean \"finish\"?");
        assertThat(fault.isToldElsewhere()).as("the fault itself").isFalse();
    }
}
