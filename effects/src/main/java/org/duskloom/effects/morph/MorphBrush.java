package org.duskloom.effects.morph;

import org.duskloom.engine.effect.Brush;
import org.duskloom.engine.effect.CueTime;
import org.duskloom.engine.effect.Patch;

/**
 * Paints the dots of {@link Morph}: all of them when a frame begins; then the patches are copies.
 *
 * <p>At 100,000 pixels it takes some 130 times as long as a sweep: every pair is a soft dot that moves, so in each
 * frame the pixels round each dot are looked up in a tree and lit anew, each by several dots. Nothing of it can be kept
 * from frame to frame, and a pixel's light is no closed form of its place.
 */
final class MorphBrush implements Brush {
    private final Dots[] dotsOfMembers;
    private final Way way;
    private final DotSize size;
    private final ColorWays ways;
    private final ColorWays.Colors colors;
    private final Light light;
    private final Bundle bundle;

    MorphBrush(Dots[] dotsOfMembers, Way way, DotSize size, ColorWays ways, int pixelCount) {
        this.dotsOfMembers = dotsOfMembers;
        this.way = way;
        this.size = size;
        this.ways = ways;
        colors = new ColorWays.Colors(ways.count());
        light = new Light(pixelCount);
        bundle = new Bundle(colors, light);
    }

    @Override
    public void begin(CueTime time) {
        double progress = way.progress(time);
        double spacings = size.spacings(time, progress);
        ways.fill(time.seconds(), (float) Math.min(1, Math.max(0, progress)), colors);
        light.clear();
        for (Dots dots : dotsOfMembers) {
            dots.shine(progress, spacings, bundle);
        }
    }

    @Override
    public void paint(int firstPixel, Patch patch) {
        light.paint(firstPixel, patch);
    }
}
