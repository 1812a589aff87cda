package org.duskloom.engine.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.duskloom.engine.file.Folders.namesIn;
import static org.duskloom.engine.file.Folders.write;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.duskloom.engine.link.Links;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Nothing half-written: the rules of {@link StagedFile}, seen from the folder. */
class StagedFileTest {
    @TempDir
    private Path folder;

    @Test
    void hasItsNameOnlyWhenFinished() throws IOException {
        Path target = folder.resolve("frames.rgb");
        try (StagedFile file = StagedFile.open(target, IfExists.REFUSE)) {
            write(file, "dusk");
            assertThat(target).doesNotExist();
            assertThat(namesIn(folder)).containsExactly(".frames.rgb.part");
            file.finish();
        }
        assertThat(target).hasContent("dusk");
        assertThat(namesIn(folder)).containsExactly("frames.rgb");
    }

    @Test
    void takesATextAsAWhole() throws IOException {
        Path target = folder.resolve("flower.txt");
        try (StagedFile file = StagedFile.open(target, IfExists.REFUSE)) {
            file.writeWhole("Gänseblümchen \uD83C\uDF3C\n");
        }
        assertThat(target).hasContent("Gänseblümchen \uD83C\uDF3C\n");
        // U+00E4, U+00FC: two bytes each, U+1F33C: four (RFC 3629).
        assertThat(target).hasSize(12 + 4 + 1 + 4);
    }

    @Test
    void leavesNothingWhenClosedUnfinished() throws IOException {
        try (StagedFile file = StagedFile.open(folder.resolve("a/b/frames.rgb"), IfExists.REFUSE)) {
            write(file, "dusk");
            assertThat(folder.resolve("a/b")).isDirectory();
        }
        assertThat(namesIn(folder)).isEmpty();
    }

    @Test
    void leavesFoldersThatWereThereOrHoldSomethingElse() throws IOException {
        Files.createDirectory(folder.resolve("old"));
        try (StagedFile first = StagedFile.open(folder.resolve("old/frames.rgb"), IfExists.REFUSE);
                StagedFile second = StagedFile.open(folder.resolve("new/frames.rgb"), IfExists.REFUSE)) {
            write(first, "dusk");
            write(second, "dusk");
            Files.writeString(folder.resolve("new/notes.txt"), "from somebody else");
        }
        assertThat(namesIn(folder)).containsExactly("new", "old");
        assertThat(namesIn(folder.resolve("old"))).isEmpty();
        assertThat(namesIn(folder.resolve("new"))).containsExactly("notes.txt");
    }

    @Test
    void keepsAFolderInWhichAnotherOutputBecameFinal() throws IOException {
        StagedFile kept = StagedFile.open(folder.resolve("show/strip.png"), IfExists.REFUSE);
        StagedFile dropped = StagedFile.open(folder.resolve("show/frames.rgb"), IfExists.REFUSE);
        kept.finish();
        dropped.close();
        assertThat(namesIn(folder.resolve("show"))).containsExactly("strip.png");
    }

    @Test
    void replacesOnlyWhenAskedAndOnlyWhenComplete() throws IOException {
        Path target = Files.writeString(folder.resolve("strip.png"), "yesterday");
        assertThatThrownBy(() -> StagedFile.open(target, IfExists.REFUSE))
                .isInstanceOf(OutputRefusedException.class)
                .hasMessageContaining("strip.png exists already");
        try (StagedFile file = StagedFile.open(target, IfExists.REPLACE)) {
            write(file, "today");
        }
        assertThat(target).hasContent("yesterday");
        try (StagedFile file = StagedFile.open(target, IfExists.REPLACE)) {
            write(file, "today");
            file.finish();
        }
        assertThat(target).hasContent("today");
        assertThat(namesIn(folder)).containsExactly("strip.png");
    }

    @Test
    void doesNotReplaceAFileThatAppearedMeanwhile() throws IOException {
        Path target = folder.resolve("strip.png");
        StagedFile file = StagedFile.open(target, IfExists.REFUSE);
        write(file, "ours");
        Files.writeString(target, "theirs");
        assertThatThrownBy(file::finish).isInstanceOf(OutputRefusedException.class);
        assertThat(target).hasContent("theirs");
        assertThat(namesIn(folder)).containsExactly("strip.png");
    }

    @Test
    void writesWhereALinkLeads() throws IOException {
        Path real = Files.writeString(folder.resolve("real.rgb"), "old");
        Path link = Links.symbolic(folder.resolve("link.rgb"), real);
        try (StagedFile file = StagedFile.open(link, IfExists.REPLACE)) {
            write(file, "new");
            file.finish();
        }
        assertThat(link).isSymbolicLink();
        assertThat(real).hasContent("new");
    }

