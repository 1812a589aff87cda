package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Runs of every kind that are killed at random moments while they replace older outputs. */
@Tag("faults")
class RandomKillsTest {
    private static final int KILLS = 200;
    private static final int EVERY = Integer.getInteger("faults.every", 20);

    @TempDir
    static Path folder;

    private static final List<FaultBench> BENCHES = new ArrayList<>();

    @BeforeAll
    static void bench() throws IOException {
        TwoVersions versions = TwoVersions.in(folder.resolve("in"));
        for (WritingCase writing : WritingCase.chosen()) {
            BENCHES.add(new FaultBench(writing, versions, folder));
        }
    }

    @Test
    void aKillAtAnyMomentLosesNothing() throws Exception {
        List<Long> seeds =
                new Random(20260621).longs(Math.max(KILLS / EVERY, 12)).boxed().toList();
        List<Integer> numbers = new ArrayList<>();
        for (int i = 0; i < seeds.size(); i++) {
            numbers.add(i);
        }
        AtomicInteger killed = new AtomicInteger();
        List<String> faults = Workers.faultsOf(numbers, i -> {
            FaultBench bench = BENCHES.get(i % BENCHES.size());
            killed.addAndGet(kill(bench, new Random(seeds.get(i))) ? 1 : 0);
        });
        System.err.println(killed + " of " + seeds.size() + " runs killed at random moments");
        assertThat(faults).isEmpty();
        assertThat(killed).hasValueGreaterThan(seeds.size() / 3);
    }

    /** From the moment at which the run begins its first output. Whether it came before the end. */
    private static boolean kill(FaultBench bench, Random random) throws IOException, InterruptedException {
        Path place = bench.place(true);
        Path out = FaultBench.out(place);
        Process run = ProgramProcess.of(
                        List.of("-XX:TieredStopAtLevel=1"), bench.words(place).toArray())
                .redirectOutput(place.resolve("said").toFile())
                .redirectError(place.resolve("errors").toFile())
                .start();
        while (run.isAlive() && !hasBegun(out)) {
            Thread.sleep(1);
        }
        if (!run.waitFor((long) (200_000_000 * random.nextDouble() * random.nextDouble()), TimeUnit.NANOSECONDS)) {
            run.destroyForcibly();
        }
        Ran ran = new Ran(
                run.waitFor(), Files.readString(place.resolve("said")), Files.readString(place.resolve("errors")));
        boolean killed = ran.code() != ExitCode.DONE;
        if (killed) {
            bench.aftermath(true).afterKill(ran, out);
        } else {
            bench.aftermath(true).afterError(ran, out, "");
        }
        WritingCase.remove(place);
        return killed;
    }

    /** Looked at while it changes, so not by a stream, which would miss what it had just seen. */
    private static boolean hasBegun(Path out) {
        String[] names = out.toFile().list((folder, name) -> name.startsWith("."));
        return names != null && names.length > 0;
    }
}
