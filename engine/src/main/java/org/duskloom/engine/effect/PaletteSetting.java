package org.duskloom.engine.effect;

import java.util.ArrayList;
import java.util.List;
import org.duskloom.engine.color.ColorMix;
import org.duskloom.engine.color.CssColor;
import org.duskloom.engine.color.LinearColor;
import org.duskloom.engine.color.Palette;
import org.duskloom.engine.document.ValueKind;
import org.duskloom.engine.problem.TextFormatException;
import org.duskloom.engine.timeline.KeyFields;

/** Colours along a line, which may move over the cue: the name of a palette, one colour, or a list of colours. */
public final class PaletteSetting extends Setting<PaletteTrack> {
    private final List<String> standardColors;
    private final PaletteTrack standard;

    private PaletteSetting(String name, String meaning, List<String> standardColors) {
        super(name, meaning);
        this.standardColors = List.copyOf(standardColors);
        List<LinearColor> colors = new ArrayList<>();
        for (String color : standardColors) {
            try {
                colors.add(CssColor.parse(color));
            } catch (TextFormatException e) {
                throw new IllegalArgumentException(e);
            }
        }
        this.standard = PaletteTrack.constant(Palette.evenly(colors, ColorMix.OKLAB));
    }

    /** A palette setting whose default is a list of CSS colours. */
    public static PaletteSetting of(String name, String meaning, String... standardColors) {
        return new PaletteSetting(name, meaning, List.of(standardColors));
    }

    @Override
    public boolean moves() {
        return true;
    }

    @Override
    public ValueKind<?> kind() {
        return KeyFields.movingPalette();
    }

    @Override
    public String unit() {
        return "palette";
    }

    @Override
    public String range() {
        return "the name of a palette, a CSS colour, or a list of CSS colours";
    }

    @Override
    public String standardText() {
        return standardColors.size() == 1 ? standardColors.get(0) : "[" + String.join(", ", standardColors) + "]";
    }

    @Override
    public PaletteTrack standard() {
        return standard;
    }
}
