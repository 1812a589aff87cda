package org.duskloom.engine.sheet;

import java.util.StringJoiner;
import org.duskloom.engine.display.Mirror;
import org.duskloom.engine.display.PlacedProp;
import org.duskloom.engine.display.Placement;
import org.duskloom.engine.map.Positions;

/**
 * How a prop is mounted, as the person on the ladder needs to know it.
 *
 * @param upX where its shape's own up points on the stage, to the audience's right; the three are a direction of length
 *     1
 * @param upY the same, up
 * @param upZ the same, toward the audience
 * @param words its name, and how it is placed otherwise than drawn, in the words of a display
 */
record Mounting(double upX, double upY, double upZ, String words) {
    /** What is turned by less than about a thousandth of a degree stands upright. */
    private static final double UPRIGHT = 1e-5;

    static Mounting of(PlacedProp prop) {
        Placement placement = prop.placement();
        Positions ownAxis = new Positions(new double[2], new double[] {0, 1}, new double[2]);
        // The shape's zero point and one unit above it, placed as the pixels are.
        Positions stage = new Placement(
                        placement.mirror(),
                        1,
                        placement.turnDegrees(),
                        placement.tiltDegrees(),
                        placement.yawDegrees(),
                        0,
                        0,
                        0)
                .stageFromOwn(ownAxis);
        return new Mounting(stage.x(1), stage.y(1), stage.z(1), words(prop));
    }

    /** Whether its own up is the stage's. */
    boolean isUpright() {
        return StrictMath.hypot(upX, upZ) < UPRIGHT && upY > 0;
    }

    /** How much of its own up is seen from the front: 1 in the plane of the stage, 0 along the audience's eye. */
    double seen() {
        return StrictMath.hypot(upX, upY);
    }

    private static String words(PlacedProp prop) {
        Placement placement = prop.placement();
        StringJoiner words = new StringJoiner(", ");
        words.add(prop.prop().name());
        if (placement.mirror() != Mirror.NONE) {
            words.add("mirror " + placement.mirror().word());
        }
        add(words, "scale ", placement.scale(), 1);
        add(words, "turn ", placement.turnDegrees(), 0);
        add(words, "tilt ", placement.tiltDegrees(), 0);
        add(words, "yaw ", placement.yawDegrees(), 0);
        if (prop.reversed()) {
            words.add("reverse");
        }
        return words.toString();
    }

    private static void add(StringJoiner words, String what, double value, double asDrawn) {
        if (value != asDrawn) {
            words.add(what + (value == Math.rint(value) ? String.valueOf((long) value) : String.valueOf(value)));
        }
    }
}
