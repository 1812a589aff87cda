package org.duskloom.engine.find;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import java.util.stream.IntStream;
import org.duskloom.engine.find.FindStep.Kind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FindRunTest {
    /** 11 bits of the number, 4 of the remainder, 1 of parity: 16 pairs, dark and lit. */
    @Test
    void aGardenTakes34Pictures() {
        assertThat(new FindRun(1288, 1).pictures()).hasSize(34);
        assertThat(new FindRun(1288, 4).pictures()).hasSize(4 * 34);
    }

    @Test
    void stepsFollowEachOtherAndBlinksTakeHalfTheTime() {
        FindRun run = new FindRun(50, 2);
        int next = 0;
        for (FindStep step : run.steps()) {
            assertThat(step.startHalves()).isEqualTo(next);
            assertThat(step.halves()).isEqualTo(step.isPicture() ? 2 : 1);
            next += step.halves();
        }
        assertThat(run.halves()).isEqualTo(next);
        assertThat(next).isEqualTo(3 * 6 + 2 * 2 * (2 + 2 * 11));
    }

    @Test
    void aRoundBeginsWithThreeBlinksDarkAndLit() {
        List<Kind> kinds =
                new FindRun(2, 1).steps().stream().map(FindStep::kind).toList();
        assertThat(kinds.subList(0, 10))
                .containsExactly(
                        Kind.BLINK,
                        Kind.PAUSE,
                        Kind.BLINK,
                        Kind.PAUSE,
                        Kind.BLINK,
                        Kind.PAUSE,
                        Kind.DARK,
                        Kind.LIT,
                        Kind.ONES,
                        Kind.ZEROS);
        assertThat(kinds.subList(kinds.size() - 6, kinds.size()))
                .containsExactly(Kind.BLINK, Kind.PAUSE, Kind.BLINK, Kind.PAUSE, Kind.BLINK, Kind.PAUSE);
    }

    @ParameterizedTest
    @CsvSource({"1, 1", "2, 2", "50, 1", "50, 4", "1288, 3"})
    void everyPairAddsUpToTheLitStepAndRoundsToAllPixels(int pixels, int apart) {
        FindRun run = new FindRun(pixels, apart);
        for (int pixel = 0; pixel < pixels; pixel++) {
            int rounds = 0;
            for (int round = 0; round < apart; round++) {
                boolean lit = run.isLit(step(run, round, Kind.LIT, 0), pixel);
                rounds += lit ? 1 : 0;
                assertThat(run.isLit(step(run, round, Kind.DARK, 0), pixel)).isFalse();
                for (int bit = 0; bit < run.code().bits(); bit++) {
                    boolean one = run.isLit(step(run, round, Kind.ONES, bit), pixel);
                    boolean zero = run.isLit(step(run, round, Kind.ZEROS, bit), pixel);
                    assertThat(one && zero).isFalse();
                    assertThat(one || zero).isEqualTo(lit);
                }
            }
            assertThat(rounds).isEqualTo(1);
        }
    }

    /** What a camera sees in the pairs is the word. */
    @Test
    void theOnesOfAPixelAreItsWord() {
        FindRun run = new FindRun(300, 1);
        for (int pixel = 0; pixel < 300; pixel++) {
            int at = pixel;
            int word = IntStream.range(0, run.code().bits())
                    .map(bit -> run.isLit(step(run, 0, Kind.ONES, bit), at) ? 1 << bit : 0)
                    .sum();
            assertThat(word).isEqualTo(run.code().word(pixel));
        }
    }

    @ParameterizedTest
    @CsvSource({"5, 6", "5, 0", "0, 1"})
    void refusesRoundsWithoutPixels(int pixels, int apart) {
        assertThatIllegalArgumentException().isThrownBy(() -> new FindRun(pixels, apart));
    }

    private static FindStep step(FindRun run, int round, Kind kind, int bit) {
        return run.steps().stream()
                .filter(step -> step.round() == round && step.kind() == kind && step.bit() == bit)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void namesItsSteps() {
        FindRun run = new FindRun(12, 1);
        List<String> names = run.steps().stream().map(run::name).toList();
        assertThat(names)
                .startsWith("blink 1", "pause 1", "blink 2", "pause 2", "blink 3", "pause 3", "dark", "lit", "bit 1")
                .contains("bit 4 turned round", "check 1", "check 3 turned round", "parity")
                .doesNotHaveDuplicates();
        FindRun inTurns = new FindRun(12, 4);
        assertThat(inTurns.name(inTurns.pictures().get(1))).isEqualTo("round 1: lit");
        assertThat(inTurns.steps().stream().map(inTurns::name)).doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 50, 64, 1288, 2048, 2049, 5000})
    void knowsForHowManyPixelsARunHasSoManyPictures(int pixels) {
        int pictures = new FindRun(pixels, 1).pictures().size();
        String[] words = FindRun.pixelsWithPictures(pictures).orElseThrow().split(" ");
        assertThat(pixels).isBetween(Integer.parseInt(words[0]), Integer.parseInt(words[2]));
        assertThat(new FindRun(Integer.parseInt(words[0]), 1).pictures()).hasSize(pictures);
        assertThat(new FindRun(Integer.parseInt(words[2]), 1).pictures()).hasSize(pictures);
        assertThat(new FindRun(Integer.parseInt(words[2]) + 1, 1).pictures()).hasSizeGreaterThan(pictures);
        assertThat(FindRun.pixelsWithPictures(pictures + 1)).isEmpty();
    }
}
