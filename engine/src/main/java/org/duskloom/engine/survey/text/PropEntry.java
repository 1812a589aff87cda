package org.duskloom.engine.survey.text;

import java.util.ArrayList;
import java.util.List;
import org.duskloom.engine.display.DisplayFields;
import org.duskloom.engine.display.Mirror;
import org.duskloom.engine.display.PlacedProp;
import org.duskloom.engine.display.Placement;
import org.duskloom.engine.display.Units;
import org.duskloom.engine.document.DeclaredField;
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
    private final List<Object> fields = new ArrayList<>();

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
        field(DisplayFields.NAME, prop.prop().name());
        field(DisplayFields.SHAPE_NAME, prop.shape().name());
        field(DisplayFields.AT, at(before));
        if (now.mirror() != Mirror.NONE) {
            field(DisplayFields.MIRROR, now.mirror().word());
        }
        number(DisplayFields.SCALE, before.scale(), now.scale(), SCALE_DECIMALS);
        number(DisplayFields.TURN, before.turnDegrees(), now.turnDegrees(), ANGLE_DECIMALS);
        number(DisplayFields.TILT, before.tiltDegrees(), now.tiltDegrees(), ANGLE_DECIMALS);
        number(DisplayFields.YAW, before.yawDegrees(), now.yawDegrees(), ANGLE_DECIMALS);
        if (reversed) {
            field(DisplayFields.REVERSE, true);
        }
        return JsonText.object(fields.toArray()).json();
    }

    private JsonText.Inline at(Placement before) {
        String x = value(before.x(), now.x(), lengthDecimals);
        String y = value(before.y(), now.y(), lengthDecimals);
        String z = value(before.z(), now.z(), lengthDecimals);
        return z.equals("0")
                ? JsonText.list(new JsonText.Inline(x), new JsonText.Inline(y))
                : JsonText.list(new JsonText.Inline(x), new JsonText.Inline(y), new JsonText.Inline(z));
    }

    private void number(DeclaredField<Double> field, double before, double value, int decimals) {
        String written = value(before, value, decimals);
        if (!written.equals(field.standardText().orElseThrow())) {
            field(field, new JsonText.Inline(written));
        }
    }

    private static String value(double before, double value, int decimals) {
        return before == value ? ShortestDecimal.of(value) : Wording.number(value, decimals);
    }

    private void field(DeclaredField<?> field, Object value) {
        fields.add(field);
        fields.add(value);
    }
}
