package org.duskloom.engine.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.duskloom.engine.map.Part;
import org.duskloom.engine.text.Counted;

/** Which colour a pixel has by its outermost part, and the legend that says so. */
final class PartColors {
    private static final int MOST_ENTRIES = 120;

    private final int[] color;
    /** Of the second part that a pixel is in; what {@link #color} is where there is none. */
    private final int[] innerColor;

    private final List<Part> parts;

    /** A line of the legend. */
    record Entry(String words, int color) {}

    PartColors(List<Part> parts, int pixels) {
        this.parts = parts;
        color = new int[pixels];
        innerColor = new int[pixels];
        Arrays.fill(color, SheetColors.INK);
        Arrays.fill(innerColor, SheetColors.INK);
        // Backward, so that a pixel has the colour of its first part outside and of its second part inside.
        for (int k = parts.size() - 1; k >= 0; k--) {
            for (int pixel : parts.get(k).pixels()) {
                innerColor[pixel] = color[pixel];
                color[pixel] = SheetColors.part(k);
            }
        }
    }

    /** The colour of the first part that the pixel is in. */
    int of(int pixel) {
        return color[pixel];
    }

    /** Whether the pixel is in more parts than one, not counting those inside of others. */
    boolean isShared(int pixel) {
        return innerColor[pixel] != SheetColors.INK;
    }

    /** The colour of the second part that the pixel is in; ink where there is none. */
    int inner(int pixel) {
        return innerColor[pixel];
    }

    /** Every part with its pixels, those inside of others after these; of very many, the first. */
    List<Entry> entries() {
        List<Entry> entries = new ArrayList<>();
        for (int k = 0; k < parts.size(); k++) {
            add(entries, parts.get(k), "", SheetColors.part(k));
        }
        if (entries.size() <= MOST_ENTRIES) {
            return entries;
        }
        int more = entries.size() - MOST_ENTRIES;
        List<Entry> shown = new ArrayList<>(entries.subList(0, MOST_ENTRIES));
        shown.add(new Entry("and " + Counted.of(more, "part") + " more: see parts.csv", SheetColors.QUIET));
        return shown;
    }

    private static void add(List<Entry> entries, Part part, String outer, int color) {
        String path = outer + part.name();
        entries.add(new Entry(path + ": " + PixelRangeText.of(part.pixels()), color));
        part.children().forEach(child -> add(entries, child, path + "/", color));
    }
}
