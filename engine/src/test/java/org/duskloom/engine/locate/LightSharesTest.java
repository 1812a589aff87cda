package org.duskloom.engine.locate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.duskloom.engine.find.FindRun;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every light has four dots of the same light, so that shares of dots are shares of lights. */
class LightSharesTest {
    private static final int PIXELS = 20;
    private static final FindRun RUN = new FindRun(PIXELS, 1);
    private static final int READINGS = 2 * RUN.code().bits();
    private static final int[] ORDER = IntStream.range(0, READINGS).toArray();

    private final DotPictures pictures = new DotPictures(RUN);

    private LightShares shares() throws Exception {
        return LightShares.ofPairs(pictures.readings());
    }

    /** In which share of the lights two readings are alike. */
    private static double alike(int reading, int other) {
        return IntStream.range(0, PIXELS)
                        .filter(pixel -> RUN.isLit(RUN.pictures().get(2 + reading), pixel)
                                == RUN.isLit(RUN.pictures().get(2 + other), pixel))
                        .count()
                / (double) PIXELS;
    }

    /** A pair is what gives all lights together: at three of four lights just one of the two is lit. */
    @Test
    void readingsAreComparedLightByLight() throws Exception {
        LightShares shares = shares();
        assertThat(shares.readings()).isEqualTo(READINGS);
        assertThat(shares.isEmpty()).isFalse();
        for (int reading = 0; reading < READINGS; reading++) {
            for (int other = 0; other < READINGS; other++) {
                assertThat(shares.likeness(reading, other)).isCloseTo(alike(reading, other), within(1e-12));
                assertThat(shares.arePair(reading, other))
                        .as("%s and %s", reading, other)
                        .isEqualTo(alike(reading, other) <= 0.25);
            }
            assertThat(shares.haze(reading)).isZero();
            assertThat(shares.isDark(reading) || shares.isLit(reading)).isFalse();
        }
        assertThat(shares.burnt()).isZero();
        assertThat(shares.wereMostLitInTheDark()).isFalse();
    }

    /** A quarter of the lights may disagree, as where somebody walks by. */
    @ParameterizedTest
    @CsvSource({"5, true", "6, false"})
    void aPairMayMissAFewLights(int wrong, boolean isPair) throws Exception {
        pictures.set(2, pixel -> pixel < wrong ? 1 : pictures.step(2).applyAsDouble(pixel));
        pictures.set(3, pixel -> pixel < wrong ? 1 : pictures.step(3).applyAsDouble(pixel));
        assertThat(shares().arePair(0, 1)).isEqualTo(isPair);
    }

    /** Lit in both pictures of two pairs of ten it may be a light; of three it is none. */
    @ParameterizedTest
    @CsvSource({"2, 1, 20", "3, 0, 19"})
    void whatSeldomTakesTurnsIsNoLight(int pairs, double alike, double lights) throws Exception {
        for (int picture = 2; picture < 2 + 2 * pairs; picture++) {
            int at = picture;
            pictures.set(at, pixel -> pixel == 6 ? 1 : pictures.step(at).applyAsDouble(pixel));
        }
        assertThat(shares().likeness(0, 1)).isCloseTo(alike / lights, within(1e-12));
    }

    @Test
    void darkAndLitOnesAreKnown() throws Exception {
        pictures.set(5, DotPictures.DARK)
                .set(8, DotPictures.LIT)
                .set(9, pixel -> 0.1)
                .set(11, pixel -> 0.9);
        LightShares shares = shares();
        assertThat(IntStream.range(0, READINGS).filter(shares::isDark)).containsExactly(3, 7);
        assertThat(IntStream.range(0, READINGS).filter(shares::isLit)).containsExactly(6, 9);
        assertThat(shares.arePair(3, 6)).isTrue();
    }

    /** One light in twenty is too many to say that none is lit, or all. */
    @Test
    void oneLightMakesADifference() throws Exception {
        pictures.set(5, pixel -> pixel == 7 ? 1 : 0).set(8, pixel -> pixel == 7 ? 0 : 1);
        assertThat(shares().isDark(3)).isFalse();
        assertThat(shares().isLit(6)).isFalse();
    }

    /** A photo between two steps: what goes out and what goes on are half lit. */
    @ParameterizedTest
    @CsvSource({"0.5, 1", "0.3, 1", "0.7, 1", "0.2, 0", "0.8, 0"})
    void whatIsHalfLitIsHaze(double light, double share) throws Exception {
        pictures.set(6, pixel -> pixel < 5 ? light : 0);
        assertThat(shares().haze(4)).isCloseTo(share * 5 / PIXELS, within(1e-12));
    }

