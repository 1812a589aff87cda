package org.duskloom.engine.group;

import java.util.Arrays;

/**
 * One of the things that an address list resolves to: a prop, a part of a prop, or what an {@code except} leaves of
 * one. Equal by content.
 *
 * @param name the address of the prop or part: {@code daisy-1}, {@code daisy-1/petals/3}
 * @param propIndex where the prop stands in {@link org.duskloom.engine.map.PixelMap#props()}
 * @param pixels global pixel indices in the order of the prop or part; at least one, none twice; shared, not to be
 *     changed
 */
public record Member(String name, int propIndex, int[] pixels) {
    /** How many pixels it has; at least 1. */
    public int pixelCount() {
        return pixels.length;
    }

    /** The path of the part within its prop, such as {@code petals/3}; empty for a prop. */
    public String partPath() {
        int slash = name.indexOf('/');
        return slash < 0 ? "" : name.substring(slash + 1);
    }

    @Override
    public boolean equals(Object other) {
        return this == other
                || other instanceof Member that
                        && propIndex == that.propIndex
                        && name.equals(that.name)
                        && Arrays.equals(pixels, that.pixels);
    }

    @Override
    public int hashCode() {
        return 31 * name.hashCode() + pixels.length;
    }

    @Override
    public String toString() {
        return name + " " + Arrays.toString(pixels);
    }
}
