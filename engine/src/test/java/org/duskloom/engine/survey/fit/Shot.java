package org.duskloom.engine.survey.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import org.duskloom.engine.camera.Evening;
import org.duskloom.engine.camera.TestCamera;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.map.Prop;
import org.duskloom.engine.survey.Dimensions;
import org.duskloom.engine.survey.MeasuredProp;
import org.duskloom.engine.survey.Measurements;
import org.duskloom.engine.survey.SurveyResult;

/** What the test camera sees of a display as somebody hung it: the places of all lights that are not hidden. */
final class Shot {
    /** As well as the middle of a light is found in a photo, in picture pixels. */
    static final double SIGMA = 0.06;

    private final Built built;
    private final TestCamera camera;
    private final Measurements measurements;

    private Shot(Built built, TestCamera camera, Measurements measurements) {
        this.built = built;
        this.camera = camera;
        this.measurements = measurements;
    }

    /** @param setting where the camera stands, and what is hidden */
    static Shot of(Built built, long seed, UnaryOperator<Evening> setting) {
        PixelMap map = built.display().map();
        TestCamera camera = setting.apply(Evening.usual(hung(built), seed)).camera();
        Random random = new Random(seed);
        List<MeasuredProp> props = new ArrayList<>();
        for (int i = 0; i < map.props().size(); i++) {
            Prop prop = map.props().get(i);
            int[] seen = IntStream.range(0, prop.pixelCount())
                    .filter(pixel -> camera.isVisible(prop.firstPixel() + pixel))
                    .toArray();
            double[] x = new double[seen.length];
            double[] y = new double[seen.length];
            for (int k = 0; k < seen.length; k++) {
                double[] at = camera.place(prop.firstPixel() + seen[k], 0);
                x[k] = at[0] + SIGMA * random.nextGaussian();
                y[k] = at[1] + SIGMA * random.nextGaussian();
            }
            props.add(new MeasuredProp(i, seen, new Positions(x, y, new double[x.length])));
        }
        return new Shot(built, camera, new Measurements(props, Dimensions.FLAT, true));
    }

    Measurements measurements() {
        return measurements;
    }

    TestCamera camera() {
        return camera;
    }

    SurveyResult survey() {
        return Survey.compare(built.display(), measurements, OptionalDouble.empty());
    }

    /** Where all pixels hang. */
    static Positions hung(Built built) {
        PixelMap map = built.display().map();
        double[][] at = new double[3][map.pixelCount()];
        for (Prop prop : map.props()) {
            for (int i = 0; i < prop.pixelCount(); i++) {
                double[] place = built.place(prop.name(), i);
                for (int axis = 0; axis < 3; axis++) {
                    at[axis][prop.firstPixel() + i] = place[axis];
                }
            }
        }
        return new Positions(at[0], at[1], at[2]);
    }
}
