package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileTime;
import java.util.Arrays;
import java.util.Optional;
import org.duskloom.cli.NewsBoard.News;
import org.duskloom.engine.plan.KernelShelf;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is noticed of saving, in all the ways in which it is done. */
class WatchedShowTest {
    /** Longer than from a save to news of it, when nothing else is to be done. */
    private static final long QUIET_MILLIS = 900;

    @TempDir
    private Path folder;

    private Path show;

    @BeforeEach
    void write() throws IOException {
        show = Garden.in(folder);
    }

    @Test
    void whatIsSavedIsRead() throws Exception {
        try (Watching watching = Watching.of(show)) {
            News first = watching.after(0);
            assertThat(first.json())
                    .isEqualTo("{\"film\": 1, \"errors\": 0, \"warnings\": 0, \"problems\": [], \"pieces\": 3}");
            replace(show, "Longest day", "Shortest night");
            News second = watching.after(first.number());
            assertThat(second.film().orElseThrow().json()).contains("Shortest night");
            assertThat(second.number()).isEqualTo(2);
            assertThat(watching.said()).isEmpty();
        }
    }

    /** Editors write beside the file and give the new one its name; or move the old one away before they write. */
    @Test
    void savingByRenamingIsSaving() throws Exception {
        try (Watching watching = Watching.of(show)) {
            Path swap = folder.resolve(".show.json.swp");
            Files.writeString(swap, Files.readString(show).replace("Longest day", "One"));
            Files.move(swap, show, StandardCopyOption.ATOMIC_MOVE);
            News one = watching.after(1);
            assertThat(one.film().orElseThrow().json()).contains("\"title\": \"One\"");

            Path backup = folder.resolve("show.json~");
            Files.move(show, backup);
            Files.writeString(show, Files.readString(backup).replace("One", "Two"));
            News two = watching.after(one.number());
            assertThat(two.json()).contains("\"errors\": 0");
            assertThat(two.film().orElseThrow().json()).contains("\"title\": \"Two\"");
        }
    }

    @Test
    void everyFileOfTheShowIsWatched() throws Exception {
        Files.writeString(show, """
                {"duskloom": "timeline/1", "display": "at/display.json", "rate": 20, "length": "1s",
                 "layers": [{"cues": [{"on": "*", "effect": "image", "with": {"file": "bee.png"}}]}]}
                """);
        Path display = Files.createDirectory(folder.resolve("at")).resolve("display.json");
        Files.writeString(display, """
                {"duskloom": "display/1", "shapes": {"post": {"pixels": "post.csv"}, "leaf": {"pixels": "leaf.svg"}},
                 "props": [{"name": "left", "shape": "post", "at": [0, 0]}, {"name": "top", "shape": "leaf", "at": [9, 9]}]}
                """);
        Path post = folder.resolve("at/post.csv");
        Files.writeString(post, "pixel,x,y\n1,0,0\n2,0,5\n");
        Path leaf = folder.resolve("at/leaf.svg");
        Files.writeString(leaf, """
                <svg xmlns="http://www.w3.org/2000/svg" width="9mm" height="9mm" viewBox="0 0 9 9"><circle cx="1" cy="1" r="1"/></svg>
                """);
        Path bee = folder.resolve("bee.png");
        Files.copy(Project.file("demos/garden/strip.png"), bee);
        try (Watching watching = Watching.of(show)) {
            News news = watching.after(0);
            assertThat(news.json()).contains("\"film\": 1, \"errors\": 0");
            replace(post, "2,0,5", "2,0,5\n3,0,9");
            news = watching.after(news.number());
            assertThat(news.film().orElseThrow().json()).contains("\"pixels\": 4,");
            replace(leaf, "<circle", "<circle cx=\"2\" cy=\"3\" r=\"1\"/><circle");
            news = watching.after(news.number());
            assertThat(news.film().orElseThrow().json()).contains("\"pixels\": 5,");
            replace(
                    display,
                    "\"at\": [9, 9]}",
                    "\"at\": [9, 9]}, {\"name\": \"end\", \"shape\": \"leaf\", \"at\": [0, 7]}");
            news = watching.after(news.number());
            assertThat(news.film().orElseThrow().json()).contains("\"pixels\": 7,");
            String before = news.film().orElseThrow().json();
            Files.copy(Project.file("demos/gallery/sweep.png"), bee, StandardCopyOption.REPLACE_EXISTING);
            news = watching.after(news.number());
            assertThat(news.film().orElseThrow().json()).isNotEqualTo(before);
        }
    }

    @Test
    void aFileThatGoesAndComesBackIsMissedMeanwhile() throws Exception {
        Watching watching = Watching.of(show);
        try (watching) {
            Path map = folder.resolve("map.csv");
            Path away = folder.resolve("away.csv");
            Files.move(map, away);
            News gone = watching.after(1);
            assertThat(gone.json())
                    .contains("\"film\": 1, \"errors\": 1")
                    .contains("\"show.json:4:10\"")
                    .contains("there is no file");
            Files.move(away, map);
            News back = watching.after(gone.number());
            assertThat(back.json()).startsWith("{\"film\": 2, \"errors\": 0");

            Files.move(show, away);
            gone = watching.after(back.number());
            assertThat(gone.json()).contains("\"film\": 2, \"errors\": 1").contains("there is no such file");
            Files.move(away, show);
            assertThat(watching.after(gone.number()).json()).contains("\"errors\": 0");
        }
        assertThat(watching.said())
                .contains("map.csv")
                .containsSubsequence("1 error", "no errors any more", "1 error")
                .endsWith(show + " has no errors any more" + System.lineSeparator());
    }

