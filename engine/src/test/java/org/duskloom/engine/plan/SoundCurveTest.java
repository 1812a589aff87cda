package org.duskloom.engine.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.duskloom.engine.digest.FingerprintWriter;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.problem.TextFormatException;
import org.duskloom.engine.sound.SoundBand;
import org.duskloom.engine.sound.SoundLevels;
import org.duskloom.engine.time.ExactTime;
import org.duskloom.engine.time.TimeContext;
import org.duskloom.engine.time.TimeText;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** One second of silence, two of a tone of 60 Hz, one of silence: the low band is at 0, at 1, at 0. */
class SoundCurveTest {
    @TempDir
    Path folder;

    private SoundLevels levels;

    @BeforeEach
    void measure() throws IOException {
        levels = measured(1, 3);
    }

    /** The levels of four seconds with a tone. */
    private SoundLevels measured(int fromSecond, int toSecond) throws IOException {
        int count = 4 * 8000;
        ByteBuffer wav = ByteBuffer.allocate(44 + 2 * count).order(ByteOrder.LITTLE_ENDIAN);
        wav.put("RIFF".getBytes(StandardCharsets.US_ASCII)).putInt(36 + 2 * count);
        wav.put("WAVEfmt ".getBytes(StandardCharsets.US_ASCII)).putInt(16);
        wav.putShort((short) 1).putShort((short) 1).putInt(8000).putInt(16000);
        wav.putShort((short) 2).putShort((short) 16);
        wav.put("data".getBytes(StandardCharsets.US_ASCII)).putInt(2 * count);
        for (int i = 0; i < count; i++) {
            boolean sounds = i >= fromSecond * 8000 && i < toSecond * 8000;
            wav.putShort((short) (sounds ? 16000 * StrictMath.sin(2 * StrictMath.PI * 60 * i / 8000.0) : 0));
        }
        Path file = Files.write(folder.resolve("tone.wav"), wav.array());
        Problems problems = new Problems();
        SoundLevels measured = SoundLevels.read(file, "tone.wav", problems).orElseThrow();
        assertThat(problems.hasErrors()).isFalse();
        return measured;
    }

    private SoundCurve curve(double starts, double attack, double release) {
        return curve(starts, 0, attack, release);
    }

    private SoundCurve curve(double starts, double floor, double attack, double release) {
        CurveBook.Smoothing smoothing = new CurveBook.Smoothing(
                floor,
                ExactTime.ofMilliseconds(Math.round(attack * 1000)),
                ExactTime.ofMilliseconds(Math.round(release * 1000)));
        return new SoundCurve(levels, SoundBand.LOW, starts, smoothing);
    }

    /** A level of 0.9 is half way from a floor of 0.8 to 1; the floor is taken off at the steps. */
    @Test
    void levelsUpToTheFloorAreNothing() {
        SoundCurve above = curve(0, 0.8, 0, 0);
        SoundCurve all = curve(0, 0, 0, 0);
        int between = 0;
        for (int step = 90; step < 110; step++) {
            double level = all.at(step / 100.0);
            assertThat(above.at(step / 100.0)).isCloseTo(Math.max(0, (level - 0.8) / 0.2), within(1e-9));
            between += above.at(step / 100.0) == 0 && level > 0 ? 1 : 0;
        }
        assertThat(between).isPositive();
    }

    @ParameterizedTest
    @CsvSource({"0.5, 0", "1.5, 1", "2.5, 1", "3.5, 0", "-3, 0", "100, 0"})
    void withoutSmoothingItIsTheLevel(double second, double level) {
        assertThat(curve(0, 0, 0).at(second)).isCloseTo(level, within(0.03));
    }

    @Test
    void itStartsWithTheSound() {
        assertThat(curve(10, 0, 0).at(11.5)).isCloseTo(1, within(0.03));
        assertThat(curve(-1, 0, 0).at(0.5)).isCloseTo(1, within(0.03));
        assertThat(curve(10, 0, 0).at(1.5)).isZero();
    }

