package org.duskloom.engine.survey;

import java.util.List;
import org.duskloom.engine.display.PlacedProp;
import org.duskloom.engine.display.Placement;

/** How a prop may hang in the place of another one. */
final class Stances {
    private Stances() {}

    /** At its place, turned as it is described itself, or as the other one is if that differs. */
    static List<Placement> at(PlacedProp host, PlacedProp guest) {
        Placement there = host.placement();
        Placement own = guest.placement();
        Placement kept = at(there, own, own);
        Placement taken = at(there, own, there);
        return kept.equals(taken) ? List.of(kept) : List.of(kept, taken);
    }

    private static Placement at(Placement there, Placement own, Placement turned) {
        return new Placement(
                own.mirror(),
                own.scale(),
                turned.turnDegrees(),
                turned.tiltDegrees(),
                turned.yawDegrees(),
                there.x(),
                there.y(),
                there.z());
    }
}
