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

    @ParameterizedTest
    @CsvSource({"-1, 3", "0, 2049", "4, 3"})
    void refusesCellsItHasNot(int from, int to) {
        assertThatThrownBy(() -> patch.reset(from, to)).isInstanceOf(IndexOutOfBoundsException.class);
    }
}
