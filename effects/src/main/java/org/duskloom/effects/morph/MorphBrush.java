package org.duskloom.effects.morph;

import java.util.List;
import java.util.stream.Stream;
import org.duskloom.engine.effect.Brush;
import org.duskloom.engine.effect.CueTime;
import org.duskloom.engine.effect.Patch;

/**
 * Paints the dots of {@link Morph}: all of them when a frame begins; then the patches are copies.
 *
 * <p>At 100,000 pixels it takes some 60 times as long as a sweep: every pair is a soft dot that moves, so in each
 * frame the pixels round each dot are looked up by cell and lit anew, each by several dots. Nothing of it can be kept
 * from frame to frame, and a pixel's light is no closed form of its place.
 */
final class MorphBrush implements Brush {
    private final Dots[] dotsOfMembers;
    private final Way way;
    private final DotSize size;
    private final ColorWays ways;
    private final ColorWays.Colors colors;
    private final PixelGrid.Found found;
    private final Light light;

    MorphBrush(Dots[] dotsOfMembers, Way way, DotSize size, ColorWays ways, int pixelCount) {
        this.dotsOfMembers = dotsOfMembers;
        this.way = way;
        this.size = size;
        this.ways = ways;
        colors = new ColorWays.Colors(ways.count());
        List<PixelGrid> grids = Stream.of(dotsOfMembers).map(Dots::grid).toList();
        light = new Light(pixelCount, grids);
        found = new PixelGrid.Found(
                grids.stream().mapToInt(PixelGrid::size).max().orElse(0));
    }

    @Override
    public void begin(CueTime time) {
        double progress = way.progress(time);
        double spacings = size.spacings(time, progress);
        ways.fill(time.seconds(), (float) Math.min(1, Math.max(0, progress)), colors);
        light.clear();
        for (int member = 0; member < dotsOfMembers.length; member++) {
            light.turnTo(member);
            dotsOfMembers[member].shine(progress, spacings, colors, found, light);
        }
    }

    @Override
    public void paint(int firstPixel, Patch patch) {
        light.paint(firstPixel, patch);
    }
}
