package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/**
 * What must hold after a run that should have replaced the outputs of another one, and met a fault.
 *
 * @param writing the command
 * @param versions what it read
 * @param before what stood in the folder; empty for nothing
 * @param whole what stands there after a whole run
 * @param said what a whole run tells people, its figures taken out
 */
record Aftermath(
        WritingCase writing, TwoVersions versions, Map<String, String> before, Map<String, String> whole, String said) {
    /** A file that speaks of the others. */
    private static final String MANIFEST = "frames.json";

    private static final int KILLED = 128 + 9;

    /** Lines for people without what is another in each run: figures, and the folder that is written to. */
    static String masked(String lines, Path out) {
        return lines.replace(out.toString(), "OUT").replaceAll("[0-9][0-9.,]*", "0");
    }

    /** The run failed or did not, as it says, and the next one is as if nothing had happened. */
    void afterError(Ran ran, Path out, String reason) throws IOException {
        ofError(ran, out, reason);
        theNextRunIsWhole(out);
    }

    /** The folder holds all that was before, or all of the new, as the run says. */
    void ofError(Ran ran, Path out, String reason) throws IOException {
        if (ran.code() == ExitCode.DONE) {
            assertThat(masked(ran.err(), out)).as("what was told").isEqualTo(said);
            assertThat(WritingCase.contents(out)).as("what stands there").isEqualTo(whole);
        } else {
            assertThat(ran.code()).as("exit code; %s", ran.err()).isEqualTo(ExitCode.FAILED);
            assertThat(ran.out()).as("standard output").isEmpty();
            assertThat(ran.err())
                    .as("what was told")
                    .matches("duskloom: [^\\n]* " + out.getParent() + "[^\\n]*: " + reason + "\\n");
            assertThat(WritingCase.contents(out)).as("what stands there").isEqualTo(before);
        }
    }

    /** Every file is of one run or the other; a manifest has all of its run beside it; nothing is lost. */
    void afterKill(Ran ran, Path out) throws IOException {
        assertThat(ran.code()).as("exit code; %s", ran.err()).isEqualTo(KILLED);
        Map<String, String> left = WritingCase.contents(out);
        everyFileIsWhole(left);
        if (left.containsKey(MANIFEST)) {
            assertThat(left).as("what the manifest speaks of").isIn(before, whole);
        }
        // A run that is refused puts the folder in order, as it begins its outputs there.
        Ran next = Ran.with(writing.words(versions.older(), out).toArray());
        if (before.isEmpty() && left.isEmpty()) {
            assertThat(next.code()).as(next.err()).isEqualTo(ExitCode.DONE);
        } else {
            assertThat(next.code()).as(next.err()).isEqualTo(ExitCode.FAILED);
            Map<String, String> tidied = WritingCase.contents(out);
            everyFileIsWhole(tidied);
            if (!before.isEmpty()) {
                assertThat(tidied)
                        .as("what is there when it has been put in order")
                        .isIn(before, whole);
            }
        }
        theNextRunIsWhole(out);
    }

    private void everyFileIsWhole(Map<String, String> files) {
        files.forEach((name, bytes) -> assertThat(bytes.equals(before.get(name)) || bytes.equals(whole.get(name)))
                .as("%s is of one run or of the other", name)
                .isTrue());
    }

    private void theNextRunIsWhole(Path out) throws IOException {
        List<String> words = writing.words(versions.newer(), out, "--force");
        Ran next = Ran.with(words.toArray());
        assertThat(next.code()).as("the next run: %s", next.err()).isEqualTo(ExitCode.DONE);
        assertThat(WritingCase.contents(out)).as("after the next run").isEqualTo(whole);
        assertThat(WritingCase.leftovers(out)).as("left after the next run").isEmpty();
    }
}
