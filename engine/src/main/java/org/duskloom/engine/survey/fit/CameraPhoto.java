package org.duskloom.engine.survey.fit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.duskloom.engine.display.Display;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.survey.CameraStand;
import org.duskloom.engine.survey.Dimensions;
import org.duskloom.engine.survey.MeasuredProp;
import org.duskloom.engine.survey.Measurements;
import org.duskloom.engine.survey.PhotoAlignment;
import org.joml.Vector3d;

/** A photo that was taken from anywhere before the display: the camera that most of its pixels agree with. */
final class CameraPhoto implements LaidPhoto {
    /** Twice as many coordinates as a camera has numbers, and a few that may be wrong. */
    private static final int LEAST_PIXELS = 16;

    /** A squared error has to be so many times larger before a camera is worth its numbers. */
    private static final double WORTHWHILE = 1.3;

    /** Where so large a share agrees, y counts down as it does in pictures. */
    private static final double SURELY_DOWN = 0.6;

    /** Numbers that are known to that share are told. */
    private static final double WELL_KNOWN = 0.1;

    private static final int NEARNESS_STEP = 6;

    private final PixelMap map;
    private final CameraSearch.Found found;
    private final boolean countsDown;
    private final double floor;

    private CameraPhoto(PixelMap map, CameraSearch.Found found, boolean countsDown, double floor) {
        this.map = map;
        this.found = found;
        this.countsDown = countsDown;
        this.floor = floor;
    }

    /**
     * Finds the camera.
     *
     * @param floor what places are wrong by at least, in units of the display
     * @return nothing if too little was measured, or all on one line
     */
    static Optional<CameraPhoto> of(Measurements measurements, Display display, double floor) {
        PixelMap map = display.map();
        Positions described = described(measurements, map);
        int[] all = IntStream.range(0, described.size()).toArray();
        double thick = Extent.diagonal(described) / 100;
        if (described.size() < LEAST_PIXELS || Extent.rank(described, all, thick) < 2) {
            return Optional.empty();
        }
        int[] sample = PhotoSample.of(measurements);
        CameraPhoto down = of(measurements, described, map, sample, true, floor);
        if (down.isSound(measurements) && down.found.agreeing().length > SURELY_DOWN * described.size()) {
            return Optional.of(down);
        }
        CameraPhoto up = of(measurements, described, map, sample, false, floor);
        return Optional.of(down.found.cost() <= up.found.cost() ? down : up)
                .filter(camera -> camera.isSound(measurements));
    }

    private static CameraPhoto of(
            Measurements measurements,
            Positions described,
            PixelMap map,
            int[] sample,
            boolean countsDown,
            double floor) {
        Positions picture = PhotoFit.picture(measurements, !countsDown);
        double ofPicture = floor * Extent.diagonal(picture) / Extent.diagonal(described);
        CameraSearch.Found found = CameraSearch.of(described, picture, propOf(measurements), sample, ofPicture);
        return new CameraPhoto(map, found, countsDown, floor);
    }

    /** Where the measured pixels are described, with their depth. */
    private static Positions described(Measurements measurements, PixelMap map) {
        double[][] at = new double[3][measurements.pixelCount()];
        int next = 0;
        for (MeasuredProp prop : measurements.props()) {
            int first = map.props().get(prop.propIndex()).firstPixel();
            for (int i = 0; i < prop.count(); i++, next++) {
                at[0][next] = map.stage().x(first + prop.pixel(i));
                at[1][next] = map.stage().y(first + prop.pixel(i));
                at[2][next] = map.stage().z(first + prop.pixel(i));
            }
        }
        return new Positions(at[0], at[1], at[2]);
    }

    /** Whether it stands before the display and explains anything. */
    private boolean isSound(Measurements measurements) {
        return found.cost() < Double.POSITIVE_INFINITY
                && found.sigma() < PhotoFit.VAGUE * Extent.diagonal(PhotoFit.picture(measurements, false));
    }

    private static int[] propOf(Measurements measurements) {
        return measurements.props().stream()
                .flatMapToInt(prop -> IntStream.generate(prop::propIndex).limit(prop.count()))
                .toArray();
    }

    /** Whether it is much better than a similarity, or explains more props: the picture is not straight and flat. */
    boolean explainsMore(PhotoFit similar, Measurements measurements) {
        double sigma = found.sigma() * found.camera().unitsPerPictureUnit();
        double better = sigma * sigma + floor * floor;
        double plain = similar.sigma() * similar.sigma() + floor * floor;
        return plain > WORTHWHILE * better
                || props(measurements, found.agreeing()) > props(measurements, similar.agreeing());
    }

    /** How many props have more than half of their pixels among these. */
    private static int props(Measurements measurements, int[] agreeing) {
        int first = 0;
        int props = 0;
        for (MeasuredProp prop : measurements.props()) {
            int end = first + prop.count();
            int from = first;
            long inside =
                    Arrays.stream(agreeing).filter(i -> i >= from && i < end).count();
            props += 2 * inside > prop.count() ? 1 : 0;
            first = end;
        }
        return props;
    }

    @Override
    public PhotoAlignment described() {
        Camera camera = found.camera();
        double[] up = camera.upright();
        return new PhotoAlignment(
                camera.unitsPerPictureUnit(),
                StrictMath.toDegrees(StrictMath.atan2(up[0], up[1])),
                countsDown,
                found.agreeing().length,
                Optional.of(stand(camera)));
    }

    private CameraStand stand(Camera camera) {
        Vector3d direction = camera.direction();
        double flat = Math.sqrt(direction.x * direction.x + direction.z * direction.z);
        boolean isKnown = found.errors()[NEARNESS_STEP] < WELL_KNOWN * camera.nearness();
        return new CameraStand(
                StrictMath.toDegrees(StrictMath.atan2(direction.x, direction.z)),
                StrictMath.toDegrees(StrictMath.atan2(direction.y, flat)),
                isKnown ? OptionalDouble.of(camera.distance()) : OptionalDouble.empty(),
                isKnown ? OptionalDouble.of(camera.focalLength()) : OptionalDouble.empty(),
                isKnown ? OptionalDouble.of(camera.k1()) : OptionalDouble.empty());
    }

    @Override
    public Measurements onStage(Measurements measurements) {
        List<MeasuredProp> props = new ArrayList<>();
        for (MeasuredProp prop : measurements.props()) {
            props.add(cut(prop, plane(prop.propIndex())));
        }
        return new Measurements(props, Dimensions.FLAT);
    }

    @Override
    public Optional<MeasuredProp> atDepthOf(MeasuredProp inPicture, int hostIndex) {
        PropPlane there = plane(hostIndex);
        return there.isSameAs(plane(inPicture.propIndex()), floor)
                ? Optional.empty()
                : Optional.of(cut(inPicture, there));
    }

    private PropPlane plane(int propIndex) {
        return new PropPlane(found.camera(), map.stage(), map.props().get(propIndex));
    }

    private MeasuredProp cut(MeasuredProp inPicture, PropPlane plane) {
        double[] x = new double[inPicture.count()];
        double[] y = new double[inPicture.count()];
        for (int i = 0; i < x.length; i++) {
            double pictureX = inPicture.places().x(i);
            double pictureY = inPicture.places().y(i);
            Vector3d place = plane.place(inPicture.pixel(i), pictureX, countsDown ? pictureY : 0.0 - pictureY);
            x[i] = place.x;
            y[i] = place.y;
        }
        return inPicture.at(new Positions(x, y, new double[x.length]));
    }
}
