package org.duskloom.effects.kit;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.duskloom.engine.color.LinearColor;
import org.duskloom.engine.color.Palette;
import org.duskloom.engine.effect.ColorTracks;
import org.duskloom.engine.effect.PaletteTrack;

/**
 * What the ramps of a moving palette share. The palettes of all keys are cut where any of them has a stop, so that a piece is one
 * mix of two colours in each of them, and all of them have tables of one size.
 *
 * @param places where a place lies in the tables
 * @param intervals of the table of each piece
 * @param entries the colours of all entries of all tables, one after the other
 * @param opaque whether they are opaque at all times
 */
record MovingTables(TablePlaces places, int[] intervals, ColorTracks entries, boolean opaque) {
    /** At other shares than those looked at a colour may bend more sharply. */
    private static final int MARGIN = 2;

    private static final double[] SHARES_LOOKED_AT = {0.25, 0.5, 0.75};

    static MovingTables of(PaletteTrack track) {
        List<PalettePiece> cuts = PalettePiece.of(track.palettes());
        int[] intervals = cuts.stream().mapToInt(cut -> intervals(cut, track)).toArray();
        return new MovingTables(
                new TablePlaces(cuts, intervals),
                intervals,
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

    /** As many as the palette of any key needs, and its mixes with the next. */
    private static int intervals(PalettePiece cut, PaletteTrack track) {
        List<PalettePiece> own = track.palettes().stream().map(cut::ofPalette).toList();
        int most = own.stream().mapToInt(TableRamp::intervals).max().orElseThrow();
        for (int key = 1; key < own.size() && cut.width() > 0; key++) {
            PalettePiece from = own.get(key - 1);
            PalettePiece to = own.get(key);
            for (double share : SHARES_LOOKED_AT) {
                int needed = TablePlaces.intervals(place -> track.mix().mix(from.at(place), to.at(place), share));
                most = Math.max(most, MARGIN * needed);
            }
        }
        return most;
    }
}
