package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.duskloom.engine.frame.FrameRun;
import org.duskloom.engine.frame.FrameSource;
import org.duskloom.engine.frame.Progress;
import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * All frames of the demos are the same bytes as when they were last looked at: on every machine, with every JDK, on any
 * number of threads. What a change of the program is meant to change is renewed by {@value #RENEWAL}, and then read as
 * a difference.
 */
class GoldenTest {
    private static final String RENEWAL = "mvn -q -pl cli -am test -Dtest=GoldenTest -Dgolden.renew=true"
            + " -Dsurefire.failIfNoSpecifiedTests=false";
    private static final Path DIGESTS = Path.of("src/test/resources/org/duskloom/cli/golden.txt");
    private static final boolean RENEW = Boolean.getBoolean("golden.renew");

    static List<String> shows() throws IOException {
        return Project.demoShows();
    }

    @ParameterizedTest
    @MethodSource("shows")
    void framesAreTheSameBytes(String show) throws Exception {
        String digest = digest(show);
        Map<String, String> known = known();
        if (RENEW) {
            known.put(show, digest);
            known.keySet().retainAll(shows());
            write(known);
        }
        assertThat(known)
                .as(
                        "%s: the frames have changed, or are new. If that is meant, renew the digests with%n  %s",
                        show, RENEWAL)
                .containsEntry(show, digest);
    }

    /** Who copies a demo shall not be told that something is wrong with it. */
    @ParameterizedTest
    @MethodSource("shows")
    void noProblemIsFound(String show) {
        Ran ran = Ran.with("check", Project.file(show));
        assertThat(ran.err()).isEmpty();
        assertThat(ran.code()).isZero();
    }

    @Test
    void noDigestIsOfAShowThatIsGone() throws IOException {
        assertThat(shows()).contains("demos/garden/show.json", "demos/mast/show.json", "demos/firsts/wash.json");
        assertThat(known().keySet()).as("renew with " + RENEWAL).allMatch(RENEW ? name -> true : shows()::contains);
    }

    private static String digest(String name) throws Exception {
        Problems problems = new Problems();
        LoadedShow show = LoadedShow.load(Project.file(name), problems).orElseThrow();
        MessageDigest digest = sha256();
        FrameSource frames = show.frames();
        new FrameRun(frames, frames.info().frames(), Runtime.getRuntime().availableProcessors())
                .into(new SeenFrames(digest::update), Progress.SILENT);
        return HexFormat.of().formatHex(digest.digest());
    }

    private static Map<String, String> known() throws IOException {
        Map<String, String> digestByShow = new LinkedHashMap<>();
        if (Files.exists(DIGESTS)) {
            for (String line : Files.readAllLines(DIGESTS)) {
                String[] parts = line.split("  ", 2);
                digestByShow.put(parts[1], parts[0]);
            }
        }
        return digestByShow;
    }

    private static void write(Map<String, String> digestByShow) throws IOException {
        StringBuilder lines = new StringBuilder();
        digestByShow.entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .forEach(entry -> lines.append(entry.getValue() + "  " + entry.getKey() + "\n"));
        Files.writeString(DIGESTS, lines);
    }

    private static MessageDigest sha256() throws NoSuchAlgorithmException {
        return MessageDigest.getInstance("SHA-256");
    }
}
