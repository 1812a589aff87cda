package org.duskloom.engine.compare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.duskloom.engine.frame.FrameList;
import org.duskloom.engine.frame.PropSpan;
import org.duskloom.engine.frame.RunInfo;
import org.duskloom.engine.text.Counted;
import org.duskloom.engine.time.FrameSpan;

/**
 * What two renderings have in common, so that it can be compared: frames of the same number, if the rates are the same,
 * and props of the same name with as many pixels.
 *
 * @param frames the frames that both have; empty where none can be compared
 * @param props the props that can be compared, in the order of the first rendering
 * @param contrasts in what they differ without a look at the frames
 */
public record Comparison(FrameSpan frames, List<Pair> props, List<Contrast> contrasts) {
    /**
     * The same prop in both.
     *
     * @param name its name; "all pixels" where props are not known
     * @param first its first pixel in a frame of the first rendering
     * @param second the same for the second
     * @param count how many pixels it has
     */
    public record Pair(String name, int first, int second, int count) {}

    /**
     * Something that is not the same.
     *
     * @param what it is
     * @param first how it is in the first rendering
     * @param second how it is in the second
     */
    public record Contrast(String what, String first, String second) {}

    public Comparison {
        props = List.copyOf(props);
        contrasts = List.copyOf(contrasts);
    }

    /** Of two renderings whose frames are spans. */
    public static Comparison of(RunInfo first, RunInfo second) {
        List<Contrast> contrasts = new ArrayList<>();
        add(contrasts, "rate", first.rate() + " frames a second", second.rate() + " frames a second");
        add(contrasts, "length", Counted.of(first.showFrames(), "frame"), Counted.of(second.showFrames(), "frame"));
        add(
                contrasts,
                "frames there",
                first.frames().toString(),
                second.frames().toString());
        add(contrasts, "pixels", Integer.toString(first.pixelCount()), Integer.toString(second.pixelCount()));
        List<Pair> pairs = pairs(first, second, contrasts);
        FrameSpan frames = span(first.frames()).overlap(span(second.frames()));
        boolean comparable = first.rate().equals(second.rate()) && !pairs.isEmpty();
        return new Comparison(comparable ? frames : new FrameSpan(0, 0), pairs, contrasts);
    }

    /** How many pixels are compared. */
    public int pixelCount() {
        return props.stream().mapToInt(Pair::count).sum();
    }

    /** The props that are compared, one after the other. */
    public List<PropSpan> spans() {
        List<PropSpan> spans = new ArrayList<>();
        int next = 0;
        for (Pair pair : props) {
            spans.add(new PropSpan(pair.name(), next, pair.count()));
            next += pair.count();
        }
        return spans;
    }

    private static FrameSpan span(FrameList frames) {
        return new FrameSpan(frames.first(), frames.first() + frames.count());
    }

    private static void add(List<Contrast> contrasts, String what, String first, String second) {
        if (!first.equals(second)) {
            contrasts.add(new Contrast(what, first, second));
        }
    }

    private static List<Pair> pairs(RunInfo first, RunInfo second, List<Contrast> contrasts) {
        if (first.pixels().props().isEmpty() || second.pixels().props().isEmpty()) {
            return first.pixelCount() == second.pixelCount()
                    ? List.of(new Pair("all pixels", 0, 0, first.pixelCount()))
                    : List.of();
        }
        Map<String, PropSpan> others = new LinkedHashMap<>();
        second.pixels().props().forEach(prop -> others.put(prop.name(), prop));
        List<Pair> pairs = new ArrayList<>();
        for (PropSpan prop : first.pixels().props()) {
            PropSpan other = others.remove(prop.name());
            String what = "prop " + prop.name();
            if (other == null) {
                contrasts.add(new Contrast(what, size(prop), "not there"));
            } else if (other.pixelCount() != prop.pixelCount()) {
                contrasts.add(new Contrast(what, size(prop), size(other)));
            } else {
                add(contrasts, what, place(prop), place(other));
                pairs.add(new Pair(prop.name(), prop.firstPixel(), other.firstPixel(), prop.pixelCount()));
            }
        }
        others.values().forEach(prop -> contrasts.add(new Contrast("prop " + prop.name(), "not there", size(prop))));
        return pairs;
    }

    private static String size(PropSpan prop) {
        return Counted.of(prop.pixelCount(), "pixel");
    }

    private static String place(PropSpan prop) {
        return "from pixel " + prop.firstPixel() + " of a frame";
    }
}
