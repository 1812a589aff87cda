package org.duskloom.engine.plan;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.time.ExactTime;
import org.duskloom.engine.timeline.Layout;
import org.duskloom.engine.timeline.Stagger;
import org.duskloom.engine.timeline.StaggerBy;

/** How much later than the cue each of its grounds starts. */
final class StaggerPlan {
    /** Positions are cut to this share of the way, so that times stay fractions. */
    private static final long STEPS = 1_000_000;

    private StaggerPlan() {}

    /**
     * The lag of each ground.
     *
     * @param start of the cue, by the clock of the show
     * @throws ArithmeticException if one cannot be counted exactly
     */
    static List<ExactTime> lags(Layout layout, CanvasGrounds grounds, ExactTime start) {
        if (layout.stagger().isEmpty() || grounds.isWhole()) {
            return Collections.nCopies(grounds.count(), ExactTime.ZERO);
        }
        Stagger stagger = layout.stagger().get();
        return switch (stagger.by()) {
            case MEMBERS ->
                stepped(stagger, start, IntStream.range(0, grounds.count()).toArray());
            case PART -> stepped(stagger, start, PartSteps.byPart(grounds.members(), grounds.map()));
            case PROP -> stepped(stagger, start, PartSteps.byProp(grounds.members()));
            default -> spread(stagger, start, grounds);
        };
    }

    private static List<ExactTime> stepped(Stagger stagger, ExactTime start, int[] steps) {
        return Arrays.stream(steps)
                .mapToObj(step -> stagger.time().times(step, 1).from(start))
                .toList();
    }

    private static List<ExactTime> spread(Stagger stagger, ExactTime start, CanvasGrounds grounds) {
        return Arrays.stream(shares(stagger.by(), grounds.stageCentres()))
                .mapToObj(share ->
                        stagger.time().times(Math.round(share * STEPS), STEPS).from(start))
                .toList();
    }

    /**
     * How far each centre is along the way: from 0 for the first to 1 for the last; round the clock, in turns, so that
     * a whole turn takes the whole time.
     */
    private static double[] shares(StaggerBy by, Positions centres) {
        Box box = Box.round(IntStream.range(0, centres.size()).toArray(), centres);
        double[] key = new double[centres.size()];
        for (int i = 0; i < key.length; i++) {
            double x = centres.x(i) - box.centreX();
            double y = centres.y(i) - box.centreY();
            double z = centres.z(i) - box.centreZ();
            key[i] = switch (by) {
                case RIGHT -> x;
                case LEFT -> -x;
                case UP -> y;
                case DOWN -> -y;
                case OUTWARD -> Math.sqrt(x * x + y * y + z * z);
                case INWARD -> -Math.sqrt(x * x + y * y + z * z);
                case CLOCKWISE -> OrderPlaces.clockwiseTurns(x, y, box.samePlace());
                case MEMBERS, PART, PROP -> throw new IllegalArgumentException(by.word());
            };
        }
        return by == StaggerBy.CLOCKWISE ? key : overOwnRange(key, box.samePlace());
    }

    private static double[] overOwnRange(double[] key, double samePlace) {
        double least = Arrays.stream(key).min().orElseThrow();
        double range = Arrays.stream(key).max().orElseThrow() - least;
        return range <= samePlace
                ? new double[key.length]
                : Arrays.stream(key).map(value -> (value - least) / range).toArray();
    }
}
