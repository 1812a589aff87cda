package org.duskloom.engine.survey.fit;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.duskloom.engine.display.Display;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.map.Prop;
import org.duskloom.engine.survey.Dimensions;
import org.duskloom.engine.survey.MeasuredProp;
import org.duskloom.engine.survey.Measurements;
import org.duskloom.engine.survey.Overall;

/**
 * Finds out whether all measurements are wrong alike: in another unit, from behind, or places in a photo. One
 * similarity has to bring most of the props to where they are described, as {@link PhotoFit} finds it, and no plain
 * move or turn of everything may do that.
 */
final class OverallSearch {
    /** Millimetres in what people measure in. */
    private static final Map<String, Double> UNITS =
            Map.of("mm", 1.0, "cm", 10.0, "m", 1000.0, "inches", 25.4, "feet", 304.8);

    /** A factor so near to that of a unit is that of the unit. */
    private static final double UNIT_DEVIATION = 0.02;

    /**
     * Nobody measures everything so much too large or too small, and two props that were moved apart are no more than
     * that.
     */
    private static final double LARGEST_MISMEASURED = 1.25;

    private static final double ALMOST_UPRIGHT_DEGREES = 5;

    /** Through two pixels there is always a similarity; so many have to agree for one prop, and for several. */
    private static final int FEWEST_OF_ONE_PROP = 4;

    private static final int FEWEST_OF_SEVERAL = 6;

    /** The share of a prop's pixels that has to agree. */
    private static final double MOST_PIXELS = 0.6;

    private static final double NEARLY_ALL_PIXELS = 0.8;

    /** How far a mirror image moves the pixels of a prop, by its size, at least. */
    private static final double MIRRORED = 0.5;

    private final Display display;
    private final Measurements measurements;
    private final double usual;

    /** What was found, and the measurements as they would be without it. */
    record Found(Overall overall, Measurements corrected) {}

    private OverallSearch(Display display, Measurements measurements) {
        this.display = display;
        this.measurements = measurements;
        this.usual = NoiseEstimate.usual(
                Extent.diagonal(display.map().stage()), display.units().millimetres());
    }

    static Optional<Found> of(Display display, Measurements measurements) {
        OverallSearch search = new OverallSearch(display, measurements);
        Optional<PhotoFit> plain = PhotoFit.of(measurements, display.map(), false);
        if (plain.filter(search::isAgreed).isPresent()) {
            return plain.filter(alignment -> !isTrueToSize(alignment)).flatMap(search::found);
        }
        return PhotoFit.of(measurements, display.map(), true)
                .filter(search::isAgreed)
                .flatMap(search::found);
    }

    private static boolean isTrueToSize(PhotoFit alignment) {
        double scale = alignment.described().unitsPerPictureUnit();
        return scale < LARGEST_MISMEASURED && scale > 1 / LARGEST_MISMEASURED;
    }

    /**
     * Whether most of the props, by most of their pixels, are where they are described once the measurements are laid
     * so. Unless it is a unit, only props count that tell: two small ones can be brought anywhere.
     */
    private boolean isAgreed(PhotoFit alignment) {
        List<MeasuredProp> laid = alignment.onStage(measurements).props();
        boolean single = laid.size() == 1;
        boolean all = single || unit(alignment).isPresent();
        double share = single ? NEARLY_ALL_PIXELS : MOST_PIXELS;
        int telling = 0;
        int props = 0;
        int pixels = 0;
        for (MeasuredProp prop : laid) {
            if (all || tells(prop, alignment)) {
                int agreeing = agreeing(prop);
                telling++;
                pixels += agreeing;
                props += agreeing >= share * prop.count() ? 1 : 0;
            }
        }
        return 2 * props > telling
                && (single ? pixels >= FEWEST_OF_ONE_PROP : props > 1 && pixels >= FEWEST_OF_SEVERAL);
    }

    /** Whether the prop is so large that its own pixels say how large it was measured, or that it is mirrored. */
    private boolean tells(MeasuredProp laid, PhotoFit alignment) {
        double resized = Math.abs(1 - 1 / alignment.described().unitsPerPictureUnit());
        double changed = alignment.described().countsDown() ? Math.max(MIRRORED, resized) : resized;
        boolean trueToSize = isTrueToSize(alignment) && !alignment.described().countsDown();
        return trueToSize || Extent.diagonal(laid.places()) * changed > 2 * reach(laid);
    }

