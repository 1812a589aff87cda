package org.duskloom.engine.wire;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.text.Quoted;

/** Which slots the ports of one display have taken so far. */
final class UniverseUse {
    private final Problems problems;
    private final Map<Integer, List<Taken>> byUniverse = new HashMap<>();

    private record Taken(Port port, UniverseRun run) {}

    UniverseUse(Problems problems) {
        this.problems = problems;
    }

    /** Takes the slots of a port; an error, once for each port that has some of them, and nothing taken. */
    boolean claim(Port port, Location place) {
        List<UniverseRun> runs = port.runs();
        List<Port> met = new ArrayList<>();
        for (UniverseRun run : runs) {
            for (Taken taken : byUniverse.getOrDefault(run.universe(), List.of())) {
                if (taken.run.meets(run) && !met.contains(taken.port)) {
                    met.add(taken.port);
                    refuse(port, run, taken, place);
                }
            }
        }
        if (met.isEmpty()) {
            runs.forEach(run -> byUniverse
                    .computeIfAbsent(run.universe(), universe -> new ArrayList<>())
                    .add(new Taken(port, run)));
        }
        return met.isEmpty();
    }

    private void refuse(Port port, UniverseRun run, Taken taken, Location place) {
        int from = Math.max(run.firstSlot(), taken.run.firstSlot());
        int to = Math.min(run.lastSlot(), taken.run.lastSlot());
        int free =
                byUniverse.keySet().stream().mapToInt(Integer::intValue).max().orElse(0) + 1;
        problems.error(
                place,
                "port " + Quoted.of(port.name()) + " runs into port " + Quoted.of(taken.port.name()) + ": both have "
                        + (from == to ? "slot " + from : "slots " + from + " to " + to) + " of universe "
                        + run.universe(),
                free <= UniverseRun.LAST_UNIVERSE ? "universe " + free + " and those after it are free" : "");
    }
}
