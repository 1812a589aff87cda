package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/** One command that is run with faults, each time in a folder of its own, and what it should write. */
final class FaultBench {
    private final WritingCase writing;
    private final TwoVersions versions;
    private final Path scratch;
    private final Map<String, String> older;
    private final Map<String, String> newer;
    private final String said;

    FaultBench(WritingCase writing, TwoVersions versions, Path scratch) throws IOException {
        this.writing = writing;
        this.versions = versions;
        this.scratch = scratch;
        Path place = place(Map.of());
        assertThat(run(place, versions.older())).isNotEmpty();
        older = WritingCase.contents(out(place));
        said = run(place, versions.newer());
        newer = WritingCase.contents(out(place));
        boolean same = writing.line().startsWith("effects");
        assertThat(older.equals(newer)).as("the two versions write the same").isEqualTo(same);
        assertThat(older.keySet()).as("their names").isEqualTo(newer.keySet());
    }

    /** A folder for one run, in which the older outputs stand or nothing does. */
    Path place(boolean replacing) throws IOException {
        return place(replacing ? older : Map.of());
    }

    /** What must hold when such a run has met a fault. */
    Aftermath aftermath(boolean replacing) {
        return new Aftermath(writing, versions, replacing ? older : Map.of(), newer, said);
    }

    /** The run that meets the fault. */
    List<String> words(Path place) {
        return writing.words(versions.newer(), out(place), "--force");
    }

    Map<String, String> older() {
        return older;
    }

    Map<String, String> newer() {
        return newer;
    }

    static Path out(Path place) {
        return place.resolve("out");
    }

    @Override
    public String toString() {
        return writing.line();
    }

    private Path place(Map<String, String> contents) throws IOException {
        Path place = Files.createTempDirectory(scratch, "run");
        if (!contents.isEmpty()) {
            WritingCase.put(contents, out(place));
        }
        return place;
    }

    private String run(Path place, Path version) {
        Ran ran = Ran.with(writing.words(version, out(place), "--force").toArray());
        assertThat(ran.code()).as(ran.err()).isZero();
        return Aftermath.masked(ran.err(), out(place));
    }
}
