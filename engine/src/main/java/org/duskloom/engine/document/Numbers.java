package org.duskloom.engine.document;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.text.Counted;

/** Takes a list as numbers. */
final class Numbers {
    private Numbers() {}

    static Optional<double[]> of(
            ListNode list, String what, int minCount, int maxCount, double min, double max, Problems problems) {
        List<Node> items = list.items();
        if (items.size() < minCount || items.size() > maxCount) {
            String allowed = minCount == maxCount ? "" + minCount : minCount + " to " + maxCount;
            problems.error(
                    list.location(),
                    what + " has " + Counted.of(items.size(), "item"),
                    "allowed: " + allowed + " numbers");
            return Optional.empty();
        }
        double[] values = new double[items.size()];
        boolean complete = true;
        for (int i = 0; i < values.length; i++) {
            OptionalDouble value = Expected.number(items.get(i), "item " + (i + 1) + " of " + what, min, max, problems);
            complete &= value.isPresent();
            values[i] = value.orElse(0);
        }
        return complete ? Optional.of(values) : Optional.empty();
    }
}
