package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
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
    private static final int EVERY = Integer.getInteger("faults.every", 40);
    private static final int AT_A_TIME = 60;

    @TempDir
    static Path folder;

    private static final List<Site> SITES = new ArrayList<>();
    private static String host;

    /** A call that a run makes. */
    private record Site(FaultBench bench, boolean replacing, CallPoint point) {}

    /** A call, and what happens there; an empty error is a kill. */
    private record Strike(Site site, String error) {}

    @BeforeAll
    static void look() throws IOException, InterruptedException {
        StracedProgram.require();
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
        StracedProgram.Ended ended = new StracedProgram(folder).look(lines);
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

    /** Calls about files that have the same name in every run fail whenever they are made: many runs in one process. */
    @Test
    void everyErrorIsToldAndLosesNothing() throws Exception {
        Map<String, List<Site>> batches = new TreeMap<>();
        for (Site site : SITES) {
            if (site.point().hasFixedName() && site.point().ordinal() == 1) {
                for (String error : site.point().errors()) {
                    List<Site> batch =
                            batches.computeIfAbsent(site.point().call() + " " + error, key -> new ArrayList<>());
                    batch.add(site);
                }
            }
        }
        List<List<Strike>> all = new ArrayList<>();
        batches.forEach((key, sites) -> {
            List<Strike> strikes = sites.stream()
                    .map(site -> new Strike(site, key.split(" ")[1]))
                    .toList();
            List<Strike> chosen = chosen(strikes);
            for (int from = 0; from < chosen.size(); from += AT_A_TIME) {
                all.add(chosen.subList(from, Math.min(chosen.size(), from + AT_A_TIME)));
            }
        });
        List<String> faults = Workers.faultsOf(all, SystemFaultsTest::failTogether);
        int tried = all.stream().mapToInt(List::size).sum();
        int known = batches.values().stream().mapToInt(List::size).sum();
        System.err.println(tried + " of " + known + " errors at calls of the system");
        assertThat(faults).isEmpty();
    }

    /** The others, and kills. */
    @Test
    void everyKillLosesNothing() throws Exception {
        List<Strike> strikes = new ArrayList<>();
        for (Site site : SITES) {
            strikes.add(new Strike(site, ""));
            if (!site.point().hasFixedName() || site.point().ordinal() > 1) {
                site.point().errors().forEach(error -> strikes.add(new Strike(site, error)));
            }
        }
        List<Strike> chosen = chosen(strikes);
        List<String> faults = Workers.faultsOf(chosen, SystemFaultsTest::strike);
        System.err.println(chosen.size() + " of " + strikes.size() + " kills and late errors at calls of the system");
        assertThat(faults).isEmpty();
    }

    private static List<Strike> chosen(List<Strike> all) {
        List<Strike> chosen = new ArrayList<>();
        for (int i = Math.min(EVERY, all.size()) / 2; i < all.size(); i += EVERY) {
            chosen.add(all.get(i));
        }
        return chosen;
    }

    private static void failTogether(List<Strike> strikes) throws IOException, InterruptedException {
        List<String> faults = new ArrayList<>();
        List<Path> places = new ArrayList<>();
        List<String> paths = new ArrayList<>();
        List<List<String>> lines = new ArrayList<>();
        for (Strike strike : strikes) {
            Path place = strike.site().bench().place(strike.site().replacing());
            places.add(place);
            paths.add(strike.site().point().in(FaultBench.out(place)).path());
            lines.add(strike.site().bench().words(place));
        }
        String call = strikes.get(0).site().point().call();
        String error = strikes.get(0).error();
        StracedProgram.Ended ended = new StracedProgram(places.get(0)).fail(call, error, paths, lines);
        for (int i = 0; i < strikes.size(); i++) {
            Site site = strikes.get(i).site();
            Path out = FaultBench.out(places.get(i));
            Ran ran = ended.runs().get(i);
            try {
                assertThat(ended.struck(paths.get(i))).as("the call was made").isTrue();
                site.bench().aftermath(site.replacing()).afterError(ran, out, CallPoint.wordsFor(error));
            } catch (AssertionError fault) {
                faults.add(strikes.get(i) + ": " + fault.getMessage());
            }
        }
        for (Path place : places) {
            WritingCase.remove(place);
        }
        if (!faults.isEmpty()) {
            throw new AssertionError(String.join("\n", faults));
        }
    }

    private static void strike(Strike strike) throws IOException, InterruptedException {
        Site site = strike.site();
        Path place = site.bench().place(site.replacing());
        Path out = FaultBench.out(place);
        String what = strike.error().isEmpty() ? "signal=KILL" : "error=" + strike.error();
        StracedProgram.Ended ended = new StracedProgram(place)
                .strike(site.point().in(out), what, host, site.bench().words(place));
        Aftermath aftermath = site.bench().aftermath(site.replacing());
        if (strike.error().isEmpty()) {
            aftermath.afterKill(ended.runs().get(0), out);
        } else {
            assertThat(ended.struck("")).as("the call was made").isTrue();
            aftermath.afterError(ended.runs().get(0), out, CallPoint.wordsFor(strike.error()));
        }
        WritingCase.remove(place);
    }
}