    /** What is burnt out cannot be brighter: its pairs need not add up, but one of the two must be as bright. */
    @Test
    void burntOutLightsAreJudgedByTheBrighterOne() throws Exception {
        for (int picture = 0; picture < pictures.count(); picture++) {
            int at = picture;
            pictures.set(
                    at,
                    pixel -> pixel < 10
                            ? 3 * pictures.step(at).applyAsDouble(pixel)
                            : pictures.step(at).applyAsDouble(pixel));
        }
        pictures.set(4, pixel -> 3).set(5, pixel -> pixel < 10 ? 3 : 0);
        pictures.set(6, pixel -> pixel < 10 ? 3 : 1).set(7, pixel -> pixel < 10 ? 0.8 : 0);
        LightShares shares = shares();
        assertThat(shares.burnt()).isEqualTo(0.5);
        assertThat(shares.arePair(0, 1)).isTrue();
        assertThat(shares.isLit(2)).isTrue();
        assertThat(shares.arePair(4, 5))
                .as("of the burnt ones 1.4 times the light")
                .isTrue();
        assertThat(shares.arePair(3, 3)).as("ten are lit in both, ten in none").isFalse();
    }

    /**
     * The dark picture was taken while lights went out: they are darker later, again and again. Eleven of them are so
     * bright in it that they are taken for lamps; nine are fainter than these.
     */
    @ParameterizedTest
    @CsvSource({"0, false", "4, false", "5, true", "9, true"})
    void lightsThatWereLitInTheDarkAreNoticed(int lit, boolean most) throws Exception {
        pictures.set(0, pixel -> pixel >= 9 ? 0.4 : pixel < lit ? 0.12 : 0);
        for (int picture = 1; picture < pictures.count(); picture++) {
            int at = picture;
            pictures.set(at, pixel -> (pixel < 9 ? 0.45 : 1) * pictures.step(at).applyAsDouble(pixel));
        }
        assertThat(shares().wereMostLitInTheDark()).isEqualTo(most);
    }

    @Test
    void lightsSayTheirWords() throws Exception {
        int[] words = shares().words(RUN.code(), ORDER);
        assertThat(Arrays.stream(words).sorted().toArray())
                .containsExactly(IntStream.range(0, 4 * PIXELS)
                        .map(i -> RUN.code().word(i / 4))
                        .sorted()
                        .toArray());
    }

    /** Of the bit of which there are no pictures nothing is known: it is 0. */
    @Test
    void aMissingBitIsZero() throws Exception {
        for (int missing = 0; missing < RUN.code().bits(); missing++) {
            int[] order = ORDER.clone();
            order[2 * missing] = -1;
            order[2 * missing + 1] = -1;
            int without = ~(1 << missing);
            assertThat(IntStream.of(shares().words(RUN.code(), order)).boxed().distinct())
                    .containsExactlyInAnyOrderElementsOf(IntStream.range(0, PIXELS)
                            .map(pixel -> RUN.code().word(pixel) & without)
                            .boxed()
                            .distinct()
                            .toList());
        }
    }

    /** Pixel 3 is half lit in both pictures of a bit: it says nothing, the others do. */
    @Test
    void unclearLightsSayNothing() throws Exception {
        pictures.set(4, pixel -> pixel == 3 ? 0.5 : pictures.step(4).applyAsDouble(pixel));
        pictures.set(5, pixel -> pixel == 3 ? 0.5 : pictures.step(5).applyAsDouble(pixel));
        assertThat(shares().words(RUN.code(), ORDER))
                .hasSize(4 * (PIXELS - 1))
                .doesNotContain(RUN.code().word(3));
    }

    /** A lamp that goes on behind the dark picture takes no turns; but where pictures may be missing, nobody knows. */
    @Test
    void lampsAreLeftOutWherePairsAreKnown() throws Exception {
        for (int picture = 1; picture < pictures.count(); picture++) {
            int at = picture;
            pictures.set(at, pixel -> pixel == 6 ? 1 : pictures.step(at).applyAsDouble(pixel));
        }
        Readings readings = pictures.readings();
        double half = alike(0, 2);
        double others = (half * PIXELS - (RUN.code().word(6) & 1 ^ RUN.code().word(6) >> 1 & 1 ^ 1)) / (PIXELS - 1);
        assertThat(LightShares.ofPairs(readings).likeness(0, 2)).isCloseTo(others, within(1e-12));
        assertThat(LightShares.ofAny(readings).likeness(0, 2)).isCloseTo((others * 19 + 1) / PIXELS, within(1e-12));
    }

    /** Photos that have nothing to do with each other: then all lights are looked at rather than none. */
    @Test
    void whereNothingTakesTurnsAllIsLookedAt() throws Exception {
        for (int picture = 2; picture < pictures.count(); picture++) {
            pictures.set(picture, DotPictures.LIT);
        }
        assertThat(shares().isEmpty()).isFalse();
        assertThat(shares().isLit(3)).isTrue();
        pictures.set(1, DotPictures.DARK);
        assertThat(shares().isEmpty()).as("no lit picture").isTrue();
    }
}
