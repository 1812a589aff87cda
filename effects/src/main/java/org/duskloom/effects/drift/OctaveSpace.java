package org.duskloom.effects.drift;

import org.duskloom.effects.kit.SharePlane;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.random.GradientNoise;
import org.duskloom.engine.random.StableHash;

/** The noise of one octave, and where the pixels lie in it; the noise of each member is moved by what its key says. */
final class OctaveSpace {
    private final NoisePlaces places;
    private final double fineness;
    private final int[] memberOf;
    private final GradientNoise[] noiseOfMember;
    private final double[] offsetOfMember;

    /** @param number of the octave, from 0; each is twice as fine as the one before */
    OctaveSpace(Canvas canvas, NoisePlaces places, int number) {
        this.places = places;
        fineness = 1L << number;
        memberOf = canvas.memberOf();
        noiseOfMember = new GradientNoise[canvas.memberCount()];
        offsetOfMember = new double[3 * canvas.memberCount()];
        for (int member = 0; member < noiseOfMember.length; member++) {
            long key = StableHash.combine(canvas.memberKey(member), number);
            noiseOfMember[member] = new GradientNoise(key);
            for (int axis = 0; axis < 3; axis++) {
                offsetOfMember[3 * member + axis] = StableHash.unitDouble(StableHash.combine(key, axis));
            }
        }
    }

    int pixelCount() {
        return memberOf.length;
    }

    /** How many cells of this octave a pass is. */
    double fineness() {
        return fineness;
    }

    /** Where the pixel stands between two planes of whole z when no pass has gone by, in [0, 1). */
    float start(int pixel) {
        double z = place(2, places.z(pixel), pixel);
        return Math.min(SharePlane.LAST, (float) (z - Math.floor(z)));
    }

    /**
     * Computes what a plane gives to the noise of a pixel; see {@link GradientNoise#plane}.
     *
     * @param planesGoneBy counted from the plane that is just below the pixel, or through it, when no pass has gone by
     */
    void fill(int pixel, int planesGoneBy, float[] values, float[] slopes) {
        long plane = (long) Math.floor(place(2, places.z(pixel), pixel)) + planesGoneBy;
        double x = place(0, places.x(pixel), pixel);
        double y = place(1, places.y(pixel), pixel);
        noiseOfMember[memberOf[pixel]].plane(x, y, plane, pixel, values, slopes);
    }

    int[] memberOf() {
        return memberOf;
    }

    NoisePlaces places() {
        return places;
    }

    GradientNoise noiseOf(int member) {
        return noiseOfMember[member];
    }

    /** How far the noise of a member is moved along an axis. */
    double offset(int member, int axis) {
        return offsetOfMember[3 * member + axis];
    }

    private double place(int axis, double coarse, int pixel) {
        return coarse * fineness + offsetOfMember[3 * memberOf[pixel] + axis];
    }
}
