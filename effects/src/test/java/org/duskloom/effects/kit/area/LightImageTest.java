package org.duskloom.effects.kit.area;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LightImageTest {
    /** The last would be 2^32 floats, which is 0 in 32 bits. */
    @ParameterizedTest
    @CsvSource({"0, 1, 0", "1, 0, 0", "-1, -1, 4", "1, 1, 3", "2, 2, 12", "1, 1, 8", "32768, 32768, 0"})
    void refusesWhatDoesNotFit(int width, int height, int floats) {
        assertThatThrownBy(() -> new LightImage(width, height, new float[floats]))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(width + " by " + height)
                .hasMessageContaining(floats + " floats");
    }

    @Test
    void isOpaqueIfEveryPixelIs() {
        float[] light = {0, 0, 0, 1, 1, 1, 1, 1};
        assertThat(new LightImage(2, 1, light).isOpaque()).isTrue();
        light[7] = Math.nextDown(1f);
        assertThat(new LightImage(2, 1, light).isOpaque()).isFalse();
        light[7] = 1;
        light[3] = 0;
        assertThat(new LightImage(2, 1, light).isOpaque()).isFalse();
    }

    /** What rounding took from 1 is less than a millionth; 254/255, the most that is not opaque in 8 bits, stays. */
    @ParameterizedTest
    @CsvSource({"1, 1", "0.9999999, 1", "1.0000001, 1", "0.99999, 0.99999", "0.99607843, 0.99607843", "0.5, 0.5", "0, 0"
    })
    void roundsUpWhatIsNearlyOpaque(double mean, float alpha) {
        assertThat(LightImage.alpha(mean)).isEqualTo(alpha);
    }

    @Test
    void isAReelOfOne() {
        LightImage image = new LightImage(3, 2, new float[24]);
        Reel reel = Reel.of(image);
        assertThat(reel.count()).isEqualTo(1);
        assertThat(reel.width()).isEqualTo(3);
        assertThat(reel.height()).isEqualTo(2);
        assertThat(reel.image(0)).isSameAs(image);
    }
}
