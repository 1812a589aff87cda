package org.duskloom.engine.color;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.duskloom.engine.digest.FingerprintWriter;
import org.duskloom.engine.digest.Fingerprinted;

/** Colours along a line from 0 to 1. Immutable; a look-up costs a few dozen multiplications. */
public final class Palette implements Fingerprinted {
    private final List<PaletteStop> stops;
    private final PaletteStyle style;
    private final double[] positions;
    /** From each stop to the next, and from the last to the first. */
    private final MixPath[] paths;

    private Palette(List<PaletteStop> stops, PaletteStyle style) {
        this.stops = List.copyOf(stops);
        this.style = Objects.requireNonNull(style, "style");
        if (stops.isEmpty()) {
            throw new IllegalArgumentException("a palette needs a colour");
        }
        positions = stops.stream().mapToDouble(PaletteStop::position).toArray();
        paths = new MixPath[positions.length];
        for (int i = 0; i < paths.length; i++) {
            if (i > 0 && positions[i] < positions[i - 1]) {
                throw new IllegalArgumentException("palette stops must not fall: " + positions[i]);
            }
            paths[i] = new MixPath(style.mix(), color(i), color((i + 1) % paths.length));
        }
    }

    /**
     * A palette of placed colours. Where two stops share a position, the colour changes there at once.
     *
     * @param stops at least one; their positions never fall
     * @throws IllegalArgumentException if there is none, or if positions fall
     */
    public static Palette of(List<PaletteStop> stops, PaletteStyle style) {
        return new Palette(stops, style);
    }

    /**
     * A palette of colours spread evenly: from 0 to 1 where it is smooth; n equal bands where it is stepped; n equal
     * gaps, the last one back to the first colour, where it is cyclic.
     *
     * @throws IllegalArgumentException if there is no colour
     */
    public static Palette evenly(List<LinearColor> colors, PaletteStyle style) {
        List<PaletteStop> stops = new ArrayList<>();
        for (int i = 0; i < colors.size(); i++) {
            stops.add(new PaletteStop(style.evenPosition(i, colors.size()), colors.get(i)));
        }
        return new Palette(stops, style);
    }

    /**
     * A smooth palette of colours spread evenly from 0 to 1.
     *
     * @throws IllegalArgumentException if there is no colour
     */
    public static Palette evenly(List<LinearColor> colors, ColorMix mix) {
        return evenly(colors, new PaletteStyle(mix, false, false));
    }

    /** The stops, in order. */
    public List<PaletteStop> stops() {
        return stops;
    }

    /** What lies between the stops. */
    public PaletteStyle style() {
        return style;
    }

    /**
     * The colour at a place.
     *
     * @param s 0 to 1; beyond them, and for NaN, a cyclic palette goes on from its other end and any other one keeps
     *     the colour of its end, where NaN counts as 0
     */
    public LinearColor at(double s) {
        double place = style.cyclic() ? wrapped(s) : s;
        int index = lastAtOrBefore(place);
        int last = positions.length - 1;
        if (!style.cyclic() && (index < 0 || index == last)) {
            return color(Math.max(index, 0));
        }
        if (style.stepped()) {
            return color(index < 0 ? last : index);
        }
        return index < 0 || index == last ? acrossTheSeam(place) : between(index, place);
    }

    @Override
    public void addTo(FingerprintWriter parts) {
        parts.text(style.mix().word()).flag(style.stepped()).flag(style.cyclic());
        parts.list(stops, (list, stop) -> list.number(stop.position()).value(stop.color()));
    }

    private LinearColor between(int index, double place) {
        double gap = positions[index + 1] - positions[index];
        return paths[index].at((place - positions[index]) / gap);
    }

    private LinearColor acrossTheSeam(double place) {
        int last = positions.length - 1;
        double sinceLast = place < positions[last] ? place + 1 - positions[last] : place - positions[last];
        return paths[last].at(sinceLast / (positions[0] + 1 - positions[last]));
    }

    private int lastAtOrBefore(double place) {
        int index = positions.length - 1;
        while (index >= 0 && !(positions[index] <= place)) {
            index--;
        }
        return index;
    }

    private LinearColor color(int index) {
        return stops.get(index).color();
    }

    private static double wrapped(double s) {
        double place = s - Math.floor(s);
        return place >= 0 && place < 1 ? place : 0;
    }
}
