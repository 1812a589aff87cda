package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Runs that are killed by SIGKILL, which cannot be caught, at random moments while they replace older frames. */
class KilledRunTest {
    private static final String ALL = "rgb,npy,singles,ports,packets";
    private static final int KILLED = 50;

    @TempDir
    private Path folder;

    private final Random random = new Random(20260621);

    /**
     * Where a manifest stands, all files are of its run; and when the next run has put the folder in order, all files
     * are of the old run or all are of the new one.
     */
    @Test
    @Timeout(900)
    void oneWholeOutputIsLeftInEveryFormat() throws Exception {
        Path out = folder.resolve("out");
        Path[] shows = {show("first", "1s"), show("second", "600ms")};
        Map<?, ?>[] whole = {
            render(shows[0], folder.resolve("first-out")), render(shows[1], folder.resolve("second-out"))
        };
        assertThat(whole[0]).hasSize(80 + 6).isNotEqualTo(whole[1]);
        render(shows[0], out);
        long nanos = 0;
        for (int i = 0; i < 3; i++) {
            nanos = Math.max(nanos, run(shows[0], out, Long.MAX_VALUE));
        }
        int standing = 0;
        int replaced = 0;
        for (int i = 0; i < KILLED; i++) {
            int other = 1 - standing;
            run(shows[other], out, (long) (nanos * 1.1 * random.nextDouble()));
            if (Files.exists(out.resolve("frames.json"))) {
                assertThat(contents(out).equals(whole[0]) || contents(out).equals(whole[1]))
                        .as("killed run " + i + ", as it was left")
                        .isTrue();
            }
            Ran next = Ran.with("render", shows[standing], "-o", out, "--as", ALL);
            assertThat(next.err()).contains("--force");
            Map<String, String> left = contents(out);
            boolean isNew = left.equals(whole[other]);
            assertThat(isNew || left.equals(whole[standing]))
                    .as("killed run " + i + ": " + left.keySet())
                    .isTrue();
            replaced += isNew ? 1 : 0;
            standing = isNew ? other : standing;
        }
        assertThat(replaced).as("runs that came to their end").isLessThan(KILLED);
    }

    private Path show(String name, String every) throws IOException {
        Path show = WiredGarden.show(folder.resolve(name), 200, 40, "{\"name\": \"left\", \"chain\": [\"fence\"]}");
        return Files.writeString(
                show, Files.readString(show).replace("\"every\": \"1s\"", "\"every\": \"" + every + "\""));
    }

    private static Map<String, String> render(Path show, Path out) throws IOException {
        Ran ran = Ran.with("render", show, "-o", out, "--as", ALL);
        assertThat(ran.code()).as(ran.err()).isZero();
        return contents(out);
    }

    /**
     * Gives how long the run went on after it had begun its first output; kills it after so many nanoseconds of that.
     */
    private long run(Path show, Path out, long nanos) throws Exception {
        Process run = ProgramProcess.of(
                        List.of("-XX:TieredStopAtLevel=1"), "render", show, "-o", out, "--as", ALL, "--force")
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("said").toFile())
                .start();
        while (run.isAlive() && !Files.exists(out.resolve(".frames.rgb.part"))) {
            Thread.onSpinWait();
        }
        long begun = System.nanoTime();
        if (!run.waitFor(nanos, TimeUnit.NANOSECONDS)) {
            run.destroyForcibly();
        }
        run.waitFor();
        return System.nanoTime() - begun;
    }

    /** All files that have their names, and their bytes as text of one byte a character. */
    private static Map<String, String> contents(Path root) throws IOException {
        Map<String, String> contents = new TreeMap<>();
        try (Stream<Path> files = Files.walk(root)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                String name = root.relativize(file).toString();
                if (!name.startsWith(".") && !name.contains("/.")) {
                    contents.put(name, Files.readString(file, StandardCharsets.ISO_8859_1));
                }
            }
        }
        return contents;
    }
}
