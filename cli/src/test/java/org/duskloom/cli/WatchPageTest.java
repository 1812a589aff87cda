package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The page of a show that is being written, in a browser: the garden, 96 seconds of 1,288 pixels. */
class WatchPageTest {
    private static final int PIXELS = 1288;

    /** A word of the garden's show that names it on the page. */
    private static final String TITLE = "Longest day";

    private static final String ALL_IS_HERE = "player.film.unpacked.size === player.film.pieces.list.length";

    private static Browser browser;

    @TempDir
    private Path folder;

    private Path show;
    private Watching watching;

    @BeforeAll
    static void open() {
        browser = Browser.open();
    }

    @AfterAll
    static void quit() {
        if (browser != null) {
            browser.close();
        }
    }

    @BeforeEach
    void serve() throws IOException {
        Project.copy("demos/garden", folder);
        show = folder.resolve("demos/garden/show.json");
        watching = Watching.of(show);
        browser.size(1280, 800, 1);
        browser.complaints();
        browser.requests();
        browser.go(watching.address());
        browser.when("player.film && player.lastFilm === player.film");
    }

    @AfterEach
    void end() {
        browser.go("about:blank");
        watching.close();
    }

    @Test
    void showsTheShowAndAsksNobodyElse() throws IOException {
        Path frames = folder.resolve("frames");
        assertThat(Ran.with("render", show, "-o", frames, "--frames", "1300..1400")
                        .code())
                .isZero();
        byte[] rgb = Files.readAllBytes(frames.resolve("frames.rgb"));
        for (int frame : new int[] {1300, 1343, 1344, 1399}) {
            Object drawn = browser.await(
                    "const [frame] = given; player.seekFrame(frame); await player.film.ready(frame);"
                            + " return [...player.film.frame(frame)];",
                    frame);
            byte[] expected = Arrays.copyOfRange(rgb, 3 * PIXELS * (frame - 1300), 3 * PIXELS * (frame - 1299));
            assertThat(bytes((List<?>) drawn)).isEqualTo(expected);
        }
        assertThat(browser.text("document.title")).isEqualTo(TITLE);
        assertThat(browser.value("document.getElementById('report').hidden")).isEqualTo(true);
        browser.press(" ");
        browser.await("await new Promise((done) => setTimeout(done, 500));");
        browser.press(" ");
        assertThat(browser.requests())
                .isNotEmpty()
                .allSatisfy(address -> assertThat(address).startsWith(watching.address()));
        assertThat(browser.complaints()).isEmpty();
    }

    private static byte[] bytes(List<?> values) {
        byte[] bytes = new byte[values.size()];
        for (int i = 0; i < bytes.length; i++) {
            bytes[i] = ((Number) values.get(i)).byteValue();
        }
        return bytes;
    }

    /** All of the show comes in the end, those frames first that are seen. */
    @Test
    void framesComeRoundTheTimeThatIsSeen() {
        browser.await("player.seekFrame(2000);");
        browser.when(ALL_IS_HERE);
        List<Integer> pieces = pieces(browser.requests());
        assertThat(pieces).hasSize(120).doesNotHaveDuplicates();
        // Frame 2000 is in piece 62; some pieces from the start had been asked for before.
        int from = pieces.indexOf(62);
        assertThat(from).isLessThan(60);
        assertThat(pieces.subList(from, from + 8))
                .allSatisfy(piece -> assertThat(piece).isBetween(56, 68));
    }

    private static List<Integer> pieces(List<String> addresses) {
        return addresses.stream()
                .filter(address -> address.matches(".*/films/\\d+/\\d+"))
                .map(address -> Integer.valueOf(address.substring(address.lastIndexOf('/') + 1)))
                .toList();
    }

    /** The median of twenty edits of a cue that is seen; a machine that does other things beside takes longer. */
    @Test
    void aSavedEditIsSeen() throws IOException {
        browser.await("player.seekFrame(2400);");
        browser.when(ALL_IS_HERE);
        String text = Files.readString(show);
        int cue = lastCue(text);
        long[] millis = new long[20];
        for (int i = 0; i < millis.length; i++) {
            String title = "Evening " + i;
            Files.writeString(
                    show,
                    (text.substring(0, cue) + "\"opacity\": 0." + (10 + i) + ", " + text.substring(cue))
                            .replace(TITLE, title));
            long saved = System.currentTimeMillis();
            millis[i] = browser.when("player.lastFilm === player.film && document.title === '" + title + "'") - saved;
            // The next one is saved when the page is at rest, as by people.
            browser.when(ALL_IS_HERE);
        }
        Arrays.sort(millis);
        System.err.println("saved to seen: median " + millis[10] + " ms, least " + millis[0] + ", most " + millis[19]);
        assertThat(millis[10]).isLessThan(5000);
        assertThat(browser.complaints()).isEmpty();
    }

