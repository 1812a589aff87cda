package org.duskloom.engine.locate;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * For every pixel the one blob that is taken for it, of all that say its number: the brightest one, unless another is
 * nearly as bright; of two such the one that is nearer to its neighbours on the wire.
 */
final class Candidates {
    /** From this share of the brightest on, another one may as well be the light itself. */
    private static final double AS_BRIGHT = 0.6;

    private final Blob[] chosen;
    private final boolean[] refused;

    private Candidates(int pixels) {
        this.chosen = new Blob[pixels];
        this.refused = new boolean[pixels];
    }

    static Candidates of(List<Blob> blobs, int pixels) {
        Candidates candidates = new Candidates(pixels);
        List<List<Blob>> byPixel = new ArrayList<>();
        IntStream.range(0, pixels).forEach(pixel -> byPixel.add(new ArrayList<>()));
        blobs.forEach(blob -> byPixel.get(blob.pixel).add(blob));
        for (int pixel = 0; pixel < pixels; pixel++) {
            List<Blob> all = byPixel.get(pixel);
            all.sort(Comparator.comparingDouble((Blob blob) -> -blob.flux));
            if (!all.isEmpty() && (all.size() == 1 || all.get(1).flux < AS_BRIGHT * all.get(0).flux)) {
                candidates.chosen[pixel] = all.get(0);
            }
        }
        for (int pixel = 0; pixel < pixels; pixel++) {
            if (candidates.chosen[pixel] == null && !byPixel.get(pixel).isEmpty()) {
                candidates.chooseNearer(
                        pixel, byPixel.get(pixel).get(0), byPixel.get(pixel).get(1));
            }
        }
        return candidates;
    }

    private void chooseNearer(int pixel, Blob one, Blob other) {
        double toOne = fromNeighbours(pixel, one);
        double toOther = fromNeighbours(pixel, other);
        if (3 * toOne < toOther) {
            chosen[pixel] = one;
        } else if (3 * toOther < toOne) {
            chosen[pixel] = other;
        } else {
            refused[pixel] = true;
        }
    }

    /** The lesser distance to the nearest pixels on the wire that are chosen, of both sides. */
    private double fromNeighbours(int pixel, Blob blob) {
        double least = Double.POSITIVE_INFINITY;
        for (int step : new int[] {-1, 1}) {
            int at = next(pixel, step);
            if (at >= 0) {
                least = Math.min(least, chosen[at].distanceTo(blob));
            }
        }
        return least;
    }

    /** The nearest chosen pixel up or down the wire, or -1. */
    int next(int pixel, int step) {
        for (int at = pixel + step; at >= 0 && at < chosen.length; at += step) {
            if (chosen[at] != null) {
                return at;
            }
        }
        return -1;
    }

    int pixels() {
        return chosen.length;
    }

    /** The blob of a pixel, or null. */
    Blob of(int pixel) {
        return chosen[pixel];
    }

    boolean has(int pixel) {
        return chosen[pixel] != null;
    }

    /** Takes a blob for a reflection, or for something that was read by mistake. */
    void refuse(int pixel) {
        chosen[pixel] = null;
        refused[pixel] = true;
    }

    boolean isRefused(int pixel) {
        return refused[pixel];
    }
}
