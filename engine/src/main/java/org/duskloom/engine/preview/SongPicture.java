package org.duskloom.engine.preview;

import java.util.List;
import org.duskloom.engine.font.PixelFont;
import org.duskloom.engine.sound.SoundBand;
import org.duskloom.engine.sound.SoundLevels;
import org.duskloom.engine.sound.music.Section;
import org.duskloom.engine.sound.music.Song;

/**
 * A song as a picture, in rows of a minute or more: its sections with their names, loudness and three bands as they are
 * mapped for lights, beats as short strokes, bars as long ones with their numbers, and the time.
 */
public final class SongPicture {
    private static final int WIDTH = 1600;
    private static final int MOST_ROWS = 40;
    private static final double SHORTEST_ROW_SECONDS = 60;
    private static final int NAMES_WIDTH = 60;
    private static final int TRACK_HEIGHT = 34;
    private static final int TRACK_GAP = 4;
    private static final int BEAT_HEIGHT = 20;
    private static final int NAME_HEIGHT = 18;
    private static final int TIME_HEIGHT = 22;
    private static final int ROW_GAP = 20;
    private static final int HEAD = StripLayout.PADDING + StripLayout.TITLE_SCALE * PixelFont.CAPITAL_ROWS + 20;
    private static final int TRACKS = 4 * (TRACK_HEIGHT + TRACK_GAP);
    private static final int ROW = NAME_HEIGHT + TRACKS + BEAT_HEIGHT + TIME_HEIGHT + ROW_GAP;
    private static final int BARS_NUMBERED = 4;
    private static final int[] SECTION_GROUNDS = {0x2A3350, 0x3A2A4A, 0x24423C, 0x4A3A26, 0x472B33, 0x2B4254};
    private static final int[] CURVES = {0xC9CFDB, 0xE0704A, 0x7FB069, 0x5AA9D6};
    private static final List<String> NAMES = List.of("all", "low", "mid", "high");

    private final Raster raster;
    private final Song song;
    private final double rowSeconds;

    private SongPicture(Raster raster, Song song, double rowSeconds) {
        this.raster = raster;
        this.song = song;
        this.rowSeconds = rowSeconds;
    }

    /**
     * Draws it.
     *
     * @param title of the song
     * @param detail what is read second, such as its tempo
     */
    public static Raster draw(Song song, String title, String detail) {
        double seconds = Math.max(1e-3, song.levels().seconds());
        double rowSeconds =
                Math.max(Math.min(SHORTEST_ROW_SECONDS, Math.max(seconds, 1)), Math.ceil(seconds / MOST_ROWS));
        int rows = (int) Math.max(1, Math.ceil(seconds / rowSeconds));
        Raster raster = new Raster(WIDTH, HEAD + rows * ROW, Ink.SHEET);
        int room = WIDTH - 2 * StripLayout.PADDING;
        Heading.draw(raster, StripLayout.PADDING, StripLayout.PADDING, room, title, detail);
        SongPicture picture = new SongPicture(raster, song, rowSeconds);
        for (int row = 0; row < rows; row++) {
            picture.row(row);
        }
        return raster;
    }

    private static int left() {
        return StripLayout.PADDING + NAMES_WIDTH;
    }

    private static int columns() {
        return WIDTH - StripLayout.PADDING - left();
    }

    private void row(int row) {
        double from = row * rowSeconds;
        int top = HEAD + row * ROW;
        int tracks = top + NAME_HEIGHT;
        for (int i = 0; i < NAMES.size(); i++) {
            int y = tracks + i * (TRACK_HEIGHT + TRACK_GAP);
            raster.rectangle(left(), y, columns(), TRACK_HEIGHT, Ink.NIGHT);
            raster.text(NAMES.get(i), StripLayout.PADDING, y + TRACK_HEIGHT / 2 - 4, 1, Ink.QUIET);
        }
        sections(from, top);
        for (SoundBand band : SoundBand.values()) {
            curve(band, from, tracks + band.ordinal() * (TRACK_HEIGHT + TRACK_GAP));
        }
        int below = tracks + TRACKS;
        song.pulse().ifPresent(pulse -> beats(pulse.beats(), from, tracks, below));
        times(from, below + BEAT_HEIGHT);
    }

    private void sections(double from, int top) {
        int after = Integer.MIN_VALUE;
        for (Section section : song.sections()) {
            int start = Math.max(left(), x(section.startSeconds(), from));
            int end = Math.min(left() + columns(), x(section.endSeconds(), from));
            if (end > start) {
                int ground = SECTION_GROUNDS[Math.floorMod(section.name().charAt(0) - 'A', SECTION_GROUNDS.length)];
                raster.rectangle(start, top, end - start - 1, NAME_HEIGHT - 4, ground);
                if (start > after) {
                    String name = PixelFont.standard().fitted(section.name(), end - start - 8);
                    raster.text(name, start + 4, top + 4, 1, Ink.TEXT);
                    after = start + PixelFont.standard().width(name);
                }
            }
        }
    }

    /** In each column the highest level that falls into it. */
    private void curve(SoundBand band, double from, int top) {
        SoundLevels levels = song.levels();
        double stepsPerColumn = rowSeconds * SoundLevels.STEPS_PER_SECOND / columns();
        double first = from * SoundLevels.STEPS_PER_SECOND;
        for (int column = 0; column < columns(); column++) {
            int step = (int) Math.floor(first + column * stepsPerColumn);
            int end = Math.max(step + 1, (int) Math.floor(first + (column + 1) * stepsPerColumn));
            double most = 0;
            for (; step < end; step++) {
                most = Math.max(most, levels.value(band, step));
            }
            int height = (int) Math.round(most * TRACK_HEIGHT);
            raster.rectangle(left() + column, top + TRACK_HEIGHT - height, 1, height, CURVES[band.ordinal()]);
        }
    }

    private void beats(List<Song.Beat> beats, double from, int tracks, int below) {
        int bar = 0;
        int after = Integer.MIN_VALUE;
        for (Song.Beat beat : beats) {
            bar += beat.startsBar() ? 1 : 0;
            int x = x(beat.seconds(), from);
            if (x < left() || x >= left() + columns()) {
                continue;
            }
            raster.rectangle(x, below, 1, beat.startsBar() ? 9 : 4, beat.startsBar() ? Ink.TEXT : Ink.QUIET);
            if (beat.startsBar()) {
                raster.rectangle(x, tracks - 3, 1, 3, Ink.QUIET);
                if (bar % BARS_NUMBERED == 1 && x > after) {
                    String number = Integer.toString(bar);
                    raster.text(number, x + 3, below + 5, 1, Ink.TEXT);
                    after = x + 8 + PixelFont.standard().width(number);
                }
            }
        }
    }

    private void times(double from, int top) {
        double step = rowSeconds <= 12 ? 1 : rowSeconds <= SHORTEST_ROW_SECONDS ? 5 : 10;
        for (double t = Math.ceil(from / step) * step;
                t < from + rowSeconds && t <= song.levels().seconds();
                t += step) {
            int x = x(t, from);
            raster.rectangle(x, top, 1, 4, Ink.RULE);
            raster.text(TimeLabel.of(t), x + 3, top + 3, 1, Ink.QUIET);
        }
    }

    private int x(double seconds, double from) {
        return left() + (int) Math.floor((seconds - from) / rowSeconds * columns());
    }
}
