package org.duskloom.engine.survey.fit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.survey.MeasuredProp;

/**
 * Finds pixels that were measured at exactly one place though they are described far apart. Neighbours may come to one
 * place where measurements are rounded coarsely, so that two pixels have to be far apart, more of them less.
 */
final class Heaps {
    private static final double FAR_SHARE_OF_PROP = 0.25;
    private static final double NEAR_SHARE_OF_PROP = 0.1;
    private static final double NEAR_IN_STEPS = 3;

    private Heaps() {}

    /** The heaps of a prop's measurements, each as indices into the measured pixels. */
    static List<List<Integer>> of(MeasuredProp measured, Positions template) {
        Map<List<Double>, List<Integer>> byPlace = new LinkedHashMap<>();
        for (int i = 0; i < measured.count(); i++) {
            Positions at = measured.places();
            // Adding 0 makes one of both zeros.
            List<Double> place = List.of(at.x(i) + 0.0, at.y(i) + 0.0, at.z(i) + 0.0);
            byPlace.computeIfAbsent(place, key -> new ArrayList<>()).add(i);
        }
        List<List<Integer>> shared =
                byPlace.values().stream().filter(which -> which.size() > 1).toList();
        double size = Extent.diagonal(template);
        double step = Extent.medianStep(template, 0, template.size());
        double far = FAR_SHARE_OF_PROP * size;
        double near = Math.min(NEAR_SHARE_OF_PROP * size, NEAR_IN_STEPS * step);
        return shared.stream()
                .filter(which ->
                        extent(which, measured, template) > (shared.size() == 1 && which.size() > 2 ? near : far))
                .toList();
    }

    /** How far apart pixels are described. */
    static double extent(List<Integer> which, MeasuredProp measured, Positions template) {
        double[][] at = new double[3][which.size()];
        for (int i = 0; i < which.size(); i++) {
            int pixel = measured.pixel(which.get(i));
            at[0][i] = template.x(pixel);
            at[1][i] = template.y(pixel);
            at[2][i] = template.z(pixel);
        }
        return Extent.diagonal(new Positions(at[0], at[1], at[2]));
    }
}
