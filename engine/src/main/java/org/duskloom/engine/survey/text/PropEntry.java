package org.duskloom.engine.survey.text;

import org.duskloom.engine.display.Mirror;
import org.duskloom.engine.display.PlacedProp;
import org.duskloom.engine.display.Placement;
import org.duskloom.engine.display.Units;
import org.duskloom.engine.document.JsonText;
import org.duskloom.engine.survey.Reading;
import org.duskloom.engine.survey.WiringKind;
import org.duskloom.engine.text.ShortestDecimal;

/**
 * The entry of a prop in a display, on one line of JSON. What differs from the description is rounded to tenths of a
 * millimetre and of a degree; the rest stands as it is described.
 */
final class PropEntry {
    private static final int ANGLE_DECIMALS = 1;
    private static final int SCALE_DECIMALS = 4;

    private final PlacedProp prop;
    private final Placement now;
    private final int lengthDecimals;
    private final StringBuilder json = new StringBuilder("{");

    private PropEntry(PlacedProp prop, Placement now, Units units) {
        this.prop = prop;
        this.now = now;
        this.lengthDecimals = Wording.lengthDecimals(units);
    }

    /**
     * The entry.
     *
     * @param prop as described
     * @param reading as it is in truth; one that an entry can say: see {@link Reading#isWritable()}
     * @param units of the display
     */
    static String of(PlacedProp prop, Reading reading, Units units) {
        boolean turnsRound = reading.wiring().kind() == WiringKind.FROM_OTHER_END;
        return new PropEntry(prop, reading.placement(), units).json(prop.reversed() != turnsRound);
    }

    private String json(boolean reversed) {
        Placement before = prop.placement();
        field("name", JsonText.quoted(prop.prop().name()));
        field("shape", JsonText.quoted(prop.shape().name()));
        field("at", at(before));
        if (now.mirror() != Mirror.NONE) {
            field("mirror", JsonText.quoted(now.mirror().word()));
        }
        number("scale", before.scale(), now.scale(), 1, SCALE_DECIMALS);
        number("turn", before.turnDegrees(), now.turnDegrees(), 0, ANGLE_DECIMALS);
        number("tilt", before.tiltDegrees(), now.tiltDegrees(), 0, ANGLE_DECIMALS);
        number("yaw", before.yawDegrees(), now.yawDegrees(), 0, ANGLE_DECIMALS);
        if (reversed) {
            field("reverse", "true");
        }
        return json.append('}').toString();
    }

    private String at(Placement before) {
        String z = value(before.z(), now.z(), lengthDecimals);
        return "[" + value(before.x(), now.x(), lengthDecimals) + ", " + value(before.y(), now.y(), lengthDecimals)
                + (z.equals("0") ? "" : ", " + z) + "]";
    }

    private void number(String name, double before, double value, double normally, int decimals) {
        String written = value(before, value, decimals);
        if (!written.equals(Wording.number(normally, 0))) {
            field(name, written);
        }
    }

    private static String value(double before, double value, int decimals) {
        return before == value ? ShortestDecimal.of(value) : Wording.number(value, decimals);
    }

    private void field(String name, String value) {
        json.append(json.length() == 1 ? "" : ", ")
                .append('"')
                .append(name)
                .append("\": ")
                .append(value);
    }
}
