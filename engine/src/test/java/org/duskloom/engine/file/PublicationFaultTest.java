package org.duskloom.engine.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import org.duskloom.engine.file.FaultyCalls.Fault;
import org.duskloom.engine.file.FaultyCalls.Killed;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Each call that a run makes fails in turn, or is its last: for new outputs and for such as replace others, for one
 * file and for several with a folder and a manifest.
 */
class PublicationFaultTest {
    private static final long OLD = 1;
    private static final long FIRST = 2;
    private static final long SECOND = 3;
    private static final long THIRD = 4;

    @TempDir(factory = MemoryFolder.class)
    private Path scratch;

    private int folders;

    /** One outcome of one run. */
    private record Outcome(TestRun run, FaultyCalls calls, boolean ended, String told) {
        String at() {
            return "after " + calls.made();
        }
    }

    @ParameterizedTest
    @CsvSource({"true, true", "true, false", "false, true", "false, false"})
    void aFaultLeavesEverythingOldOrEverythingNew(boolean alone, boolean replacing) throws IOException {
        Outcome outcome;
        int number = 0;
        do {
            outcome = run(alone, replacing, new FaultyCalls(Fault.ONCE, ++number, Set.of()));
            TreeMap<String, String> found = outcome.run().found();
            String expected = outcome.ended() ? "new" : "old";
            assertThat(found).as(outcome.at()).isEqualTo(outputs(outcome.run(), expected, replacing));
            nextRunSucceeds(outcome);
        } while (outcome.calls().struck());
        assertThat(number).isGreaterThan(alone ? 10 : 45);
    }

    @ParameterizedTest
    @CsvSource({"true, true", "true, false", "false, true", "false, false"})
    void aKillLeavesNoLie(boolean alone, boolean replacing) throws IOException {
        Outcome outcome;
        int number = 0;
        do {
            outcome = run(alone, replacing, new FaultyCalls(Fault.KILL, ++number, Set.of()));
            TreeMap<String, String> found = outcome.run().found();
            assertThat(TestRun.isTrue(found)).as(outcome.at() + found).isTrue();
            if (replacing) {
                // Before or after, or in the window, where nothing is lost and the next run puts all of it back.
                nextRunTidies(outcome);
            }
            nextRunSucceeds(outcome);
        } while (outcome.calls().struck());
        assertThat(number).isGreaterThan(alone ? 10 : 45);
    }

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void aDiskThatIsPulledOutLosesNothing(boolean alone) throws IOException {
        Outcome outcome;
        int number = 0;
        do {
            outcome = run(alone, true, new FaultyCalls(Fault.EVER_AFTER, ++number, Set.of()));
            TreeMap<String, String> found = outcome.run().found();
            assertThat(TestRun.isTrue(found)).as(outcome.at() + found).isTrue();
            if (!outcome.ended()) {
                assertThat(outcome.run().everything())
                        .as(outcome.at())
                        .containsAll(outcome.run().outputsOf("old").values());
            }
            nextRunTidies(outcome);
            nextRunSucceeds(outcome);
        } while (outcome.calls().struck());
    }

    /** When names can no more be given, the way back fails like the way there. What is kept is told, and comes back. */
    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void aFailedWayBackKeepsWhatStoodThereAndSaysSo(boolean once) throws IOException {
        Outcome outcome;
        int number = 0;
        int kept = 0;
        do {
            Fault fault = once ? Fault.ONCE : Fault.EVER_AFTER;
            outcome = run(false, true, new FaultyCalls(fault, ++number, Set.of("rename")));
            TreeMap<String, String> old = outcome.run().outputsOf("old");
            assertThat(TestRun.isTrue(outcome.run().found())).as(outcome.at()).isTrue();
            if (!outcome.ended() && !outcome.run().found().equals(old)) {
                kept++;
                assertThat(outcome.told())
                        .contains("cannot give the finished file its name")
                        .contains("could not all be put back: ")
                        .contains("frames.json is kept as ")
                        .contains(".frames.json.part/taken/frames.json")
                        .endsWith("; the next run that writes here tries again");
                assertThat(outcome.run().everything()).containsAll(old.values());
            }
            nextRunTidies(outcome);
            nextRunSucceeds(outcome);
        } while (outcome.calls().struck());
        assertThat(kept).isEqualTo(once ? 0 : 5);
    }

