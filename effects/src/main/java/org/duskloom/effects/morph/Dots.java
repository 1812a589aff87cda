package org.duskloom.effects.morph;

import java.util.Arrays;
import java.util.stream.DoubleStream;

/**
 * The dots of one member, near ones close to each other: each has a place where it starts and one where it ends.
 * Immutable.
 *
 * @param grid the pixels that the dots may light
 * @param starts where each dot starts, by {@link Spots}
 * @param ends where it ends
 * @param ways the way of each dot's colour, among the {@link ColorWays}
 * @param startSpacing how far pixels typically are apart where the dots start
 * @param endSpacing likewise where they end
 */
record Dots(PixelGrid grid, double[] starts, double[] ends, int[] ways, double startSpacing, double endSpacing) {
    /** How many there are. */
    int count() {
        return ways.length;
    }

    /** How far their way is on average. */
    double meanLength() {
        double sum = 0;
        for (int i = 0; i < starts.length; i += Spots.AXES) {
            double dx = ends[i] - starts[i];
            double dy = ends[i + 1] - starts[i + 1];
            double dz = ends[i + 2] - starts[i + 2];
            sum += Math.sqrt(dx * dx + dy * dy + dz * dz);
        }
        return sum / count();
    }

    /** The greatest coordinate of any dot at either end, without its sign. */
    double greatestCoordinate() {
        return DoubleStream.concat(Arrays.stream(starts), Arrays.stream(ends))
                .map(Math::abs)
                .max()
                .orElse(0);
    }

    /** How far pixels typically are apart where dots are that have come so far. */
    private double spacing(double progress) {
        double share = Math.min(1, Math.max(0, progress));
        return startSpacing * (1 - share) + endSpacing * share;
    }

    /** How far dots reach at most, from some progress to another. */
    double mostReach(DotSize size, double from, double to) {
        return size.mostSpacings(from, to) * Math.max(spacing(from), spacing(to));
    }

    /**
     * Adds all pixels that dots may light between some progress and another.
     *
     * @param reach how far they reach at most
     */
    void addMeetings(double from, double to, double reach, Meetings meetings) {
        double[] first = new double[starts.length];
        double[] last = new double[starts.length];
        Spots.between(starts, ends, from, first);
        Spots.between(starts, ends, to, last);
        for (int dot = 0; dot < count() && !meetings.isCrowded(); dot++) {
            grid.addWithin(Segment.of(first, last, dot), dot, reach, meetings);
        }
    }

    /**
     * Lights the pixels round each dot.
     *
     * @param progress how far the dots have come: 0 at the start, 1 at the end; may lie beyond
     * @param size how far a dot's light reaches, in spacings of pixels
     * @param leg the leg on which they are
     * @param colors of all ways
     * @param frame scratch
     * @param light is turned to the grid, and receives theirs
     */
    void shine(double progress, double size, Leg leg, ColorWays.Colors colors, DotFrame frame, Light light) {
        double reach = size * spacing(progress);
        Spots.between(starts, ends, progress, frame.spots);
        colors.give(ways, frame.colors);
        if (leg.covers(reach)) {
            leg.shine(grid.spots(), frame, reach, light);
        } else {
            grid.shine(count(), frame, reach, light);
        }
    }
}
