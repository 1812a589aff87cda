package org.duskloom.effects.morph;

import java.util.Arrays;
import java.util.stream.Stream;

/**
 * The dots of one member, near ones close to each other: each has a place where it starts and one where it ends.
 * Immutable.
 *
 * @param grid the pixels that the dots may light
 * @param starts where each dot starts; as flat as the grid
 * @param ends where it ends; likewise
 * @param ways those of their colours
 * @param startSpacing how far pixels typically are apart where the dots start
 * @param endSpacing likewise where they end
 */
record Dots(PixelGrid grid, Spots starts, Spots ends, DotWays ways, double startSpacing, double endSpacing) {
    /** How many there are. */
    int count() {
        return ways.count();
    }

    /** How far their way is on average. */
    double meanLength() {
        double sum = 0;
        for (int dot = 0; dot < count(); dot++) {
            double dx = ends.x(dot) - starts.x(dot);
            double dy = ends.y(dot) - starts.y(dot);
            double dz = ends.z(dot) - starts.z(dot);
            sum += Math.sqrt(dx * dx + dy * dy + dz * dz);
        }
        return sum / count();
    }

    /** The greatest coordinate of any dot at either end, without its sign. */
    double greatestCoordinate() {
        return Stream.of(starts.plane(), starts.depths(), ends.plane(), ends.depths())
                .flatMapToDouble(Arrays::stream)
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
        Spots first = Spots.room(count(), starts.isFlat());
        Spots last = Spots.room(count(), starts.isFlat());
        first.setBetween(starts, ends, from);
        last.setBetween(starts, ends, to);
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
        frame.spots.setBetween(starts, ends, progress);
        if (light.asksForColors()) {
            ways.give(colors.channels, frame);
        }
        if (leg.covers(reach)) {
            leg.shine(grid.spots(), frame, reach, light);
        } else {
            grid.shine(count(), frame, reach, light);
        }
    }
}
