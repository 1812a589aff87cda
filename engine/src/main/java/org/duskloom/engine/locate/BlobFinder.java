package org.duskloom.engine.locate;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.duskloom.engine.find.FindCode;

/** Reads all kept dots and gathers connected ones that say the same number. */
final class BlobFinder {
    private static final int LEAST_DOTS = 2;

    private final KeptDots dots;
    private final int[] pixel;
    private final float[] usual;
    private final float[] sure;

    private BlobFinder(KeptDots dots) {
        this.dots = dots;
        this.pixel = new int[dots.count()];
        this.usual = new float[dots.count()];
        this.sure = new float[dots.count()];
    }

    /** All blobs of two dots or more, in the order of their first dots. */
    static List<Blob> find(Readings readings, FindCode code, int round, int rounds) {
        BlobFinder finder = new BlobFinder(readings.reference.dots);
        WordReader words = new WordReader(readings, code);
        for (int dot = 0; dot < finder.dots.count(); dot++) {
            int said = words.pixel(dot);
            finder.pixel[dot] = said >= 0 && said % rounds == round ? said : -1;
            finder.usual[dot] = words.usual;
            finder.sure[dot] = words.sureness;
        }
        return finder.gather(readings.reference);
    }

    private List<Blob> gather(Reference reference) {
        List<Blob> blobs = new ArrayList<>();
        boolean[] seen = new boolean[dots.count()];
        int[] stack = new int[dots.count()];
        for (int first = 0; first < seen.length; first++) {
            if (!seen[first] && pixel[first] >= 0) {
                int[] members = members(first, seen, stack);
                if (members.length >= LEAST_DOTS) {
                    blobs.add(blob(members, reference));
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

    private Blob blob(int[] members, Reference reference) {
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
