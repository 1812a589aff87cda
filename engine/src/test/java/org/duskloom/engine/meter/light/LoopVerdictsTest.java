package org.duskloom.engine.meter.light;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Whether a light flashes too often in a loop is found by looking at little more than its first second again. Lights of
 * chance that change about as often as is allowed are counted over two rounds in the plainest way, and pass or fail
 * alike.
 */
class LoopVerdictsTest {
    private static final int RATE = 8;
    private static final int FRAMES = 48;
    private static final int SHOWS = 3000;

    /** What the lights show. */
    enum Hue {
        GREY,
        RED,
        RED_OR_PALER;

        int of(int level, Random random) {
            int green = this == RED_OR_PALER && random.nextInt(3) == 0 ? random.nextInt(1 + level) : 0;
            return this == GREY ? Flickers.grey(level) : level << 16 | green << 8;
        }
    }

    @ParameterizedTest
    @EnumSource
    void areThoseOfTwoRounds(Hue hue) throws IOException {
        Random random = new Random(7);
        int overByJoint = 0;
        for (int show = 0; show < SHOWS; show++) {
            List<Integer> codes = show(hue, random);
            List<double[]> colors = twoRounds(codes);
            FlashFigures found = Flickers.ofOne(RATE, codes);
            assertThat(isTooMuch(found.general().most()))
                    .as("general, %s", codes)
                    .isEqualTo(isTooMuch(PlainFlashes.worst(PlainFlashes.general(colors), RATE)));
            assertThat(isTooMuch(found.red().most())).as("red, %s", codes).isEqualTo(isTooMuch(red(colors)));
            FlashCount worst = hue == Hue.GREY ? found.general() : found.red();
            overByJoint += isTooMuch(worst.most()) && !isTooMuch(worst.mostOnce()) ? 1 : 0;
        }
        assertThat(overByJoint).isGreaterThan(SHOWS / 200);
    }

    /**
     * The end is paler than the red of the start and has a little more of R - G - B. So the fall to a pale colour is a
     * change in the first round and none in the second, where the next dark red is one, and all between that and a
     * pale colour hardly more than a change above.
     */
    @Test
    void areThoseOfALoopThatGoesAnotherWayInItsSecondRound() throws IOException {
        List<Integer> codes = new ArrayList<>();
        hold(codes, 0xD80000, 2);
        hold(codes, 0x5F0048, 6);
        inTurn(codes, 0x480000, 0x810050, 10);
        hold(codes, 0x5F0048, 22);
        hold(codes, 0xD80000, 1);
        hold(codes, 0xF90088, 2);
        List<double[]> once = twoRounds(codes).subList(0, codes.size());

        assertThat(red(once)).isEqualTo(1);
        assertThat(red(twoRounds(codes))).isEqualTo(8);
        assertThat(Flickers.ofOne(RATE, codes).red().most()).isEqualTo(8);
    }

    /** Loops like that one, by chance. */
    @Test
    void areThoseOfLoopsLikeThat() throws IOException {
        Random random = new Random(1);
        int overByJoint = 0;
        for (int show = 0; show < SHOWS; show++) {
            List<Integer> codes = otherWay(random);
            FlashCount found = Flickers.ofOne(RATE, codes).red();
            assertThat(isTooMuch(found.most())).as("%s", codes).isEqualTo(isTooMuch(red(twoRounds(codes))));
            overByJoint += isTooMuch(found.most()) && !isTooMuch(found.mostOnce()) ? 1 : 0;
        }
        assertThat(overByJoint).isGreaterThan(SHOWS / 4);
    }

    private static List<Integer> otherWay(Random random) {
        int change = CodeLight.ONE / 16;
        int begin = 120 + random.nextInt(136) << 16;
        int dark = 14 + random.nextInt(60) << 16;
        int end = pale(random, excess(begin) + random.nextInt(change));
        int low = pale(random, Math.max(0, excess(dark) - random.nextInt(change)));
        int high = pale(random, excess(dark) + change + random.nextInt(change / 2));
        List<Integer> codes = new ArrayList<>();
        hold(codes, begin, 2 + random.nextInt(10));
        hold(codes, low, 1 + random.nextInt(10));
        inTurn(codes, dark, high, RATE + random.nextInt(3));
        hold(codes, low, FRAMES - codes.size() - 3);
        hold(codes, begin, 1);
        hold(codes, end, 2);
        return codes;
    }

    /** A colour with that R - G - B or hardly more that is just no saturated red. */
    private static int pale(Random random, int target) {
        int red = 1;
        while (red < 255 && 3 * (excess(red << 16) / 4) <= target) {
            red++;
        }
        int shift = random.nextBoolean() ? Byte.SIZE : 0;
        int other = red;
        while (other > 0 && excess(red << 16 | other << shift) < target) {
            other--;
        }
        return red << 16 | other << shift;
    }

    private static int excess(int code) {
        return CodeLight.redExcess(CodeLight.of(new byte[] {(byte) (code >> 16), (byte) (code >> 8), (byte) code}, 0));
    }

    private static void hold(List<Integer> codes, int code, int frames) {
        for (int i = 0; i < frames; i++) {
            codes.add(code);
        }
    }

    private static void inTurn(List<Integer> codes, int one, int other, int frames) {
        for (int i = 0; i < frames; i++) {
            codes.add(i % 2 == 0 ? one : other);
        }
    }

    private static boolean isTooMuch(int changes) {
        return changes > FlashCount.ALLOWED;
    }

    private static int red(List<double[]> colors) {
        return Math.max(
                PlainFlashes.worst(PlainFlashes.olderRed(colors), RATE),
                PlainFlashes.worst(PlainFlashes.chromaticRed(colors, RATE), RATE));
    }

    private static List<double[]> twoRounds(List<Integer> codes) {
        List<double[]> colors = new ArrayList<>();
        for (int round = 0; round < 2; round++) {
            codes.forEach(code -> colors.add(PlainFlashes.linear(code)));
        }
        return colors;
    }

    /**
     * A light that stays, goes a little lower or higher, changes about as often as it may, and ends a little to the
     * other side of where it began: so that the way from the end to the little step may be a change, and the step alone
     * is none.
     */
    private static List<Integer> show(Hue hue, Random random) {
        int way = random.nextBoolean() ? 1 : -1;
        int begin = 100 + random.nextInt(60);
        int step = random.nextInt(30);
        int flicker = RATE + random.nextInt(RATE);
        int stepAt = flicker - 1 - random.nextInt(3);
        boolean high = way > 0;
        List<Integer> codes = new ArrayList<>();
        for (int frame = 0; frame < FRAMES; frame++) {
            int level = frame < stepAt ? begin : begin - way * step;
            if (frame >= flicker) {
                level = high ? 255 : 0;
                high ^= random.nextInt(12) > 0;
            }
            if (frame >= flicker + FlashCount.ALLOWED) {
                level = frame < FRAMES - 3 ? (way > 0 ? 0 : 255) : begin + way * random.nextInt(30);
            }
            codes.add(hue.of(level, random));
        }
        return codes;
    }
}
