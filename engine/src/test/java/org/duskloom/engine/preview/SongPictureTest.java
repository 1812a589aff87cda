package org.duskloom.engine.preview;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import org.duskloom.engine.sound.LevelMeter;
import org.duskloom.engine.sound.SoundFormat;
import org.duskloom.engine.sound.SoundLevels;
import org.duskloom.engine.sound.music.Section;
import org.duskloom.engine.sound.music.Song;
import org.junit.jupiter.api.Test;

/** Read back by its colours. */
class SongPictureTest {
    private static final int RATE = 8_000;
    private static final int LOW = 0xE0704A;
    private static final int HIGH = 0x5AA9D6;
    private static final int LEFT = 84;
    private static final int COLUMNS = 1600 - 24 - LEFT;

    /** A deep tone from 2 s to 4 s of ten. */
    private static SoundLevels levels(double seconds) {
        LevelMeter meter = new LevelMeter(new SoundFormat("WAV", 1, RATE, "", 0, OptionalLong.empty()));
        double[][] second = new double[1][RATE];
        for (int from = 0; from < seconds; from++) {
            for (int i = 0; i < RATE; i++) {
                second[0][i] = from == 2 || from == 3 ? 0.5 * Math.sin(2 * Math.PI * 60 * i / RATE) : 0;
            }
            meter.take(second, RATE);
        }
        return meter.levels();
    }

    private static Song song(double seconds) {
        List<Song.Beat> beats = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            beats.add(new Song.Beat(1 + i, i % 4 == 0));
        }
        Song.Pulse pulse = new Song.Pulse(beats, 60, 1, false, OptionalDouble.empty(), 1, 4, 1, List.of());
        List<Section> sections = List.of(new Section("A", 0, 5, 1), new Section("B", 5, seconds, 1));
        return new Song(levels(seconds), Optional.of(pulse), sections);
    }

    private static int x(double second, double rowSeconds) {
        return LEFT + (int) Math.floor(second / rowSeconds * COLUMNS);
    }

    /** How many dots of a colour a column has. */
    private static int dots(Raster raster, int x, int colour) {
        int count = 0;
        for (int y = 0; y < raster.height(); y++) {
            count += raster.colourAt(x, y) == colour ? 1 : 0;
        }
        return count;
    }

    @Test
    void curvesStandWhereTheSoundIs() {
        Raster raster = SongPicture.draw(song(10), "song.wav", "");
        assertThat(dots(raster, x(3.03, 10), LOW)).isGreaterThan(30);
        assertThat(dots(raster, x(3.03, 10), HIGH)).isZero();
        assertThat(dots(raster, x(1.03, 10), LOW)).isZero();
        assertThat(dots(raster, x(4.53, 10), LOW)).isZero();
    }

    @Test
    void strokesStandAtBeatsAndLongOnesAtBars() {
        Raster raster = SongPicture.draw(song(10), "song.wav", "");
        for (int beat = 0; beat < 8; beat++) {
            int x = x(1 + beat, 10);
            int more = dots(raster, x, Ink.TEXT) - dots(raster, x - 2, Ink.TEXT);
            assertThat(more).as("beat %s", beat).isEqualTo(beat % 4 == 0 ? 9 : 0);
        }
        assertThat(dots(raster, x(2, 10), Ink.QUIET)).isGreaterThanOrEqualTo(4);
        Song without = new Song(levels(10), Optional.empty(), List.of());
        assertThat(dots(SongPicture.draw(without, "song.wav", ""), x(5, 10), Ink.TEXT))
                .isZero();
    }

    @Test
    void sectionsHaveGroundsOfTheirOwn() {
        Raster raster = SongPicture.draw(song(10), "song.wav", "");
        assertThat(dots(raster, x(3, 10), 0x2A3350)).isEqualTo(14);
        assertThat(dots(raster, x(3, 10), 0x3A2A4A)).isZero();
        assertThat(dots(raster, x(8.6, 10), 0x3A2A4A)).isEqualTo(14);
    }

    /** A row is a minute; of hours there are forty rows of more. */
    @Test
    void longSongsTakeMoreRows() {
        int one = SongPicture.draw(song(59), "song.wav", "").height();
        int two = SongPicture.draw(song(61), "song.wav", "").height();
        int many = SongPicture.draw(song(2_500), "song.wav", "").height();
        assertThat(many - one).isEqualTo(39 * (two - one));
    }

    @Test
    void aSongOfNoLengthIsDrawn() {
        LevelMeter meter = new LevelMeter(new SoundFormat("WAV", 1, RATE, "", 0, OptionalLong.empty()));
        meter.take(new double[][] {{0.5}}, 1);
        Song song = new Song(meter.levels(), Optional.empty(), List.of(new Section("A", 0, 1.0 / RATE, 1)));
        assertThat(SongPicture.draw(song, "x".repeat(400), "y".repeat(400)).width())
                .isEqualTo(1600);
    }
}
