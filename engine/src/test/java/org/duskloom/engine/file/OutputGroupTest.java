package org.duskloom.engine.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.duskloom.engine.file.Folders.namesIn;
import static org.duskloom.engine.file.Folders.write;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files that become final together, or not at all. */
class OutputGroupTest {
    @TempDir
    private Path folder;

    @Test
    void givesNamesOnlyWhenPublished() throws IOException {
        try (OutputGroup group = new OutputGroup(IfExists.REFUSE)) {
            finished(group, "show/frames.rgb", "frames");
            finished(group, "show/frames.json", "manifest");
            assertThat(namesIn(folder.resolve("show"))).containsExactly(".frames.json.part", ".frames.rgb.part");
            group.publish();
        }
        assertThat(namesIn(folder.resolve("show"))).containsExactly("frames.json", "frames.rgb");
        assertThat(folder.resolve("show/frames.json")).hasContent("manifest");
    }

    @Test
    void leavesNothingWhenOneIsMissing() throws IOException {
        try (OutputGroup group = new OutputGroup(IfExists.REFUSE)) {
            finished(group, "show/frames.rgb", "frames");
            write(group.open(folder.resolve("show/strip.png")), "half a pict");
            assertThatThrownBy(group::publish)
                    .isInstanceOf(IllegalStateException.class)
                    .hasMessageContaining("strip.png");
        }
        assertThat(namesIn(folder)).isEmpty();
    }

    @Test
    void publishesNothingAfterOneWasAbandoned() throws IOException {
        try (OutputGroup group = new OutputGroup(IfExists.REFUSE)) {
            finished(group, "frames.rgb", "frames");
            group.open(folder.resolve("strip.png")).close();
            assertThatThrownBy(group::publish).isInstanceOf(IOException.class).hasMessageContaining("abandoned");
        }
        assertThat(namesIn(folder)).isEmpty();
    }

    @Test
    void canBeStoppedBetweenFinishingAndPublishing() throws IOException {
        try (OutputGroup group = new OutputGroup(IfExists.REFUSE)) {
            finished(group, "frames.rgb", "frames");
            assertThat(StagedFiles.abandonAll()).isEqualTo(1);
            assertThatThrownBy(group::publish).isInstanceOf(IOException.class);
        }
        assertThat(namesIn(folder)).isEmpty();
    }

    @Test
    void refusesBeforeTheFirstRename() throws IOException {
        try (OutputGroup group = new OutputGroup(IfExists.REFUSE)) {
            finished(group, "frames.rgb", "frames");
            finished(group, "strip.png", "strip");
            Files.writeString(folder.resolve("strip.png"), "theirs");
            assertThatThrownBy(group::publish).isInstanceOf(OutputRefusedException.class);
        }
        assertThat(namesIn(folder)).containsExactly("strip.png");
        assertThat(folder.resolve("strip.png")).hasContent("theirs");
    }

    /** How faults in between are taken back is in {@link PublicationFaultTest}. */
    @Test
    void changesNothingWhenSomebodyRemovedWhatWasWritten() throws IOException {
        Files.writeString(folder.resolve("frames.rgb"), "old frames");
        Files.writeString(folder.resolve("frames.json"), "old manifest");
        try (OutputGroup group = new OutputGroup(IfExists.REPLACE)) {
            finished(group, "frames.rgb", "new frames");
            finished(group, "notes.txt", "new notes");
            finished(group, "frames.json", "new manifest");
            deletePartOf("frames.json");
            assertThatThrownBy(group::publish)
                    .isInstanceOf(IOException.class)
                    .hasMessageEndingWith("frames.json: somebody has removed what was written so far");
        }
        assertThat(folder.resolve("frames.rgb")).hasContent("old frames");
        assertThat(folder.resolve("frames.json")).hasContent("old manifest");
        assertThat(namesIn(folder)).containsExactly("frames.json", "frames.rgb");
    }

    @Test
    void replacesAllWhenAsked() throws IOException {
        Files.writeString(folder.resolve("frames.rgb"), "old frames");
        Files.writeString(folder.resolve("frames.json"), "old manifest");
        try (OutputGroup group = new OutputGroup(IfExists.REPLACE)) {
            finished(group, "frames.rgb", "new frames");
            finished(group, "frames.json", "new manifest");
            group.publish();
        }
        assertThat(folder.resolve("frames.rgb")).hasContent("new frames");
        assertThat(folder.resolve("frames.json")).hasContent("new manifest");
        assertThat(namesIn(folder)).containsExactly("frames.json", "frames.rgb");
    }

    private void finished(OutputGroup group, String name, String text) throws IOException {
        try (StagedFile file = group.open(folder.resolve(name))) {
            write(file, text);
            file.finish();
        }
    }

    private void deletePartOf(String name) throws IOException {
        Files.delete(folder.resolve("." + name + ".part/new"));
    }
}
