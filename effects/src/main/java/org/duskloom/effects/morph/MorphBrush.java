package org.duskloom.effects.morph;

import java.util.List;
import org.duskloom.engine.effect.Brush;
import org.duskloom.engine.effect.CueTime;
import org.duskloom.engine.effect.Patch;

/**
 * Paints the dots of {@link Morph}: all of them when a frame begins; then the patches are copies.
 *
 * <p>It takes some 14 times as long as a sweep, 8 times where there is one colour: every pair is a soft dot that
 * moves, so each pixel looks anew in each frame at the dots that it may meet. Longer where dots meet too many pixels
 * for {@link Legs} to keep, since they go far: dots then look for their pixels by cell.
 */
final class MorphBrush implements Brush {
    private final List<Legs> members;
    private final Way way;
    private final DotSize size;
    private final ColorWays ways;
    private final ColorWays.Colors colors;
    private final DotFrame frame;
    private final Light light;

    MorphBrush(List<Legs> members, Way way, DotSize size, ColorWays ways, int pixelCount) {
        this.members = members;
        this.way = way;
        this.size = size;
        this.ways = ways;
        colors = new ColorWays.Colors(ways.count());
        List<Dots> dots = members.stream().map(Legs::dots).toList();
        light = Light.of(pixelCount, dots.stream().map(Dots::grid).toList(), ways.count());
        frame = new DotFrame(dots);
    }

    @Override
    public void begin(CueTime time) {
        double progress = way.progress(time);
        double spacings = size.spacings(time, progress);
        ways.fill(time.seconds(), (float) Math.min(1, Math.max(0, progress)), colors);
        light.begin(colors.channels);
        for (int member = 0; member < members.size(); member++) {
            Legs legs = members.get(member);
            light.turnTo(member);
            legs.dots().shine(progress, spacings, legs.at(progress), colors, frame, light);
        }
    }

    @Override
    public void paint(int firstPixel, Patch patch) {
        light.paint(firstPixel, patch);
    }
}
