package org.duskloom.engine.survey.fit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.random.SplitMix64;
import org.duskloom.engine.survey.fit.Camera.Frame;

/**
 * Finds the camera that most pixels agree with. It begins with cameras all round the front of the display, each laid on
 * the picture by the similarity with the least median of squared misfits; improves the best of them with weights that
 * leave out what does not go with the others (J. W. Tukey's biweight; P. J. Huber, Robust Statistics, 1981); and ends
 * with plain least squares over the pixels that agree, so that a branch that droops bends nothing.
 */
final class CameraSearch {
    private static final double[] ASIDE_DEGREES = {-60, -40, -20, 0, 20, 40, 60};
    private static final double[] ABOVE_DEGREES = {-12, 10, 35};
    private static final double NEARNESS = 0.4;
    private static final int FIRST_SAMPLE = 120;
    private static final int FIRST_ROUNDS = 12;
    private static final int IMPROVED = 5;
    private static final int LAST_ROUNDS = 60;
    private static final int STEPS_OF_ROUND = 3;

    /** Beyond so many times what half of the pixels, and then a quarter of them, are off, the biweight leaves out. */
    private static final double FIRST_REACH = 4;

    private static final double LAST_REACH = 2;

    /** A camera without a usual lens is not thought of before the direction is known. */
    private static final double STIFF = 0.1;

    private static final int ROUNDS = 30;

    /** So many props of which one in three hangs wrong are all right once in six times. */
    private static final int PROPS_TRIED = 4;

    private static final int TRIALS = 60;
    private static final int TRIAL_STEPS = 15;
    private static final int STARTS_TRIED = 3;
    private static final long SEED = 20_26_06_21L;
    private static final double SURELY = 4;
    private static final int STEPS = 40;

    private final Positions stage;
    private final Positions picture;
    private final int[] sample;
    private final double floor;
    private final CameraFit sampled;
    private final int[] propOf;

    private CameraSearch(Positions stage, Positions picture, int[] propOf, int[] sample, double floor) {
        this.propOf = propOf;
        this.stage = stage;
        this.picture = picture;
        this.sample = sample;
        this.floor = floor;
        this.sampled = new CameraFit(stage, picture, sample);
    }

    /**
     * A camera, and what agrees with it.
     *
     * @param agreeing the pixels that do
     * @param sigma the error of a measured coordinate of these, in units of the picture
     * @param errors the standard deviations of the camera's numbers
     * @param cost how much is left, by which cameras are compared
     */
    record Found(Camera camera, int[] agreeing, double sigma, double[] errors, double cost) {}

    /** What was improved, and how much is left: what is far off counts little more than what is not near. */
    private record Improved(Camera camera, double cost) {}

    /**
     * Finds it; the same for the same places.
     *
     * @param stage where the pixels are described
     * @param picture where they are seen, y down
     * @param propOf which prop each is of
     * @param sample those that count at first
     * @param floor what errors are at least, in units of the picture
     */
    static Found of(Positions stage, Positions picture, int[] propOf, int[] sample, double floor) {
        return new CameraSearch(stage, picture, propOf, sample, floor).found();
    }

    private Found found() {
        List<Camera> starts = starts();
        List<Improved> tried = new ArrayList<>();
        starts.forEach(start -> tried.add(new Improved(start, cost(sampled, start))));
        tried.addAll(bySomeProps(starts));
        tried.sort(Comparator.comparingDouble(Improved::cost));
        return tried.stream()
                .limit(IMPROVED)
                .map(start -> improved(start.camera(), sampled, LAST_ROUNDS))
                .min(Comparator.comparingDouble(Improved::cost))
                .map(best -> agreed(best.camera()))
                .orElseThrow();
    }

    /** Where props hang wrong, a few others tell the camera alone. */
    private List<Improved> bySomeProps(List<Camera> starts) {
        List<int[]> byProp = sampleByProp();
        List<Improved> tried = new ArrayList<>();
        SplitMix64 draws = new SplitMix64(SEED);
        for (int trial = 0; byProp.size() > PROPS_TRIED && trial < TRIALS; trial++) {
            int[] some = IntStream.generate(() -> (int) (draws.nextDouble() * byProp.size()))
                    .distinct()
                    .limit(PROPS_TRIED)
                    .mapToObj(byProp::get)
                    .flatMapToInt(Arrays::stream)
                    .toArray();
            CameraFit few = new CameraFit(stage, picture, some);
            double[] weights = new double[some.length];
            Arrays.fill(weights, 1);
            Camera start = starts.get(trial % Math.min(STARTS_TRIED, starts.size()));
            Camera camera = few.fitted(start, weights, floor, 1, TRIAL_STEPS);
            tried.add(new Improved(camera, cost(sampled, camera)));
        }
        return tried;
    }

