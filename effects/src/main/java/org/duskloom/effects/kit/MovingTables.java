package org.duskloom.effects.kit;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.duskloom.engine.color.LinearColor;
import org.duskloom.engine.color.Palette;
import org.duskloom.engine.effect.ColorTracks;
import org.duskloom.engine.effect.PaletteTrack;

/**
 * What the ramps of a moving palette share. The palettes of all keys are cut where any of them has a stop, so that a
 * piece is one mix of two colours in each of them, and all of them have tables of one size.
 *
 * <p>The tables come within 1e-4 of the mix of the palettes; within 1e-3 in the one interval where a mix reaches the
 * end of what sRGB can show, and bends there. In OKLCh the shorter way round the hues changes sides where two hues are
 * opposite: a hard edge, drawn one interval wide.
 *
 * @param places where a place lies in the tables
 * @param entries the colours of all entries of all tables, one after the other
 * @param opaque whether they are opaque at all times
 */
record MovingTables(TablePlaces places, ColorTracks entries, boolean opaque) {
    private static final int FEWEST_INTERVALS = 8;

    /** More would take too long in each frame. */
    private static final int MOST_INTERVALS = 256;

    /** At other shares than those looked at a colour may bend more sharply. */
    private static final int MARGIN = 2;

    private static final double[] SHARES_LOOKED_AT = {0, 0.25, 0.5, 0.75, 1};

    static MovingTables of(PaletteTrack track) {
        List<PalettePiece> cuts = PalettePiece.of(track.palettes());
        int[] intervals = cuts.stream().mapToInt(cut -> intervals(cut, track)).toArray();
        return new MovingTables(
                new TablePlaces(cuts, intervals),
                track.picked(palette -> entries(palette, cuts, intervals)),
                track.palettes().stream().allMatch(TableRamp::isOpaque));
    }

    private static List<LinearColor> entries(Palette palette, List<PalettePiece> cuts, int[] intervals) {
        List<LinearColor> entries = new ArrayList<>();
        for (int piece = 0; piece < intervals.length; piece++) {
            PalettePiece own = cuts.get(piece).ofPalette(palette);
            int count = intervals[piece];
            IntStream.rangeClosed(0, count).forEach(entry -> entries.add(own.at((double) entry / count)));
        }
        return entries;
    }

    /** As many as the palettes of all keys and their mixes need. */
    private static int intervals(PalettePiece cut, PaletteTrack track) {
        List<PalettePiece> own = track.palettes().stream().map(cut::ofPalette).toList();
        if (own.stream().allMatch(TableRamp::isEven)) {
            return 1;
        }
        int most = 1;
        for (int key = 1; key < own.size(); key++) {
            PalettePiece from = own.get(key - 1);
            PalettePiece to = own.get(key);
            for (double share : SHARES_LOOKED_AT) {
                int needed = TablePlaces.intervals(
                        place -> track.mix().mix(from.at(place), to.at(place), share),
                        FEWEST_INTERVALS,
                        MOST_INTERVALS);
                most = Math.max(most, MARGIN * needed);
            }
        }
        return most;
    }
}
