package org.duskloom.engine.locate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.Collections;
import java.util.stream.IntStream;
import org.duskloom.engine.find.FindCode;
import org.duskloom.engine.find.FindRun;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Pairs that add up, but do not stand for the bits that they should. */
class WordCheckTest {
    private static final String ORDER =
            "; put the photos in the order of steps.txt, one for each step that is called a picture, and try again";

    private static String refusal(DotPictures pictures) throws Exception {
        LightShares shares = LightShares.ofPairs(pictures.readings());
        PicturesRefusedException refused =
                catchThrowableOfType(PicturesRefusedException.class, () -> WordCheck.require(shares, pictures.known()));
        return refused == null ? "" : DotPictures.said(refused);
    }

    private static void exchange(DotPictures pictures, int bit, int other) {
        Collections.swap(pictures.shots, 2 + 2 * bit, 2 + 2 * other);
        Collections.swap(pictures.shots, 3 + 2 * bit, 3 + 2 * other);
    }

    private static String both(int bit) {
        return "p" + (3 + 2 * bit) + " and p" + (4 + 2 * bit);
    }

    /** Which of the pixels have words if these bits of all words are exchanged. */
    private static long right(FindCode code, int[] bits) {
        return IntStream.range(0, code.pixelCount())
                .map(code::word)
                .map(word -> {
                    int exchanged = word;
                    for (int i = 0; i < bits.length; i += 2) {
                        int differ = (exchanged >>> bits[i] ^ exchanged >>> bits[i + 1]) & 1;
                        exchanged ^= differ << bits[i] | differ << bits[i + 1];
                    }
                    return exchanged;
                })
                .filter(word -> code.pixel(word) >= 0)
                .count();
    }

    /**
     * R. W. Hamming's code of 1950 with a parity bit is linear and has automorphisms: for 16 pixels four exchanges of
     * two bits make words of what any of them has spoilt. Whoever is told just one of them, and does it, has numbers
     * that are wrong. So what was done is always told; another one only if it does as well.
     */
    @ParameterizedTest
    @ValueSource(ints = {8, 12, 16, 50, 64})
    void whatIsToldIsWhatWasExchanged(int pixels) throws Exception {
        FindRun run = new FindRun(pixels, 1);
        int bits = run.code().bits();
        int told = 0;
        int done = 0;
        for (int a = 0; a < bits; a++) {
            for (int b = a + 1; b < bits; b++) {
                DotPictures pictures = new DotPictures(run);
                exchange(pictures, a, b);
                String said = refusal(pictures);
                if (right(run.code(), new int[] {a, b}) > 0.8 * pixels) {
                    assertThat(said).as("nothing is spoilt").isEmpty();
                    continue;
                }
                done++;
                for (int c = 0; c < bits; c++) {
                    for (int d = c + 1; d < bits; d++) {
                        boolean doesAsWell = right(run.code(), new int[] {a, b, c, d}) == pixels;
                        told += doesAsWell ? 1 : 0;
                        assertThat(said.matches(
                                        ".*\\b" + both(c) + " (seem to be exchanged )?with " + both(d) + "\\b.*"))
                                .as("%s and %s: %s", c, d, said)
                                .isEqualTo(doesAsWell);
                    }
                }
            }
        }
        assertThat(told).isEqualTo(pixels == 16 ? 4 * done : told).isGreaterThanOrEqualTo(done);
    }

    /** In a sentence. */
    @Test
    void tellsAllThatDoAsWell() throws Exception {
        DotPictures pictures = new DotPictures(new FindRun(16, 1));
        exchange(pictures, 0, 1);
        assertThat(refusal(pictures))
                .startsWith("p3 and p4 seem to be exchanged with p5 and p6, or ")
                .endsWith(ORDER);
        DotPictures more = new DotPictures(new FindRun(50, 1));
        exchange(more, 0, 1);
        assertThat(refusal(more)).isEqualTo("p3 and p4 seem to be exchanged with p5 and p6" + ORDER);
    }

    /** Ones taken for zeros in a single bit: words that are no words, by that bit. */
    @ParameterizedTest
    @ValueSource(ints = {3, 16, 50})
    void tellsWhichStepIsTurnedRound(int pixels) throws Exception {
        FindRun run = new FindRun(pixels, 1);
        for (int bit = 0; bit < run.code().bits(); bit++) {
            DotPictures pictures = new DotPictures(run);
            Collections.swap(pictures.shots, 2 + 2 * bit, 3 + 2 * bit);
            assertThat(refusal(pictures))
                    .isEqualTo("p" + (3 + 2 * bit) + " seems to be exchanged with p" + (4 + 2 * bit) + ORDER);
        }
    }

    /** The display was made longer since its run was written, or shorter; both have as many pictures. */
    @ParameterizedTest
    @CsvSource({"64, 50, 64", "51, 50, 51", "50, 40, 50", "64, 33, 64"})
    void tellsThatMorePixelsBlinkThanThereAre(int blinking, int pixels, int greatest) throws Exception {
        DotPictures pictures = new DotPictures(new FindRun(blinking, 1));
        LightShares shares = LightShares.ofPairs(pictures.readings());
        PicturesRefusedException refused = catchThrowableOfType(
                PicturesRefusedException.class,
                () -> WordCheck.require(shares, new RoundPictures(new FindRun(pixels, 1), 0, pictures::name)));
        assertThat(DotPictures.said(refused))
                .isEqualTo("lights blink numbers up to " + greatest + ", and there should be " + pixels + " pixels; the"
                        + " run was made for another display, or for this one before it was changed: name that one, or"
                        + " play the run of this one");
    }

    /** Dark pixels at the end of the wire cannot be told from pixels that are none. */
    @Test
    void fewerPixelsThanThereAreMayBlink() throws Exception {
        DotPictures pictures = new DotPictures(new FindRun(40, 1));
        LightShares shares = LightShares.ofPairs(pictures.readings());
        RoundPictures longer = new RoundPictures(new FindRun(60, 1), 0, pictures::name);
        assertThatCode(() -> WordCheck.require(shares, longer)).doesNotThrowAnyException();
    }

    /** Three pictures in a ring, for instance: no single exchange puts that right, and none is guessed at. */
    @Test
    void doesNotGuessWhereMoreIsInDisorder() throws Exception {
        DotPictures pictures = new DotPictures(new FindRun(50, 1));
        exchange(pictures, 0, 3);
        exchange(pictures, 3, 7);
        exchange(pictures, 1, 5);
        assertThat(refusal(pictures)).isEqualTo("what the lights blink are not the numbers of 50 pixels" + ORDER);
    }
}
