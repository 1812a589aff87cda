package org.duskloom.engine.wire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.stream.IntStream;
import java.util.zip.CRC32;
import org.junit.jupiter.api.Test;

/** What is sent for a pixel's colour. */
class SignalTest {
    private static final Curve LINEAR = new Curve.Linear();

    /** IEC 61966-2-1:1999 decoded, times 255 and rounded: what the 256 codes come to, as a CRC-32 of the bytes. */
    @Test
    void sendsTheDutyOfEveryCode() {
        assertThat(crcOfAllCodes(LINEAR)).isEqualTo(0x8f6627a8L);
    }

    /** The same for the code to the power 2.2 and 2.8: numbers computed apart from this program. */
    @Test
    void bendsByAGamma() {
        assertThat(crcOfAllCodes(new Curve.Gamma(2.2))).isEqualTo(0xa5f8b159L);
        assertThat(crcOfAllCodes(new Curve.Gamma(2.8))).isEqualTo(0x3d9a5da3L);
    }

    @Test
    void sendsCodesAsTheyAre() {
        int[] grays = IntStream.range(0, 768).map(i -> i / 3).toArray();
        assertThat(Lines.sent(Lines.signal("RGB", 8, Brightness.FULL, new Curve.Codes(), true), grays))
                .isEqualTo(grays);
    }

    /** IEC 61966-2-1:1999 decoded, times 65535: 0.000303527, 0.0512694584 and 0.2158605001. */
    @Test
    void sendsSixteenBitsMostSignificantByteFirst() {
        assertThat(Lines.sent(Lines.plain("RGB", 16), 1, 64, 128))
                .containsExactly(20 >> 8, 20 & 0xFF, 3360 >> 8, 3360 & 0xFF, 14146 >> 8, 14146 & 0xFF);
        assertThat(Lines.sent(Lines.plain("RGB", 16), 255, 0, 255)).containsExactly(255, 255, 0, 0, 255, 255);
    }

    @Test
    void ordersTheColours() {
        assertThat(Lines.sent(Lines.plain("GRB", 8), 255, 128, 64)).containsExactly(55, 255, 13);
        assertThat(Lines.sent(Lines.plain("BRG", 8), 255, 128, 64)).containsExactly(13, 255, 55);
    }

    /** The white light takes the least of the three in linear light; common practice, no source. Worked out by hand. */
    @Test
    void takesWhiteOutInLinearLight() {
        assertThat(Lines.sent(Lines.plain("RGBW", 8), 255, 255, 255)).containsExactly(0, 0, 0, 255);
        assertThat(Lines.sent(Lines.plain("RGBW", 8), 128, 128, 128)).containsExactly(0, 0, 0, 55);
        assertThat(Lines.sent(Lines.plain("RGBW", 8), 255, 128, 64)).containsExactly(242, 42, 0, 13);
        assertThat(Lines.sent(Lines.plain("GRBW", 8), 200, 150, 100)).containsExactly(45, 115, 0, 32);
        assertThat(Lines.sent(Lines.plain("WRGB", 8), 255, 255, 0)).containsExactly(0, 255, 255, 0);
    }

    /** By hand: 128 decodes to 0.2158605; times 0.5 is 27.52 of 255, times 0.5 * 0.7 19.27. */
    @Test
    void dimsInLinearLight() {
        Brightness brightness = new Brightness(1, 0.5, 0.7, 0.5);
        assertThat(Lines.sent(Lines.signal("RGB", 8, brightness, LINEAR, false), 128, 255, 128))
                .containsExactly(28, 64, 19);
    }

    /**
     * The white light has a white of its own: only the cap dims it. By hand: w = 0.2158605 * 0.5; red has 0.7841395 *
     * 0.5.
     */
    @Test
    void whiteFactorsLeaveTheWhiteLightAlone() {
        Brightness brightness = new Brightness(1, 0.5, 0.7, 0.5);
        assertThat(Lines.sent(Lines.signal("RGBW", 8, brightness, LINEAR, false), 255, 128, 128))
                .containsExactly(100, 0, 0, 28);
    }

    /** By hand: half of full light has the code 188 (187.516), and to the power 2.2 0.50856. */
    @Test
    void appliesTheCurveAfterTheCap() {
        Brightness half = new Brightness(1, 1, 1, 0.5);
        assertThat(Lines.sent(Lines.signal("RGB", 8, half, new Curve.Codes(), false), 255, 255, 255))
                .containsExactly(188, 188, 188);
        assertThat(Lines.sent(Lines.signal("RGB", 8, half, new Curve.Gamma(2.2), false), 255, 255, 255))
                .containsExactly(130, 130, 130);
    }

    @Test
    void dithersOnlyWhatMeansDutyInEightBits() {
        assertThat(Lines.signal("RGB", 8, Brightness.FULL, LINEAR, true).dither())
                .isTrue();
        assertThat(Lines.signal("RGB", 16, Brightness.FULL, LINEAR, true).dither())
                .isFalse();
        assertThat(Lines.signal("RGB", 8, Brightness.FULL, new Curve.Codes(), true)
                        .dither())
                .isFalse();
        assertThat(Lines.signal("RGB", 8, Brightness.FULL, new Curve.Gamma(2.2), true)
                        .dither())
                .isTrue();
    }

    @Test
    void refusesWhatIsOutOfRange() {
        assertThatThrownBy(() -> Lines.plain("RGB", 12)).hasMessageContaining("12");
        assertThatThrownBy(() -> new Brightness(1, 1, 1, 1.5)).hasMessageContaining("1.5");
        assertThatThrownBy(() -> new Brightness(1, Double.NaN, 1, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Curve.Gamma(0.5)).hasMessageContaining("0.5");
    }

    private static long crcOfAllCodes(Curve curve) {
        int[] codes = IntStream.range(0, 768).map(i -> i / 3).toArray();
        int[] sent = Lines.sent(Lines.signal("RGB", 8, Brightness.FULL, curve, false), codes);
        CRC32 crc = new CRC32();
        for (int code = 0; code < 256; code++) {
            crc.update(sent[3 * code]);
        }
        return crc.getValue();
    }
}
