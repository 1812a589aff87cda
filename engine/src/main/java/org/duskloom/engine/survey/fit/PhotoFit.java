package org.duskloom.engine.survey.fit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.survey.Dimensions;
import org.duskloom.engine.survey.MeasuredProp;
import org.duskloom.engine.survey.Measurements;
import org.duskloom.engine.survey.PhotoAlignment;
import org.joml.Vector3d;

/**
 * How a photo of the whole display lies on the stage: moved, turned, scaled, its y counting down or up. Fitted to most
 * of the measured pixels, not to all, so that props that hang wrongly do not pull at it: the similarity with the least
 * median of squared misfits, among those through two pixels (P. J. Rousseeuw, Journal of the American Statistical
 * Association 79(388):871-880, 1984), then least squares over the pixels that agree with it. A photo tells nothing of a
 * move, a turn or a scale of the display as a whole. Immutable.
 */
final class PhotoFit implements LaidPhoto {
    /** Fewer points than that always agree. */
    static final int LEAST_PIXELS = 3;

    /** The first quartile of the length of a normal error in the plane, in standard deviations: sqrt(-2 ln 0.75). */
    static final double QUARTILE_LENGTH = 0.7585276164409321;

    /**
     * A misfit beyond that, in standard deviations of a coordinate, does not agree; chance does that once in 450 times.
     */
    static final double AGREES = 3.5;

    /** An error of such a share of the display is no agreement at all. */
    static final double VAGUE = 0.03;

    private static final int MOST_ROUNDS = 20;

    private final Similarity stageFromPicture;
    private final boolean countsDown;
    private final int[] agreeing;
    private final double sigma;

    private PhotoFit(Similarity stageFromPicture, boolean countsDown, int[] agreeing, double sigma) {
        this.stageFromPicture = stageFromPicture;
        this.countsDown = countsDown;
        this.agreeing = agreeing;
        this.sigma = sigma;
    }

    /**
     * Finds how the photo lies.
     *
     * @param measurements places in the picture
     * @param map where the same pixels are described
     * @return nothing if fewer than 3 pixels were measured, or all at one place
     */
    static Optional<PhotoFit> of(Measurements measurements, PixelMap map) {
        Positions described = described(measurements, map);
        Positions down = picture(measurements, true);
        Positions up = picture(measurements, false);
        if (described.size() < LEAST_PIXELS || !(Extent.diagonal(down) > 0) || !(Extent.diagonal(described) > 0)) {
            return Optional.empty();
        }
        int[] sample = PhotoSample.of(measurements);
        LeastMedian forDown = LeastMedian.of(down, described, sample);
        LeastMedian forUp = LeastMedian.of(up, described, sample);
        boolean isDown = forDown.median() <= forUp.median();
        return Optional.of(
                isDown
                        ? refined(down, described, forDown.similarity(), sample, true)
                        : refined(up, described, forUp.similarity(), sample, false));
    }

    /** The same for measurements of which it is known whether y counts down. */
    static Optional<PhotoFit> of(Measurements measurements, PixelMap map, boolean countsDown) {
        Positions described = described(measurements, map);
        Positions picture = picture(measurements, countsDown);
        if (described.size() < LEAST_PIXELS || !(Extent.diagonal(picture) > 0) || !(Extent.diagonal(described) > 0)) {
            return Optional.empty();
        }
        int[] sample = PhotoSample.of(measurements);
        LeastMedian start = LeastMedian.of(picture, described, sample);
        return Optional.of(start.similarity())
                .filter(similarity -> similarity.scale() > 0)
                .map(similarity -> refined(picture, described, similarity, sample, countsDown));
    }

    @Override
    public PhotoAlignment described() {
        return new PhotoAlignment(
                stageFromPicture.scale(),
                stageFromPicture.turnDegrees(),
                countsDown,
                agreeing.length,
                Optional.empty());
    }

    /** Which of all measured pixels agree. */
    int[] agreeing() {
        return agreeing.clone();
    }

    /** The error of a coordinate of those that agree, in the display's unit. */
    double sigma() {
        return sigma;
    }