    private static int lastCue(String text) {
        return text.lastIndexOf("\"effect\"", text.lastIndexOf("]"));
    }

    /** What is as before is not fetched again: the first of the cues of the second half is made another. */
    @Test
    void whatHasNotChangedStays() throws IOException {
        browser.when(ALL_IS_HERE);
        List<?> keys = (List<?>) browser.value("player.film.pieces.list.map(({key}) => key)");
        browser.requests();
        String text = Files.readString(show);
        int cue = lastCue(text);
        Files.writeString(show, text.substring(0, cue) + "\"opacity\": 0.31, " + text.substring(cue));
        browser.when("player.film.facts && live.number === 2");
        browser.when(ALL_IS_HERE);
        List<?> after = (List<?>) browser.value("player.film.pieces.list.map(({key}) => key)");
        List<Integer> changed = Stream.iterate(0, piece -> piece + 1)
                .limit(keys.size())
                .filter(piece -> !keys.get(piece).equals(after.get(piece)))
                .toList();
        assertThat(changed).isNotEmpty().hasSizeLessThan(keys.size() / 2);
        List<String> asked = browser.requests();
        // That of the time that is seen is asked for before the page knows whether it has changed.
        assertThat(changed).doesNotContain(0);
        assertThat(pieces(asked))
                .containsExactlyInAnyOrderElementsOf(
                        Stream.concat(Stream.of(0), changed.stream()).toList());
        assertThat(asked).noneSatisfy(address -> assertThat(address).contains("/tables/"));
    }

    @Test
    void thePageStaysWhereItWas() throws IOException {
        browser.await("player.seekFrame(1200); player.pick(700); player.loopFrames(1100, 1300); player.turn(0.3, 0.1);"
                + " player.approach(2);");
        String before = state();
        save(TITLE, "Shortest night");
        browser.when("document.title === 'Shortest night'");
        assertThat(state()).isEqualTo(before);

        // It also runs on.
        browser.press(" ");
        browser.await("await new Promise((done) => setTimeout(done, 200));");
        save("Shortest night", TITLE);
        browser.when("document.title === '" + TITLE + "'");
        assertThat(browser.value("player.clock.running")).isEqualTo(true);
        assertThat(browser.number("player.frame")).isBetween(1100.0, 1300.0);

        // A prop is put before all others: the same light, by its name, has another number.
        browser.press(" ");
        String name = pixel();
        Path display = folder.resolve("demos/garden/display.json");
        String text = Files.readString(display);
        String first = "\"props\": [";
        assertThat(text).contains(first, "\"trellis\"");
        Files.writeString(
                display,
                text.replace(first, first + "\n {\"name\": \"aaa\", \"shape\": \"trellis\", \"at\": [0, 0]},"));
        browser.when("player.film.facts.props[0].name === 'aaa'");
        assertThat(pixel()).isEqualTo(name);
        assertThat(browser.number("player.plate.pixel")).isNotEqualTo(700);
        assertThat(browser.complaints()).isEmpty();
    }

    private static String state() {
        return browser.text("JSON.stringify([player.frame, player.plate.pixel, player.clock.loop, player.loopNumbers,"
                + " player.stage.camera.turnRadians, player.stage.camera.zoom])");
    }

    private static String pixel() {
        return browser.text("player.plate.propName() + player.film.table.number[player.plate.pixel]");
    }

