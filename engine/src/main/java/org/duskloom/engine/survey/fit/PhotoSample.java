package org.duskloom.engine.survey.fit;

import java.util.ArrayList;
import java.util.List;
import org.duskloom.engine.survey.MeasuredProp;
import org.duskloom.engine.survey.Measurements;

/**
 * Chooses the measured pixels that a photo is laid on the stage by: as many of every prop, so that a long one does not
 * outvote the others.
 */
final class PhotoSample {
    private static final int MOST_PIXELS = 400;
    private static final int LEAST_OF_A_PROP = 2;
    private static final int MOST_OF_A_PROP = 40;

    private PhotoSample() {}

    /** Indices into all measured pixels, prop after prop. */
    static int[] of(Measurements measurements) {
        List<MeasuredProp> props = measurements.props();
        int ofEach = Math.max(LEAST_OF_A_PROP, Math.min(MOST_OF_A_PROP, MOST_PIXELS / props.size()));
        int step = (props.size() * LEAST_OF_A_PROP + MOST_PIXELS - 1) / MOST_PIXELS;
        List<Integer> sample = new ArrayList<>();
        int first = 0;
        for (int i = 0; i < props.size(); i++) {
            if (i % step == 0) {
                for (int index : MeasuredMoments.spread(props.get(i), ofEach)) {
                    sample.add(first + index);
                }
            }
            first += props.get(i).count();
        }
        return sample.stream().mapToInt(Integer::intValue).toArray();
    }
}
