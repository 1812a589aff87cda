package org.duskloom.engine.survey.fit;

import org.duskloom.engine.map.Positions;
import org.duskloom.engine.survey.MeasuredProp;
import org.duskloom.engine.survey.Wiring;

/** Sums over the measured pixels of a prop. */
final class MeasuredMoments {
    private MeasuredMoments() {}

    /** Those of all measured pixels, as a stance sees them. */
    static Moments of(Stance stance, MeasuredProp measured, boolean mirrored, Wiring wiring) {
        return of(stance.template(mirrored), stance.seen(measured.places()), measured, everyOne(measured), wiring);
    }

    /** Those of some of them: indices into the measured ones. */
    static Moments of(Positions template, Positions seen, MeasuredProp measured, int[] which, Wiring wiring) {
        Moments moments = new Moments();
        for (int index : which) {
            int at = wiring.describedPixel(measured.pixel(index));
            moments.add(template.x(at), template.y(at), template.z(at), seen.x(index), seen.y(index), seen.z(index));
        }
        return moments;
    }

    static int[] everyOne(MeasuredProp measured) {
        return spread(measured, measured.count());
    }

    /** At most so many of them, evenly spread over the wiring. */
    static int[] spread(MeasuredProp measured, int most) {
        int count = Math.min(most, measured.count());
        int[] which = new int[count];
        for (int i = 0; i < count; i++) {
            which[i] = (int) ((long) i * measured.count() / count);
        }
        return which;
    }
}
