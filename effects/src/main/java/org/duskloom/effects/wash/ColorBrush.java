package org.duskloom.effects.wash;

import java.util.Arrays;
import org.duskloom.engine.color.LinearColor;
import org.duskloom.engine.effect.Brush;
import org.duskloom.engine.effect.ColorTrack;
import org.duskloom.engine.effect.CueTime;
import org.duskloom.engine.effect.Patch;

/** One colour everywhere, which may move. */
final class ColorBrush implements Brush {
    private final ColorTrack track;
    private LinearColor color = LinearColor.TRANSPARENT;

    ColorBrush(ColorTrack track) {
        this.track = track;
    }

    @Override
    public void begin(CueTime time) {
        color = track.at(time.seconds());
    }

    @Override
    public void paint(int firstPixel, Patch patch) {
        float alpha = color.alpha();
        Arrays.fill(patch.red, patch.from(), patch.to(), color.red() * alpha);
        Arrays.fill(patch.green, patch.from(), patch.to(), color.green() * alpha);
        Arrays.fill(patch.blue, patch.from(), patch.to(), color.blue() * alpha);
        if (alpha == 1) {
            patch.makeOpaque();
        } else {
            Arrays.fill(patch.alpha, patch.from(), patch.to(), alpha);
        }
    }
}
