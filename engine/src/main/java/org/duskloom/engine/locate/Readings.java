package org.duskloom.engine.locate;

import java.io.IOException;
import java.util.List;

/**
 * The light of every kept dot in pictures that follow the dark and the lit one of a round, each moved back to where
 * the lit one has it.
 */
final class Readings {
    final Reference reference;
    /**
     * By picture, then by kept dot: in a round, the ones and the zeros of the first bit, those of the next, and so on.
     */
    final float[][] light;

    private Readings(Reference reference, float[][] light) {
        this.reference = reference;
        this.light = light;
    }

    /**
     * @param shown for each reading the pictures that are averaged for it, at least one
     * @param plane is written over
     */
    static Readings read(Reference reference, List<int[]> shown, Pictures pictures, Plane plane)
            throws IOException, PicturesRefusedException {
        Aligner aligner = Aligner.of(reference);
        float[][] light = new float[shown.size()][reference.dots.count()];
        for (int reading = 0; reading < light.length; reading++) {
            for (int picture : shown.get(reading)) {
                pictures.read(picture, plane.codes);
                add(reference.dots, plane, aligner.of(plane), 1f / shown.get(reading).length, light[reading]);
            }
        }
        return new Readings(reference, light);
    }

    private static void add(KeptDots dots, Plane plane, Shift shift, float share, float[] light) {
        for (int i = 0; i < light.length; i++) {
            light[i] += share * plane.lightAt(dots.x(i) + shift.dx(), dots.y(i) + shift.dy());
        }
    }

    /** The light of a dot in the step in which those pixels are lit whose bit is 1. */
    float one(int bit, int dot) {
        return light[2 * bit][dot];
    }

    /** The light of a dot in the step in which those pixels are lit whose bit is 0. */
    float zero(int bit, int dot) {
        return light[2 * bit + 1][dot];
    }
}
