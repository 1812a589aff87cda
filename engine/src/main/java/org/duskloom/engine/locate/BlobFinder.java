package org.duskloom.engine.locate;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.duskloom.engine.find.FindCode;

/** Reads all kept dots and gathers connected ones that say the same number. */
final class BlobFinder {
    private static final int LEAST_DOTS = 2;

    /**
     * For each dot that says a number, so many may be burnt out by several lights. Measured with the test camera: in
     * pictures with more than a quarter many lights were put more than half way to the next one, below few were (3 of
     * 1,288 at 0.11, 1 of 250 at 0.17). A limit that refused those would refuse lights, too, that hang two dots apart
     * and are found where they are.
     */
    private static final double MOST_SMOTHERED = 0.2;

    private final Reference reference;
    private final KeptDots dots;
    private final int[] pixel;
    private final float[] usual;
    private final float[] sure;
    private int read;
    private int smothered;

    private BlobFinder(Reference reference) {
        this.reference = reference;
        this.dots = reference.dots;
        this.pixel = new int[dots.count()];
        this.usual = new float[dots.count()];
        this.sure = new float[dots.count()];
    }

    /** Reads the dots of a round. */
    static BlobFinder read(Readings readings, FindCode code, int round, int rounds) {
        BlobFinder finder = new BlobFinder(readings.reference);
        WordReader words = new WordReader(readings, code);
        for (int dot = 0; dot < finder.dots.count(); dot++) {
            int said = words.pixel(dot);
            finder.read += said >= 0 ? 1 : 0;
            finder.smothered += said < 0 && words.isSmothered(dot) ? 1 : 0;
            finder.pixel[dot] = said >= 0 && said % rounds == round ? said : -1;
            finder.usual[dot] = words.usual;
            finder.sure[dot] = words.sureness;
        }
        return finder;
    }

    /**
     * Whether so much is burnt out by several lights at once that of many only the rim can be read, and places are
     * wrong.
     */
    boolean isBurntTogether() {
        return smothered > MOST_SMOTHERED * read;
    }

    /** All blobs of two dots or more, in the order of their first dots. */
    List<Blob> blobs() {
        List<Blob> blobs = new ArrayList<>();
        boolean[] seen = new boolean[dots.count()];
        int[] stack = new int[dots.count()];
        for (int first = 0; first < seen.length; first++) {
            if (!seen[first] && pixel[first] >= 0) {
                int[] members = members(first, seen, stack);
                if (members.length >= LEAST_DOTS) {
                    blobs.add(blob(members));
                }
            }
        }
        return blobs;
    }

    private int[] members(int first, boolean[] seen, int[] stack) {
        int count = 0;
        int next = 0;
        stack[count++] = first;
        seen[first] = true;
        while (next < count) {
            int at = stack[next++];
            for (int dy = -1; dy <= 1; dy++) {
                for (int dx = -1; dx <= 1; dx++) {
                    int other = dots.at(dots.x(at) + dx, dots.y(at) + dy);
                    if (other >= 0 && !seen[other] && pixel[other] == pixel[first]) {
                        seen[other] = true;
                        stack[count++] = other;
                    }
                }
            }
        }
        return Arrays.copyOf(stack, count);
    }

    private Blob blob(int[] members) {
        Blob blob = new Blob(pixel[members[0]]);
        double peak = 0;
        double sumX = 0;
        double sumY = 0;
        for (int dot : members) {
            double light = usual[dot];
            blob.flux += light;
            sumX += light * dots.x(dot);
            sumY += light * dots.y(dot);
            if (light > peak) {
                peak = light;
                blob.sure = sure[dot];
            }
            blob.burnt |= reference.lit[dot] >= Plane.BURNT_LIGHT;
        }
        blob.x = sumX / blob.flux;
        blob.y = sumY / blob.flux;
        double squares = 0;
        for (int dot : members) {
            double dx = dots.x(dot) - blob.x;
            double dy = dots.y(dot) - blob.y;
            squares += usual[dot] * (dx * dx + dy * dy);
        }
        blob.spread = Math.sqrt(squares / blob.flux / 2);
        return blob;
    }
}
