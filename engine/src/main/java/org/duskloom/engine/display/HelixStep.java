package org.duskloom.engine.display;

import java.util.Optional;

/**
 * {@code helix}: pixels wound round an upright axis, as on a mast or a cone, from the bottom up, evenly along the wire.
 *
 * <p>Height and radius grow in proportion to the angle. With {@code turns} the pixels are spread over so many turns; with {@code
 * spacing} the wire has that much length between pixels, and the turns follow from it. y is up; angles are seen from above: 0 to
 * the audience's right, 90 away from the audience. The turns are numbered parts, from the bottom.
 *
 * <table>
 * <caption>Fields</caption>
 * <tr><td>{@code count}</td><td>how many pixels; required, 2 to 1,000,000; one is at each end</td></tr>
 * <tr><td>{@code radius}</td><td>one number for a mast, {@code [bottom, top]} for a cone; required, from 0, not 0 twice</td></tr>
 * <tr><td>{@code height}</td><td>from the first pixel to the last; required, above 0</td></tr>
 * <tr><td>{@code turns}</td><td>how often it goes round, above 0 to 10,000; this or {@code spacing}</td></tr>
 * <tr><td>{@code spacing}</td><td>length of wire between pixels, above 0; this or {@code turns}</td></tr>
 * <tr><td>{@code start}</td><td>angle of the first pixel in degrees; 0</td></tr>
 * <tr><td>{@code direction}</td><td>{@code "counter-clockwise"} (default) or {@code "clockwise"}, seen from above</td></tr>
 * <tr><td>{@code centre}</td><td>the middle of the bottom; {@code [0, 0]}</td></tr>
 * </table>
 */
record HelixStep(int count, HelixWire wire, double startDegrees, Turning turning, Point centre) implements Step {
    /** The share of a turn that is taken for rounding. */
    private static final double SLACK = 1e-9;

    static Optional<Step> read(StepFields fields) {
        fields.require("count", "radius", "height");
        int count = fields.count("count", 2, MOST_PIXELS);
        double[] radius = fields.lengths("radius", 0);
        double height = fields.length("height");
        if (fields.sound() && Math.max(radius[0], radius[1]) < StepFields.SMALLEST_LENGTH) {
            fields.error("radius", "a helix has no radius", "for a straight line use \"line\"");
        }
        boolean spaced = fields.has("spacing");
        if (spaced == fields.has("turns")) {
            fields.error(
                    spaced ? "spacing" : "",
                    "a helix has " + (spaced ? "both \"turns\" and \"spacing\"" : "neither \"turns\" nor \"spacing\""),
                    "give one of them");
        }
        double turns = fields.number("turns", StepFields.SMALLEST_LENGTH, MOST_LINES, 1);
        double length = fields.length("spacing") * (count - 1);
        double start = fields.angle("start");
        Turning turning = fields.turning();
        Point centre = fields.point("centre");
        HelixWire wire = new HelixWire(radius[0], radius[1], height, turns);
        if (spaced && fields.sound()) {
            wire = wire.withLength(length);
            checkTurns(fields, wire);
        }
        HelixWire sound = wire;
        return fields.finish(() -> new HelixStep(count, sound, start, turning, centre));
    }

    private static void checkTurns(StepFields fields, HelixWire wire) {
        if (wire.turns() <= 0) {
            fields.error(
                    "spacing",
                    "the wire of a helix is too short to reach its top",
                    "raise \"count\" or \"spacing\", or lower \"height\"");
        } else if (wire.turns() > MOST_LINES) {
            fields.error("spacing", "a helix has more than " + MOST_LINES + " turns", "lower \"count\" or \"spacing\"");
        }
    }

    @Override
    public long pixelCount() {
        return count;
    }

    @Override
    public void lay(Strand strand) {
        double share = 0;
        int turn = 0;
        int firstOfTurn = 0;
        for (int i = 0; i < count; i++) {
            share = wire.shareAt((double) i / (count - 1), share);
            int reached = turnAt(share);
            if (reached > turn) {
                strand.closeLine(firstOfTurn, false);
                firstOfTurn = i;
                turn = reached;
            }
            place(strand, share);
        }
        strand.closeLine(firstOfTurn, false);
    }

    /** The number of the turn, from 0; the very end belongs to the last one. */
    private int turnAt(double share) {
        int last = (int) Math.ceil(wire.turns() - SLACK) - 1;
        return Math.max(0, Math.min(last, (int) Math.floor(wire.turns() * share + SLACK)));
    }

    private void place(Strand strand, double share) {
        double degrees = startDegrees + turning.sign() * (360 * wire.turns() * share);
        double radius = wire.radiusAt(share);
        strand.add(
                centre.x() + radius * Degrees.cosine(degrees),
                centre.y() + wire.height() * share,
                centre.z() - radius * Degrees.sine(degrees));
    }
}
