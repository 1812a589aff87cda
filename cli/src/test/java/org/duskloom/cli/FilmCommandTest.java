package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FilmCommandTest {
    @TempDir
    private Path folder;

    private Path show;

    @BeforeEach
    void write() throws IOException {
        show = Garden.in(folder);
    }

    @Test
    void theEndingSaysWhatIsMade() throws IOException {
        for (String name : List.of("film.html", "film.png", "film.y4m", "FILM.PNG")) {
            Ran ran = film(name, "--to", "500ms").without(folder);
            assertThat(ran.code()).isZero();
            assertThat(ran.out()).isEmpty();
            assertThat(ran.err())
                    .matches(name.replace(".", "\\.") + ": 20 frames, 20 pixels, \\d+\\.\\d s, [0-9.]+ [kM]B\n");
        }
        assertThat(start("film.html", 15)).isEqualTo("<!doctype html>");
        assertThat(start("film.png", 8)).isEqualTo("\u0089PNG\r\n\u001a\n");
        assertThat(start("film.y4m", 9)).isEqualTo("YUV4MPEG2");
    }

    /** Frames 10, 13, 16 of 40 a second, and three that stand for them. */
    @Test
    void takesAPartAndEachNthFrame() throws IOException {
        Ran ran = film("part.y4m", "--from", "10f", "--to", "19f", "--every", "3", "--size", "64x48");
        assertThat(ran.err()).contains("part.y4m: 3 frames, ");
        assertThat(start("part.y4m", 36)).isEqualTo("YUV4MPEG2 W64 H48 F40:3 Ip A1:1 C444");
        assertThat(Files.size(folder.resolve("part.y4m"))).isEqualTo(37 + 3 * (6 + 3 * 64 * 48));
    }

    @Test
    void aPartOfTheDisplayFillsThePicture() throws IOException {
        assertThat(film("daisies.y4m", "--on", "daisies", "--to", "1f").err()).contains("1 frame, 12 pixels");
        assertThat(film("two.y4m", "--on", "daisy-1", "--on", "fence", "--to", "1f")
                        .err())
                .contains("1 frame, 14 pixels");
        // The two daisies are 68 wide and 20 high, with room round them as wide as a pixel glows.
        assertThat(start("daisies.y4m", 20)).isEqualTo("YUV4MPEG2 W1280 H" + height());
    }

    @Test
    void aLargeAnimationSaysHowToMakeASmallerOne() {
        Ran large = film("large.png", "--to", "4f", "--size", "3000x3000", "--every", "1");
        assertThat(large.err())
                .matches(
                        "(?s).*large\\.png: 4 frames, 20 pixels, .* MB\nsmaller by half: --size 2100x2100 or --every 2; .*");
        assertThat(film("small.png", "--to", "4f").err()).doesNotContain("smaller");
    }

    /** Even, of 1280 dots across. A pixel glows by 0.15 of the height: m = 0.15 (20 + 2 m), which is 20 · 3 / 14. */
    private static String height() {
        double room = 20 * 3 / 14.0;
        return Long.toString(2 * Math.round((20 + 2 * room) / (68 + 2 * room) * 1280 / 2));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "film.gif | | the ending says what is made: .html a page that plays the show",
                "film | | the ending says what is made",
                "film.png | --size 0x0 | --size: the size \"0x0\" is out of range; write width and height in dots",
                "film.png | --size 3000000000x2 | --size: ",
                "film.png | --size 99999x2 | out of range",
                "film.png | --size wide | \"wide\" is not a size",
                "film.y4m | --size 15x16 | --size 15x16: most video needs an even width and an even height",
                "film.html | --size 64x48 | --size is for a picture or a video",
                "film.png | --from 1s --to 500ms | no frame lies between 1s and 0.5s",
                "film.png | --from 9s | --from 9s lies beyond the show",
                "film.png | --from soon | --from: ",
                "film.png | --on daisey-1 | --on: ",
                "film.png | --on daisies/rim | --on: ",
                "film.png | --every 0 | --every is 0; allowed: 1 or more",
                "film.png | --plays -1 | --plays is -1; allowed: 0 to 1000000",
                "film.y4m | --plays 2 | --plays is for an animated picture"
            })
    void whatCannotBeMeantIsRefused(String name, String options, String said) throws IOException {
        Ran ran = film(name, options == null ? new String[0] : options.split(" "));
        assertThat(ran.err()).contains(said);
        assertThat(ran.code()).isEqualTo(2);
        assertThat(left()).containsExactly("map.csv", "show.json");
    }

    /** An hour of 20,000 lights that drift: found out before, not when the disk is half full. */
    @Test
    void aFilmThatNoPageHoldsIsNotBegun() throws IOException {
        StringBuilder map = new StringBuilder("prop,pixel,x,y\n");
        for (int i = 0; i < 20_000; i++) {
            map.append("meadow,")
                    .append(i + 1)
                    .append(',')
                    .append(i % 200)
                    .append(',')
                    .append(i / 200)
                    .append('\n');
        }
        Files.writeString(folder.resolve("map.csv"), map);
        Files.writeString(show, """
                {"duskloom": "timeline/1", "map": "map.csv", "rate": 40, "length": "1:00:00",
                 "layers": [{"cues": [{"on": "meadow", "effect": "drift", "with": {"scale": 0.1}}]}]}
                """);
        Ran ran = film("film.html");
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err())
                .containsPattern(
                        "a page holds at most 500 MB, and this film would take more: about \\d{2,4} s of it fit;"
                                + " take a part with --from and --to");
        assertThat(left()).containsExactly("map.csv", "show.json");
    }

    @Test
    void theSoundOfAShowIsReadBefore() throws IOException {
        Files.writeString(
                show, Files.readString(show).replace("\"rate\"", "\"sound\": {\"file\": \"song.wav\"}, \"rate\""));
        Files.writeString(folder.resolve("song.wav"), "no sound at all, but long enough to be looked into");
        for (String name : List.of("film.html", "film.png")) {
            Ran ran = film(name);
            assertThat(ran.code()).isEqualTo(3);
            assertThat(ran.without(folder).err()).startsWith("song.wav: error: ");
        }
        assertThat(left()).containsExactly("map.csv", "show.json", "song.wav");
    }

    @Test
    void aSingleFrameIsAFilm() {
        assertThat(film("film.png", "--every", "4000").err()).contains("1 frame, ");
        assertThat(film("film.html", "--every", "4000").code()).isZero();
    }

    @Test
    void namesWhatWasProbablyMeant() {
        assertThat(film("film.png", "--on", "daisey-1").err()).contains("daisy-1");
    }

    @Test
    void aFastShowIsNoAnimatedPicture() throws IOException {
        Files.writeString(show, Files.readString(show).replace("\"rate\": 40", "\"rate\": 100"));
        Ran ran = film("film.png");
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("pictures of 10 ms and less").contains("--every 2 is slow enough");
        assertThat(left()).containsExactly("map.csv", "show.json");
        assertThat(film("film.png", "--every", "2").code()).isZero();
    }

    @Test
    void aFilmThatExistsIsNotTouched() throws IOException {
        Path old = Files.writeString(folder.resolve("film.html"), "old");
        Ran ran = film("film.html").without(folder);
        assertThat(ran).isEqualTo(new Ran(1, "", "duskloom: film.html exists already; use --force to replace it\n"));
        assertThat(old).hasContent("old");
        assertThat(film("film.html", "--force").code()).isZero();
        assertThat(old).content().startsWith("<!doctype html>");
    }

    @Test
    void aShowWithErrorsIsNotFilmed() throws IOException {
        Files.writeString(show, Files.readString(show).replace("\"sweep\"", "\"sweap\""));
        Ran ran = film("film.html");
        assertThat(ran.code()).isEqualTo(3);
        assertThat(ran.err()).contains("sweap").contains("sweep");
        assertThat(left()).containsExactly("map.csv", "show.json");
    }

    @Test
    void theShowItselfIsNoFilm() throws IOException {
        Path html = Files.move(show, folder.resolve("show.html"));
        assertThat(Ran.with("film", html, "-o", html, "--force").code()).isEqualTo(2);
        assertThat(html).content().contains("timeline/1");
    }

    /** Nothing of a title is read as a tag. */
    @Test
    void aTitleStaysATitle() throws IOException {
        String title = "</script><script>document.title = 'taken'</script><!-- end of film -->";
        Files.writeString(show, Files.readString(show).replace("Longest day", title));
        assertThat(film("film.html").code()).isZero();
        String page = Files.readString(folder.resolve("film.html"));
        assertThat(page).doesNotContain("taken'</script>");
        try (Browser browser = Browser.open()) {
            browser.show(folder.resolve("film.html"));
            assertThat(browser.text("document.title")).isEqualTo(title);
            assertThat(browser.text("document.getElementById('title').textContent"))
                    .isEqualTo(title);
            assertThat(browser.complaints()).isEmpty();
        }
    }

    /** The page is a file that can be opened, and changed, without the program. */
    @Test
    void thePageWorksAsItStands() {
        try (Browser browser = Browser.open()) {
            browser.show(Path.of("src/main/resources/org/duskloom/cli/film/page.html")
                    .toAbsolutePath());
            browser.press("ArrowRight");
            assertThat(browser.value("[...player.film.frame(2)]")).isEqualTo(List.of(255L, 178L, 122L));
            assertThat(browser.complaints()).isEmpty();
        }
    }

    private Ran film(String name, String... options) {
        Object[] all = Stream.concat(Stream.of("film", show, "-o", folder.resolve(name)), Stream.of((Object[]) options))
                .toArray();
        return Ran.with(all);
    }

    private String start(String name, int bytes) throws IOException {
        return new String(Files.readAllBytes(folder.resolve(name)), 0, bytes, StandardCharsets.ISO_8859_1);
    }

    private List<String> left() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }
}