    private int agreeing(MeasuredProp measured) {
        int first = display.map().props().get(measured.propIndex()).firstPixel();
        Positions stage = display.map().stage();
        double reach = reach(measured);
        int agreeing = 0;
        for (int i = 0; i < measured.count(); i++) {
            double dx = measured.places().x(i) - stage.x(first + measured.pixel(i));
            double dy = measured.places().y(i) - stage.y(first + measured.pixel(i));
            agreeing += dx * dx + dy * dy <= reach * reach ? 1 : 0;
        }
        return agreeing;
    }

    private double reach(MeasuredProp measured) {
        Prop prop = display.map().props().get(measured.propIndex());
        double step = Extent.medianStep(display.map().stage(), prop.firstPixel(), prop.pixelCount());
        return NoiseEstimate.largest(step, usual);
    }

    private Optional<Found> found(PhotoFit alignment) {
        Optional<String> unit = unit(alignment);
        boolean single = measurements.props().size() == 1;
        Overall.Flip flip = single ? Overall.Flip.NONE : flip(alignment);
        if (unit.isPresent() || isTrueToSize(alignment) && !single) {
            double factor = unit.map(name -> factorOf(UNITS.get(name))).orElse(1.0);
            boolean depth = flip == Overall.Flip.LEFT_RIGHT && isDepthFlipped(factor);
            Overall overall = new Overall(Overall.Cause.READING, factor, unit, flip, depth);
            return Optional.of(new Found(overall, corrected(overall)));
        }
        double factor = 1 / alignment.described().unitsPerPictureUnit();
        Overall photo = new Overall(Overall.Cause.PHOTO, factor, Optional.empty(), flip, false);
        return single ? Optional.empty() : Optional.of(new Found(photo, alignment.onStage(measurements)));
    }

    /** A picture that counts down is one that counts up, mirrored in y; turned by half as well, it is mirrored in x. */
    private static Overall.Flip flip(PhotoFit alignment) {
        if (!alignment.described().countsDown()) {
            return Overall.Flip.NONE;
        }
        return Math.abs(alignment.described().turnDegrees()) > 90 ? Overall.Flip.LEFT_RIGHT : Overall.Flip.TOP_BOTTOM;
    }

    /** The unit of everything that hangs upright; a single prop may be turned or mirrored besides. */
    private Optional<String> unit(PhotoFit alignment) {
        Overall.Flip flip = flip(alignment);
        double turn = Math.abs(alignment.described().turnDegrees());
        double askew = flip == Overall.Flip.LEFT_RIGHT ? 180 - turn : turn;
        boolean upright = askew < ALMOST_UPRIGHT_DEGREES && flip != Overall.Flip.TOP_BOTTOM;
        double factor = 1 / alignment.described().unitsPerPictureUnit();
        return UNITS.entrySet().stream()
                .filter(unit -> upright || measurements.props().size() == 1)
                .filter(unit -> unit.getValue() != display.units().millimetres())
                .filter(unit -> Math.abs(factor / factorOf(unit.getValue()) - 1) < UNIT_DEVIATION)
                .map(Map.Entry::getKey)
                .findFirst();
    }

    private double factorOf(double millimetres) {
        return display.units().millimetres() / millimetres;
    }

    private boolean isDepthFlipped(double divisor) {
        double kept = 0;
        double flipped = 0;
        for (MeasuredProp measured : measurements.props()) {
            int first = display.map().props().get(measured.propIndex()).firstPixel();
            for (int i = 0; i < measured.count(); i++) {
                double z = display.map().stage().z(first + measured.pixel(i));
                double read = measured.places().z(i) / divisor;
                kept += (read - z) * (read - z);
                flipped += (read + z) * (read + z);
            }
        }
        return measurements.dimensions() == Dimensions.DEEP && flipped < kept;
    }

    private Measurements corrected(Overall overall) {
        double x = (overall.flip() == Overall.Flip.LEFT_RIGHT ? -1 : 1) / overall.factor();
        double y = (overall.flip() == Overall.Flip.TOP_BOTTOM ? -1 : 1) / overall.factor();
        double z = (overall.isDepthFlipped() ? -1 : 1) / overall.factor();
        List<MeasuredProp> props = measurements.props().stream()
                .map(prop -> prop.at(times(prop.places(), x, y, z)))
                .toList();
        return new Measurements(props, measurements.dimensions());
    }

    private static Positions times(Positions places, double x, double y, double z) {
        double[][] at = new double[3][places.size()];
        for (int i = 0; i < places.size(); i++) {
            at[0][i] = x * places.x(i);
            at[1][i] = y * places.y(i);
            at[2][i] = z * places.z(i);
        }
        return new Positions(at[0], at[1], at[2]);
    }
}
