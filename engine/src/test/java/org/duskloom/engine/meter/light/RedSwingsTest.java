package org.duskloom.engine.meter.light;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.duskloom.engine.frame.FramePixels;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Changes to and from saturated red: the rule of WCAG 2.2 (u'v' of CIE 15 by more than 0.2) and the older one of WCAG
 * 2.0, each on its own. The pairs are worked out from the definitions.
 */
class RedSwingsTest {
    @ParameterizedTest(name = "{0} and {1}: u''v'' {2}, older {3}")
    @CsvSource({
        "ff0000, 808080, true, true",
        "ff0000, ffffff, true, true",
        "ff0000, 0000ff, true, true",
        "ff0000, 00ff00, true, true",
        "ff0000, ffff00, true, true",
        "ff0000, ff00ff, true, true",
        "dc143c, 0000ff, true, true",
        "dc143c, ffffff, true, true",
        "ff0000, ffa500, false, true",
        "ff6347, ffffff, false, true",
        "ff6347, 000000, false, true",
        "ff0000, ff4500, false, false",
        "ff0000, c80000, false, true",
        "ff0000, 800000, false, true",
        "460000, 000000, true, false",
        "470000, 000000, true, true",
        "ff8c00, 000000, false, false",
        "ff8900, 000000, false, false",
        "00ff00, 000000, false, false"
    })
    void tellsRedFlashes(String one, String other, boolean chromatic, boolean older) {
        List<Integer> found = steps(one, other, one, other, one);

        assertThat(count(found, RedSwings.BY_CHROMATICITY)).isEqualTo(chromatic ? 4 : 0);
        assertThat(count(found, RedSwings.BY_OLDER_RULE)).isEqualTo(older ? 4 : 0);
    }

    /** 255,136,0 has 0.80244 of its light in red, 255,137,0 has 0.79990. */
    @Test
    void knowsTheLeastSaturatedRed() {
        assertThat(Chroma.isSaturatedRed(light("ff8800"))).isTrue();
        assertThat(Chroma.isSaturatedRed(light("ff8900"))).isFalse();
    }

    /** A slow change counts as the quick one does: from one end to the other. */
    @Test
    void addsUpFades() {
        List<String> fade = new ArrayList<>();
        for (int round = 0; round < 3; round++) {
            for (int code = 0; code < 256; code += 5) {
                fade.add(String.format("ff%02x%02x", code, code));
            }
            for (int code = 255; code >= 0; code -= 5) {
                fade.add(String.format("ff%02x%02x", code, code));
            }
        }
        List<Integer> found = steps(fade.toArray(String[]::new));

        assertThat(count(found, RedSwings.BY_CHROMATICITY)).isEqualTo(6);
        assertThat(count(found, RedSwings.BY_OLDER_RULE)).isEqualTo(6);
    }

    /** What follows a colour between is compared with the farthest since the last change. */
    @Test
    void remembersTheFarthestColor() {
        assertThat(count(steps("ffffff", "ffa500", "ff0000", "ffa500", "ffffff"), RedSwings.BY_CHROMATICITY))
                .isEqualTo(2);
    }

    /** Steps of almost no light are no flashes. */
    @Test
    void takesTheLastStepsOfAFadeForBlack() {
        assertThat(count(steps("010000", "000000", "0c0000", "000000"), RedSwings.BY_CHROMATICITY))
                .isZero();
        assertThat(count(steps("0d0000", "000000"), RedSwings.BY_CHROMATICITY)).isEqualTo(1);
    }

    /** Whatever is a saturated red is looked at, also of a signal that nobody watches any more. */
    @Test
    void overlooksNoSaturatedRed() {
        PastColors past = new PastColors(SignalLayout.of(FramePixels.unnamed(1)), 2);
        RedSwings swings = new RedSwings(2, past);
        List<String> colors = List.of("000000", "ff0000", "000000", "000000", "000000", "000000");
        for (int place = 0; place < colors.size(); place++) {
            byte[] rgb = new byte[3];
            setCodes(rgb, 0, colors.get(place));
            past.keep(place, rgb, 0);
            swings.step(0, place, CodeLight.redExcess(CodeLight.of(rgb, 0)));
        }

        int overlooked = 0;
        int calm = 0;
        for (int code = 0; code < 1 << 24; code += 1 + code % 3) {
            byte[] rgb = {(byte) (code >> 16), (byte) (code >> 8), (byte) code};
            long light = CodeLight.of(rgb, 0);
            boolean found = swings.mayChange(0, CodeLight.luminance(light), CodeLight.redExcess(light));
            calm += found ? 0 : 1;
            overlooked += !found && Chroma.isSaturatedRed(PlainFlashes.linear(code)) ? 1 : 0;
        }

        assertThat(overlooked).isZero();
        assertThat(calm).as("colours that need no look").isGreaterThan(6_000_000);
    }

    private static long count(List<Integer> found, int rule) {
        return found.stream().filter(bits -> (bits & rule) != 0).count();
    }

    private static List<Integer> steps(String... colors) {
        PastColors past = new PastColors(SignalLayout.of(FramePixels.unnamed(3)), 120);
        RedSwings swings = new RedSwings(4, past);
        List<Integer> found = new ArrayList<>();
        for (int place = 0; place < colors.length; place++) {
            byte[] rgb = new byte[9];
            setCodes(rgb, 3, colors[place]);
            past.keep(place, rgb, 0);
            found.add(swings.step(1, place, CodeLight.redExcess(CodeLight.of(rgb, 3))));
        }
        return found;
    }

    private static void setCodes(byte[] rgb, int at, String hex) {
        for (int i = 0; i < 3; i++) {
            rgb[at + i] = (byte) Integer.parseInt(hex.substring(2 * i, 2 * i + 2), 16);
        }
    }

    private static double[] light(String hex) {
        return PlainFlashes.linear(Integer.parseInt(hex, 16));
    }
}
