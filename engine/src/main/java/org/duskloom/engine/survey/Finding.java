package org.duskloom.engine.survey;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.duskloom.engine.display.PlacedProp;

/**
 * What was found out about one prop.
 *
 * @param prop the prop as described
 * @param measuredPixels how many of its pixels were measured, without those that were left out; 0 if that are all
 * @param verdict what the measurements say
 * @param misfitAsDescribed the root of the mean squared distance of the measured pixels from where they are described
 * @param reading what it is in truth; as described where nothing better is known
 * @param rivals other readings that fit as well
 * @param estimate how far it is moved and turned by that reading's wiring and mirror image; nothing if too little was
 *     measured
 * @param shortage what was not measured and would tell more
 * @param slips measurements that were left out
 * @param muddles measurements that were mixed up, and left out too
 * @param placeOf the prop that is described where this one hangs, unless those two or more have changed places
 */
public record Finding(
        PlacedProp prop,
        int measuredPixels,
        Verdict verdict,
        double misfitAsDescribed,
        Reading reading,
        List<Rival> rivals,
        Optional<Estimate> estimate,
        Optional<Shortage> shortage,
        List<Slip> slips,
        List<Muddle> muddles,
        Optional<String> placeOf) {
    public Finding {
        Objects.requireNonNull(prop, "prop");
        Objects.requireNonNull(verdict, "verdict");
        Objects.requireNonNull(reading, "reading");
        rivals = List.copyOf(rivals);
        Objects.requireNonNull(estimate, "estimate");
        Objects.requireNonNull(shortage, "shortage");
        slips = List.copyOf(slips);
        muddles = List.copyOf(muddles);
        Objects.requireNonNull(placeOf, "placeOf");
    }
}
