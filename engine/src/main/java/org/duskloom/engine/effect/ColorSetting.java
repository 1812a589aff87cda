package org.duskloom.engine.effect;

import org.duskloom.engine.color.CssColor;
import org.duskloom.engine.document.ValueKind;
import org.duskloom.engine.problem.TextFormatException;
import org.duskloom.engine.timeline.KeyFields;

/** A colour, which may move over the cue. */
public final class ColorSetting extends Setting<ColorTrack> {
    private final String standardText;
    private final ColorTrack standard;

    private ColorSetting(String name, String meaning, String standardText) {
        super(name, meaning);
        this.standardText = standardText;
        try {
            this.standard = ColorTrack.constant(CssColor.parse(standardText));
        } catch (TextFormatException e) {
            throw new IllegalArgumentException(e);
        }
    }

    /** A colour setting whose default is written as in a timeline. */
    public static ColorSetting of(String name, String standardText, String meaning) {
        return new ColorSetting(name, meaning, standardText);
    }

    @Override
    public boolean moves() {
        return true;
    }

    @Override
    public ValueKind<?> kind() {
        return KeyFields.movingColor(new ValueKind.Text("CSS colour"));
    }

    @Override
    public String unit() {
        return "colour";
    }

    @Override
    public String range() {
        return "any CSS colour";
    }

    @Override
    public String standardText() {
        return standardText;
    }

    @Override
    public ColorTrack standard() {
        return standard;
    }
}