    /** The run that tidies up after one that was killed is killed in its turn, at each of its calls. */
    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void tidyingUpMayBeKilledToo(boolean upToTheEnd) throws IOException {
        int lastOfFirst = callsOfAWholeRun();
        int windows = 0;
        for (int first = upToTheEnd ? lastOfFirst - 12 : lastOfFirst - 50; first <= lastOfFirst; first += 6) {
            FaultyCalls second;
            int number = 0;
            do {
                Outcome outcome = run(false, true, new FaultyCalls(Fault.KILL, first, Set.of()));
                second = new FaultyCalls(Fault.KILL, ++number, Set.of());
                tidy(outcome, TestRun.process(SECOND, second, List.of(SECOND)));
                TreeMap<String, String> found = outcome.run().found();
                assertThat(TestRun.isTrue(found))
                        .as(outcome.at() + " then " + second.made() + found)
                        .isTrue();
                windows += found.containsKey("frames.json") ? 0 : 1;
                nextRunTidies(outcome);
                nextRunSucceeds(outcome);
            } while (second.struck());
        }
        assertThat(windows > 0).isEqualTo(!upToTheEnd);
    }

    private int callsOfAWholeRun() throws IOException {
        FaultyCalls calls = FaultyCalls.none();
        run(false, true, calls);
        return calls.made().size();
    }

    private static TreeMap<String, String> outputs(TestRun run, String word, boolean replacing) {
        return word.equals("old") && !replacing ? new TreeMap<>() : run.outputsOf(word);
    }

    private Outcome run(boolean alone, boolean replacing, FaultyCalls calls) throws IOException {
        TestRun run = new TestRun(Files.createDirectory(scratch.resolve("run" + folders++)), alone);
        if (replacing) {
            run.write("old", IfExists.REFUSE, TestRun.process(OLD, FaultyCalls.none(), List.of(OLD)));
        }
        Staging process = TestRun.process(FIRST, calls, List.of(FIRST));
        try {
            run.write("new", replacing ? IfExists.REPLACE : IfExists.REFUSE, process);
            return new Outcome(run, calls, true, "");
        } catch (Killed killed) {
            return new Outcome(run, calls, false, "");
        } catch (IOException told) {
            return new Outcome(run, calls, false, told.getMessage());
        }
    }

    /** A run that begins something else in that folder. */
    private void nextRunTidies(Outcome outcome) throws IOException {
        tidy(outcome, TestRun.process(THIRD, FaultyCalls.none(), List.of(THIRD)));
        TreeMap<String, String> found = outcome.run().found();
        assertThat(found)
                .as(outcome.at())
                .isIn(outcome.run().outputsOf("old"), outcome.run().outputsOf("new"));
        assertThat(outcome.run().leftovers()).as(outcome.at()).isEmpty();
    }

    private void tidy(Outcome outcome, Staging process) throws IOException {
        Path folder = scratch.resolve("run" + (folders - 1));
        assertThat(outcome.run()).isNotNull();
        try (OutputGroup group = new OutputGroup(IfExists.REFUSE, process, true)) {
            group.open(folder.resolve("notes.txt")).close();
        } catch (Killed killed) {
            return;
        }
    }

    private void nextRunSucceeds(Outcome outcome) throws IOException {
        outcome.run().write("next", IfExists.REPLACE, TestRun.process(THIRD, FaultyCalls.none(), List.of(THIRD)));
        assertThat(outcome.run().found())
                .as(outcome.at())
                .isEqualTo(outcome.run().outputsOf("next"));
        assertThat(outcome.run().leftovers()).as(outcome.at()).isEmpty();
    }
}
