package org.duskloom.engine.meter.light;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Flashes of known sequences. The limit is that of WCAG 2.2, success criterion 2.3.1 and technique G19 (W3C): three
 * flashes, six opposing changes, in any second pass, seven changes fail.
 */
class FlashSequencesTest {
    /**
     * Frames of black and white in turn at 20 a second, worked out by hand; at 40 and 60 a second each is held two and
     * three times as long, and the counts stay the same.
     */
    @ParameterizedTest(name = "{0}: {2} once, {3} in a loop")
    @CsvSource({
        "six, 2 3 3 3 3 3 23, 6, 6",
        "seven, 2 3 3 3 3 3 2 21, 7, 8",
        "exact second, 2 4 3 3 4 3 3 18, 6, 7",
        "one frame less, 2 4 3 3 4 3 2 19, 7, 7",
        "sliding, 11 3 3 3 2 2 2 14, 7, 7",
        "quiet joint, 2 3 3 24 3 3 2, 3, 6",
        "flashing joint, 2 3 3 12 12 3 3 2, 4, 7"
    })
    void countsTransitionsOfAnySecond(String name, String lengths, int once, int looped) throws IOException {
        for (int rate : new int[] {20, 40, 60}) {
            int[] held = lengths(lengths);
            for (int i = 0; i < held.length; i++) {
                held[i] *= rate / 20;
            }

            FlashFigures found = Flickers.ofOne(rate, Flickers.inTurn(0, Flickers.WHITE, held));

            assertThat(found.general().mostOnce())
                    .as("%s at %d, once", name, rate)
                    .isEqualTo(once);
            assertThat(found.general().most())
                    .as("%s at %d, looped", name, rate)
                    .isEqualTo(looped);
            assertThat(found.general().overJoint()).isEqualTo(looped > once);
            assertThat(found.passes()).isEqualTo(looped <= 6);
        }
    }

    /**
     * Grey codes at 30 frames a second from published test media for analysers of flashes ("f" is to fail, "c" to
     * pass), played once. The last change of c011 comes exactly one second after its first: a closed second would count
     * seven.
     */
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "f001, 64 109 64 109 64 109 64 109x25, 7",
        "c001, 64 109 64 109 64 109 64x26, 6",
        "f011, 64 109 64x9 109 64x9 109 64x8 109 64x3, 7",
        "c011, 64 109 64x9 109 64x9 109 64x9 109 64x2, 6",
        "f021, 64 109x5 64x5 109x5 64x5 109x4 64x5 109x4, 7",
        "c021, 64 109x5 64x5 109x5 64x5 109x5 64x5 109x3, 6",
        "f031, 64 109 139 64x8 139 109 64x8 109 139 109 64x6 109 139 64x2, 7"
    })
    void agreesWithPublishedTestMedia(String name, String runs, int worst) throws IOException {
        List<Integer> colors = new ArrayList<>();
        for (String run : runs.split(" ")) {
            String[] codeAndCount = run.split("x");
            int count = codeAndCount.length == 1 ? 1 : Integer.parseInt(codeAndCount[1]);
            for (int i = 0; i < count; i++) {
                colors.add(Flickers.grey(Integer.parseInt(codeAndCount[0])));
            }
        }

        assertThat(Flickers.ofOne(30, colors).general().mostOnce()).isEqualTo(worst);
    }

    /** Square waves at 40 frames a second, 3.5 Hz being the example that technique G19 gives of what fails. */
    @ParameterizedTest
    @CsvSource({"2, 4", "3, 6", "3.5, 7", "5, 10", "10, 20"})
    void countsSquareWaves(double hertz, int changes) throws IOException {
        List<Integer> colors = Flickers.square(0, Flickers.WHITE, 40, 2 * hertz, 8);

        assertThat(Flickers.ofOne(40, colors).general().mostOnce()).isEqualTo(changes);
    }

    /** Wave of every frame at rates beyond the bits of one word. */
    @ParameterizedTest
    @ValueSource(ints = {1, 63, 64, 65, 120, 129})
    void countsEveryFrameOfASecond(int rate) throws IOException {
        List<Integer> colors = Flickers.square(0, Flickers.WHITE, rate, rate, 4);

        assertThat(Flickers.ofOne(rate, colors).general().mostOnce()).isEqualTo(rate);
    }

    /** The first second of the joint begins behind the last frame, and says so. */
    @Test
    void namesTheSecond() throws IOException {
        FlashFigures found = Flickers.ofOne(20, Flickers.inTurn(0, Flickers.WHITE, lengths("11 3 3 3 2 2 2 14")));

        assertThat(found.general().firstFrame()).isEqualTo(7);
        assertThat(found.general().slowBy()).isEqualTo(7.0 / 6);
    }

    /**
     * What the end leaves behind may make a change long after the joint: a light that ends at 0.50 and starts at 0.45
     * falls by a tenth when it comes to 0.39 three seconds later, and six more changes follow. Played once, the light
     * has fallen by 0.06 then, which is none. The second in which that happens is found, and no other show is thought
     * worse for it.
     */
    @ParameterizedTest(name = "ending at {0}: {1}")
    @CsvSource({"188, 7", "179, 6"})
    void countsWhatTheEndBringsAboutLongAfterTheJoint(int last, int looped) throws IOException {
        List<Integer> colors = new ArrayList<>();
        int[] codes = {179, 168, 255, 168, 255, 168, 255, 168, last};
        int[] lengths = {60, 2, 2, 2, 2, 2, 2, 28, 20};
        for (int i = 0; i < codes.length; i++) {
            colors.addAll(Collections.nCopies(lengths[i], Flickers.grey(codes[i])));
        }

        FlashCount found = Flickers.ofOne(20, colors).general();

        assertThat(found.mostOnce()).isEqualTo(6);
        assertThat(found.most()).isEqualTo(looped);
        assertThat(found.overJoint()).isEqualTo(looped > 6);
    }

    private static int[] lengths(String text) {
        return Arrays.stream(text.split(" ")).mapToInt(Integer::parseInt).toArray();
    }
}
