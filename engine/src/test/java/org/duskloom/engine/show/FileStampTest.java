package org.duskloom.engine.show;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.Map;
import org.duskloom.engine.link.Links;
import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

class FileStampTest {
    private static final FileTime THEN = FileTime.from(Instant.parse("2026-06-21T21:40:00Z"));

    @TempDir
    private Path folder;

    private Path file(String name, String text) throws IOException {
        Path file = Files.writeString(folder.resolve(name), text);
        Files.setLastModifiedTime(file, THEN);
        return file;
    }

    @Test
    void isTheSameWhileNothingIsWritten() throws IOException {
        Path file = file("show.json", "{}");
        FileStamp stamp = FileStamp.of(file);
        assertThat(stamp).isEqualTo(FileStamp.of(file));
        assertThat(stamp.bytes()).isEqualTo(2);
        assertThat(stamp.modified()).isEqualTo(THEN);
        assertThat(stamp.isReadable()).isTrue();
    }

    @Test
    void isAnotherAfterWriting() throws IOException {
        Path file = file("show.json", "{}");
        FileStamp stamp = FileStamp.of(file);
        Files.writeString(file, "[]");
        assertThat(FileStamp.of(file)).isNotEqualTo(stamp);
    }

    /** As editors save that write beside the file and give it its name, with the time that it had. */
    @Test
    @EnabledOnOs({OS.LINUX, OS.MAC})
    void isAnotherIfAFileOfTheSameSizeAndTimeTookItsName() throws IOException {
        Path file = file("show.json", "{}");
        FileStamp stamp = FileStamp.of(file);
        Files.move(file("show.new", "[]"), file, StandardCopyOption.ATOMIC_MOVE);
        assertThat(FileStamp.of(file)).isNotEqualTo(stamp);
    }

    @Test
    void isAnotherIfItGoesAndComes() throws IOException {
        Path file = folder.resolve("show.json");
        FileStamp missing = FileStamp.of(file);
        assertThat(missing.isReadable()).isFalse();
        assertThat(missing.bytes()).isEqualTo(-1);
        Files.writeString(file, "");
        assertThat(FileStamp.of(file)).isNotEqualTo(missing);
        Files.delete(file);
        assertThat(FileStamp.of(file)).isEqualTo(missing);
        assertThat(FileStamp.of(folder)).isNotEqualTo(missing);
    }

    @Test
    void isThatOfWhatALinkLeadsTo() throws IOException {
        Path link = folder.resolve("link.json");
        Links.symbolic(link, file("one.json", "{}"));
        FileStamp one = FileStamp.of(link);
        file("one.json", "{} ");
        assertThat(FileStamp.of(link)).isNotEqualTo(one);
        Files.delete(link);
        Links.symbolic(link, folder.resolve("nowhere.json"));
        assertThat(FileStamp.of(link).isReadable()).isFalse();
    }

    @Test
    void isAnotherOnceItMayBeRead() throws IOException {
        Path file = file("show.json", "{}");
        FileStamp stamp = FileStamp.of(file);
        assumeThat(file.toFile().setReadable(false) && !Files.isReadable(file))
                .as("there are rights here, and they hold")
                .isTrue();
        assertThat(FileStamp.of(file)).isNotEqualTo(stamp);
    }

    /** FAT has the time of writing in steps of two seconds: a second save within them leaves no trace. */
    @Test
    void isFreshForTwoSeconds() throws IOException {
        FileStamp stamp = FileStamp.of(file("show.json", "{}"));
        assertThat(stamp.isFreshAt(THEN.toInstant().plusMillis(1999))).isTrue();
        assertThat(stamp.isFreshAt(THEN.toInstant().plusMillis(2001))).isFalse();
        assertThat(FileStamp.of(folder.resolve("none")).isFreshAt(Instant.now()))
                .isFalse();
    }

    /** Those that are missing may come, and then everything is another. */
    @Test
    void everyFileThatWasLookedForHasOne() throws IOException {
        Path show = Files.writeString(folder.resolve("show.json"), """
                {"duskloom": "timeline/1", "display": "at/display.json", "rate": 40, "length": "1s", "layers": []}
                """);
        ShowFiles none = ShowFiles.beside(show);
        ShowReader.read(show, none, new Problems());
        Path display = folder.resolve("at/display.json");
        assertThat(none.lookedFor()).isEqualTo(Map.of(show, FileStamp.of(show), display, FileStamp.of(display)));
        assertThat(none.inputs()).hasSize(1);

        Files.createDirectory(folder.resolve("at"));
        Files.writeString(display, """
                {"duskloom": "display/1", "shapes": {"post": {"pixels": "post.csv"}, "leaf": {"pixels": "leaf.svg"}},
                 "props": [{"name": "left", "shape": "post", "at": [0, 0]}]}
                """);
        ShowFiles some = ShowFiles.beside(show);
        ShowReader.read(show, some, new Problems());
        assertThat(some.lookedFor())
                .containsOnlyKeys(show, display, folder.resolve("at/post.csv"), folder.resolve("at/leaf.svg"));
        assertThat(some.lookedFor().get(display)).isEqualTo(FileStamp.of(display));
    }
}
