package org.duskloom.engine.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.duskloom.engine.time.ExactTime;
import org.duskloom.engine.timeline.Layout;
import org.duskloom.engine.timeline.Stagger;
import org.duskloom.engine.timeline.StaggerBy;

/** How much later than the cue each of its frames of reference starts. */
final class StaggerPlan {
    /** Positions are cut to this share of the way, so that times stay fractions. */
    private static final long STEPS = 1_000_000;

    private final List<ExactTime> lags;

    private StaggerPlan(List<ExactTime> lags) {
        this.lags = lags;
    }

    static StaggerPlan of(Layout layout, CanvasFrames frames) {
        List<ExactTime> lags = new ArrayList<>();
        if (layout.stagger().isEmpty() || frames.isWhole()) {
            for (int frame = 0; frame < frames.count(); frame++) {
                lags.add(ExactTime.ZERO);
            }
            return new StaggerPlan(lags);
        }
        Stagger stagger = layout.stagger().get();
        if (stagger.by() == StaggerBy.MEMBERS) {
            for (int frame = 0; frame < frames.count(); frame++) {
                lags.add(stagger.time().times(frame));
            }
            return new StaggerPlan(lags);
        }
        for (double share : shares(stagger.by(), frames)) {
            lags.add(stagger.time().times((long) Math.floor(share * STEPS + 0.5), STEPS));
        }
        return new StaggerPlan(lags);
    }

    /** The frames by their start, in the order in which a start first appears. */
    Map<ExactTime, List<Integer>> membersByLag() {
        Map<ExactTime, List<Integer>> byLag = new LinkedHashMap<>();
        for (int frame = 0; frame < lags.size(); frame++) {
            byLag.computeIfAbsent(lags.get(frame), lag -> new ArrayList<>()).add(frame);
        }
        return byLag;
    }

    /** How far each frame is along the way, 0 to 1, by the centre of its bounding box on the stage. */
    private static double[] shares(StaggerBy by, CanvasFrames frames) {
        double[] x = new double[frames.count()];
        double[] y = new double[frames.count()];
        double[] z = new double[frames.count()];
        for (int frame = 0; frame < x.length; frame++) {
            Box box = frames.stageBox(frame);
            x[frame] = box.centreX();
            y[frame] = box.centreY();
            z[frame] = box.centreZ();
        }
        double[] key = new double[x.length];
        for (int frame = 0; frame < key.length; frame++) {
            double fromX = x[frame] - middle(x);
            double fromY = y[frame] - middle(y);
            double fromZ = z[frame] - middle(z);
            key[frame] = switch (by) {
                case RIGHT -> fromX;
                case LEFT -> -fromX;
                case UP -> fromY;
                case DOWN -> -fromY;
                case OUTWARD -> Math.sqrt(fromX * fromX + fromY * fromY + fromZ * fromZ);
                case INWARD -> -Math.sqrt(fromX * fromX + fromY * fromY + fromZ * fromZ);
                case CLOCKWISE -> OrderPlaces.clockwiseTurns(fromX, fromY, 0);
                case MEMBERS -> throw new IllegalArgumentException(by.word());
            };
        }
        return by == StaggerBy.CLOCKWISE ? key : overOwnRange(key);
    }

    private static double[] overOwnRange(double[] key) {
        double least = least(key);
        double range = greatest(key) - least;
        double[] share = new double[key.length];
        for (int i = 0; i < key.length; i++) {
            share[i] = range > 0 ? (key[i] - least) / range : 0;
        }
        return share;
    }

    private static double middle(double[] values) {
        double least = least(values);
        return least + (greatest(values) - least) / 2;
    }

    private static double least(double[] values) {
        double least = Double.POSITIVE_INFINITY;
        for (double value : values) {
            least = Math.min(least, value);
        }
        return least;
    }

    private static double greatest(double[] values) {
        double greatest = Double.NEGATIVE_INFINITY;
        for (double value : values) {
            greatest = Math.max(greatest, value);
        }
        return greatest;
    }
}
