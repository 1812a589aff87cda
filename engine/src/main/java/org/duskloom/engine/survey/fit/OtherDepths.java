package org.duskloom.engine.survey.fit;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.map.Prop;
import org.duskloom.engine.survey.MeasuredProp;
import org.duskloom.engine.survey.Measurements;

/**
 * Studies of a prop as if it hung in the plane of another one: in a picture that was taken aside it is elsewhere on the
 * stage if its depth is another than described.
 */
final class OtherDepths implements IntFunction<Map<Integer, Study>> {
    private static final int PLACES_TRIED = 3;

    /** How far from the other's middle its own may be, by the other's size. */
    private static final double NEAR = 0.3;

    private final LaidPhoto photo;
    private final Measurements inPicture;
    private final PixelMap map;
    private final Function<MeasuredProp, Study> study;

    /**
     * @param inPicture the measurements as they are in the picture
     * @param study studies measurements on the stage
     */
    OtherDepths(LaidPhoto photo, Measurements inPicture, PixelMap map, Function<MeasuredProp, Study> study) {
        this.photo = photo;
        this.inPicture = inPicture;
        this.map = map;
        this.study = study;
    }

    /** A place that may be the middle of another prop, once it is taken to be in the plane of that. */
    private record Place(int host, MeasuredProp measured, double distance) {}

    /** By the prop in whose plane it is taken to be; those near to which it then is. */
    @Override
    public Map<Integer, Study> apply(int propIndex) {
        MeasuredProp measured = inPicture.props().stream()
                .filter(prop -> prop.propIndex() == propIndex)
                .findFirst()
                .orElseThrow();
        List<Place> places = IntStream.range(0, map.props().size())
                .filter(host -> host != propIndex)
                .mapToObj(host -> place(measured, host))
                .flatMap(Optional::stream)
                .sorted(Comparator.comparingDouble(Place::distance))
                .limit(PLACES_TRIED)
                .toList();
        Map<Integer, Study> studies = new TreeMap<>();
        places.forEach(place -> studies.put(place.host(), study.apply(place.measured())));
        return studies;
    }

    private Optional<Place> place(MeasuredProp measured, int host) {
        Prop prop = map.props().get(host);
        double[] middle = middle(map.stage(), prop.firstPixel(), prop.pixelCount());
        return photo.atDepthOf(measured, host)
                .map(there -> new Place(host, there, distance(middle, middle(there.places(), 0, there.count()))))
                .filter(place -> place.distance() < NEAR * middle[2]);
    }

    private static double distance(double[] a, double[] b) {
        return Math.sqrt((a[0] - b[0]) * (a[0] - b[0]) + (a[1] - b[1]) * (a[1] - b[1]));
    }

    /** The middle of the box, to the right and up, and the box's diagonal. */
    private static double[] middle(Positions places, int first, int count) {
        double[] low = {Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY};
        double[] high = {Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY};
        for (int i = first; i < first + count; i++) {
            low[0] = Math.min(low[0], places.x(i));
            low[1] = Math.min(low[1], places.y(i));
            high[0] = Math.max(high[0], places.x(i));
            high[1] = Math.max(high[1], places.y(i));
        }
        return new double[] {(low[0] + high[0]) / 2, (low[1] + high[1]) / 2, distance(low, high)};
    }
}