    @Test
    void refusesAFolderAFileAsFolderAndALinkToNowhere() throws IOException {
        Path file = Files.writeString(folder.resolve("notes.txt"), "");
        Path lost = Links.symbolic(folder.resolve("lost"), folder.resolve("nowhere"));
        assertThatThrownBy(() -> StagedFile.open(folder, IfExists.REPLACE))
                .isInstanceOf(OutputRefusedException.class)
                .hasMessageContaining("is a folder");
        assertThatThrownBy(() -> StagedFile.open(file.resolve("deep/frames.rgb"), IfExists.REPLACE))
                .isInstanceOf(OutputRefusedException.class)
                .hasMessageContaining("notes.txt is a file, not a folder");
        assertThatThrownBy(() -> StagedFile.open(lost, IfExists.REPLACE))
                .isInstanceOf(OutputRefusedException.class)
                .hasMessageContaining("leads nowhere");
        assertThat(namesIn(folder)).containsExactly("lost", "notes.txt");
    }

    @Test
    void refusesOneNameForTwoOutputs() throws IOException {
        Path roundabout = folder.resolve("x/../frames.rgb");
        Files.createDirectory(folder.resolve("x"));
        try (StagedFile first = StagedFile.open(folder.resolve("frames.rgb"), IfExists.REPLACE)) {
            write(first, "dusk");
            assertThatThrownBy(() -> StagedFile.open(roundabout, IfExists.REPLACE))
                    .isInstanceOf(OutputRefusedException.class)
                    .hasMessageContaining("two outputs");
            first.finish();
        }
        assertThat(folder.resolve("frames.rgb")).hasContent("dusk");
    }

    @Test
    void refusesAnInputUnderAnyName() throws IOException {
        Path input = Files.writeString(folder.resolve("show.json"), "{}");
        Path soft = Links.symbolic(folder.resolve("soft.json"), input);
        Path hard = Links.hard(folder.resolve("hard.json"), input);
        for (Path target : List.of(input, soft, hard, folder.resolve("./show.json"))) {
            assertThatThrownBy(() -> StagedFile.refuseInput(target, List.of(input)))
                    .isInstanceOf(OutputRefusedException.class)
                    .hasMessageContaining("is an input");
        }
        StagedFile.refuseInput(folder.resolve("other.json"), List.of(input, folder.resolve("missing.json")));
    }

    /** Lengths about the buffer's, 2^18 bytes, through both ways of writing. */
    @ParameterizedTest
    @ValueSource(ints = {0, 1, 262_143, 262_144, 262_145, 1_000_003})
    void keepsEveryByteInOrder(int length) throws IOException {
        byte[] bytes = new byte[length];
        new Random(7).nextBytes(bytes);
        Path target = folder.resolve("bytes");
        try (StagedFile file = StagedFile.open(target, IfExists.REFUSE)) {
            int half = length / 2;
            file.write(bytes, 0, half);
            if (length > 0) {
                file.stream().write(bytes[half]);
                file.stream().write(bytes, half + 1, length - half - 1);
            }
            assertThat(file.bytesTaken()).isEqualTo(length);
            file.finish();
        }
        assertThat(target).hasBinaryContent(bytes);
    }

    /** File systems take 255 bytes in a name: this one has 45 characters of 4 bytes and 60 of one, 240 bytes. */
    @Test
    void takesLongNames() throws IOException {
        Path target = folder.resolve("\uD83C\uDF3C".repeat(45) + "x".repeat(60));
        try (StagedFile file = StagedFile.open(target, IfExists.REFUSE)) {
            write(file, "dusk");
            file.finish();
        }
        assertThat(target).hasContent("dusk");
    }

    @Test
    void abandoningFromOutsideStopsTheWriter() throws IOException {
        Path old = Files.writeString(folder.resolve("old.rgb"), "old");
        StagedFile first = StagedFile.open(folder.resolve("a/frames.rgb"), IfExists.REFUSE);
        StagedFile second = StagedFile.open(old, IfExists.REPLACE);
        write(first, "dusk");
        write(second, "dusk");
        assertThat(StagedFiles.abandonAll()).isEqualTo(2);
        assertThat(namesIn(folder)).containsExactly("old.rgb");
        assertThat(old).hasContent("old");
        assertThatThrownBy(second::finish).isInstanceOf(IOException.class).hasMessageContaining("abandoned");
        assertThatThrownBy(() -> first.write(new byte[1 << 19], 0, 1 << 19))
                .isInstanceOf(IOException.class)
                .hasMessageContaining("abandoned");
        first.close();
        assertThat(StagedFiles.abandonAll()).isZero();
        assertThat(namesIn(folder)).containsExactly("old.rgb");
    }
}
