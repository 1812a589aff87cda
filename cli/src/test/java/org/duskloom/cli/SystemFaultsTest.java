package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/**
 * Each call by which the program writes, syncs, renames, links and removes fails in turn, or is its last, for every
 * kind of output: where nothing stands yet, and where older outputs are replaced. Usually a part is tried, evenly
 * spread; {@code -Dfaults.every=1} tries all, and {@code -Dfaults.of=REGEX} only commands in which that is found.
 */
@Tag("faults")
@EnabledOnOs(OS.LINUX)
class SystemFaultsTest {
    private static final int EVERY = Integer.getInteger("faults.every", 20);
    private static final int AT_A_TIME = 30;

    @TempDir
    static Path folder;

    private static final List<Site> SITES = new ArrayList<>();
    private static final AtomicInteger ALONE = new AtomicInteger();
    private static SharedClasses classes;
    private static String host;

    /** A call that a run makes. */
    private record Site(FaultBench bench, boolean replacing, CallPoint point) {
        StracedProgram.Target target(Path place) {
            return new StracedProgram.Target(point.in(FaultBench.out(place)), bench.words(place));
        }
    }

    /** A call, and what happens there; an empty error is a kill. */
    private record Strike(Site site, String error) {
        /** Strikes of the same kind may share a process. */
        String kind() {
            CallPoint point = site.point();
            return point.call() + " " + error + " " + point.ordinal() + " " + point.hasFixedName();
        }
    }

    @BeforeAll
    static void look() throws IOException, InterruptedException {
        StracedProgram.require();
        classes = new SharedClasses(folder);
        TwoVersions versions = TwoVersions.in(folder.resolve("in"));
        List<FaultBench> benches = new ArrayList<>();
        List<Path> places = new ArrayList<>();
        List<List<String>> lines = new ArrayList<>();
        List<WritingCase> cases = WritingCase.chosen();
        for (int i = 0; i < 2 * cases.size(); i++) {
            benches.add(i % 2 == 1 ? benches.get(i - 1) : new FaultBench(cases.get(i / 2), versions, folder));
            places.add(benches.get(i).place(i % 2 == 1));
            lines.add(benches.get(i).words(places.get(i)));
        }
        StracedProgram.Ended ended = new StracedProgram(folder, classes).look(lines);
        host = CallPoint.host(ended.log());
        for (int i = 0; i < lines.size(); i++) {
            assertThat(ended.runs().get(i).code()).as(ended.runs().get(i).err()).isZero();
            for (CallPoint point :
                    CallPoint.in(ended.log(), FaultBench.out(places.get(i)).toString())) {
                // The files of a gallery are many and alike.
                if (!benches.get(i).toString().startsWith("effects")
                        || point.path().matches(".*(README|sweep|spin).*|")) {
                    SITES.add(new Site(benches.get(i), i % 2 == 1, point));
                }
            }
        }
        // Each output is made, written, brought to the disk and renamed, and what it was made in is removed.
        assertThat(SITES).hasSizeGreaterThan(cases.equals(WritingCase.ALL) ? 500 : 0);
    }

    @Test
    void everyErrorIsToldAndLosesNothing() throws Exception {
        List<Strike> known = new ArrayList<>();
        for (Site site : SITES) {
            site.point().errors().forEach(error -> known.add(new Strike(site, error)));
        }
        assertThat(faultsOf(known, "errors")).isEmpty();
    }

    @Test
    void everyKillLosesNothing() throws Exception {
        List<Strike> known = SITES.stream().map(site -> new Strike(site, "")).toList();
        assertThat(faultsOf(known, "kills")).isEmpty();
    }

    private static List<String> faultsOf(List<Strike> known, String what) throws Exception {
        Map<String, List<Strike>> kinds = new TreeMap<>();
        known.forEach(strike ->
                kinds.computeIfAbsent(strike.kind(), key -> new ArrayList<>()).add(strike));
        List<Strike> chosen =
                chosen(kinds.values().stream().flatMap(List::stream).toList());
        List<List<Strike>> batches = new ArrayList<>();
        for (Strike strike : chosen) {
            List<Strike> last = batches.isEmpty() ? List.of() : batches.get(batches.size() - 1);
            if (last.isEmpty()
                    || last.size() == AT_A_TIME
                    || !last.get(0).kind().equals(strike.kind())) {
                batches.add(new ArrayList<>());
            }
            batches.get(batches.size() - 1).add(strike);
        }
        List<String> faults = Workers.faultsOf(batches, SystemFaultsTest::strike);
        System.err.println(chosen.size() + " of " + known.size() + " " + what + " at calls of the system, in "
                + batches.size() + " processes and " + ALONE.getAndSet(0) + " of one");
        return faults;
    }

    private static List<Strike> chosen(List<Strike> all) {
        List<Strike> chosen = new ArrayList<>();
        for (int i = Math.min(EVERY, all.size()) / 2; i < all.size(); i += EVERY) {
            chosen.add(all.get(i));
        }
        return chosen;
    }

    private static void strike(List<Strike> strikes) throws IOException, InterruptedException {
        List<String> faults = faultsOf(strikes);
        if (!faults.isEmpty()) {
            throw new AssertionError(String.join("\n", faults));
        }
    }

    /** Those that missed their calls, as the runs before did other than they should, are tried by themselves. */
    private static List<String> faultsOf(List<Strike> strikes) throws IOException, InterruptedException {
        List<Path> places = places(strikes);
        StracedProgram program = new StracedProgram(places.get(0), classes);
        String error = strikes.get(0).error();
        List<StracedProgram.Target> targets = targets(strikes, places);
        List<Optional<Ran>> runs = error.isEmpty() ? program.kill(targets, host) : program.fail(targets, error, host);
        List<String> faults = new ArrayList<>();
        for (int i = 0; i < strikes.size(); i++) {
            if (runs.get(i).isPresent()) {
                look(strikes.get(i), runs.get(i).get(), places.get(i)).ifPresent(faults::add);
            } else if (strikes.size() > 1) {
                ALONE.incrementAndGet();
                faults.addAll(faultsOf(strikes.subList(i, i + 1)));
            } else {
                faults.add(strikes.get(i) + ": the call was not made");
            }
        }
        for (Path place : places) {
            WritingCase.remove(place);
        }
        return faults;
    }

    private static List<Path> places(List<Strike> strikes) throws IOException {
        List<Path> places = new ArrayList<>();
        for (Strike strike : strikes) {
            places.add(strike.site().bench().place(strike.site().replacing()));
        }
        return places;
    }

    private static List<StracedProgram.Target> targets(List<Strike> strikes, List<Path> places) {
        List<StracedProgram.Target> targets = new ArrayList<>();
        for (int i = 0; i < strikes.size(); i++) {
            targets.add(strikes.get(i).site().target(places.get(i)));
        }
        return targets;
    }

    private static Optional<String> look(Strike strike, Ran ran, Path place) throws IOException {
        Aftermath aftermath = strike.site().bench().aftermath(strike.site().replacing());
        try {
            if (strike.error().isEmpty()) {
                aftermath.afterKill(ran, FaultBench.out(place));
            } else {
                aftermath.afterError(ran, FaultBench.out(place), CallPoint.wordsFor(strike.error()));
            }
            return Optional.empty();
        } catch (AssertionError fault) {
            return Optional.of(strike + ": " + fault.getMessage());
        }
    }
}
