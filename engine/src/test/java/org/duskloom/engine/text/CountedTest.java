package org.duskloom.engine.text;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class CountedTest {
    @Test
    void saysOneAndSeveral() {
        assertThat(Counted.of(0, "pixel")).isEqualTo("0 pixels");
        assertThat(Counted.of(1, "pixel")).isEqualTo("1 pixel");
        assertThat(Counted.of(1920, "frame")).isEqualTo("1920 frames");
        assertThat(Counted.of(3_000_000_000L, "frame")).isEqualTo("3000000000 frames");
    }

    @Test
    void partsThousands() {
        assertThat(Counted.grouped(1, "moment")).isEqualTo("1 moment");
        assertThat(Counted.grouped(1920, "frame")).isEqualTo("1,920 frames");
    }
}
