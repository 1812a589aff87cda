package org.duskloom.engine.map;

import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * A named, ordered run of a prop's pixels. Parts may hold parts; every pixel of an inner part is a pixel of the outer
 * one too. Immutable; equal by content.
 */
public final class Part {
    private static final Pattern NUMBER = Pattern.compile("0|[1-9][0-9]{0,8}");

    /** Numbered parts by number, if all of them are numbered; else by lowest pixel, then by name. */
    private static final Comparator<Part> BY_NUMBER = Comparator.comparingLong(part -> Long.parseLong(part.name()));

    private static final Comparator<Part> BY_LOWEST_PIXEL =
            Comparator.comparingInt(Part::lowestPixel).thenComparing(Part::name);

    private final String name;
    private final int[] pixels;
    private final List<Part> children;

    /**
     * @param name one name, not a path; see {@link Names}
     * @param pixels indices within the prop, from 0, in the order of the part; at least one, none twice
     * @param children the parts inside, in any order; they are put in order: numbered ones by number if all are
     *     numbered, else by their lowest pixel, then by name
     * @throws IllegalArgumentException if a name is not allowed or stands twice, if there is no pixel, a pixel is
     *     negative or stands twice, or a child has a pixel that this part has not
     */
    public Part(String name, int[] pixels, List<Part> children) {
        Names.fault(name).ifPresent(fault -> {
            throw new IllegalArgumentException("part name \"" + name + "\" " + fault);
        });
        this.name = name;
        this.pixels = pixels.clone();
        this.children = inOrder(children);
        requireSound();
    }

    /** A part of its own pixels and all pixels of its children that are not among them, in the order given. */
    public static Part enclosing(String name, int[] ownPixels, List<Part> children) {
        Set<Integer> all = new LinkedHashSet<>();
        Arrays.stream(ownPixels).forEach(all::add);
        children.forEach(child -> Arrays.stream(child.pixels).forEach(all::add));
        return new Part(name, all.stream().mapToInt(Integer::intValue).toArray(), children);
    }

    /** The name, without the names of the parts round it. */
    public String name() {
        return name;
    }

    /** Indices within the prop, from 0, in the order of the part. A copy. */
    public int[] pixels() {
        return pixels.clone();
    }

    /** How many pixels it has; at least 1. */
    public int pixelCount() {
        return pixels.length;
    }

    /** The parts inside: numbered ones by number if all are numbered, else by lowest pixel, then by name. */
    public List<Part> children() {
        return children;
    }

    /** The part inside of that name, one step down. */
    public Optional<Part> child(String childName) {
        return children.stream().filter(child -> child.name.equals(childName)).findFirst();
    }

    /** Whether the pixels are in rising order. */
    public boolean isRising() {
        for (int i = 1; i < pixels.length; i++) {
            if (pixels[i] <= pixels[i - 1]) {
                return false;
            }
        }
        return true;
    }

    static List<Part> inOrder(List<Part> parts) {
        boolean numbered =
                parts.stream().allMatch(part -> NUMBER.matcher(part.name).matches());
        return parts.stream().sorted(numbered ? BY_NUMBER : BY_LOWEST_PIXEL).toList();
    }

    static void requireDistinctNames(List<Part> parts) {
        Set<String> names = new HashSet<>();
        for (Part part : parts) {
            if (!names.add(part.name)) {
                throw new IllegalArgumentException("two parts are called \"" + part.name + "\"");
            }
        }
    }

    private int lowestPixel() {
        return Arrays.stream(pixels).min().orElseThrow();
    }

    private void requireSound() {
        if (pixels.length == 0) {
            throw new IllegalArgumentException("part \"" + name + "\" has no pixel");
        }
        BitSet own = new BitSet();
        for (int pixel : pixels) {
            if (pixel < 0 || own.get(pixel)) {
                throw new IllegalArgumentException("part \"" + name + "\" has pixel index " + pixel + " wrongly");
            }
            own.set(pixel);
        }
        requireDistinctNames(children);
        for (Part child : children) {
            for (int pixel : child.pixels) {
                if (!own.get(pixel)) {
                    throw new IllegalArgumentException(
                            "part \"" + name + "\" lacks pixel index " + pixel + " of its part \"" + child.name + "\"");
                }
            }
        }
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Part that
                && name.equals(that.name)
                && Arrays.equals(pixels, that.pixels)
                && children.equals(that.children);
    }

    @Override
    public int hashCode() {
        return 31 * name.hashCode() + Arrays.hashCode(pixels);
    }

    @Override
    public String toString() {
        return name + Arrays.toString(pixels) + (children.isEmpty() ? "" : children);
    }
}
