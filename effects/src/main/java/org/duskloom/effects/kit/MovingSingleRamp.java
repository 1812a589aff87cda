package org.duskloom.effects.kit;

import java.util.List;
import org.duskloom.engine.effect.ColorTracks;
import org.duskloom.engine.effect.PaletteTrack;

/** A palette of one colour that moves. For one thread. */
final class MovingSingleRamp extends FlatRamp {
    private final ColorTracks only;
    private final float[] color = new float[ColorTracks.CHANNELS];

    /**
     * @param track all its palettes have one colour each
     */
    MovingSingleRamp(PaletteTrack track) {
        only = track.picked(palette -> List.of(palette.at(0)));
        begin(0);
    }

    @Override
    public void begin(double seconds) {
        only.fill(seconds, color);
    }

    @Override
    float red() {
        return color[0];
    }

    @Override
    float green() {
        return color[1];
    }

    @Override
    float blue() {
        return color[2];
    }

    @Override
    float alpha() {
        return color[3];
    }
}
