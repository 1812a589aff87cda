package org.duskloom.engine.proof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.duskloom.engine.find.FindRun;
import org.duskloom.engine.frame.FramePixels;
import org.duskloom.engine.frame.FrameReader;
import org.duskloom.engine.frame.RunStep;
import org.duskloom.engine.time.FrameRate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The run by which pixels tell their numbers, read back from its frames alone. */
class FindingProofTest {
    /** What a step's frames show: the same picture from the first to the last. */
    private record Step(String name, String sight, long frames, int[] codes) {}

    private static List<Step> play(int pixels, int apart, int hold, double light) throws IOException {
        Proof proof = Proof.ofFinding(new FindRun(pixels, apart), hold, light);
        ProofFrames frames = new ProofFrames(proof, "finding", FramePixels.unnamed(pixels));
        assertThat(frames.info().rate()).isEqualTo(FrameRate.of(20));
        assertThat(frames.info().showFrames()).isEqualTo(proof.frameCount());
        List<Step> steps = new ArrayList<>();
        try (FrameReader reader = frames.reader()) {
            for (RunStep step : frames.info().steps()) {
                byte[] first = new byte[3 * pixels];
                byte[] last = new byte[3 * pixels];
                reader.read(step.firstFrame(), first, 0);
                reader.read(step.firstFrame() + step.frames() - 1, last, 0);
                assertThat(last).isEqualTo(first);
                int[] codes = new int[pixels];
                for (int i = 0; i < pixels; i++) {
                    assertThat(List.of(first[3 * i + 1], first[3 * i + 2])).containsOnly(first[3 * i]);
                    codes[i] = first[3 * i] & 0xFF;
                }
                steps.add(new Step(step.caption(), step.sight(), step.frames(), codes));
            }
        }
        return steps;
    }

    private static List<Step> pictures(List<Step> steps) {
        return steps.stream()
                .filter(step -> step.sight().startsWith("picture "))
                .toList();
    }

    /**
     * The word of pixel p: the Gray code p xor (p >> 1) (F. Gray, US 2,632,058), the exclusive or of the places of its
     * ones, which are the numbers from 3 on that are no power of two (R. W. Hamming, 1950), and what makes the number
     * of ones even.
     */
    private static int word(int pixel, int numberBits, int remainderBits) {
        int gray = pixel ^ pixel >> 1;
        int remainder = 0;
        int place = 3;
        for (int bit = 0; bit < numberBits; bit++, place++) {
            while (Integer.bitCount(place) == 1) {
                place++;
            }
            remainder ^= (gray >> bit & 1) * place;
        }
        int word = gray | remainder << numberBits;
        return word | (Integer.bitCount(word) & 1) << numberBits + remainderBits;
    }

    /** 5 pixels need 3 bits and a remainder of 3, 1,288 pixels 11 and 4, as the page on photos says. */
    @ParameterizedTest
    @CsvSource({"5, 3, 3, 16", "16, 4, 3, 18", "1288, 11, 4, 34"})
    void everyPixelTellsItsWord(int pixels, int numberBits, int remainderBits, int pictureCount) throws IOException {
        List<Step> pictures = pictures(play(pixels, 1, 20, 0.3));
        assertThat(pictures).hasSize(pictureCount);
        assertThat(pictures.get(0).codes()).containsOnly(0);
        assertThat(pictures.get(1).codes()).doesNotContain(0);
        for (int pixel = 0; pixel < pixels; pixel++) {
            int told = 0;
            for (int bit = 0; bit < numberBits + remainderBits + 1; bit++) {
                boolean one = pictures.get(2 + 2 * bit).codes()[pixel] > 0;
                assertThat(pictures.get(3 + 2 * bit).codes()[pixel] > 0).isEqualTo(!one);
                told |= one ? 1 << bit : 0;
            }
            assertThat(told).as("word of pixel %s", pixel).isEqualTo(word(pixel, numberBits, remainderBits));
        }
    }

    /** In round i of K only pixels with p mod K = i are lit; the blinks light all. */
    @Test
    void roundsLightEveryFewPixels() throws IOException {
        List<Step> steps = play(10, 3, 20, 1);
        List<Step> lit = pictures(steps).stream()
                .filter(step -> step.sight().contains(" and so on are lit"))
                .toList();
        assertThat(lit).hasSize(3);
        for (int round = 0; round < 3; round++) {
            for (int pixel = 0; pixel < 10; pixel++) {
                assertThat(lit.get(round).codes()[pixel]).isEqualTo(pixel % 3 == round ? 255 : 0);
            }
            assertThat(lit.get(round).sight()).contains("pixel " + (round + 1) + ", " + (round + 4) + " and so on");
        }
        assertThat(steps.stream().filter(step -> step.sight().contains("blink")))
                .isNotEmpty()
                .allSatisfy(step -> assertThat(step.codes()).containsOnly(255));
    }

    /** A blink and the pause after it share a hold; IEC 61966-2-1: 255 · (1.055 · 0.3^(1/2.4) - 0.055) is 149. */
    @Test
    void stepsAreHeldAndLightIsLimited() throws IOException {
        for (Step step : play(5, 1, 20, 0.3)) {
            boolean half = step.sight().contains("blink") || step.sight().contains("for a moment");
            assertThat(step.frames()).as(step.name()).isIn(half ? List.of(10L, 20L) : List.of(20L));
            for (int code : step.codes()) {
                assertThat(code).isIn(0, 149);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 3, -2})
    void holdsAreEven(int hold) {
        FindRun run = new FindRun(5, 1);
        assertThatThrownBy(() -> Proof.ofFinding(run, hold, 0.3)).isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -0.1, 1.01, Double.NaN})
    void lightIsAShare(double light) {
        FindRun run = new FindRun(5, 1);
        assertThatThrownBy(() -> Proof.ofFinding(run, 2, light)).isInstanceOf(IllegalArgumentException.class);
    }

    /** Steps follow each other without a gap, whatever stands in the array before, and from any byte on. */
    @Test
    void framesAreThoseOfTheirSteps() throws IOException {
        Proof proof = Proof.ofFinding(new FindRun(4, 1), 4, 1);
        ProofFrames frames = new ProofFrames(proof, "finding", FramePixels.unnamed(4));
        long next = 0;
        for (RunStep step : frames.info().steps()) {
            assertThat(step.firstFrame()).isEqualTo(next);
            next += step.frames();
        }
        assertThat(next).isEqualTo(frames.info().showFrames());
        byte[] around = new byte[14];
        Arrays.fill(around, (byte) 7);
        try (FrameReader reader = frames.reader()) {
            reader.read(next - 1, around, 1);
        }
        assertThat(List.of(around[0], around[13])).containsOnly((byte) 7);
        assertThat(Arrays.copyOfRange(around, 1, 13)).doesNotContain((byte) 7);
    }
}
