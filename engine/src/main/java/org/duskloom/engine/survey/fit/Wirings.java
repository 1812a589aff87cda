package org.duskloom.engine.survey.fit;

import java.util.ArrayList;
import java.util.List;
import org.duskloom.engine.display.PlacedProp;
import org.duskloom.engine.display.Shape;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.survey.Wiring;
import org.duskloom.engine.survey.WiringKind;

/** The orders that the pixels of a prop may be in. */
final class Wirings {
    /** A loop may close with a gap that is somewhat larger than those between its pixels. */
    private static final double WIDEST_CLOSING_GAP = 1.5;

    private static final int LEAST_PIXELS = 3;

    private final List<Wiring> all = new ArrayList<>();

    private Wirings() {}

    /** All of them, the described one first; less than five for every pixel. */
    static List<Wiring> of(PlacedProp prop) {
        Wirings wirings = new Wirings();
        wirings.all.add(Wiring.AS_DESCRIBED);
        Shape shape = prop.shape();
        int count = shape.pixelCount();
        if (count > 1) {
            wirings.addWhole(count, isLoop(shape.pixels(), 0, count));
        }
        if (shape.runs().size() > 1) {
            for (Shape.Run run : shape.runs()) {
                int last = run.firstPixel() + run.pixelCount() - 1;
                int first = prop.reversed() ? count - 1 - last : run.firstPixel();
                wirings.addStretch(first, run.pixelCount(), isLoop(shape.pixels(), run.firstPixel(), run.pixelCount()));
            }
        }
        return wirings.all;
    }

    /** The likeliest one first: the search is the faster, the earlier it meets the right one. */
    private void addWhole(int count, boolean loop) {
        all.add(new Wiring(WiringKind.FROM_OTHER_END, 0, count, count - 1, true));
        for (int start = 0; start < count; start++) {
            if (start > 0) {
                all.add(new Wiring(WiringKind.OTHER_START, 0, count, start, false));
            }
            if (start < count - 1) {
                boolean sameFirst = start == 0 && loop;
                all.add(new Wiring(
                        sameFirst ? WiringKind.OTHER_WAY : WiringKind.OTHER_WAY_AND_START, 0, count, start, true));
            }
        }
    }

    /** A stretch of a prop; an open one has no other way than from its other end. */
    private void addStretch(int first, int count, boolean loop) {
        if (count < LEAST_PIXELS) {
            return;
        }
        for (int start = 0; start < count; start++) {
            if (start > 0) {
                all.add(new Wiring(WiringKind.STRETCH_OTHER_START, first, count, start, false));
            }
            if (loop || start == count - 1) {
                all.add(new Wiring(WiringKind.STRETCH_OTHER_WAY, first, count, start, true));
            }
        }
    }

    /** Whether the last pixel of a stretch is a neighbour of its first one. */
    static boolean isLoop(Positions places, int first, int count) {
        if (count < LEAST_PIXELS) {
            return false;
        }
        double widest = 0;
        for (int i = first + 1; i < first + count; i++) {
            widest = Math.max(widest, squaredGap(places, i - 1, i));
        }
        double closing = squaredGap(places, first, first + count - 1);
        return widest > 0 && closing <= WIDEST_CLOSING_GAP * WIDEST_CLOSING_GAP * widest;
    }

    private static double squaredGap(Positions places, int i, int j) {
        double dx = places.x(i) - places.x(j);
        double dy = places.y(i) - places.y(j);
        double dz = places.z(i) - places.z(j);
        return dx * dx + dy * dy + dz * dz;
    }
}
