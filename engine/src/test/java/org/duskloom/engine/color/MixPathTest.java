package org.duskloom.engine.color;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class MixPathTest {
    private static final int OFFSET = 4;
    private static final float UNTOUCHED = 0.123f;

    /**
     * What frames are filled with is what colours are mixed to, bit by bit, and nothing beside the four floats is
     * written.
     */
    @ParameterizedTest
    @EnumSource(ColorMix.class)
    void fillsTheVeryFloatsOfTheMix(ColorMix mix) {
        LinearColor[] colors = {
            Codes.css("rgb(10 200 90 / 0.25)"), Codes.css("gold"), Codes.css("black"), Codes.css("transparent")
        };
        for (LinearColor from : colors) {
            for (LinearColor to : colors) {
                for (double share : new double[] {0, 0.3, 0.5, 1}) {
                    assertThat(filled(new MixPath(mix, from, to), share)).isEqualTo(mix.mix(from, to, share));
                }
            }
        }
    }

    /** The ends are the colours themselves, without a way through another space. */
    @ParameterizedTest
    @EnumSource(ColorMix.class)
    void endsAreTheColoursThemselves(ColorMix mix) {
        LinearColor from = Codes.css("rgb(13 201 90 / 0.3)");
        LinearColor to = Codes.css("rebeccapurple");
        assertThat(filled(new MixPath(mix, from, to), 0)).isEqualTo(from);
        assertThat(filled(new MixPath(mix, from, to), 1)).isEqualTo(to);
        assertThat(filled(new MixPath(mix, from, from), 0.7)).isEqualTo(from);
    }

    /** Of two colours without alpha nothing is left, whatever light they name. */
    @Test
    void nothingBetweenTwoThatAreTransparent() {
        LinearColor red = new LinearColor(1, 0, 0, 0);
        LinearColor blue = new LinearColor(0, 0, 1, 0);
        assertThat(filled(new MixPath(ColorMix.OKLAB, red, blue), 0.5)).isEqualTo(LinearColor.TRANSPARENT);
    }

    private static LinearColor filled(MixPath path, double share) {
        float[] target = new float[OFFSET + 8];
        Arrays.fill(target, UNTOUCHED);
        path.fill(share, target, OFFSET);
        for (int i = 0; i < target.length; i++) {
            if (i < OFFSET || i >= OFFSET + 4) {
                assertThat(target[i]).isEqualTo(UNTOUCHED);
            }
        }
        return new LinearColor(target[OFFSET], target[OFFSET + 1], target[OFFSET + 2], target[OFFSET + 3]);
    }
}
