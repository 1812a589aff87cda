package org.duskloom.engine.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a run leaves that ends at some moment, laid out by hand, and what the next one makes of it. */
class LeftoversTest {
    private static final String DEAD = "5.1.garden.0";
    private static final String LIVING = "7.1.garden.0";
    private static final Owner SELF = new Owner(8, 1, "garden", 0);

    @TempDir
    private Path folder;

    /** Half of the new file was written, the old one not yet touched. */
    @Test
    void whatIsHalfWrittenGoes() throws IOException {
        write("frames.rgb", "old");
        part("frames.rgb", DEAD, DEAD, "new", "ha");
        clear();
        assertOnly("frames.rgb", "old");
    }

    /** The new one has its name, so the whole group has: what it replaced goes. */
    @Test
    void whatWasCompleteStays() throws IOException {
        write("frames.rgb", "new");
        part("frames.rgb", DEAD, DEAD, "kept/frames.rgb", "old");
        clear();
        assertOnly("frames.rgb", "new");
    }

    /** One of two had its name: both go back, as frames and picture of two runs do not belong together. */
    @Test
    void aGroupGoesBackAsAWhole() throws IOException {
        write("frames.rgb", "new");
        write("strip.png", "old");
        part("frames.rgb", DEAD, DEAD, "kept/frames.rgb", "old");
        part("strip.png", DEAD, DEAD, "new", "new");
        clear();
        assertThat(folder.resolve("strip.png")).hasContent("old");
        Files.delete(folder.resolve("strip.png"));
        assertOnly("frames.rgb", "old");
    }

    /** Two groups of one process do not hang on each other. */
    @Test
    void anotherGroupIsNotDrawnBack() throws IOException {
        write("frames.rgb", "new");
        part("frames.rgb", DEAD, DEAD, "kept/frames.rgb", "old");
        part("strip.png", "5.1.garden.1", "5.1.garden.1", "new", "ha");
        clear();
        assertOnly("frames.rgb", "new");
    }

    /** The manifest was away, and no new one had come. */
    @Test
    void aManifestComesBack() throws IOException {
        part("frames.json", DEAD, DEAD, "taken/frames.json", "old");
        clear();
        assertOnly("frames.json", "old");
    }

    /** A folder cannot be renamed over another one that holds something: the new one is dropped first. */
    @Test
    void foldersComeBack() throws IOException {
        Files.createDirectory(folder.resolve("singles"));
        write("singles/00.rgb", "new");
        part("singles", DEAD, DEAD, "kept/singles/00.rgb", "old");
        part("strip.png", DEAD, DEAD, "new", "ha");
        clear();
        assertThat(Folders.namesIn(folder)).containsExactly("singles");
        assertThat(folder.resolve("singles/00.rgb")).hasContent("old");
    }

    @Test
    void whatTheLivingHaveIsLeftAlone() throws IOException {
        part("frames.rgb", LIVING, LIVING, "new", "ha");
        part("strip.png", DEAD, LIVING, "new", "ha");
        Files.createDirectory(folder.resolve(".part-" + LIVING));
        clear();
        assertThat(Folders.namesIn(folder)).containsExactly(".frames.rgb.part", ".part-" + LIVING, ".strip.png.part");
        assertThat(folder.resolve(".frames.rgb.part/" + LIVING + "@" + LIVING)).exists();
    }

    /** Folders and files of such names that no run has made, or of which nobody knows whose they are. */
    @Test
    void whatIsNobodysStaysUnlessItIsEmpty() throws IOException {
        Files.createDirectory(folder.resolve(".empty.part"));
        Files.createDirectory(folder.resolve(".part-" + DEAD));
        part("song", "no.owner", "at all", "new", "mine");
        write(".film.part", "a download");
        write(".part", "mine");
        write(".part-5", "mine");
        clear();
        assertThat(Folders.namesIn(folder)).containsExactly(".film.part", ".part", ".part-5", ".song.part");
    }

    /** What cannot be put back now is given up, whole as it is, and the next run puts it back. */
    @Test
    void aFaultLeavesItToTheNext() throws IOException {
        part("frames.json", DEAD, DEAD, "taken/frames.json", "old");
        FaultyCalls faulty = new FaultyCalls(FaultyCalls.Fault.ONCE, 2, Set.of("rename"));
        new Leftovers(faulty, SELF, owner -> owner.process() == 8).clear(folder);
        assertThat(faulty.struck()).isTrue();
        assertThat(folder.resolve(".frames.json.part/taken/frames.json")).hasContent("old");
        clear();
        assertOnly("frames.json", "old");
    }

    @Test
    void whereNoFolderIsNothingIsLeft() {
        new Leftovers(new SystemCalls(), SELF, owner -> false).clear(folder.resolve("nowhere"));
        assertThat(folder).isEmptyDirectory();
    }

    private void clear() {
        new Leftovers(new SystemCalls(), SELF, owner -> owner.process() == 7).clear(folder);
    }

    private void assertOnly(String name, String text) throws IOException {
        assertThat(Folders.namesIn(folder)).containsExactly(name);
        assertThat(folder.resolve(name)).hasContent(text);
    }

    private void write(String name, String text) throws IOException {
        Files.writeString(folder.resolve(name), text);
    }

    /** The place beside an output of a group, which an owner sees to, with one file in it. */
    private void part(String output, String group, String owner, String inside, String text) throws IOException {
        Path place = folder.resolve("." + output + ".part");
        Files.createDirectories(place.resolve(inside).getParent());
        Files.writeString(place.resolve(group + "@" + owner), "");
        Files.writeString(place.resolve(inside), text);
    }
}
