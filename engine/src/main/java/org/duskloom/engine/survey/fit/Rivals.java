package org.duskloom.engine.survey.fit;

import java.util.Optional;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.survey.Dimensions;
import org.duskloom.engine.survey.Reading;
import org.duskloom.engine.survey.Rival;

/** Finds out how two readings could be told apart. */
final class Rivals {
    /** Places that differ by fewer standard deviations cannot be told apart by measuring as well as before. */
    private static final double TELLING = 3;

    private Rivals() {}

    /** The rival of a reading, with the pixel that the two put farthest apart. */
    static Rival rival(Subject subject, Reading preferred, Reading other, double sigma) {
        Positions a = preferred.places(subject.prop());
        Positions b = other.places(subject.prop());
        boolean deep = subject.dimensions() == Dimensions.DEEP;
        int farthest = 0;
        double most = 0;
        for (int i = 0; i < a.size(); i++) {
            double dx = a.x(i) - b.x(i);
            double dy = a.y(i) - b.y(i);
            double dz = deep ? a.z(i) - b.z(i) : 0;
            double distance = Math.sqrt(dx * dx + dy * dy + dz * dz);
            if (distance > most) {
                most = distance;
                farthest = i;
            }
        }
        if (most <= TELLING * sigma) {
            return new Rival(other, most, Optional.empty());
        }
        return new Rival(
                other,
                most,
                Optional.of(new Rival.Test(
                        farthest,
                        most,
                        a.x(farthest),
                        a.y(farthest),
                        a.z(farthest),
                        b.x(farthest),
                        b.y(farthest),
                        b.z(farthest))));
    }
}
