package org.duskloom.engine.render;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.duskloom.engine.effect.Brush;
import org.duskloom.engine.effect.CueTime;
import org.duskloom.engine.effect.Kernel;
import org.duskloom.engine.effect.Patch;
import org.duskloom.engine.plan.Plan;
import org.duskloom.engine.plan.PlannedCanvas;
import org.duskloom.engine.plan.PlannedCue;
import org.duskloom.engine.problem.Location;

/**
 * How much light a cue paints by itself, before it is mixed with anything, all its plays together.
 *
 * @param layerIndex its layer
 * @param first its first play
 * @param mask whether its brightness gates what is under it, instead of being seen
 * @param meanLight the mean relative luminance, 0 to 1, of its pixels in {@value #SAMPLES} frames that lie evenly over
 *     its plays, with its opacity and fades and all that it stands in
 * @param pixelFrames how many pixels it paints, times in how many frames
 */
public record CueMean(int layerIndex, PlannedCue first, boolean mask, double meanLight, double pixelFrames) {
    private static final int SAMPLES = 24;

    public CueMean {
        Objects.requireNonNull(first, "first");
    }

    /** Of every cue of a plan, in the order of painting. */
    public static List<CueMean> of(Plan plan) {
        List<CueMean> means = new ArrayList<>();
        for (int layer = 0; layer < plan.layers().size(); layer++) {
            Map<Location, List<LayeredCue>> plays = new LinkedHashMap<>();
            for (PlannedCue cue : plan.layers().get(layer).cues()) {
                plays.computeIfAbsent(cue.cue().location(), place -> new ArrayList<>())
                        .add(new LayeredCue(plan, layer, cue));
            }
            for (List<LayeredCue> cue : plays.values()) {
                means.add(of(layer, cue));
            }
        }
        return means;
    }

    private static CueMean of(int layer, List<LayeredCue> plays) {
        long frames = plays.stream().mapToLong(LayeredCue::frameCount).sum();
        Sampling sampling = new Sampling();
        int samples = (int) Math.min(SAMPLES, frames);
        for (int i = 0; i < samples; i++) {
            long index = (2L * i + 1) * frames / (2L * samples);
            int play = 0;
            while (index >= plays.get(play).frameCount()) {
                index -= plays.get(play++).frameCount();
            }
            sampling.look(plays.get(play), plays.get(play).cue().firstFrame() + index);
        }
        double mean = sampling.pixels == 0 ? 0 : sampling.light / sampling.pixels;
        double pixelFrames = samples == 0 ? 0 : (double) sampling.pixels / samples * frames;
        return new CueMean(layer, plays.get(0).cue(), plays.get(0).isMask(), mean, pixelFrames);
    }

    /** What a cue paints in the frames that are looked at. */
    private static final class Sampling {
        private final Map<Kernel, Brush> brushes = new IdentityHashMap<>();
        private final CueTime time = new CueTime();
        private final Patch patch = new Patch();
        private double light;
        private long pixels;

        void look(LayeredCue play, long frame) {
            PlannedCue cue = play.cue();
            for (int i = 0; i < cue.canvasCount(); i++) {
                PlannedCanvas canvas = cue.canvas(i);
                int count = canvas.pixelCount();
                pixels += count;
                float opacity = play.opacityAt(canvas, frame);
                if (opacity > 0 && frame >= canvas.firstFrame()) {
                    Brush brush = brushes.computeIfAbsent(canvas.kernel(), Kernel::open);
                    brush.begin(canvas.at(frame, cue.lengthSeconds(), time));
                    for (int first = 0; first < count; first += Patch.CAPACITY) {
                        light += opacity * light(brush, first, Math.min(Patch.CAPACITY, count - first));
                    }
                }
            }
        }

        private double light(Brush brush, int firstPixel, int length) {
            patch.reset(0, length);
            brush.paint(firstPixel, patch);
            patch.fill();
            double sum = 0;
            for (int i = 0; i < length; i++) {
                sum += 0.2126 * patch.red[i] + 0.7152 * patch.green[i] + 0.0722 * patch.blue[i];
            }
            return sum;
        }
    }
}
