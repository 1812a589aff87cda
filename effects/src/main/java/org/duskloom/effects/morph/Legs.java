package org.duskloom.effects.morph;

import java.util.concurrent.atomic.AtomicReferenceArray;

/**
 * The way of the dots of one member, cut into legs on which they move by a part of their reach. What may meet on a leg
 * is found when a frame first lies on it, and kept for all that follow. For all threads.
 */
final class Legs {
    /** How many legs a dot's way has for each reach that it is long. Chosen by measurement. */
    private static final double LEGS_PER_REACH = 5;

    private static final int MOST_LEGS = 64;

    /** How many meetings are kept for each pixel. Beyond, dots look for their pixels in every frame. */
    private static final int MOST_PER_PIXEL = 64;

    private static final int MOST_OF_FEW = 4096;

    /** How far a dot may be from where it was computed to be: a share of the greatest coordinate, and of its reach. */
    private static final double ROUNDING = 1e-9;

    private final Dots dots;
    private final DotSize size;
    private final double slack;
    private final AtomicReferenceArray<Leg> legs;
    /** How many more meetings may be kept. */
    private long left;

    Legs(Dots dots, DotSize size) {
        this.dots = dots;
        this.size = size;
        slack = ROUNDING * dots.greatestCoordinate();
        legs = new AtomicReferenceArray<>(count(dots.meanLength(), dots.mostReach(size, 0, 1)));
        left = Math.max(MOST_OF_FEW, (long) MOST_PER_PIXEL * dots.grid().size());
    }

    Dots dots() {
        return dots;
    }

    private static int count(double length, double reach) {
        double count = length > 0 ? Math.ceil(LEGS_PER_REACH * length / reach) : 1;
        return (int) Math.min(MOST_LEGS, count);
    }

    /** The leg on which dots are that have come so far; one that covers nothing where there is none. */
    Leg at(double progress) {
        if (!(progress >= 0 && progress <= 1)) {
            return Leg.CROWDED;
        }
        int number = Math.min(legs.length() - 1, (int) (progress * legs.length()));
        Leg leg = legs.get(number);
        return leg != null ? leg : found(number);
    }

    private synchronized Leg found(int number) {
        if (legs.get(number) == null) {
            legs.set(number, find(number));
        }
        return legs.get(number);
    }

    private Leg find(int number) {
        double from = (double) number / legs.length();
        double to = (number + 1.0) / legs.length();
        double reach = dots.mostReach(size, from, to) * (1 + ROUNDING);
        Meetings meetings = new Meetings(left);
        dots.addMeetings(from, to, reach + slack, meetings);
        if (meetings.isCrowded()) {
            left = 0;
            return Leg.CROWDED;
        }
        left -= meetings.count();
        return meetings.leg(dots.grid().size(), reach);
    }
}
