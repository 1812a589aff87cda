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
        int[] memberOf = canvas.memberOf();
        int ahead = firstPixel - patch.from();
        for (int from = patch.from(); from < patch.to(); ) {
            int member = memberOf[ahead + from];
            int to = from + 1;
            while (to < patch.to() && memberOf[ahead + to] == member) {
                to++;
            }
            SummedLight picture = light.picture(member, image);
            sights[member].paint(picture, canvas.x(), canvas.y(), ahead + from, from, to, patch);
            from = to;
        }
        if (light.isOpaque()) {
            patch.makeOpaque();
        }
    }
}
