package org.duskloom.engine.survey.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.duskloom.engine.display.PlacedProp;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.survey.CommonMotion;
import org.duskloom.engine.survey.Dimensions;
import org.duskloom.engine.survey.MeasuredProp;
import org.duskloom.engine.survey.Verdict;
import org.joml.Matrix3dc;
import org.joml.Vector3d;
import org.joml.Vector3dc;

/**
 * Finds props that moved as if they were one thing. Props are put together one by one, as long as one motion of all
 * leaves clearly no more than a motion of each: by the same criterion as for readings.
 */
final class CommonMotions {
    /** An angle of fewer standard deviations is none. */
    private static final double CLEAR_TURN = 4;

    private static final int ENOUGH_PROPS = 3;

    /**
     * Turns that differ by more standard deviations are not tried together; it would be found that they are not the
     * same.
     */
    private static final double OTHER_TURN = 8;

    private final Dimensions dimensions;
    private final Criterion criterion;
    private final double variance;
    private final Vector3dc origin;

    /**
     * A prop that moved.
     *
     * @param study the prop
     * @param moments its places described and measured
     * @param left what its own motion leaves over
     * @param rotation its own turn
     * @param turnVariance the variance of its turn about the axis that it is known worst about, in squared radians
     */
    private record Mover(Study study, Moments moments, double left, Matrix3dc rotation, double turnVariance) {}

    /** The props of one motion. */
    record Group(List<Study> studies, Similarity motion, CommonMotion described) {}

    private CommonMotions(Dimensions dimensions, Criterion criterion, Vector3dc origin) {
        this.dimensions = dimensions;
        this.criterion = criterion;
        this.variance = criterion.variance();
        this.origin = origin;
    }

    /**
     * Looks for common motions.
     *
     * @param studies those that may have moved together
     * @param origin a point near the display
     */
    static List<Group> of(List<Study> studies, Dimensions dimensions, Criterion criterion, Vector3dc origin) {
        CommonMotions search = new CommonMotions(dimensions, criterion, origin);
        List<Mover> movers = new ArrayList<>();
        for (Study study : studies) {
            if (mayBelong(study)) {
                movers.add(search.mover(study));
            }
        }
        List<Group> groups = new ArrayList<>();
        while (!movers.isEmpty()) {
            List<Mover> together = search.gather(movers);
            movers.removeAll(together);
            if (isWorthNaming(together)) {
                groups.add(search.group(together));
            }
        }
        return groups;
    }

    private Mover mover(Study study) {
        Moments moments = moments(study);
        PairSpread spread = moments.aboutMeans();
        BestTurn turn = BestTurn.of(spread.cross(), dimensions, Handedness.PROPER);
        // Its points as they are described or measured spread alike: the singular values are their squared spreads.
        Svd3 spreads = Svd3.of(spread.cross());
        double lever = dimensions == Dimensions.FLAT ? spread.from() : spreads.second() + spreads.third();
        double left = spread.left(turn.match(), Sizing.KEPT);
        return new Mover(study, moments, left, turn.rotation(), lever > 0 ? variance / lever : 1);
    }

    /**
     * Compares the turns by the sum of the squared differences of their matrices: twice the squared angle where it is
     * small.
     */
    private static boolean turnAlike(Mover a, Mover b) {
        double clear = OTHER_TURN * OTHER_TURN * (a.turnVariance() + b.turnVariance());
        return Rotations.squaredDifference(a.rotation(), b.rotation()) <= 2 * clear;
    }

    private static boolean mayBelong(Study study) {
        Form form = study.preferred().form();
        return study.verdict() == Verdict.DIFFERENT && form.move() == Move.FREE && !form.mirrored() && !form.resized();
    }

    /** Two props that only moved may do so by chance; three do not, and two that turned alike do not either. */
    private static boolean isWorthNaming(List<Mover> together) {
        return together.size() >= ENOUGH_PROPS
                || together.size() == 2
                        && together.stream()
                                .allMatch(mover ->
                                        mover.study().preferred().form().turn().parameters() > 0);
    }

