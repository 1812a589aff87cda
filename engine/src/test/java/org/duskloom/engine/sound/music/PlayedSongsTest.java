package org.duskloom.engine.sound.music;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.sound.SoundStream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Songs played from MIDI by fluidsynth with the sounds of fluid-soundfont-gm: instruments that nothing was fitted to.
 * Where aubiotrack is installed, it is asked about the same files.
 */
class PlayedSongsTest {
    private static final Path SOUNDS = Path.of("/usr/share/sounds/sf2/FluidR3_GM.sf2");
    private static final int KICK = 36;
    private static final int SNARE = 38;
    private static final int HAT = 42;
    private static final int RIDE = 51;

    @TempDir
    Path folder;

    /** A song by its name. */
    private record Played(String name, MidiSong song) {}

    @Test
    void findsTheBeatsOfPlayedSongs() throws IOException, InterruptedException {
        if (!Files.exists(SOUNDS) || !runs("fluidsynth", "--version")) {
            System.err.println("SKIPPED: fluidsynth or fluid-soundfont-gm is not installed");
            Assumptions.abort("fluidsynth or fluid-soundfont-gm is not installed");
        }
        boolean judge = runs("aubiotrack", "-h");
        double ours = 0;
        double theirs = 0;
        List<Played> songs = songs();
        for (Played played : songs) {
            Path wav = played(played);
            double f = BeatScore.of(heard(wav), played.song.truth());
            assertThat(f).as(played.name).isGreaterThanOrEqualTo(0.9);
            ours += f / songs.size();
            theirs += judge ? BeatScore.of(judged(wav), played.song.truth()) / songs.size() : 0;
        }
        assertThat(ours).isGreaterThanOrEqualTo(0.97).isGreaterThanOrEqualTo(theirs);
    }

    private static List<Played> songs() {
        List<Played> songs = new ArrayList<>();
        songs.add(made("rock", 104, 56, song -> {
            drums(song, 56);
            chords(song.instrument(0, 29), 56, 4, 1, 55);
            bass(song.instrument(1, 33), 56, 4);
        }));
        songs.add(made("dance", 126, 64, song -> {
            for (int i = 0; i < 64; i++) {
                song.drum(i, KICK, 120);
                song.drum(i + 0.5, 46, 70);
            }
            bass(song.instrument(1, 38), 64, 4);
            chords(song.instrument(0, 81), 64, 4, 1, 50);
        }));
        songs.add(made("waltz of an accordion", 138, 66, song -> {
            chords(song.instrument(0, 21), 66, 3, 3, 80);
            bass(song.instrument(1, 32), 66, 3);
        }));
        songs.add(made("piano alone", 88, 48, song -> chords(song.instrument(0, 0), 48, 4, 1, 80)));
        songs.add(made("swing", 140, 72, song -> {
            for (int i = 0; i < 72; i++) {
                song.drum(i, RIDE, 90);
                if (i % 2 == 1) {
                    song.drum(i, 44, 80);
                    song.drum(i + 2 / 3.0, RIDE, 70);
                }
                song.note(1, i, 0.9, 36 + new int[] {0, 4, 7, 9}[i % 4], 100);
            }
            song.instrument(1, 32);
            chords(song.instrument(0, 0), 72, 4, 2, 50);
        }));
        songs.add(made("guitar, picked", 96, 52, song -> {
            Random random = new Random(8);
            song.instrument(0, 24);
            for (int i = 0; i < 52; i++) {
                song.note(0, i, 1, 48 + 2 * random.nextInt(4), i % 4 == 0 ? 100 : 80);
                song.note(0, i + 0.5, 0.5, 60 + 2 * random.nextInt(5), 55);
            }
        }));
        return songs;
    }

    private static Played made(String name, double tempo, int beats, Consumer<MidiSong> score) {
        MidiSong song = new MidiSong(tempo, beats);
        score.accept(song);
        return new Played(name, song);
    }

    private static void drums(MidiSong song, int beats) {
        for (int i = 0; i < beats; i++) {
            song.drum(i, i % 2 == 0 ? KICK : SNARE, 110);
            song.drum(i, HAT, 80);
            song.drum(i + 0.5, HAT, 60);
        }
    }

    /** On every so-manyth beat, or on all but the first of a bar of three. */
    private static void chords(MidiSong song, int beats, int bar, int each, int velocity) {
        int[] roots = {57, 53, 60, 55};
        for (int i = 0; i < beats; i++) {
            boolean plays = bar == 3 ? i % 3 != 0 : i % each == 0;
            int root = roots[i / bar % roots.length];
            for (int step : plays ? new int[] {0, 4, 7} : new int[0]) {
                song.note(0, i, 0.8, root + step, velocity + (i % bar == 0 ? 15 : 0));
            }
        }
    }

    private static void bass(MidiSong song, int beats, int bar) {
        int[] roots = {45, 41, 48, 43};
        for (int i = 0; i < beats; i += bar == 3 ? 3 : 1) {
            song.note(1, i, 0.9, roots[i / bar % roots.length] - 12, 100);
        }
    }

    private Path played(Played played) throws IOException, InterruptedException {
        Path midi = Files.write(folder.resolve("song.mid"), played.song.bytes());
        Path wav = folder.resolve("song.wav");
        assertThat(runs(
                        "fluidsynth",
                        "-ni",
                        "-q",
                        "-r",
                        "44100",
                        "-g",
                        "0.5",
                        "-F",
                        wav.toString(),
                        SOUNDS.toString(),
                        midi.toString()))
                .isTrue();
        return wav;
    }

    private static List<Double> heard(Path wav) throws IOException {
        try (SoundStream sound =
                SoundStream.open(wav, "song.wav", new Problems()).orElseThrow()) {
            SongListener listener = new SongListener(sound.format(), Wishes.NONE);
            double[][] block = new double[sound.format().channels()][4096];
            for (int count = sound.read(block); count > 0; count = sound.read(block)) {
                listener.take(block, count);
            }
            return SongListenerTest.beats(listener.finish());
        }
    }

    private static List<Double> judged(Path wav) throws IOException {
        Process process = new ProcessBuilder("aubiotrack", wav.toString())
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        try (Stream<String> lines = new String(process.getInputStream().readAllBytes()).lines()) {
            return lines.map(String::strip)
                    .filter(line -> line.matches("[0-9.]+"))
                    .map(Double::valueOf)
                    .toList();
        }
    }

    private static boolean runs(String... command) throws InterruptedException {
        try {
            Process process = new ProcessBuilder(command)
                    .redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .start();
            return process.waitFor(60, TimeUnit.SECONDS) && process.exitValue() == 0;
        } catch (IOException notThere) {
            return false;
        }
    }
}