    @Override
    public Measurements onStage(Measurements measurements) {
        List<MeasuredProp> props = new ArrayList<>();
        for (MeasuredProp prop : measurements.props()) {
            Positions places = prop.places();
            double[] x = new double[places.size()];
            double[] y = new double[places.size()];
            for (int i = 0; i < x.length; i++) {
                double pictureY = countsDown ? 0.0 - places.y(i) : places.y(i);
                Vector3d onStage = stageFromPicture.of(places.x(i), pictureY, 0);
                x[i] = onStage.x;
                y[i] = onStage.y;
            }
            props.add(prop.at(new Positions(x, y, new double[x.length])));
        }
        return new Measurements(props, Dimensions.FLAT);
    }

    @Override
    public Optional<MeasuredProp> atDepthOf(MeasuredProp inPicture, int hostIndex) {
        return Optional.empty();
    }

    /** Fits to the pixels that agree, and looks again which ones do, until they are the same. */
    private static PhotoFit refined(
            Positions picture, Positions described, Similarity start, int[] sample, boolean countsDown) {
        double least = NoiseEstimate.least(Extent.diagonal(described));
        Similarity similarity = start;
        double sigma = quartile(LeastMedian.squares(start, picture, described), sample) / QUARTILE_LENGTH;
        int[] agreeing = {};
        for (int round = 0; round < MOST_ROUNDS; round++) {
            double most = AGREES * Math.max(sigma, least);
            double[] squares = LeastMedian.squares(similarity, picture, described);
            int[] inside = IntStream.range(0, squares.length)
                    .filter(i -> squares[i] <= most * most)
                    .toArray();
            if (inside.length < LEAST_PIXELS || Arrays.equals(inside, agreeing)) {
                break;
            }
            agreeing = inside;
            SimilarityFit fit = fit(picture, described, inside);
            similarity = fit.similarity();
            sigma = Math.sqrt(fit.squaredError() / (2 * inside.length));
        }
        boolean isVague = sigma > VAGUE * Extent.diagonal(described);
        return new PhotoFit(similarity, countsDown, isVague ? new int[0] : agreeing, sigma);
    }

    private static SimilarityFit fit(Positions picture, Positions described, int[] which) {
        return SimilarityFit.of(
                picked(picture, which), picked(described, which), Dimensions.FLAT, Handedness.PROPER, Sizing.FREE);
    }

    private static double quartile(double[] squares, int[] sample) {
        double[] sorted =
                Arrays.stream(sample).mapToDouble(i -> squares[i]).sorted().toArray();
        return Math.sqrt(sorted[Math.min(sorted.length - 1, sorted.length / 4 + 1)]);
    }

    private static Positions picked(Positions points, int[] which) {
        double[] x = new double[which.length];
        double[] y = new double[which.length];
        for (int i = 0; i < which.length; i++) {
            x[i] = points.x(which[i]);
            y[i] = points.y(which[i]);
        }
        return new Positions(x, y, new double[which.length]);
    }

    /**
     * All measured places, prop after prop.
     *
     * @param countsDown whether y is to change its sign
     */
    static Positions picture(Measurements measurements, boolean countsDown) {
        double[] x = new double[measurements.pixelCount()];
        double[] y = new double[x.length];
        int next = 0;
        for (MeasuredProp prop : measurements.props()) {
            for (int i = 0; i < prop.count(); i++) {
                x[next] = prop.places().x(i);
                y[next++] =
                        countsDown ? 0.0 - prop.places().y(i) : prop.places().y(i);
            }
        }
        return new Positions(x, y, new double[x.length]);
    }

    /** Where the same pixels are described, seen from the front. */
    private static Positions described(Measurements measurements, PixelMap map) {
        double[] x = new double[measurements.pixelCount()];
        double[] y = new double[x.length];
        int next = 0;
        for (MeasuredProp prop : measurements.props()) {
            int first = map.props().get(prop.propIndex()).firstPixel();
            for (int i = 0; i < prop.count(); i++) {
                x[next] = map.stage().x(first + prop.pixel(i));
                y[next++] = map.stage().y(first + prop.pixel(i));
            }
        }
        return new Positions(x, y, new double[x.length]);
    }
}