    @Test
    void aBrokenEditIsToldWhileTheLastShowPlaysOn() throws IOException {
        browser.press(" ");
        save("\"effect\": \"wash\"", "\"effect\": \"wosh\"");
        browser.when("!document.getElementById('report').hidden");
        String report = browser.text("document.getElementById('report').innerText");
        assertThat(report)
                .contains("4 errors; the last show without errors plays on")
                .containsPattern("show\\.json:\\d+:\\d+ .*\"wosh\".*did you mean \"wash\"\\?");
        double frame = browser.number("player.frame");
        browser.when("player.frame > " + (frame + 10));
        assertThat(browser.text("document.title")).isEqualTo(TITLE);

        save("\"effect\": \"wosh\"", "\"effect\": \"wash\"");
        browser.when("document.getElementById('report').hidden");
        browser.press(" ");
        assertThat(browser.complaints()).isEmpty();
    }

    /** What is wrong is text, whatever stands in it. */
    @Test
    void textsOfTheShowStayTexts() throws IOException {
        String tag = "<img src=x onerror=document.title='taken'>";
        save("\"effect\": \"wash\"", "\"effect\": \"" + tag.replace("'", "\\u0027") + "\"");
        browser.when("!document.getElementById('report').hidden");
        assertThat(browser.text("document.getElementById('report').textContent"))
                .contains("<img src=x");
        assertThat(browser.number("document.getElementById('report').querySelectorAll('img').length"))
                .isZero();
        assertThat(browser.text("document.title")).isEqualTo(TITLE);
        assertThat(browser.complaints()).isEmpty();
    }

    @Test
    void theReportFitsANarrowScreen() throws IOException {
        browser.size(360, 640, 2);
        save("\"effect\": \"", "\"effect\": \"x");
        browser.when("!document.getElementById('report').hidden");
        browser.await("await new Promise((done) => setTimeout(done, 300));");
        assertThat(browser.number("document.documentElement.scrollWidth")).isLessThanOrEqualTo(360);
        assertThat(browser.number("document.getElementById('report').getBoundingClientRect().right"))
                .isLessThanOrEqualTo(360);
        assertThat(browser.number("document.getElementById('lights').getBoundingClientRect().height"))
                .isGreaterThan(100);
        assertThat(browser.number("document.getElementById('report').getBoundingClientRect().height"))
                .isBetween(60.0, 260.0);
    }

    /** Many errors take no room from the lights that these need, and nothing is pushed out of the window. */
    @ParameterizedTest
    @CsvSource({"360, 640", "800, 700", "1200, 657"})
    void manyErrorsLeaveTheLightsTheirRoom(int width, int height) throws IOException {
        browser.size(width, height, 1);
        save("\"effect\": \"", "\"effect\": \"x");
        browser.when("document.querySelectorAll('#report li').length > 10");
        browser.await("await new Promise((done) => setTimeout(done, 300));");
        assertThat(browser.number("document.querySelector('header').getBoundingClientRect().bottom"))
                .isLessThanOrEqualTo(top("lights"));
        double lights = browser.number("document.getElementById('lights').getBoundingClientRect().bottom");
        assertThat(lights - top("lights")).isGreaterThanOrEqualTo(0.28 * height - 1);
        assertThat(lights).isLessThanOrEqualTo(top("report") + 0.5);
        assertThat(browser.number("document.querySelector('footer').getBoundingClientRect().bottom"))
                .isLessThanOrEqualTo(height + 0.5);
    }

    private static double top(String id) {
        return browser.number("document.getElementById('" + id + "').getBoundingClientRect().top");
    }

    /** Of tabs the one in front listens; the others hear of it when they are seen again. */
    @Test
    void twoTabsFollowAndOneGoesOnWhenTheOtherIsClosed() throws IOException {
        browser.openTab(watching.address());
        browser.when("player.film && player.lastFilm === player.film");
        save(TITLE, "First of both");
        browser.when("document.title === 'First of both'");
        browser.showTab(0);
        browser.when("document.title === 'First of both'");
        save("First of both", "Second of both");
        browser.when("document.title === 'Second of both'");
        browser.showTab(1);
        browser.when("document.title === 'Second of both'");
        browser.closeTab();
        save("Second of both", "One is left");
        browser.when("document.title === 'One is left' && player.lastFilm === player.film");
        assertThat(browser.complaints()).isEmpty();
    }

    /** Two browsers beside each other, both in sight. */
    @Test
    void twoBrowsersFollowAtOnce() throws IOException {
        try (Browser other = Browser.open()) {
            other.go(watching.address());
            other.when("player.film && player.lastFilm === player.film");
            save(TITLE, "For both");
            for (Browser each : List.of(browser, other)) {
                each.when("document.title === 'For both'");
            }
            assertThat(other.complaints()).isEmpty();
        }
        save("For both", "For one");
        browser.when("document.title === 'For one'");
        assertThat(browser.complaints()).isEmpty();
    }

