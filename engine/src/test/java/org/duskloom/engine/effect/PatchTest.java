package org.duskloom.engine.effect;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PatchTest {
    private final Patch patch = new Patch();

    @Test
    void changesOnlyTheCellsItWasResetTo() {
        Arrays.fill(patch.red, 0.5f);
        Arrays.fill(patch.alpha, 0.5f);
        patch.reset(2, 4);
        patch.clear();
        assertThat(Arrays.copyOf(patch.red, 5)).containsExactly(0.5f, 0.5f, 0, 0, 0.5f);
        assertThat(Arrays.copyOf(patch.alpha, 5)).containsExactly(0.5f, 0.5f, 0, 0, 0.5f);
        patch.makeOpaque();
        patch.fill();
        assertThat(Arrays.copyOf(patch.alpha, 5)).containsExactly(0.5f, 0.5f, 1, 1, 0.5f);
        assertThat(patch.isOpaque()).isTrue();
        patch.load(new float[] {1, 2, 3, 4}, 1, patch.first);
        assertThat(Arrays.copyOf(patch.first, 5)).containsExactly(0, 0, 2, 3, 0);
    }

    @Test
    void isTranslucentUntilABrushSaysOtherwise() {
        patch.reset(0, 3);
        patch.makeOpaque();
        patch.reset(0, 3);
        assertThat(patch.isOpaque()).isFalse();
        patch.makeOpaque();
        patch.clear();
        assertThat(patch.isOpaque()).isFalse();
    }

    @Test
    void fillsBlack() {
        Arrays.fill(patch.red, 0.5f);
        patch.reset(1, 3);
        patch.makeBlack();
        assertThat(patch.isBlack()).isTrue();
        patch.fill();
        assertThat(patch.isBlack()).isFalse();
        assertThat(patch.isOpaque()).isTrue();
        assertThat(Arrays.copyOf(patch.red, 4)).containsExactly(0.5f, 0, 0, 0.5f);
        assertThat(Arrays.copyOf(patch.alpha, 4)).containsExactly(0, 1, 1, 0);
    }

    @Test
    void fillsOneColorByAlpha() {
        patch.reset(0, 2);
        patch.alpha[1] = 0.5f;
        patch.makeFlat(1, 0.5f, 0);
        patch.fill();
        assertThat(Arrays.copyOf(patch.red, 2)).containsExactly(0, 0.5f);
        assertThat(Arrays.copyOf(patch.green, 2)).containsExactly(0, 0.25f);
        assertThat(patch.isFlat()).isFalse();
    }

    /** Dimmed twice: the product of both levels. What was opaque is as opaque as the levels say. */
    @Test
    void dims() {
        patch.reset(0, 2);
        Arrays.fill(patch.green, 0.5f);
        patch.makeOpaque();
        patch.second[0] = 0.5f;
        patch.second[1] = 1;
        patch.dimBy(patch.second);
        assertThat(patch.isDimmed()).isTrue();
        assertThat(patch.green[0]).isEqualTo(0.5f);
        patch.third[0] = 0.5f;
        patch.dimBy(patch.third);
        patch.fill();
        assertThat(patch.isDimmed()).isFalse();
        assertThat(patch.isOpaque()).isFalse();
        assertThat(Arrays.copyOf(patch.green, 2)).containsExactly(0.125f, 0);
        assertThat(Arrays.copyOf(patch.alpha, 2)).containsExactly(0.25f, 0);
    }

    @Test
    void dimsOneColor() {
        patch.reset(0, 1);
        patch.alpha[0] = 0.5f;
        patch.makeFlat(1, 0.5f, 0);
        patch.second[0] = 0.5f;
        patch.dimBy(patch.second);
        patch.fill();
        assertThat(patch.red[0]).isEqualTo(0.25f);
        assertThat(patch.alpha[0]).isEqualTo(0.25f);
    }

    @ParameterizedTest
    @CsvSource({"-1, 3", "0, 2049", "4, 3"})
    void refusesCellsItHasNot(int from, int to) {
        assertThatThrownBy(() -> patch.reset(from, to)).isInstanceOf(IndexOutOfBoundsException.class);
    }
}
