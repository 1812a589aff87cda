package org.duskloom.engine.map;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import org.duskloom.engine.problem.Location;

/** All pixels in wiring order: props one after the other, each with its pixels in its own order. Immutable. */
public final class PixelMap {
    /** How many pixels a map may have. */
    public static final int MAX_PIXELS = 1_000_000;

    /** How many props a map may have. */
    public static final int MAX_PROPS = 100_000;

    private final List<Prop> props;
    private final Positions stage;
    private final Positions own;
    private final Map<String, Integer> indexByName = new HashMap<>();
    private final int[] propOfPixel;
    private final int[] lines;

    /**
     * @param props the props in wiring order; the first starts at pixel 0, each next one where the one before ends
     * @param stage stage coordinates by global pixel index
     * @param own coordinates in each prop's own axes by global pixel index
     * @throws IllegalArgumentException if there is no prop, two have one name, they do not follow each other without
     *     gap, or the coordinates are more or fewer than the pixels
     */
    public PixelMap(List<Prop> props, Positions stage, Positions own) {
        this(props, stage, own, new int[0]);
    }

    /** The same for pixels that were read from a file; with the line of each, by global pixel index, or without any. */
    PixelMap(List<Prop> props, Positions stage, Positions own, int[] lines) {
        this.lines = lines.clone();
        this.props = List.copyOf(props);
        this.stage = Objects.requireNonNull(stage, "stage");
        this.own = Objects.requireNonNull(own, "own");
        this.propOfPixel = new int[stage.size()];
        int next = 0;
        for (int index = 0; index < this.props.size(); index++) {
            next = place(index, next);
        }
        if (next == 0 || next != stage.size() || next != own.size()) {
            throw new IllegalArgumentException(
                    next + " pixels, but " + stage.size() + " stage and " + own.size() + " own positions");
        }
    }

    private int place(int index, int next) {
        Prop prop = props.get(index);
        int end = prop.firstPixel() + prop.pixelCount();
        if (prop.firstPixel() != next || end > propOfPixel.length) {
            throw new IllegalArgumentException("prop \"" + prop.name() + "\" does not follow the one before it");
        }
        if (indexByName.put(prop.name(), index) != null) {
            throw new IllegalArgumentException("two props are called \"" + prop.name() + "\"");
        }
        Arrays.fill(propOfPixel, next, end, index);
        return end;
    }

    /** How many pixels all props have together; at least 1. */
    public int pixelCount() {
        return propOfPixel.length;
    }

    /** The props in wiring order. */
    public List<Prop> props() {
        return props;
    }

    /** The prop of that name. */
    public Optional<Prop> prop(String name) {
        Integer index = indexByName.get(name);
        return index == null ? Optional.empty() : Optional.of(props.get(index));
    }

    /** Where the prop of that name stands in {@link #props()}. */
    public OptionalInt propIndex(String name) {
        Integer index = indexByName.get(name);
        return index == null ? OptionalInt.empty() : OptionalInt.of(index);
    }

    /** Index into {@link #props()} of the prop that a pixel belongs to. */
    public int propIndexOf(int globalPixel) {
        return propOfPixel[globalPixel];
    }

    /** Where a pixel stands in the file it was read from; where its prop does if it has no row of its own. */
    public Location locationOf(int globalPixel) {
        Location prop = props.get(propOfPixel[globalPixel]).definedAt();
        return lines.length == 0 ? prop : new Location(prop.file(), lines[globalPixel], 1);
    }

    /** Where the pixels hang: x to the audience's right, y up, z toward the audience. */
    public Positions stage() {
        return stage;
    }

    /** Where the pixels are in their prop's own axes; the same as {@link #stage()} where no own axes are known. */
    public Positions own() {
        return own;
    }
}
