package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ListenCommandTest {
    private static final Path EVENING = Path.of("../demos/evening/evening.wav");

    @TempDir
    Path folder;

    /** 112 beats a minute from 0.5 s, a verse of eight bars and a chorus: as the notes of the music have it. */
    @Test
    void findsTheEveningsBeatsAndSections() throws IOException {
        Path track = folder.resolve("evening.txt");
        Ran ran = Ran.with("listen", EVENING.toString(), "-o", track.toString());
        assertThat(ran.code()).isZero();
        assertThat(ran.out().lines().map(String::strip))
                .contains("length    31.5 s", "sections  a guess: A at 0.5 s, B at 17.64 s (the clearest change)")
                .anyMatch(line -> line.matches("tempo +112\\.0 beats a minute, sure \\(\\d+ %\\)"))
                .anyMatch(line -> line.matches("bars +14 bars of 4 beats, sure \\(\\d+ %\\)"));
        assertThat(ran.err()).contains("evening.txt and ").contains("evening.png written");
        assertThat(Files.readString(track)).isEqualTo(Files.readString(Path.of("../demos/evening/evening.txt")));
        assertThat(ImageIO.read(folder.resolve("evening.png").toFile()).getWidth())
                .isEqualTo(1600);
    }

    /** As with a track that is written, and nothing else; every click is like every other. */
    @Test
    void onlyTellsWhereNoTrackIsNamed() throws IOException {
        Path song = beaten();
        Ran told = Ran.with("listen", song.toString());
        assertThat(told.code()).isZero();
        assertThat(told.out()).startsWith("length ").contains("; no clear change was found");
        assertThat(told.err()).contains("nothing is written; -o song.txt writes beats, bars and sections");
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files).containsExactly(song);
        }
        Ran written = Ran.with(
                "listen", song.toString(), "-o", folder.resolve("song.txt").toString());
        assertThat(written.out()).isEqualTo(told.out());
    }

    @Test
    void writesOverNothingUnlessForced() throws IOException {
        Path track = Files.writeString(folder.resolve("song.txt"), "mine");
        Path song = beaten();
        Ran refused = Ran.with("listen", song.toString(), "-o", track.toString());
        assertThat(refused.code()).isEqualTo(1);
        assertThat(refused.err()).contains("song.txt exists already").contains("--force");
        assertThat(track).hasContent("mine");
        assertThat(folder.resolve("song.png")).doesNotExist();
        Ran forced = Ran.with("listen", song.toString(), "-o", track.toString(), "--force");
        assertThat(forced.code()).isZero();
        // Every click is like every other.
        assertThat(forced.out()).contains("bars      not clear, so none is marked; --bar says");
        assertThat(Files.readString(track)).contains("\tbeat\n").doesNotContain("\tbar\n");
    }

    @Test
    void neverWritesOverTheSong() throws IOException {
        Path song = beaten();
        byte[] before = Files.readAllBytes(song);
        assertThat(Ran.with("listen", song.toString(), "-o", song.toString(), "--force")
                        .code())
                .isEqualTo(1);
        assertThat(Files.readAllBytes(song)).isEqualTo(before);
    }

    /** Names after the command are easily mixed up; that another song goes cannot be meant. */
    @Test
    void neverWritesOverAnotherSong() throws IOException {
        Path song = beaten();
        Path other = Files.writeString(folder.resolve("other.FLAC"), "mine");
        Ran ran = Ran.with("listen", song.toString(), "-o", other.toString(), "--force");
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err())
                .contains("other.FLAC has the name of a sound; -o names the label track, a text such as ")
                .contains(folder.resolve("other.txt").toString());
        assertThat(other).hasContent("mine");
        assertThat(folder.resolve("other.png")).doesNotExist();
    }

    /** A first beat that is none makes another tempo fit best: what the song says without it is told beside it. */
    @Test
    void whatIsToldAndDoesNotFitIsNotCalledSure() {
        assertThat(toldOfTheEvening("--first", "350ms"))
                .containsPattern("tempo +\\d+\\.\\d beats a minute, by what was told; by the song alone 112\\.0\n");
        assertThat(toldOfTheEvening("--tempo", "60..80")).contains(", by what was told; by the song alone 112.");
        assertThat(toldOfTheEvening("--first", "500ms")).containsPattern("tempo +112\\.0 beats a minute, sure");
        assertThat(toldOfTheEvening("--tempo", "112")).contains("112.0 beats a minute, as told\n");
    }

    private String toldOfTheEvening(String option, String value) {
        return Ran.with("listen", EVENING, "-o", folder.resolve("evening.txt"), "--force", option, value)
                .out();
    }

    /** A pipe, as ffmpeg fills it: the track is the same as that of the file, and so is what is said. */
    @Test
    void readsTheStandardInput() throws Exception {
        Path song = beaten();
        byte[] bytes = Files.readAllBytes(song);
        for (int at : new int[] {4, 40}) {
            ByteBuffer.wrap(bytes).putInt(at, -1);
        }
        Path piped = Files.write(folder.resolve("piped.wav"), bytes);
        Path track = folder.resolve("piped.txt");
        Process listening = ProgramProcess.of("listen", "-", "-o", track)
                .redirectInput(piped.toFile())
                .redirectOutput(folder.resolve("said").toFile())
                .redirectError(folder.resolve("told").toFile())
                .start();
        assertThat(listening.waitFor(2, TimeUnit.MINUTES)).isTrue();
        assertThat(listening.exitValue()).isZero();
        Ran ran = Ran.with(
                "listen", song.toString(), "-o", folder.resolve("song.txt").toString());
        assertThat(track).hasSameTextualContentAs(folder.resolve("song.txt"));
        assertThat(folder.resolve("piped.png")).exists();
        assertThat(Files.readString(folder.resolve("said"))).isEqualTo(ran.out());
    }

    /** Nothing comes through the pipe. */
    @Test
    void refusesAnEmptyStandardInput() throws Exception {
        Process listening = ProgramProcess.of("listen", "-", "-o", folder.resolve("song.txt"))
                .redirectInput(Files.createFile(folder.resolve("nothing")).toFile())
                .redirectError(folder.resolve("told").toFile())
                .start();
        assertThat(listening.waitFor(2, TimeUnit.MINUTES)).isTrue();
        assertThat(listening.exitValue()).isEqualTo(3);
        assertThat(Files.readString(folder.resolve("told")))
                .contains("standard input: error: the file is empty; save the song once more");
        assertThat(folder.resolve("song.txt")).doesNotExist();
    }

    @Test
    void takesWhatIsKnown() throws IOException {
        Path track = folder.resolve("a.txt");
        Ran ran = Ran.with(
                "listen",
                beaten().toString(),
                "-o",
                track.toString(),
                "--tempo",
                "50..70",
                "--first",
                "500ms",
                "--bar",
                "3");
        assertThat(ran.out()).contains("tempo     60.0 beats a minute").contains("bars of 3 beats");
        assertThat(Files.readString(track))
                .contains("0.500000\t0.500000\tbar\n")
                .doesNotContain("\n0.000000\t0.0000");
    }

    /** What was told is not called sure; how sure it is where nothing goes along with it is said. */
    @Test
    void saysThatATempoIsAsTold() throws IOException {
        Path drone = wav("drone.wav", 20, t -> 0.5 * Math.sin(2 * Math.PI * 110 * t));
        for (Path song : new Path[] {beaten(), drone}) {
            Path track = folder.resolve(song.getFileName() + ".txt");
            Ran ran = Ran.with("listen", song.toString(), "-o", track.toString(), "--tempo", "120");
            assertThat(ran.out())
                    .containsPattern("tempo     1(19|2[01])\\.\\d beats a minute, as told"
                            + (song.equals(drone) ? ", though hardly anything in the song repeats so\n" : "\n"));
        }
    }

    /** Nobody claps to noise: the sections are written, and the word is said. */
    @Test
    void saysThatThereIsNoSteadyBeat() throws IOException {
        long[] state = {88_172_645_463_325_252L};
        Path song = wav("noise.wav", 20, t -> {
            state[0] ^= state[0] << 13;
            state[0] ^= state[0] >>> 7;
            state[0] ^= state[0] << 17;
            return 0.2 * state[0] / Long.MAX_VALUE;
        });
        Path track = folder.resolve("noise.txt");
        Ran ran = Ran.with("listen", song.toString(), "-o", track.toString());
        assertThat(ran.code()).isZero();
        assertThat(ran.out()).contains("beats     no steady beat was found");
        assertThat(Files.readString(track)).doesNotContain("beat").contains("\tA\n");
        assertThat(folder.resolve("noise.png")).exists();
    }

    @Test
    void refusesAFirstBeatAfterTheEnd() throws IOException {
        Path track = folder.resolve("late.txt");
        Ran ran = Ran.with("listen", beaten().toString(), "-o", track.toString(), "--first", "2:00");
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("--first is 2:00, after the end of the song, which lasts ");
        assertThat(track).doesNotExist();
    }

    @Test
    void refusesSilence() throws IOException {
        Path track = folder.resolve("silence.txt");
        Ran ran = Ran.with("listen", wav("silence.wav", 3, t -> 0).toString(), "-o", track.toString());
        assertThat(ran.code()).isEqualTo(3);
        assertThat(ran.err()).contains("silence.wav: error: is silent throughout; is this the right file?");
        assertThat(track).doesNotExist();
        assertThat(folder.resolve("silence.png")).doesNotExist();
    }

    @Test
    void namesTheCommandThatConverts() throws IOException {
        Path song = Files.writeString(folder.resolve("song.mp3"), "ID3 and so on");
        Ran ran = Ran.with(
                "listen", song.toString(), "-o", folder.resolve("song.txt").toString());
        assertThat(ran.code()).isEqualTo(3);
        assertThat(ran.err())
                .contains("is an MP3 file")
                .contains("ffmpeg -i " + song + " " + folder.resolve("song.wav"));
        assertThat(folder.resolve("song.txt")).doesNotExist();
    }

    @ParameterizedTest
    @CsvSource({
        "--tempo, fast, '--tempo is fast; beats a minute are needed, such as 120 or 60..90'",
        "--tempo, '60,5..90', 'needed, such as 120 or 60..90; the decimal sign is a dot'",
        "--tempo, 90..60, '--tempo is 90..60; allowed: 30 to 300, the slower first'",
        "--tempo, 10, '--tempo is 10; allowed: 30 to 300, the slower first'",
        "--bar, 1, '--bar is 1; allowed: 2 to 12'",
        "--first, soon, --first: ",
        "--first, 1b, '--first is 1b, but the beats are yet to be found; write it in seconds or milliseconds, such as'"
    })
    void refusesWhatCannotBe(String option, String value, String said) {
        Ran ran = Ran.with("listen", "song.wav", "-o", "song.txt", option, value);
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains(said);
    }

    @Test
    void theTrackIsNoPicture() {
        Ran ran = Ran.with("listen", "song.wav", "-o", "song.png");
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("-o names the label track");
    }

    /** A click every half second. */
    private Path beaten() throws IOException {
        return wav("beaten.wav", 16, t -> {
            double since = t % 0.5;
            return since < 0.05 ? Math.sin(2 * Math.PI * 800 * since) * (1 - since / 0.05) : 0;
        });
    }

    private Path wav(String name, double seconds, DoubleUnaryOperator sample) throws IOException {
        return Files.write(folder.resolve(name), WavFile.of(seconds, second -> 30_000 * sample.applyAsDouble(second)));
    }
}
