package org.duskloom.engine.display;

import java.util.Optional;
import org.duskloom.engine.document.DeclaredField;
import org.duskloom.engine.document.DeclaredObject;
import org.duskloom.engine.document.Node;
import org.duskloom.engine.document.ValueKind;
import org.duskloom.engine.geometry.Degrees;

/**
 * {@code helix}: pixels wound round an upright axis, as on a mast or a cone, from the bottom up, evenly along the wire.
 *
 * <p>Height and radius grow in proportion to the angle. With {@code turns} the pixels are spread over so many turns;
 * with {@code spacing} the wire has that much length between pixels, and the turns follow from it. y is up; angles are
 * seen from above: 0 to the audience's right, 90 away from the audience. The turns are numbered parts, from the bottom.
 */
record HelixStep(int count, HelixWire wire, double startDegrees, Turning turning, Point centre) implements Step {
    static final DeclaredField<Long> COUNT =
            StepFields.count("count", 2, MOST_PIXELS, "how many pixels, one at each end among them");
    static final DeclaredField<Node> RADIUS = DeclaredField.required(
            "radius",
            StepFields.lengths(StepFields.DISTANCE, "bottom, top"),
            "one for a mast, two for a cone; not 0 twice");
    static final DeclaredField<Double> HEIGHT =
            DeclaredField.required("height", StepFields.LENGTH, "from the first pixel to the last");
    static final DeclaredField<Double> TURNS = DeclaredField.optional(
            "turns",
            new ValueKind.Number("turns", StepFields.SMALLEST_LENGTH, MOST_LINES),
            "",
            "how often it goes round; this or `spacing`");
    static final DeclaredField<Double> SPACING =
            DeclaredField.optional("spacing", StepFields.LENGTH, "", "length of wire between pixels; this or `turns`");
    static final DeclaredField<Double> START = DeclaredField.of(
            "start",
            StepFields.DEGREES,
            0.0,
            "angle of the first pixel, seen from above: 90 is away from the audience");
    static final DeclaredObject FIELDS = DeclaredObject.of(
                    "helix", COUNT, RADIUS, HEIGHT, TURNS, SPACING, START, StepFields.DIRECTION, StepFields.CENTRE)
            .needsOne("give one of them", TURNS, SPACING);

    /** The share of a turn that is taken for rounding. */
    private static final double SLACK = 1e-9;

    static Optional<Step> read(StepFields fields) {
        int count = fields.count(COUNT);
        double[] radius = fields.lengths(RADIUS, StepFields.DISTANCE);
        double height = fields.length(HEIGHT);
        if (fields.sound() && Math.max(radius[0], radius[1]) < StepFields.SMALLEST_LENGTH) {
            fields.error(RADIUS, "a helix has no radius", "for a straight line use \"line\"");
        }
        boolean spaced = fields.has(SPACING);
        double turns = fields.value(TURNS, 1.0);
        double length = fields.length(SPACING) * (count - 1);
        double start = fields.value(START);
        Turning turning = fields.value(StepFields.DIRECTION);
        Point centre = fields.point(StepFields.CENTRE);
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
                    SPACING,
                    "the wire of a helix is too short to reach its top",
                    "raise \"count\" or \"spacing\", or lower \"height\"");
        } else if (wire.turns() > MOST_LINES) {
            fields.error(SPACING, "a helix has more than " + MOST_LINES + " turns", "lower \"count\" or \"spacing\"");
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
