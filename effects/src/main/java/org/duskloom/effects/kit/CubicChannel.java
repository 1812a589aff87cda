package org.duskloom.effects.kit;

import java.util.Arrays;
import java.util.List;

/**
 * One channel of a {@link CubicRamp}: the sum of what its pieces and jumps add on the way. A channel that reaches 0 or
 * 1 is drawn a little beyond and then clipped, so that black is black and white is white in spite of rounding.
 */
final class CubicChannel {
    private static final double ROUNDING = 4e-6;

    private final float base;
    private final float[] first;
    private final float[] second;
    private final float[] third;
    private final float[] jumps;
    private final boolean clipped;
    /** Whether it is clipped at 1 alone: then it never comes near 0, as far as rounding goes. */
    private final boolean clippedAboveOnly;

    private final boolean constant;

    /**
     * @param cubics the channel in each piece of the palette
     * @param widths the width of each piece
     */
    CubicChannel(List<Cubic> cubics, double[] widths) {
        double least = Double.POSITIVE_INFINITY;
        double greatest = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < widths.length; i++) {
            least = Math.min(least, cubics.get(i).least(widths[i]));
            greatest = Math.max(greatest, cubics.get(i).greatest(widths[i]));
        }
        constant = greatest - least < 1e-9;
        double below = !constant && least < ROUNDING ? ROUNDING : 0;
        double above = !constant && greatest > 1 - ROUNDING ? ROUNDING : 0;
        clipped = below > 0 || above > 0;
        clippedAboveOnly = clipped && below == 0;
        List<Cubic> drawn = cubics.stream()
                .map(cubic -> cubic.stretched(1 + below + above, -below))
                .toList();
        base = (float) Math.min(
                clipped ? 2 : 1, Math.max(clipped ? -1 : 0, drawn.get(0).c0()));
        first = floats(drawn.stream().mapToDouble(Cubic::c1).toArray());
        second = floats(drawn.stream().mapToDouble(Cubic::c2).toArray());
        third = floats(drawn.stream().mapToDouble(Cubic::c3).toArray());
        jumps = new float[widths.length];
        for (int i = 1; i < jumps.length; i++) {
            jumps[i] = (float) (drawn.get(i).c0() - drawn.get(i - 1).at(widths[i - 1]));
        }
    }

    private static float[] floats(double[] values) {
        float[] floats = new float[values.length];
        for (int i = 0; i < values.length; i++) {
            floats[i] = (float) values[i];
        }
        return floats;
    }

    /** Begins with what the channel is at place 0 and what a piece adds on the given ways into it. */
    void begin(int piece, float[] ways, float[] plane, int from, int to) {
        if (constant) {
            Arrays.fill(plane, from, to, base);
        } else {
            fill(ways, base, first[piece], second[piece], third[piece], from, to, plane);
        }
    }

    /** Adds what a piece adds on the given ways into it. */
    void add(int piece, float[] ways, float[] plane, int from, int to) {
        if (!constant) {
            add(ways, first[piece], second[piece], third[piece], from, to, plane);
        }
    }

    /**
     * What the channel is at place 0 with what a piece adds on the ways into it: {@link #begin} and {@link #finish} in
     * one loop, to the bit.
     */
    void fill(int piece, float[] ways, float[] plane, int from, int to) {
        if (constant || !clipped) {
            begin(piece, ways, plane, from, to);
        } else if (clippedAboveOnly) {
            fillBelowOne(ways, base, first[piece], second[piece], third[piece], from, to, plane);
        } else {
            fillClipped(ways, base, first[piece], second[piece], third[piece], from, to, plane);
        }
    }

    /**
     * The same of two pieces: {@link #begin}, {@link #add} and {@link #finish} in one loop, to the bit.
     *
     * @param plane may be the ways into the second piece
     */
    void fill(int piece, float[] ways, int next, float[] nextWays, float[] plane, int from, int to) {
        if (constant) {
            Arrays.fill(plane, from, to, base);
            return;
        }
        float c0 = base;
        float c1 = first[piece];
        float c2 = second[piece];
        float c3 = third[piece];
        float d1 = first[next];
        float d2 = second[next];
        float d3 = third[next];
        if (clippedAboveOnly) {
            for (int i = from; i < to; i++) {
                float x = ways[i];
                float y = nextWays[i];
                plane[i] = Levels.belowOne((c0 + x * (c1 + x * (c2 + x * c3))) + y * (d1 + y * (d2 + y * d3)));
            }
            return;
        }
        for (int i = from; i < to; i++) {
            float x = ways[i];
            float y = nextWays[i];
            plane[i] = (c0 + x * (c1 + x * (c2 + x * c3))) + y * (d1 + y * (d2 + y * d3));
        }
        finish(plane, from, to);
    }

    /** Adds the jump before a piece, where it has been reached. */
    void addJump(int piece, float[] reached, float[] plane, int from, int to) {
        if (!constant) {
            add(reached, jumps[piece], 0, 0, from, to, plane);
        }
    }

    /** Ends the channel: within [0, 1]. */
    void finish(float[] plane, int from, int to) {
        if (clipped) {
            clip(plane, from, to);
        }
    }

    private static void fill(float[] x, float c0, float c1, float c2, float c3, int from, int to, float[] plane) {
        for (int i = from; i < to; i++) {
            plane[i] = c0 + x[i] * (c1 + x[i] * (c2 + x[i] * c3));
        }
    }

    private static void fillBelowOne(
            float[] x, float c0, float c1, float c2, float c3, int from, int to, float[] plane) {
        for (int i = from; i < to; i++) {
            plane[i] = Levels.belowOne(c0 + x[i] * (c1 + x[i] * (c2 + x[i] * c3)));
        }
    }

    private static void fillClipped(
            float[] x, float c0, float c1, float c2, float c3, int from, int to, float[] plane) {
        for (int i = from; i < to; i++) {
            plane[i] = Levels.belowOne(Levels.aboveZero(c0 + x[i] * (c1 + x[i] * (c2 + x[i] * c3))));
        }
    }

    private static void add(float[] x, float c1, float c2, float c3, int from, int to, float[] plane) {
        for (int i = from; i < to; i++) {
            plane[i] += x[i] * (c1 + x[i] * (c2 + x[i] * c3));
        }
    }

    private static void clip(float[] plane, int from, int to) {
        for (int i = from; i < to; i++) {
            plane[i] = Levels.belowOne(Levels.aboveZero(plane[i]));
        }
    }
}
