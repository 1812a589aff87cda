package org.duskloom.effects.kit;

import org.duskloom.engine.color.LinearColor;
import org.duskloom.engine.color.Palette;

/** A palette of one colour that does not move. */
final class SingleRamp extends FlatRamp {
    private final LinearColor color;

    SingleRamp(LinearColor color) {
        this.color = color;
    }

    static boolean shows(Palette palette) {
        LinearColor color = palette.at(0);
        return palette.stops().stream().allMatch(stop -> stop.color().equals(color));
    }

    @Override
    float red() {
        return color.red();
    }

    @Override
    float green() {
        return color.green();
    }

    @Override
    float blue() {
        return color.blue();
    }

    @Override
    float alpha() {
        return color.alpha();
    }
}