    private List<int[]> sampleByProp() {
        return Arrays.stream(sample)
                .boxed()
                .collect(Collectors.groupingBy(i -> propOf[i], TreeMap::new, Collectors.toList()))
                .values()
                .stream()
                .map(pixels -> pixels.stream().mapToInt(Integer::intValue).toArray())
                .toList();
    }

    /** Cameras of all directions, a little improved; the best of them. */
    private List<Camera> starts() {
        Frame stageFrame = Frame.round(stage);
        Frame pictureFrame = Frame.round(picture);
        int count = Math.min(FIRST_SAMPLE, sample.length);
        int[] some = IntStream.range(0, count)
                .map(i -> sample[(int) ((long) i * sample.length / count)])
                .toArray();
        CameraFit few = new CameraFit(stage, picture, some);
        List<Improved> starts = new ArrayList<>();
        for (double aside : ASIDE_DEGREES) {
            for (double above : ABOVE_DEGREES) {
                CameraStart start = CameraStart.of(stageFrame, pictureFrame, aside, above, NEARNESS)
                        .laidOn(stage, picture, some);
                starts.add(improved(start.camera(), few, FIRST_ROUNDS));
            }
        }
        starts.sort(Comparator.comparingDouble(Improved::cost));
        return starts.stream().limit(IMPROVED).map(Improved::camera).toList();
    }

    /** Fits to what is near, and takes less and less for near. */
    private Improved improved(Camera start, CameraFit fit, int rounds) {
        Camera camera = start;
        for (int round = 0; round < rounds; round++) {
            double[] squares = fit.squares(camera);
            boolean isFirst = round < FIRST_ROUNDS / 2;
            double near = isFirst ? FIRST_REACH * ofRank(squares, 2) : LAST_REACH * ofRank(squares, 4);
            double reach = Math.max(near, SURELY * floor);
            double looseness = rounds > FIRST_ROUNDS ? 1 : STIFF;
            camera = fit.fitted(camera, biweights(squares, reach), reach / SURELY, looseness, STEPS_OF_ROUND);
        }
        return new Improved(camera, cost(fit, camera));
    }

    /** Nothing is measured from behind. */
    private double cost(CameraFit fit, Camera camera) {
        double reach = SURELY * floor;
        double cost = Arrays.stream(fit.squares(camera))
                .map(square -> StrictMath.log(1 + square / (reach * reach)))
                .sum();
        return camera.direction().z > 0 ? cost : Double.POSITIVE_INFINITY;
    }

    private static double quartile(double[] squares) {
        return ofRank(squares, 4) / PhotoFit.QUARTILE_LENGTH;
    }

    /** Fits to the pixels that agree, of all, and looks again which ones do, until they are the same. */
    private Found agreed(Camera start) {
        Camera camera = start;
        double sigma = Math.max(floor, quartile(sampled.squares(start)));
        int[] all = IntStream.range(0, stage.size()).toArray();
        CameraFit everyOne = new CameraFit(stage, picture, all);
        int[] agreeing = {};
        double[] weights = {};
        for (int round = 0; round < ROUNDS; round++) {
            double most = PhotoFit.AGREES * Math.max(sigma, floor);
            double[] squares = everyOne.squares(camera);
            int[] inside =
                    Arrays.stream(all).filter(i -> squares[i] <= most * most).toArray();
            if (inside.length < Camera.PARAMETERS || Arrays.equals(inside, agreeing)) {
                break;
            }
            agreeing = inside;
            weights = new double[all.length];
            for (int i : inside) {
                weights[i] = 1;
            }
            camera = everyOne.fitted(camera, weights, Math.max(sigma, floor), 1, STEPS);
            double[] left = everyOne.squares(camera);
            double sum = Arrays.stream(inside).mapToDouble(i -> left[i]).sum();
            sigma = Math.sqrt(sum / (2 * inside.length));
        }
        double[] errors = agreeing.length == 0
                ? new double[Camera.PARAMETERS]
                : everyOne.errors(camera, weights, Math.max(sigma, floor));
        return new Found(camera, agreeing, sigma, errors, cost(sampled, camera));
    }

    private static double[] biweights(double[] squares, double reach) {
        double[] weights = new double[squares.length];
        for (int i = 0; i < weights.length; i++) {
            double share = 1 - squares[i] / (reach * reach);
            weights[i] = share > 0 ? share * share : 0;
        }
        return weights;
    }

    /** The root of the square below which one in so many are. */
    private static double ofRank(double[] squares, int oneIn) {
        double[] sorted = squares.clone();
        Arrays.sort(sorted);
        return Math.sqrt(sorted[Math.min(sorted.length - 1, sorted.length / oneIn)]);
    }
}
