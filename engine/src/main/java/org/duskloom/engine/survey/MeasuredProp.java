package org.duskloom.engine.survey;

import java.util.Objects;
import org.duskloom.engine.map.Positions;

/** The measured pixels of one prop, by rising pixel number. Immutable. */
public final class MeasuredProp {
    private final int propIndex;
    private final int[] pixels;
    private final Positions places;

    /**
     * @param propIndex which prop of the display, from 0
     * @param pixels which of its pixels, from 0, rising
     * @param places where each of them was measured; z is 0 where depth was not measured
     * @throws IllegalArgumentException if there is no pixel, they do not rise, or there are not as many places
     */
    public MeasuredProp(int propIndex, int[] pixels, Positions places) {
        this.propIndex = propIndex;
        this.pixels = pixels.clone();
        this.places = Objects.requireNonNull(places, "places");
        boolean rising = pixels.length > 0 && pixels[0] >= 0;
        for (int i = 1; i < pixels.length; i++) {
            rising &= pixels[i - 1] < pixels[i];
        }
        if (!rising || pixels.length != places.size()) {
            throw new IllegalArgumentException(pixels.length + " pixels, " + places.size() + " places");
        }
    }

    /** Which prop of the display, from 0. */
    public int propIndex() {
        return propIndex;
    }

    /** How many pixels were measured; at least 1. */
    public int count() {
        return pixels.length;
    }

    /** The number of a measured pixel within the prop, from 0. */
    public int pixel(int index) {
        return pixels[index];
    }

    /** Where the pixels were measured, in the same order. */
    public Positions places() {
        return places;
    }

    /** The same pixels with other places. */
    public MeasuredProp at(Positions otherPlaces) {
        return new MeasuredProp(propIndex, pixels, otherPlaces);
    }

    /** All but one of the pixels. */
    public MeasuredProp without(int index) {
        int[] kept = new int[pixels.length - 1];
        double[][] at = new double[3][kept.length];
        for (int i = 0; i < kept.length; i++) {
            int from = i < index ? i : i + 1;
            kept[i] = pixels[from];
            at[0][i] = places.x(from);
            at[1][i] = places.y(from);
            at[2][i] = places.z(from);
        }
        return new MeasuredProp(propIndex, kept, new Positions(at[0], at[1], at[2]));
    }
}