    private List<Mover> gather(List<Mover> movers) {
        List<Mover> together = new ArrayList<>(List.of(movers.get(0)));
        List<Mover> rest = new ArrayList<>();
        movers.stream()
                .skip(1)
                .filter(mover -> turnAlike(mover, together.get(0)))
                .forEach(rest::add);
        Moments all = movers.get(0).moments();
        double left = movers.get(0).left();
        while (true) {
            Mover best = null;
            double least = criterion.clearly(parameters());
            for (Mover mover : rest) {
                double more = left(all.plus(mover.moments())) - left - mover.left();
                if (more <= least) {
                    least = more;
                    best = mover;
                }
            }
            if (best == null) {
                return together;
            }
            together.add(best);
            rest.remove(best);
            all = all.plus(best.moments());
            left = left(all);
        }
    }

    private int parameters() {
        return dimensions == Dimensions.DEEP ? 6 : 3;
    }

    private double left(Moments moments) {
        PairSpread spread = moments.aboutMeans();
        return spread.left(
                BestTurn.of(spread.cross(), dimensions, Handedness.PROPER).match(), Sizing.KEPT);
    }

    /** The pixels of a prop on the stage, as described for its wiring, and as measured; counted from the origin. */
    private Moments moments(Study study) {
        PlacedProp prop = study.subject().prop();
        MeasuredProp measured = study.subject().measured();
        Positions stage = prop.placement().stageFromOwn(prop.shape().pixels());
        Moments moments = new Moments();
        boolean deep = dimensions == Dimensions.DEEP;
        for (int i = 0; i < measured.count(); i++) {
            int pixel = prop.shapePixel(study.preferred().wiring().describedPixel(measured.pixel(i)));
            moments.add(
                    stage.x(pixel) - origin.x(),
                    stage.y(pixel) - origin.y(),
                    deep ? stage.z(pixel) - origin.z() : 0,
                    measured.places().x(i) - origin.x(),
                    measured.places().y(i) - origin.y(),
                    deep ? measured.places().z(i) - origin.z() : 0);
        }
        return moments;
    }

    private Group group(List<Mover> members) {
        List<Mover> together = members.stream()
                .sorted(Comparator.comparingInt(
                        mover -> mover.study().subject().measured().propIndex()))
                .toList();
        Moments all = together.get(0).moments();
        for (Mover mover : together.subList(1, together.size())) {
            all = all.plus(mover.moments());
        }
        PairSpread spread = all.aboutMeans();
        Matrix3dc turn = simplest(spread);
        double errorRadians = Math.sqrt(variance / spread.from());
        boolean isTurn = StrictMath.toRadians(Rotations.angle(turn)) > CLEAR_TURN * errorRadians;
        Matrix3dc rotation = isTurn ? turn : Rotations.IDENTITY;
        Similarity aboutOrigin = Similarity.taking(all.fromMean(), all.toMean(), rotation, 1);
        List<Study> studies = together.stream().map(Mover::study).toList();
        CommonMotion described = MotionParts.of(
                studies.stream()
                        .map(study -> study.subject().prop().prop().name())
                        .toList(),
                aboutOrigin,
                all,
                isTurn,
                StrictMath.toDegrees(errorRadians),
                origin);
        return new Group(studies, aboutStage(aboutOrigin), described);
    }

    /** In three dimensions a turn as the audience sees it, unless one in all ways leaves clearly less. */
    private Matrix3dc simplest(PairSpread spread) {
        BestTurn turn = BestTurn.of(spread.cross(), dimensions, Handedness.PROPER);
        BestTurn seen = BestTurn.of(spread.cross(), Dimensions.FLAT, Handedness.PROPER);
        double more =
                spread.left(seen.match() + spread.cross().m22(), Sizing.KEPT) - spread.left(turn.match(), Sizing.KEPT);
        return more <= criterion.clearly(2) ? seen.rotation() : turn.rotation();
    }

    /** The same map for points that are counted from the zero point of the stage. */
    private Similarity aboutStage(Similarity motion) {
        return Similarity.taking(origin, origin.add(motion.shift(), new Vector3d()), motion.rotation(), 1);
    }
}
