package org.duskloom.engine.color;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class LinearColorTest {
    @ParameterizedTest
    @ValueSource(floats = {-0.001f, 1.001f, Float.NaN, Float.POSITIVE_INFINITY})
    void everyPartIsAShare(float wrong) {
        assertThatThrownBy(() -> new LinearColor(wrong, 0, 0, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new LinearColor(0, wrong, 0, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new LinearColor(0, 0, wrong, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> LinearColor.WHITE.withAlpha(wrong)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void clipsToShares() {
        assertThat(LinearColor.clipped(-1, 2, Double.NaN, Double.POSITIVE_INFINITY))
                .isEqualTo(new LinearColor(0, 1, 0, 1));
        assertThat(LinearColor.clipped(0.25, 0.5, 0.75, 0.125)).isEqualTo(new LinearColor(0.25f, 0.5f, 0.75f, 0.125f));
    }

    /** IEC 61966-2-1: code 188 is 0.502886458033 of the light, code 128 is 0.215860500114. */
    @Test
    void decodesCodes() {
        assertThat(LinearColor.ofCodes(188, 128, 0)).isEqualTo(new LinearColor(0.502886458033f, 0.215860500114f, 0, 1));
        assertThatThrownBy(() -> LinearColor.ofCodes(0, 256, 0)).isInstanceOf(IndexOutOfBoundsException.class);
    }

    @Test
    void alphaLeavesTheLightAlone() {
        assertThat(LinearColor.WHITE.withAlpha(0.5f)).isEqualTo(new LinearColor(1, 1, 1, 0.5f));
        assertThat(LinearColor.BLACK.withAlpha(0)).isEqualTo(LinearColor.TRANSPARENT);
    }
}
