package org.duskloom.engine.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.StringJoiner;
import org.duskloom.engine.map.Part;

/** Which colour a pixel has by its outermost part, and the legend that says so. */
final class PartColors {
    private static final int MOST_NAMES = 12;

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

    List<Entry> entries() {
        List<Entry> entries = new ArrayList<>();
        for (int k = 0; k < parts.size(); k++) {
            entries.add(new Entry(words(parts.get(k)), SheetColors.part(k)));
        }
        return entries;
    }

    private static String words(Part part) {
        int inside = part.children().size();
        String children = inside == 0 ? "" : "; in " + inside + " parts: " + names(part.children());
        return part.name() + ": " + PixelRangeText.of(part.pixels()) + children;
    }

    private static String names(List<Part> children) {
        StringJoiner names = new StringJoiner(", ");
        int shown = Math.min(MOST_NAMES, children.size());
        children.subList(0, shown).forEach(child -> names.add(child.name()));
        return shown < children.size() ? names + ", ..." : names.toString();
    }
}