    /** What a hand does, on a page that has been given another film meanwhile. */
    @Test
    void turningComingNearerSteppingAndClickingGoOn() throws IOException {
        save(TITLE, "Another");
        browser.when("document.title === 'Another' && player.lastFilm === player.film");
        browser.move("mousePressed", 640, 200, true);
        browser.move("mouseMoved", 700, 220, true);
        browser.move("mouseReleased", 700, 220, false);
        assertThat(browser.number("player.stage.camera.turnRadians")).isPositive();
        browser.press("+");
        assertThat(browser.number("player.stage.camera.zoom")).isGreaterThan(1);
        browser.press("0");
        browser.press("ArrowRight");
        browser.when("player.wasDrawn === 1");
        for (int pixel : new int[] {0, 640, PIXELS - 1}) {
            List<?> place =
                    (List<?>) browser.value("(({x, y}) => [x, y + player.stage.canvas.getBoundingClientRect().top])"
                            + "(player.stage.placeOf(" + pixel + "))");
            browser.click(((Number) place.get(0)).doubleValue(), ((Number) place.get(1)).doubleValue());
            browser.when("player.plate.pixel === " + pixel);
        }
        assertThat(browser.complaints()).isEmpty();
    }

    @Test
    void aMapThatIsSavedIsSeen() throws IOException {
        Path small = Garden.in(folder.resolve("small"));
        Path map = folder.resolve("small/map.csv");
        try (Watching other = Watching.of(small, "fence")) {
            browser.go(other.address());
            browser.when("player.film && player.film.facts.pixels === 8");
            double reach = browser.number("player.stage.camera.reach");
            String text = Files.readString(map);
            Files.writeString(map, text.replaceFirst("(?m)^fence,8,\\d+,", "fence,8,900,"));
            browser.when("player.stage.camera.reach > 2 * " + reach + " && player.lastFilm === player.film");
            Files.writeString(map, text.strip() + "\nfence,9,700,0\n");
            browser.when("player.film.facts.pixels === 9 && player.lastFilm === player.film");
            assertThat(browser.number("player.lastLight.length")).isEqualTo(27);
            assertThat(browser.complaints()).isEmpty();
        }
    }

    /** A show that is broken from the start: the page says why, and shows it once it is mended. */
    @Test
    void aShowThatIsBrokenAtFirstIsAwaited() throws IOException {
        Path broken = folder.resolve("broken.json");
        Files.writeString(broken, "{\"duskloom\": \"timeline/1\"");
        try (Watching other = Watching.of(broken)) {
            browser.go(other.address());
            browser.when("!document.getElementById('report').hidden");
            assertThat(browser.text("document.getElementById('report').innerText"))
                    .contains("error; there is nothing to show yet", "broken.json:1:");
            // Nothing can be pressed, and nothing fails when it is tried.
            List.of(" ", "ArrowRight", "l", "n", "End").forEach(browser::press);
            browser.click(400, 300);
            browser.click(1100, 700);
            assertThat(browser.complaints()).isEmpty();
            Files.copy(folder.resolve("demos/garden/display.json"), folder.resolve("display.json"));
            Files.copy(folder.resolve("demos/garden/bee.png"), folder.resolve("bee.png"));
            Files.copy(show, broken, StandardCopyOption.REPLACE_EXISTING);
            browser.when("player.lastFilm && document.title === '" + TITLE + "'");
            browser.press("ArrowRight");
            assertThat(browser.number("player.frame")).isEqualTo(1);
            assertThat(browser.complaints()).isEmpty();
        }
    }

    /** Who ends the program shall see it on the page, which keeps what it has. */
    @Test
    void thePageSaysThatTheProgramHasEnded() {
        watching.close();
        browser.when("document.getElementById('told').textContent.startsWith('duskloom watch has ended.')");
        browser.press("ArrowRight");
        browser.when("player.wasDrawn === 1");
    }

    private void save(String from, String to) throws IOException {
        String text = Files.readString(show);
        assertThat(text).contains(from);
        Files.writeString(show, text.replace(from, to));
    }
}
