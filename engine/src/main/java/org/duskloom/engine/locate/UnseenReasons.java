package org.duskloom.engine.locate;

import java.util.ArrayList;
import java.util.List;
import org.duskloom.engine.locate.Unseen.Reason;
import org.duskloom.engine.map.PixelMap;

/** Says why pixels seem not to be found, from what is seen where the wire should have them. */
final class UnseenReasons {
    /** A light within so many dots of another may be one spot with it. */
    private static final double MELTED = 3;

    /** Where it is brighter than this share of a usual light, there is a light. */
    private static final double LIGHT = 0.3;

    /** Over how many missing pixels the wire's run is taken to go straight on. */
    private static final int LONGEST_GAP = 4;

    private final Candidates candidates;
    private final PixelMap map;
    private final List<Reference> rounds;
    private final BlobGrid grid;
    private final List<Blob> found = new ArrayList<>();

    UnseenReasons(Candidates candidates, PixelMap map, List<Reference> rounds) {
        this.candidates = candidates;
        this.map = map;
        this.rounds = rounds;
        for (int pixel = 0; pixel < candidates.pixels(); pixel++) {
            if (candidates.has(pixel)) {
                found.add(candidates.of(pixel));
            }
        }
        this.grid = new BlobGrid(found, MELTED);
    }

    Unseen of(int pixel) {
        if (candidates.isRefused(pixel)) {
            return new Unseen(pixel, Reason.MIRRORED, -1);
        }
        double[] place = place(pixel);
        if (place.length == 0) {
            return new Unseen(pixel, Reason.DARK, -1);
        }
        PictureSize size = rounds.get(0).size;
        if (place[0] < 0 || place[1] < 0 || place[0] > size.width() - 1 || place[1] > size.height() - 1) {
            return new Unseen(pixel, Reason.OUTSIDE, -1);
        }
        int[] near = grid.nearest(place[0], place[1], 1);
        if (near.length > 0) {
            return new Unseen(pixel, Reason.MELTED, found.get(near[0]).pixel);
        }
        return new Unseen(pixel, isLit(pixel, place) ? Reason.UNSURE : Reason.DARK, -1);
    }

    /** Between its neighbours on the wire, or straight on from two on one side; nothing if that is not known. */
    private double[] place(int pixel) {
        int before = neighbour(pixel, -1);
        int after = neighbour(pixel, 1);
        if (before >= 0 && after >= 0) {
            return along(before, after, pixel);
        }
        int one = before >= 0 ? before : after;
        int next = one < 0 ? -1 : neighbour(one, before >= 0 ? -1 : 1);
        return next < 0 ? new double[0] : along(one, next, pixel);
    }

    private double[] along(int from, int to, int pixel) {
        Blob a = candidates.of(from);
        Blob b = candidates.of(to);
        double share = (double) (pixel - from) / (to - from);
        return new double[] {a.x + share * (b.x - a.x), a.y + share * (b.y - a.y)};
    }

    private int neighbour(int pixel, int step) {
        int at = candidates.next(pixel, step);
        boolean near = at >= 0 && Math.abs(at - pixel) <= LONGEST_GAP && map.propIndexOf(at) == map.propIndexOf(pixel);
        return near ? at : -1;
    }

    private boolean isLit(int pixel, double[] place) {
        Reference reference = rounds.get(pixel % rounds.size());
        for (int dy = -1; dy <= 1; dy++) {
            for (int dx = -1; dx <= 1; dx++) {
                int dot = reference.dots.at((int) StrictMath.rint(place[0]) + dx, (int) StrictMath.rint(place[1]) + dy);
                if (dot >= 0 && reference.lit[dot] - reference.dark[dot] > LIGHT * reference.usualPeak) {
                    return true;
                }
            }
        }
        return false;
    }
}
