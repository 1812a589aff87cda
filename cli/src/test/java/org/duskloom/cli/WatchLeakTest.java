package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** An evening at the editor: two hundred saves, and nothing of them is left, neither here nor on the page. */
@EnabledOnOs(OS.LINUX)
class WatchLeakTest {
    private static final Path JCMD = Path.of(System.getProperty("java.home"), "bin", "jcmd");
    private static final int SAVES = 200;

    /** So many are saved before anything is measured: caches fill, and classes are loaded. */
    private static final int WARM_UP = 30;

    @TempDir
    private Path folder;

    private String text;
    private Path show;

    /** What is in use on either side when nobody needs anything but the newest show. */
    private record Use(
            long heapBytes,
            long plans,
            long threads,
            long openFiles,
            double listeners,
            double nodes,
            double pageBytes) {}

    @Test
    void twoHundredSavesLeaveNothing() throws Exception {
        assumeThat(JCMD).isExecutable();
        show = Garden.in(folder, "60s");
        text = Files.readString(show);
        try (Browser browser = Browser.open()) {
            Process run = ProgramProcess.of("watch", show)
                    .redirectError(folder.resolve("err.txt").toFile())
                    .start();
            try (BufferedReader out = run.inputReader(StandardCharsets.UTF_8)) {
                browser.go(out.readLine());
                browser.when("player.lastFilm");
                for (int i = 0; i < WARM_UP; i++) {
                    save(i, browser);
                }
                Use before = use(run, browser);
                for (int i = WARM_UP; i < WARM_UP + SAVES; i++) {
                    save(i, browser);
                }
                Use after = use(run, browser);
                System.err.println("before " + SAVES + " saves: " + before + "\nafter them: " + after);
                assertFlat(before, after);
                assertThat(browser.complaints()).isEmpty();
            } finally {
                run.destroyForcibly().waitFor();
            }
        }
    }

    /** A film that was replaced may still be on its way to a page. */
    private static void assertFlat(Use before, Use after) {
        assertThat(after.plans).isLessThanOrEqualTo(3);
        assertThat(after.heapBytes).isLessThan(before.heapBytes + 1_500_000);
        assertThat(after.threads).isLessThan(before.threads + 4);
        assertThat(after.openFiles).isLessThan(before.openFiles + 6);
        assertThat(after.listeners).isLessThan(before.listeners + 3);
        assertThat(after.nodes).isLessThan(before.nodes + 60);
        assertThat(after.pageBytes).isLessThan(before.pageBytes + 1_500_000);
    }

    /** Mostly another look; sometimes another map, and sometimes an error that is mended. */
    private void save(int number, Browser browser) throws IOException {
        if (number % 10 == 4) {
            Files.writeString(show, text.replace("\"sweep\"", "\"sweap\""));
            browser.when("!document.getElementById('report').hidden");
        }
        if (number % 10 == 7) {
            Path map = folder.resolve("map.csv");
            Files.writeString(
                    map, Files.readString(map).replaceFirst("(?m)^fence,8,\\d+,", "fence,8," + (140 + number) + ","));
        }
        String title = "Evening " + number;
        Files.writeString(show, text.replace("Longest day", title).replace("\"seed\": 7", "\"seed\": " + number));
        browser.when("player.lastFilm === player.film && document.title === '" + title + "'"
                + " && document.getElementById('report').hidden");
    }

    private static Use use(Process run, Browser browser) throws IOException, InterruptedException {
        browser.when("player.film.unpacked.size === player.film.pieces.list.length");
        List<String> histogram = jcmd(run, "GC.class_histogram");
        Path process = Path.of("/proc", Long.toString(run.pid()));
        return new Use(
                number(histogram, "Total", 2),
                number(histogram, "org.duskloom.engine.plan.Plan", 1),
                entries(process.resolve("task")),
                entries(process.resolve("fd")),
                browser.metric("JSEventListeners"),
                browser.metric("Nodes"),
                browser.metric("JSHeapUsedSize"));
    }

    /** Of the JDK: a line for each class has its rank, how many objects there are, their bytes and its name. */
    private static List<String> jcmd(Process run, String command) throws IOException, InterruptedException {
        Process jcmd = new ProcessBuilder(JCMD.toString(), Long.toString(run.pid()), command).start();
        List<String> lines = new String(jcmd.getInputStream().readAllBytes(), StandardCharsets.UTF_8)
                .lines()
                .toList();
        assertThat(jcmd.waitFor()).isZero();
        return lines;
    }

    private static long number(List<String> histogram, String name, int word) {
        String line = histogram.stream()
                .filter(candidate -> List.of(candidate.strip().split("\\s+")).contains(name))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no " + name + " in " + histogram));
        return Long.parseLong(line.strip().split("\\s+")[word]);
    }

    private static long entries(Path folder) throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.count();
        }
    }
}