    /**
     * After so long as the attack or the release 1 - 1/e of the way is done, 0.632; after twice as long 0.865. In
     * decibels a level comes up, and goes down, some 20 ms before and after its tone.
     */
    @Test
    void itRisesByTheAttackAndFallsByTheRelease() {
        SoundCurve curve = curve(0, 0.2, 0.3);
        assertThat(curve.at(1.18)).isCloseTo(0.632, within(0.06));
        assertThat(curve.at(1.38)).isCloseTo(0.865, within(0.04));
        double top = curve.at(3);
        assertThat(curve.at(3.32) / top).isCloseTo(0.368, within(0.06));
        assertThat(curve.at(3.62) / top).isCloseTo(0.135, within(0.04));
        assertThat(curve.at(4.3) / top).as("after the end").isBetween(0.001, 0.03);
    }

    /** A tone from the first instant to the last is heard at both; one step behind the last there is nothing. */
    @Test
    void itIsHeardFromItsFirstStepToItsLast() throws IOException {
        levels = measured(0, 4);
        SoundCurve curve = curve(10, 0, 0);
        double lastSecond = 10 + (levels.count() - 1) / 100.0;
        assertThat(curve.at(9.999)).isZero();
        assertThat(curve.at(10)).isEqualTo(levels.value(SoundBand.LOW, 0)).isPositive();
        assertThat(curve.at(lastSecond))
                .isCloseTo(levels.value(SoundBand.LOW, levels.count() - 1), within(1e-9))
                .isPositive();
        for (int step = 1; step < 4; step++) {
            assertThat(curve.at(lastSecond + step / 100.0)).isCloseTo(0, within(1e-9));
        }
    }

    /** What is left after twelve times the release, e^-12, is less than a hundredth of one of 255 codes. */
    @Test
    void itFallsForTwelveReleasesAfterTheEnd() throws IOException {
        levels = measured(0, 4);
        SoundCurve curve = curve(0, 0, 0.5);
        double end = levels.count() / 100.0 + 12 * 0.5;
        assertThat(curve.at(end - 0.01)).isBetween(1e-7, 0.01 / 255);
        assertThat(curve.at(end + 0.02)).isZero();
    }

    @Test
    void itHearsTheSoundAndNotTheBeats() {
        assertThat(curve(0, 0, 0).hearsBeats()).isFalse();
    }

    @Test
    void betweenTwoStepsItGoesStraight() {
        SoundCurve curve = curve(0, 0.2, 0.3);
        for (double second = 1.1; second < 1.4; second += 0.01) {
            double step = Math.rint(second * 100) / 100;
            assertThat(curve.at(step + 0.005)).isCloseTo((curve.at(step) + curve.at(step + 0.01)) / 2, within(1e-9));
        }
    }

    @Test
    void whatIsFollowedIsKnownByItsValues() {
        assertThat(print(curve(0, 0.2, 0.3))).isEqualTo(print(curve(0, 0.2, 0.3)));
        assertThat(print(curve(0, 0.2, 0.3)))
                .isNotEqualTo(print(curve(0, 0.2, 0.31)))
                .isNotEqualTo(print(curve(0.1, 0.2, 0.3)));
    }

    private static String print(SoundCurve curve) {
        return new FingerprintWriter("test").value(curve).finish().hex();
    }

    /** An eighth of a beat of music that people play is never the same length twice. */
    @Test
    void timesThatNobodyTellsApartAreOne() {
        CurveBook.Smoothing one = smoothing("66.9643ms", "250ms");
        assertThat(one).isEqualTo(smoothing("67.2ms", "249.9ms")).isNotEqualTo(smoothing("67.6ms", "250ms"));
        assertThat(one.attack()).isEqualTo(ExactTime.ofMilliseconds(67));
        assertThat(smoothing("1.499999ms", "0.2ms").release()).isEqualTo(ExactTime.ZERO);
    }

    private static CurveBook.Smoothing smoothing(String attack, String release) {
        try {
            return new CurveBook.Smoothing(
                    0, TimeText.parse(attack, TimeContext.NONE), TimeText.parse(release, TimeContext.NONE));
        } catch (TextFormatException fault) {
            throw new AssertionError(fault);
        }
    }
}
