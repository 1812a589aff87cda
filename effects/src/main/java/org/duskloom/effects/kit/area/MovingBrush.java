package org.duskloom.effects.kit.area;

import java.util.Arrays;
import org.duskloom.effects.kit.Fractions;
import org.duskloom.engine.effect.Brush;
import org.duskloom.engine.effect.CueTime;
import org.duskloom.engine.effect.Patch;

/** Paints {@link MovingLight}: for each light its place in the picture, how much of its cell is covered, and what is there. */
final class MovingBrush implements Brush {
    private final MovingLight light;
    private final ReelClock clock;
    private final Sight[] sights;
    private int image;

    MovingBrush(MovingLight light, ReelClock clock) {
        this.light = light;
        this.clock = clock;
        sights = new Sight[light.memberCount()];
        for (int member = 0; member < sights.length; member++) {
            sights[member] = new Sight(light, member);
        }
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
        patch.load(light.right(), firstPixel, patch.first);
        patch.load(light.up(), firstPixel, patch.second);
        int cell = patch.from();
        while (cell < patch.to()) {
            int pixel = firstPixel + cell - patch.from();
            int end = Math.min(patch.to(), cell + light.runEnd(pixel) - pixel);
            paint(sights[light.memberOf(pixel)], cell, end, patch);
            cell = end;
        }
        if (light.isOpaque()) {
            patch.makeOpaque();
        }
    }

    private void paint(Sight sight, int from, int to, Patch patch) {
        sight.sharesOfHeight(patch.first, patch.second, from, to, patch.third);
        sight.sharesOfWidth(patch.first, patch.second, from, to, patch.first);
        if (light.style().repeats()) {
            Fractions.ofLine(patch.first, 1, 0, from, to, patch.first);
            Fractions.ofLine(patch.third, 1, 0, from, to, patch.third);
            Arrays.fill(patch.second, from, to, 1f);
        } else {
            sight.coverage(patch.first, patch.third, from, to, patch.second);
        }
        clamp(patch.first, from, to);
        clamp(patch.third, from, to);
        sight.lookUp(image, patch.first, patch.third, from, to, patch);
        cover(patch.red, patch.second, from, to);
        cover(patch.green, patch.second, from, to);
        cover(patch.blue, patch.second, from, to);
        cover(patch.alpha, patch.second, from, to);
    }

    private static void clamp(float[] shares, int from, int to) {
        for (int i = from; i < to; i++) {
            shares[i] = Math.min(1f, Math.max(0f, shares[i]));
        }
    }

    /** Takes from each cell what is not covered, and from each sum of shares what rounding has put above 1. */
    private static void cover(float[] plane, float[] covered, int from, int to) {
        for (int i = from; i < to; i++) {
            plane[i] = Math.min(1f, plane[i] * covered[i]);
        }
    }
}
