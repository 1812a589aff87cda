package org.duskloom.engine.wire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.duskloom.engine.problem.TextFormatException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ColorOrderTest {
    @ParameterizedTest
    @ValueSource(strings = {"RGB", "RBG", "GRB", "GBR", "BRG", "BGR", "RGBW", "GRBW", "WRGB", "BWRG"})
    void readsEveryOrder(String letters) throws TextFormatException {
        ColorOrder order = ColorOrder.parse(letters);
        assertThat(order).hasToString(letters).isEqualTo(ColorOrder.parse(letters));
        assertThat(order.count()).isEqualTo(letters.length());
        assertThat(order.hasWhite()).isEqualTo(letters.length() == 4);
    }

    @ParameterizedTest
    @CsvSource({
        "RGG, the colours \"RGG\" hold G twice",
        "RGBWW, the colours \"RGBWW\" hold W twice",
        "RG, the colours \"RG\" lack B",
        "RGW, the colours \"RGW\" lack B",
        "RGA, the colours \"RGA\" hold \"A\"",
        "rgb, the colours \"rgb\" hold \"r\"",
        "'', the colours \"\" lack R"
    })
    void refusesOthers(String letters, String message) {
        assertThatThrownBy(() -> ColorOrder.parse(letters)).isInstanceOfSatisfying(TextFormatException.class, fault -> {
            assertThat(fault).hasMessage(message);
            assertThat(fault.hint()).startsWith("allowed: R, G and B once each");
        });
    }

    @Test
    void knowsItsUsualOrder() throws TextFormatException {
        assertThat(ColorOrder.RGB).isEqualTo(ColorOrder.parse("RGB")).isNotEqualTo(ColorOrder.parse("GRB"));
    }
}
