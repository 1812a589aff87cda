package org.duskloom.effects.kit.area;

import org.duskloom.engine.effect.Brush;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.CueTime;
import org.duskloom.engine.effect.Patch;

/** Paints {@link MovingLight}. */
final class MovingBrush implements Brush {
    private final MovingLight light;
    private final ReelClock clock;
    private final Sight[] sights;
    private int image;

    MovingBrush(MovingLight light, ReelClock clock) {
        this.light = light;
        this.clock = clock;
        sights = light.sights();
    }

    @Override
    public void begin(CueTime time) {
        image = clock.imageAt(time);
        for (Sight sight : sights) {
            sight.begin(time);
        }
    }

    @Override
    public void paint(int firstPixel, Patch patch) {
        Canvas canvas = light.canvas();
        int pixel = firstPixel;
        for (int cell = patch.from(); cell < patch.to(); cell++, pixel++) {
            int member = canvas.memberOf()[pixel];
            sights[member].paint(light.picture(member, image), canvas.x()[pixel], canvas.y()[pixel], cell, patch);
        }
        if (light.isOpaque()) {
            patch.makeOpaque();
        }
    }
}
