package org.duskloom.engine.locate;

import java.util.Arrays;
import org.duskloom.engine.find.FindCode;

/** Reads the word that a dot says: a bit is 1 where the picture of the ones is brighter than that of the zeros. */
final class WordReader {
    /** Bits that are no clearer than this share of the usual one of their dot are unsure. */
    private static final double UNSURE = 0.2;

    private static final int CLEAR_OF_NOISE = 4;

    /** What differs by less than this share of a usual light is no light of its own. */
    private static final double LEAST_SHARE = 0.03;

    /** By which share of its light a pair may miss the lit picture. */
    private static final double PAIR_TOLERANCE = 0.35;

    private static final int MOST_UNSURE = 2;

    private final Readings readings;
    private final Reference reference;
    private final FindCode code;
    private final float[] sizes;
    private final float[] sorted;
    /** How clear the bits of the last dot were: the usual difference of its pairs, in linear light. */
    float usual;

    /** How clear its least clear bit was, as a share of that. */
    float sureness;

    WordReader(Readings readings, FindCode code) {
        this.readings = readings;
        this.reference = readings.reference;
        this.code = code;
        this.sizes = new float[code.bits()];
        this.sorted = new float[code.bits()];
    }

    /** The pixel whose word a dot says; -1 if it says none for sure. */
    int pixel(int dot) {
        int bits = code.bits();
        int word = 0;
        float brightest = 0;
        for (int bit = 0; bit < bits; bit++) {
            float difference = readings.one(bit, dot) - readings.zero(bit, dot);
            word |= difference > 0 ? 1 << bit : 0;
            sizes[bit] = Math.abs(difference);
            sorted[bit] = sizes[bit];
            brightest = Math.max(brightest, Math.max(readings.one(bit, dot), readings.zero(bit, dot)));
        }
        Arrays.sort(sorted);
        usual = sorted[bits / 2];
        sureness = usual > 0 ? sorted[0] / usual : 0;
        double noise = CLEAR_OF_NOISE * reference.noiseAt(brightest);
        if (usual < noise || usual < LEAST_SHARE * reference.usualPeak || !addsUp(dot, noise)) {
            return -1;
        }
        return pixel(word, Math.max(noise, UNSURE * usual));
    }

    /**
     * Whether the last dot, which says no number, is burnt out by several lights at once: which of them are lit when
     * cannot be seen there.
     */
    boolean isSmothered(int dot) {
        return reference.lit[dot] >= Plane.BURNT_LIGHT
                && !reference.nearLamp[dot]
                && addsUp(dot, CLEAR_OF_NOISE * reference.noiseAt(1));
    }

    private int pixel(int word, double sure) {
        int unsure = 0;
        int count = 0;
        for (int bit = 0; bit < code.bits(); bit++) {
            if (sizes[bit] < sure) {
                unsure |= 1 << bit;
                count++;
            }
        }
        if (count > MOST_UNSURE) {
            return -1;
        }
        // All ways to fill in the unsure bits; as words differ in four bits at least, no two of them are words.
        for (int fill = unsure; ; fill = fill - 1 & unsure) {
            int pixel = code.pixel(word & ~unsure | fill);
            if (pixel >= 0 || fill == 0) {
                return pixel;
            }
        }
    }

    /** Whether each pair, but for one, gives together what the lit picture shows: else it is no light of the run. */
    private boolean addsUp(int dot, double noise) {
        float dark = reference.dark[dot];
        float lit = reference.lit[dot];
        double tolerance = PAIR_TOLERANCE * Math.max(usual, lit - dark) + noise;
        int misses = 0;
        for (int bit = 0; bit < code.bits(); bit++) {
            float one = readings.one(bit, dot);
            float zero = readings.zero(bit, dot);
            boolean burnt = lit > Plane.BURNT_LIGHT || one > Plane.BURNT_LIGHT || zero > Plane.BURNT_LIGHT;
            double miss = burnt ? Math.abs(Math.max(one, zero) - lit) : Math.abs(one + zero - lit - dark);
            misses += miss > tolerance ? 1 : 0;
        }
        return misses <= 1;
    }
}
