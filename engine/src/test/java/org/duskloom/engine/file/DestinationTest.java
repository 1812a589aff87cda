package org.duskloom.engine.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.regex.Pattern;
import org.duskloom.engine.link.Links;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

class DestinationTest {
    private static final Pattern SINGLES = Pattern.compile("\\d+\\.rgb");

    private final CreatedFolders folders = new CreatedFolders(new SystemCalls());

    @TempDir
    private Path given;

    private Path folder;

    @BeforeEach
    void resolve() throws IOException {
        folder = given.toRealPath();
    }

    @Test
    void whatIsMissingAroundItIsMade() throws IOException {
        Path asked = folder.resolve("out/../out/frames.rgb");
        Destination found = Destination.resolve(file(asked, IfExists.REFUSE), folders);
        assertThat(found).isEqualTo(new Destination(asked, folder.resolve("out/frames.rgb"), false));
        assertThat(folder.resolve("out")).isEmptyDirectory();
    }

    @Test
    void aFileIsReplacedOnlyOnDemand() throws IOException {
        Path asked = Files.writeString(folder.resolve("frames.rgb"), "old");
        assertThatThrownBy(() -> Destination.resolve(file(asked, IfExists.REFUSE), folders))
                .isInstanceOfSatisfying(
                        OutputRefusedException.class,
                        refused -> assertThat(refused.isReplaceable()).isTrue());
        assertThat(Destination.resolve(file(asked, IfExists.REPLACE), folders).path())
                .isEqualTo(asked);
    }

    /** To ask for replacement would not help here, and is not advised. */
    @Test
    void filesAndFoldersNeverReplaceEachOther() throws IOException {
        Path file = Files.writeString(folder.resolve("a"), "");
        Path empty = Files.createDirectory(folder.resolve("b"));
        assertRefused(file(empty, IfExists.REPLACE), empty + " is a folder; give the name of a file");
        assertRefused(singles(file, IfExists.REPLACE), file + " is no folder; a folder of that name is to be written");
    }

    @Test
    void aFolderOfFramesIsReplacedAsAWhole() throws IOException {
        Path asked = Files.createDirectory(folder.resolve("singles"));
        assertThat(Destination.resolve(singles(asked, IfExists.REFUSE), folders).path())
                .isEqualTo(asked);
        Files.writeString(asked.resolve("00.rgb"), "");
        assertRefused(singles(asked, IfExists.REFUSE), asked + " exists already");
        assertThat(Destination.resolve(singles(asked, IfExists.REPLACE), folders)
                        .path())
                .isEqualTo(asked);
    }

    /** Somebody's notes are not thrown away with frames, nor a folder that has the name of a frame. */
    @Test
    void aFolderThatHoldsAnythingElseIsNeverReplaced() throws IOException {
        Path asked = Files.createDirectory(folder.resolve("singles"));
        Files.writeString(asked.resolve("00.rgb"), "");
        Files.createDirectory(asked.resolve("01.rgb"));
        Files.writeString(asked.resolve("notes.txt"), "mine");
        assertRefused(
                singles(asked, IfExists.REPLACE),
                asked + " is replaced as a whole, and holds 01.rgb, which is something else;"
                        + " move that away or write somewhere else");
    }

    @Test
    void whatCameMeanwhileIsNotReplaced() throws IOException {
        Path asked = folder.resolve("frames.rgb");
        StagedTarget.Wish wish = file(asked, IfExists.REFUSE);
        Destination destination = Destination.resolve(wish, folders);
        destination.refuseIfTaken(wish);
        Files.writeString(asked, "another's");
        assertThatThrownBy(() -> destination.refuseIfTaken(wish)).hasMessage(asked + " exists already");
        destination.refuseIfTaken(file(asked, IfExists.REPLACE));
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void linksAreFollowed() throws IOException {
        Path real = Files.writeString(folder.resolve("real.rgb"), "old");
        Path link = Links.symbolic(folder.resolve("link.rgb"), real);
        assertThat(Destination.resolve(file(link, IfExists.REPLACE), folders))
                .isEqualTo(new Destination(link, real, false));
        Path lost = Links.symbolic(folder.resolve("lost"), folder.resolve("nowhere"));
        assertRefused(file(lost, IfExists.REPLACE), lost + " is a link that leads nowhere");
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void linksInACircleAreTold() throws IOException {
        Path self = Links.symbolic(folder.resolve("self"), Path.of("self"));
        assertRefused(file(self, IfExists.REPLACE), self + " is a link that leads to itself");
        Path there = Links.symbolic(folder.resolve("there"), Path.of("back"));
        Links.symbolic(folder.resolve("back"), folder.resolve("there"));
        assertRefused(file(there, IfExists.REPLACE), there + " is a link that leads to itself");
        Path inside = there.resolve("frames.rgb");
        assertRefused(
                file(inside, IfExists.REPLACE),
                inside + " cannot be made: " + there + " is a link that leads to itself");
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void devicesAreWrittenStraight() throws IOException {
        Path asked = Path.of("/dev/null");
        assertThat(Destination.resolve(file(asked, IfExists.REFUSE), folders))
                .isEqualTo(new Destination(asked, asked, true));
    }

    /** A rename would put a file in the place of the device. */
    @Test
    @DisabledOnOs(OS.WINDOWS)
    void whatBecameADeviceIsNotReplaced() throws IOException {
        StagedTarget.Wish wish = file(folder.resolve("frames.rgb"), IfExists.REPLACE);
        Destination destination = Destination.resolve(wish, folders);
        Links.symbolic(wish.asked(), Path.of("/dev/null"));
        assertThatThrownBy(() -> destination.refuseIfTaken(wish))
                .isInstanceOf(OutputRefusedException.class)
                .hasMessage(wish.asked() + " has become a device or a pipe while it was written");
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void aFileIsNoFolder() throws IOException {
        Path song = Files.writeString(folder.resolve("song.wav"), "mine");
        Path asked = song.resolve("out/frames.rgb");
        assertRefused(file(asked, IfExists.REPLACE), asked + " cannot be made: " + song + " is a file, not a folder");
    }

    private void assertRefused(StagedTarget.Wish wish, String message) {
        assertThatThrownBy(() -> Destination.resolve(wish, folders))
                .isInstanceOf(OutputRefusedException.class)
                .hasMessage(message);
    }

    private static StagedTarget.Wish file(Path asked, IfExists ifExists) {
        return new StagedTarget.Wish(asked, ifExists, Optional.empty(), false);
    }

    private static StagedTarget.Wish singles(Path asked, IfExists ifExists) {
        return new StagedTarget.Wish(asked, ifExists, Optional.of(SINGLES), false);
    }
}
