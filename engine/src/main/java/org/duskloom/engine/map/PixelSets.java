package org.duskloom.engine.map;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;

/** Some pixels of a prop in words. */
public final class PixelSets {
    private PixelSets() {}

    /**
     * Finds the outermost parts of which all pixels are in the set, and takes their pixels out of it.
     *
     * @param pixels numbers within the prop, from 0
     * @return paths, such as {@code petals/3}
     */
    public static List<String> takeParts(Prop prop, BitSet pixels) {
        List<String> paths = new ArrayList<>();
        takeParts(prop.parts(), "", pixels, paths);
        return paths;
    }

    private static void takeParts(List<Part> parts, String within, BitSet set, List<String> paths) {
        BitSet all = (BitSet) set.clone();
        for (Part part : parts) {
            int[] pixels = part.pixels();
            if (Arrays.stream(pixels).allMatch(all::get)) {
                if (Arrays.stream(pixels).anyMatch(set::get)) {
                    paths.add(within + part.name());
                    Arrays.stream(pixels).forEach(set::clear);
                }
            } else {
                takeParts(part.children(), within + part.name() + "/", set, paths);
            }
        }
    }

    /** {@code 1, 4-5}, counted from 1; dots stand for what is beyond so many ranges. */
    public static String ranges(BitSet pixels, int mostRanges) {
        List<String> ranges = new ArrayList<>();
        for (int first = pixels.nextSetBit(0); first >= 0; ) {
            int end = pixels.nextClearBit(first);
            ranges.add(end == first + 1 ? String.valueOf(end) : (first + 1) + "-" + end);
            first = pixels.nextSetBit(end);
        }
        String shown = String.join(", ", ranges.subList(0, Math.min(mostRanges, ranges.size())));
        return shown + (ranges.size() > mostRanges ? ", ..." : "");
    }
}
