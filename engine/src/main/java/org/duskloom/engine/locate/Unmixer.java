package org.duskloom.engine.locate;

import java.util.ArrayList;
import java.util.List;
import org.duskloom.engine.find.FindCode;

/**
 * Tells apart the light of lights that are near each other: at every dot, how much of each near light makes its pairs
 * differ as they do is found by least squares, as the words say which of them is lit when. Then places, light and size
 * of the blobs are those of their own light alone.
 */
final class Unmixer {
    /** How many lights, the nearest ones, may share a dot. */
    private static final int MOST = 8;

    /** What counts for the middle of a light: dots that are at least as bright as this share of its brightest one. */
    private static final double BRIGHT = 0.2;

    /** A little of every light is taken away, so that two with nearly the same word do not blow each other up. */
    private static final double RIDGE = 0.5;

    private final Readings readings;
    private final FindCode code;
    private final List<Blob> blobs;
    private final double reach;
    private final int[] words;
    /** By blob: the kept dots within reach, and its own light there. */
    private final List<List<Share>> shares = new ArrayList<>();

    private record Share(int dot, float light) {}

    private Unmixer(Readings readings, FindCode code, List<Blob> blobs) {
        this.readings = readings;
        this.code = code;
        this.blobs = blobs;
        this.reach = reach(blobs);
        this.words = blobs.stream().mapToInt(blob -> code.word(blob.pixel)).toArray();
        blobs.forEach(blob -> shares.add(new ArrayList<>()));
    }

    /** Moves blobs to where their own light is. */
    static void refine(Readings readings, FindCode code, List<Blob> blobs) {
        if (!blobs.isEmpty()) {
            Unmixer unmixer = new Unmixer(readings, code, blobs);
            unmixer.share();
            unmixer.move();
        }
    }

    /** Far enough for most of the light of most blobs; those that touch others seem smaller than they are. */
    private static double reach(List<Blob> blobs) {
        double[] spreads =
                blobs.stream().mapToDouble(blob -> blob.spread).sorted().toArray();
        return Math.max(3, Math.min(16, 3 * spreads[spreads.length * 4 / 5]));
    }

    private void share() {
        BlobGrid grid = new BlobGrid(blobs, reach);
        KeptDots dots = readings.reference.dots;
        double[] differences = new double[code.bits()];
        for (int dot = 0; dot < dots.count(); dot++) {
            int[] near = grid.nearest(dots.x(dot), dots.y(dot), MOST);
            if (near.length == 0) {
                continue;
            }
            for (int bit = 0; bit < differences.length; bit++) {
                differences[bit] = readings.one(bit, dot) - readings.zero(bit, dot);
            }
            double[] own = solve(near, differences);
            for (int i = 0; i < near.length; i++) {
                shares.get(near[i]).add(new Share(dot, (float) own[i]));
            }
        }
    }

    /** By least squares. */
    private double[] solve(int[] near, double[] differences) {
        int n = near.length;
        double[][] rows = new double[n][n + 1];
        for (int i = 0; i < n; i++) {
            for (int k = 0; k < n; k++) {
                rows[i][k] = code.bits() - 2 * Integer.bitCount(words[near[i]] ^ words[near[k]]);
            }
            rows[i][i] += RIDGE;
            for (int bit = 0; bit < differences.length; bit++) {
                rows[i][n] += (words[near[i]] >>> bit & 1) == 1 ? differences[bit] : -differences[bit];
            }
        }
        return Elimination.solve(rows);
    }

    private void move() {
        KeptDots dots = readings.reference.dots;
        for (int i = 0; i < shares.size(); i++) {
            Blob blob = blobs.get(i);
            List<Share> own = shares.get(i);
            double peak = own.stream().mapToDouble(Share::light).max().orElse(0);
            double flux = 0;
            double sumX = 0;
            double sumY = 0;
            for (Share share : own) {
                if (share.light > BRIGHT * peak) {
                    flux += share.light;
                    sumX += share.light * dots.x(share.dot);
                    sumY += share.light * dots.y(share.dot);
                }
            }
            if (flux > 0) {
                blob.x = sumX / flux;
                blob.y = sumY / flux;
                blob.flux = flux;
            }
        }
    }
}