    /** A file that the show names, and that is made later. */
    @Test
    void aFileThatWasMissingFromTheStartIsAwaited() throws Exception {
        Path map = folder.resolve("map.csv");
        Path later = Files.move(map, folder.resolve("later.csv"));
        try (Watching watching = Watching.of(show)) {
            assertThat(watching.after(0).json()).contains("\"film\": 0, \"errors\": 1");
            Files.move(later, map);
            assertThat(watching.after(1).json()).startsWith("{\"film\": 1, \"errors\": 0");
        }
    }

    /** Written piece by piece, it is read when it is whole: nothing is said of the half. */
    @Test
    void whatIsHalfWrittenIsAwaited() throws Exception {
        byte[] text = Files.readString(show).replace("Longest day", "Whole").getBytes(StandardCharsets.UTF_8);
        try (Watching watching = Watching.of(show)) {
            Files.write(show, new byte[0]);
            for (int from = 0; from < text.length; from += text.length / 6) {
                Thread.sleep(60);
                byte[] part = Arrays.copyOfRange(text, from, Math.min(text.length, from + text.length / 6));
                Files.write(show, part, StandardOpenOption.APPEND);
            }
            News news = watching.after(1);
            assertThat(news.film().orElseThrow().json()).contains("\"title\": \"Whole\"");
            assertThat(news.number()).isEqualTo(2);
        }
    }

    @Test
    void whatIsSavedUnchangedIsNoNews() throws Exception {
        try (Watching watching = Watching.of(show)) {
            Files.writeString(show, Files.readString(show));
            Files.setLastModifiedTime(show, FileTime.fromMillis(1_000_000));
            assertThat(watching.board().after(1, QUIET_MILLIS)).isEqualTo(Optional.empty());
        }
    }

    /** On a drive whose clock is coarse: the same length and the same time, a moment later. */
    @Test
    void aSaveThatLeavesNoTraceIsFoundByASecondLook() throws Exception {
        FileTime now = FileTime.fromMillis(System.currentTimeMillis());
        Files.setLastModifiedTime(show, now);
        try (Watching watching = Watching.of(show)) {
            byte[] text =
                    Files.readString(show).replace("Longest day", "longest DAY").getBytes(StandardCharsets.UTF_8);
            // Faster than two looks follow each other, most times; if not, it is found all the more.
            Files.write(show, text);
            Files.setLastModifiedTime(show, now);
            assertThat(watching.after(1).film().orElseThrow().json()).contains("longest DAY");
        }
    }

    /** What a group holds may change while no frame does. */
    @Test
    void whatIsSeenMayGoAndComeBack() throws Exception {
        try (Watching watching = Watching.of(show, "daisies")) {
            News first = watching.after(0);
            assertThat(first.film().orElseThrow().json()).contains("\"pixels\": 12,");
            replace(show, "\"daisies\": [\"daisy-*\"]", "\"daisies\": [\"daisy-1\"]");
            News fewer = watching.after(first.number());
            assertThat(fewer.film().orElseThrow().json()).contains("\"pixels\": 6,");
            replace(show, "\"daisies\"", "\"flowers\"");
            News gone = watching.after(fewer.number());
            assertThat(gone.json())
                    .contains("\"film\": 2, \"errors\": 1")
                    .contains("\"message\": \"--on: there is no ");
        }
    }

    @Test
    void errorsAreToldAndTheLastShowStays() throws Exception {
        Watching watching = Watching.of(show);
        try (watching) {
            replace(show, "\"sweep\"", "\"sweap\"");
            News news = watching.after(1);
            assertThat(news.json())
                    .contains("{\"film\": 1, \"errors\": 1")
                    .contains("\"place\": \"show.json:11:")
                    .contains("\"severity\": \"error\"")
                    .contains("sweap")
                    .contains("\"hint\": \"did you mean \\\"sweep\\\"?");
            assertThat(news.film()).isPresent();
        }
        assertThat(watching.said()).contains(show + ":11:").endsWith("1 error\n");
    }

    /** What the program cannot bear is a problem of the show, not the end. */
    @Test
    void aFaultIsToldLikeAnError() {
        ShowReading tooLarge = ShowReading.failed(
                show,
                ShowReading.of(show, new PixelChoice(), new KernelShelf()).files(),
                new OutOfMemoryError("Java heap space"));
        assertThat(tooLarge.isBroken()).isTrue();
        assertThat(tooLarge.problems().inFileOrder().get(0).toString())
                .matches(".*show\\.json: error: this show needs more memory than the \\d+ MB that Java may use; give it"
                        + " more with JAVA_TOOL_OPTIONS=-Xmx4g");
        ShowReading fault = ShowReading.failed(
                show,
                ShowReading.of(show, new PixelChoice(), new KernelShelf()).files(),
                new IllegalStateException("odd"));
        assertThat(fault.problems().inFileOrder().get(0).message())
                .isEqualTo("fault in the program: java.lang.IllegalStateException: odd");
    }

    private static void replace(Path file, String from, String to) throws IOException {
        String text = Files.readString(file);
        assertThat(text).contains(from);
        Files.writeString(file, text.replace(from, to));
    }
}
