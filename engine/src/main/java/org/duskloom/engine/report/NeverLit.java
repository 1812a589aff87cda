package org.duskloom.engine.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Objects;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.map.PixelSets;
import org.duskloom.engine.map.Prop;
import org.duskloom.engine.meter.light.PropUse;
import org.duskloom.engine.text.Counted;

/**
 * Pixels of a prop that are dark in every frame.
 *
 * @param prop its name
 * @param count how many
 * @param which the parts that are dark as a whole, and the numbers of the others, from 1
 */
public record NeverLit(String prop, int count, String which) {
    private static final int MOST_RANGES = 12;

    public NeverLit {
        Objects.requireNonNull(prop, "prop");
        Objects.requireNonNull(which, "which");
    }

    /** Of all props that have some. */
    static List<NeverLit> of(PixelMap map, List<PropUse> uses) {
        List<NeverLit> found = new ArrayList<>();
        for (int i = 0; i < uses.size(); i++) {
            int[] dark = uses.get(i).neverLit();
            if (dark.length > 0) {
                found.add(new NeverLit(
                        uses.get(i).prop(), dark.length, which(map.props().get(i), dark)));
            }
        }
        return found;
    }

    private static String which(Prop prop, int[] dark) {
        if (dark.length == prop.pixelCount()) {
            return "all of it";
        }
        BitSet rest = new BitSet();
        Arrays.stream(dark).forEach(rest::set);
        List<String> told = new ArrayList<>();
        PixelSets.takeParts(prop, rest).forEach(part -> told.add("part " + part));
        if (!rest.isEmpty()) {
            told.add(Counted.of(rest.cardinality(), "pixel") + " (" + PixelSets.ranges(rest, MOST_RANGES) + ")");
        }
        return String.join(", ", told);
    }
}
