package org.duskloom.engine.effect;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The pixels that an effect paints, as it sees them: one or more members, each with a frame of reference of its own,
 * all on one clock. Pixels are numbered from 0 in the order in which they will be painted, which says nothing about
 * wiring. Immutable; the arrays are shared and must not be written to.
 */
public final class Canvas {
    private final double[] x;
    private final double[] y;
    private final double[] z;
    private final int[] memberOf;
    private final double[] position;
    private final int[] stepCount;
    /** Null, as {@link #memberKey}, where there are no random keys. */
    private final int[] pixelKey;

    private final long[] memberKey;
    private final PartFinder parts;

    /**
     * A canvas.
     *
     * @param coordinates x, y and z of each pixel, in canvas units
     * @param members which member each pixel belongs to, and the members' random keys
     * @param order where each pixel stands along the order
     * @param pixelKey each pixel's random key
     * @param parts finds named pixels
     */
    public Canvas(Coordinates coordinates, Members members, Order order, int[] pixelKey, PartFinder parts) {
        this.x = coordinates.x();
        this.y = coordinates.y();
        this.z = coordinates.z();
        this.memberOf = members.memberOf();
        this.memberKey = members.keys();
        this.position = order.position();
        this.stepCount = order.stepCount();
        this.pixelKey = pixelKey;
        this.parts = Objects.requireNonNull(parts, "parts");
    }

    /** A canvas without random keys, for effects that make no random choices. */
    public static Canvas withoutKeys(Coordinates coordinates, int[] memberOf, Order order, PartFinder parts) {
        return new Canvas(coordinates, new Members(memberOf, null), order, null, parts);
    }

    /** The same canvas with random keys; everything else is shared. */
    public Canvas withKeys(long[] memberKeys, int[] pixelKeys) {
        return new Canvas(
                new Coordinates(x, y, z),
                new Members(memberOf, Objects.requireNonNull(memberKeys, "memberKeys")),
                new Order(position, stepCount),
                Objects.requireNonNull(pixelKeys, "pixelKeys"),
                parts);
    }

    /** The same canvas with another finder of parts; everything else is shared. */
    public Canvas withParts(PartFinder otherParts) {
        return new Canvas(
                new Coordinates(x, y, z),
                new Members(memberOf, memberKey),
                new Order(position, stepCount),
                pixelKey,
                otherParts);
    }

    /**
     * Positions in canvas units: with the fit {@code contain}, from -1 to 1 along the longer side.
     *
     * @param x to the right
     * @param y up
     * @param z toward the audience
     */
    public record Coordinates(double[] x, double[] y, double[] z) {}

    /**
     * Who the pixels belong to.
     *
     * @param memberOf member number of each pixel
     * @param keys random key of each member, from the seed, the cue and the member's name
     */
    public record Members(int[] memberOf, long[] keys) {}

    /**
     * Places along the order.
     *
     * @param position of each pixel, from 0 to its member's step count less 1; pixels side by side share one
     * @param stepCount of each member
     */
    public record Order(double[] position, int[] stepCount) {}

    /** How many pixels there are. */
    public int pixelCount() {
        return x.length;
    }

    /** How many members there are; 1 where one canvas lies round all. */
    public int memberCount() {
        return stepCount.length;
    }

    /** To the right, in canvas units. */
    public double[] x() {
        return x;
    }

    /** Up, in canvas units. */
    public double[] y() {
        return y;
    }

    /** Toward the audience, in canvas units. */
    public double[] z() {
        return z;
    }

    /** The member number of each pixel. */
    public int[] memberOf() {
        return memberOf;
    }

    /** Where each pixel stands along the order: 0 to {@link #stepCount} less 1 of its member. */
    public double[] position() {
        return position;
    }

    /** How many steps the order has in a member. */
    public int stepCount(int member) {
        return stepCount[member];
    }

    /**
     * The random key of each pixel: the same whatever else is on the stage.
     *
     * @throws IllegalStateException if there are none, because the effect does not say that it uses chance
     */
    public int[] pixelKey() {
        if (pixelKey == null) {
            throw withoutKeys();
        }
        return pixelKey;
    }

    /**
     * The random key of a member.
     *
     * @throws IllegalStateException if there is none, because the effect does not say that it uses chance
     */
    public long memberKey(int member) {
        if (memberKey == null) {
            throw withoutKeys();
        }
        return memberKey[member];
    }

    private static IllegalStateException withoutKeys() {
        return new IllegalStateException("only a canvas of an effect that uses chance has random keys");
    }

    /** What finds the parts. */
    public PartFinder parts() {
        return parts;
    }

    /** The canvas pixels of a part of a member, in the part's order. */
    public Optional<int[]> part(int member, String address) {
        return parts.find(member, address);
    }

    /** What a member is called, for messages; empty where there is one canvas for all. */
    public String memberName(int member) {
        return parts.memberName(member);
    }

    /** The parts that could be named, for hints. */
    public List<String> knownParts(int member) {
        return parts.known(member);
    }
}
