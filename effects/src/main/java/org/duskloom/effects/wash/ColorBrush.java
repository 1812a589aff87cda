package org.duskloom.effects.wash;

import java.util.Arrays;
import org.duskloom.engine.effect.Brush;
import org.duskloom.engine.effect.ColorTrack;
import org.duskloom.engine.effect.ColorTracks;
import org.duskloom.engine.effect.CueTime;
import org.duskloom.engine.effect.Patch;

/** One colour everywhere, which may move. */
final class ColorBrush implements Brush {
    private final ColorTrack track;
    private final float[] color = new float[ColorTracks.CHANNELS];

    ColorBrush(ColorTrack track) {
        this.track = track;
    }

    @Override
    public void begin(CueTime time) {
        track.fill(time.seconds(), color);
    }

    @Override
    public void paint(int firstPixel, Patch patch) {
        float alpha = color[3];
        Arrays.fill(patch.red, patch.from(), patch.to(), color[0] * alpha);
        Arrays.fill(patch.green, patch.from(), patch.to(), color[1] * alpha);
        Arrays.fill(patch.blue, patch.from(), patch.to(), color[2] * alpha);
        if (alpha == 1) {
            patch.makeOpaque();
        } else {
            Arrays.fill(patch.alpha, patch.from(), patch.to(), alpha);
        }
    }
}
