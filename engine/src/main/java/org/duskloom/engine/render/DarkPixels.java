package org.duskloom.engine.render;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.map.PixelSets;
import org.duskloom.engine.map.Prop;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.text.Counted;
import org.duskloom.engine.text.Quoted;

/**
 * Says of pixels that are never lit which they are: whole props and whole parts, and single pixels that no cue is
 * played on. Of single pixels among others that an effect is laid over nothing is said: between letters and sparks it
 * is dark. The same of several props is said at once.
 */
final class DarkPixels {
    /** So many ways in which single pixels of props are dark are told one by one. */
    private static final int MOST_TOLD = 3;

    private static final int MOST_RANGES = 6;

    private final PixelMap map;
    private final BitSet lit;
    private final BitSet played;
    private final List<String> wholeProps = new ArrayList<>();
    private final Map<String, List<String>> propsByParts = new LinkedHashMap<>();
    private final Map<String, List<String>> propsByPixels = new LinkedHashMap<>();
    /** How many pixels of each prop are dark beside those of whole parts. */
    private final Map<String, Integer> scattered = new LinkedHashMap<>();

    /**
     * @param lit what is lit at any time
     * @param played what cues are played on
     */
    DarkPixels(PixelMap map, BitSet lit, BitSet played) {
        this.map = map;
        this.played = played;
        this.lit = lit;
    }

    /**
     * Warns of them.
     *
     * @param complete whether all frames that could light them were looked at
     */
    void warn(Location location, boolean complete, Problems problems) {
        map.props().forEach(this::sort);
        String hint = complete ? "" : "not every frame was looked at";
        if (!wholeProps.isEmpty()) {
            problems.warn(location, "no cue ever lights " + Quoted.few(wholeProps), hint);
        }
        propsByParts.forEach((parts, props) ->
                problems.warn(location, "no cue ever lights " + parts + " of " + Quoted.few(props), hint));
        if (propsByPixels.size() <= MOST_TOLD) {
            propsByPixels.forEach((pixels, props) ->
                    problems.warn(location, "no cue is played on " + pixels + " of " + Quoted.few(props), hint));
        } else {
            problems.warn(location, "no cue is played on " + scattered(), hint);
        }
    }

    /** {@code 24 pixels here and there: 8 of "daisy-1", 6 of "daisy-2" and some of 2 more props}. */
    private String scattered() {
        String first = scattered.entrySet().stream()
                .limit(MOST_TOLD)
                .map(entry -> entry.getValue() + " of " + Quoted.of(entry.getKey()))
                .collect(Collectors.joining(", "));
        int all = scattered.values().stream().mapToInt(Integer::intValue).sum();
        int more = scattered.size() - MOST_TOLD;
        return Counted.of(all, "pixel") + " here and there: " + first
                + (more > 0 ? " and some of " + Counted.of(more, "more prop") : "");
    }

    private void sort(Prop prop) {
        BitSet dark = lit.get(prop.firstPixel(), prop.firstPixel() + prop.pixelCount());
        dark.flip(0, prop.pixelCount());
        if (dark.cardinality() == prop.pixelCount()) {
            wholeProps.add(prop.name());
            return;
        }
        List<String> paths = PixelSets.takeParts(prop, dark);
        if (!paths.isEmpty()) {
            String parts = (paths.size() == 1 ? "the part " : "the parts ") + Quoted.few(paths);
            propsByParts.computeIfAbsent(parts, key -> new ArrayList<>()).add(prop.name());
        }
        dark.andNot(played.get(prop.firstPixel(), prop.firstPixel() + prop.pixelCount()));
        if (!dark.isEmpty()) {
            propsByPixels
                    .computeIfAbsent(numbers(dark), key -> new ArrayList<>())
                    .add(prop.name());
            scattered.put(prop.name(), dark.cardinality());
        }
    }

    /** {@code 3 pixels (1, 4-5)}, counted from 1. */
    private static String numbers(BitSet dark) {
        return Counted.of(dark.cardinality(), "pixel") + " (" + PixelSets.ranges(dark, MOST_RANGES) + ")";
    }
}
