package org.duskloom.engine.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.duskloom.engine.digest.FingerprintWriter;
import org.duskloom.engine.document.Inputs;
import org.duskloom.engine.document.NumberNode;
import org.duskloom.engine.effect.LevelCurve;
import org.duskloom.engine.effect.NumberTrack;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.show.Show;
import org.duskloom.engine.sound.SoundBand;
import org.duskloom.engine.time.ExactTime;
import org.duskloom.engine.time.FrameRate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Numbers that follow a tone from 1 to 3 s of a sound, or the beats beside it. */
class FollowReaderTest {
    private static final String SOUND = "\"layers\": [], \"beats\": \"beats.txt\", \"sound\": {\"file\": \"tone.wav\"}";

    @TempDir
    Path folder;

    private final Problems problems = new Problems();

    private Show show(String fields) {
        return new MusicFolder(folder).withTone().withBeats(MusicFolder.SLOWING).show(fields);
    }

    private CurveBook book(Show show) {
        Optional<FrameBeats> beats =
                show.timeline().times().beats().map(music -> new FrameBeats(music, FrameRate.of(40)));
        return new CurveBook(show, beats, problems);
    }

    private Optional<NumberTrack> read(String fields, String value, int startSecond) {
        Show show = show(fields);
        return new FollowReader(book(show), show.timeline().lengths(), ExactTime.ofSeconds(startSecond), problems)
                .read(
                        Inputs.json("{" + value + "}"),
                        "\"size\"",
                        (node, what) -> node instanceof NumberNode number
                                ? OptionalDouble.of(number.value())
                                : OptionalDouble.empty());
    }

    private NumberTrack sound(String value, int startSecond) {
        NumberTrack track = read(SOUND, value, startSecond).orElseThrow();
        assertThat(Inputs.shown(problems)).isEmpty();
        return track;
    }

    /** From where it is silent, to where the tone is, by the clock of the show. */
    @ParameterizedTest
    @ValueSource(strings = {"low", "all"})
    void goesFromSilenceToTheTone(String word) {
        NumberTrack track = sound("\"follow\": \"" + word + "\", \"from\": 0.2, \"to\": 0.7, \"attack\": \"0s\"", 0);
        assertThat(track.at(0.5)).isEqualTo(0.2);
        assertThat(track.at(2)).isCloseTo(0.7, within(0.02));
        assertThat(track.at(0.5, 1.5)).isCloseTo(0.7, within(0.02));
        assertThat(track.hearsBeats()).isFalse();
    }

    /** The clock of the sound starts when the sound does. */
    @Test
    void followsASoundThatStartsLater() {
        String later = SOUND.replace("\"tone.wav\"", "\"tone.wav\", \"starts\": \"4s\"");
        NumberTrack track = read(later, "\"follow\": \"low\", \"from\": 0, \"to\": 1, \"attack\": \"0s\"", 0)
                .orElseThrow();
        assertThat(track.at(2)).isZero();
        assertThat(track.at(6)).isCloseTo(1, within(0.03));
    }

    @Test
    void followsTheBeat() {
        NumberTrack track = sound("\"follow\": \"beat\", \"from\": 0, \"to\": 2", 0);
        assertThat(List.of(track.at(0), track.at(0.25), track.at(1.25))).containsExactly(2.0, 1.0, 1.5);
        assertThat(track.hearsBeats()).isTrue();
    }

    /**
     * Twenty and 250 milliseconds where nothing is written; of beats as many as there are from the start of the cue on:
     * one is half a second at the start and a second from 2 s on.
     */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            0 | ''                  | , "attack": "20ms", "release": "250ms", "floor": 0
            0 | , "attack": "1b"    | , "attack": "500ms"
            2 | , "attack": "1b"    | , "attack": "1s"
            2 | , "release": "2b"   | , "release": "2s"
            """)
    void smoothsByTimesFromTheStartOfTheCue(int startSecond, String written, String meant) {
        String low = "\"follow\": \"low\", \"from\": 0, \"to\": 1";
        assertThat(print(sound(low + written, startSecond))).isEqualTo(print(sound(low + meant, startSecond)));
        assertThat(print(sound(low + written, startSecond)))
                .isNotEqualTo(print(sound(low + ", \"attack\": \"1ms\"", startSecond)))
                .isNotEqualTo(print(sound(low + ", \"release\": \"1ms\"", startSecond)))
                .isNotEqualTo(print(sound(low + written + ", \"floor\": 0.5", startSecond)));
    }

    private static String print(NumberTrack track) {
        return new FingerprintWriter("test").value(track).finish().hex();
    }

    /** With an error there is no track, whether it is in the word, a number or a time. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "\"follow\": \"low\", \"from\": 0, \"to\": 1, \"attack\": \"soon\"",
                "\"follow\": \"low\", \"from\": 0, \"to\": 1, \"floor\": 7",
                "\"follow\": \"low\", \"from\": 0",
                "\"follow\": \"loww\", \"from\": 0, \"to\": 1",
                "\"follow\": \"beat\", \"from\": 0, \"to\": 1, \"attack\": \"1s\""
            })
    void readsNothingWhereSomethingIsWrong(String value) {
        assertThat(read(SOUND, value, 0)).isEmpty();
        assertThat(problems.errorCount()).isEqualTo(1);
    }

    /** A curve takes megabytes for an hour of sound: those who follow alike follow the same. */
    @Test
    void curvesAreSharedByBandAndSmoothing() {
        CurveBook book = book(show(SOUND));
        CurveBook.Smoothing slow = new CurveBook.Smoothing(0.1, ExactTime.ofSeconds(1), ExactTime.ofSeconds(2));
        LevelCurve low = book.ofSound(SoundBand.LOW, slow).orElseThrow();
        assertThat(book.hasSound()).isTrue();
        assertThat(book.ofSound(SoundBand.LOW, slow)).containsSame(low);
        assertThat(book.ofSound(SoundBand.ALL, slow).orElseThrow()).isNotSameAs(low);
        CurveBook.Smoothing steep = new CurveBook.Smoothing(0.1, ExactTime.ZERO, ExactTime.ofSeconds(2));
        assertThat(book.ofSound(SoundBand.LOW, steep).orElseThrow()).isNotSameAs(low);
    }

    @Test
    void withoutMusicThereIsNothingToFollow() {
        CurveBook book = book(show("\"layers\": []"));
        assertThat(book.hasSound()).isFalse();
        assertThat(book.ofBeats()).isEmpty();
        assertThat(book.ofSound(SoundBand.LOW, new CurveBook.Smoothing(0, ExactTime.ZERO, ExactTime.ZERO)))
                .isEmpty();
    }
}
