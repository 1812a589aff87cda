package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The page in a browser, four seconds of the garden. */
class FilmPageTest {
    private static final int FIRST = 1360;
    private static final int FRAMES = 160;
    private static final int PIXELS = 1288;

    @TempDir
    private static Path folder;

    private static Browser browser;
    private static Path page;
    private static byte[] rgb;

    @BeforeAll
    static void make() throws IOException {
        browser = Browser.open();
        Path show = Project.file("demos/garden/show.json");
        page = folder.resolve("garden.html");
        assertThat(Ran.with("film", show, "-o", page, "--from", "34s", "--to", "38s")
                        .code())
                .isZero();
        Path frames = folder.resolve("frames");
        String span = FIRST + ".." + (FIRST + FRAMES);
        assertThat(Ran.with("render", show, "-o", frames, "--frames", span).code())
                .isZero();
        rgb = Files.readAllBytes(frames.resolve("frames.rgb"));
        assertThat(rgb).hasSize(3 * PIXELS * FRAMES);
    }

    @AfterAll
    static void quit() {
        if (browser != null) {
            browser.close();
        }
    }

    @BeforeEach
    void show() {
        browser.size(1280, 800, 1);
        browser.complaints();
        browser.requests();
        browser.show(page);
    }

    @Test
    void asksForNothingAndComplainsOfNothing() {
        assertThat(browser.text("document.title")).isEqualTo("Longest day");
        assertThat(browser.text("document.getElementById('size').textContent"))
                .isEqualTo("1,288 pixels in 18 props, 40 frames a second");
        browser.press(" ");
        browser.await("await new Promise((done) => setTimeout(done, 500));");
        browser.press(" ");
        assertThat(browser.requests()).containsExactly(page.toUri().toString());
        assertThat(browser.complaints()).isEmpty();
    }

    @Test
    void theMiddleOfEachDotHasTheColourOfTheFrame() {
        assertThat(browser.text("player.stage.dots.constructor.name")).isEqualTo("GlowingDots");
        assertColours();
        browser.size(1000, 700, 2);
        browser.await("await new Promise((done) => setTimeout(done, 300));");
        assertColours();
    }

    @Test
    void soItIsWithoutWebGl() throws IOException {
        try (Browser old = Browser.open()) {
            old.before("const get = HTMLCanvasElement.prototype.getContext;"
                    + "HTMLCanvasElement.prototype.getContext = function (kind, ...rest) {"
                    + " return kind.startsWith('webgl') ? null : get.call(this, kind, ...rest); };");
            old.show(page);
            assertThat(old.text("player.stage.dots.constructor.name")).isEqualTo("PlainDots");
            assertThat(old.complaints()).isEmpty();
            assertColours(old);
        }
    }

    /** A lost graphics card comes back, and the picture with it. */
    @Test
    void aLostContextIsBuiltAnew() {
        browser.await("const lose = player.stage.dots.gl.getExtension('WEBGL_lose_context'); lose.loseContext();"
                + " await new Promise((done) => setTimeout(done, 100)); lose.restoreContext();"
                + " await new Promise((done) => setTimeout(done, 300));");
        assertThat(browser.text("player.stage.dots.constructor.name")).isEqualTo("GlowingDots");
        assertColours();
    }

    @Test
    void spacePlaysAndPauses() {
        assertThat(browser.number("player.frame")).isZero();
        double start = browser.number("performance.now()");
        browser.press(" ");
        browser.await("await new Promise((done) => setTimeout(done, 700));");
        assertThat(browser.value("document.body.classList.contains('playing')")).isEqualTo(true);
        browser.press(" ");
        double frame = browser.number("player.frame");
        // At 40 frames a second; a busy machine may take longer to press the keys.
        double seconds = (browser.number("performance.now()") - start) / 1000;
        assertThat(frame).isBetween(20.0, Math.min(FRAMES - 1, 1 + 40 * seconds));
        browser.await("await new Promise((done) => setTimeout(done, 200));");
        assertThat(browser.number("player.frame")).isEqualTo(frame);
        assertThat(browser.text("document.getElementById('count').textContent"))
                .isEqualTo("frame " + (FIRST + (int) frame));
    }

    @Test
    void keysStepAndJump() {
        browser.press("ArrowRight");
        browser.press(".");
        assertThat(browser.number("player.frame")).isEqualTo(2);
        browser.press("ArrowLeft");
        assertThat(browser.number("player.frame")).isEqualTo(1);
        browser.press("End");
        assertThat(browser.number("player.frame")).isEqualTo(FRAMES - 1);
        browser.press("ArrowRight");
        assertThat(browser.number("player.frame")).isEqualTo(FRAMES - 1);
        browser.press("Home");
        browser.press("ArrowDown");
        double edge = browser.number("player.film.frameNumber(player.frame)");
        assertThat(edge).isEqualTo(browser.number("player.edges[1]")).isGreaterThan(FIRST);
        browser.press("ArrowUp");
        assertThat(browser.number("player.frame")).isZero();
        assertThat(browser.text("document.getElementById('time').textContent")).isIn("0:34.00", "0:00.00");
    }

    /** From one edge of a cue to the next, and on to those beyond. */
    @Test
    void keysLoopFromCueToCue() {
        browser.await("player.seekFrame(player.filmFrame(player.edges[1]) + 3);");
        browser.press("l");
        assertThat(browser.value("[player.loopNumbers.from, player.loopNumbers.to]"))
                .isEqualTo(browser.value("[player.edges[1], player.edges[2]]"));
        browser.press("[");
        assertThat(browser.value("player.loopNumbers.from")).isEqualTo(browser.value("player.edges[0]"));
        assertThat(browser.value("document.getElementById('span').hidden")).isEqualTo(false);
        browser.await("player.loopFrames(1380, 1390); player.clock.play();"
                + " await new Promise((done) => setTimeout(done, 900));");
        assertThat(browser.number("player.film.frameNumber(player.frame)")).isBetween(1380.0, 1389.0);
        browser.press("l");
        assertThat(browser.value("player.clock.loop")).isNull();
    }

    @Test
    void keysChangeSpeedAndView() {
        browser.press("s");
        assertThat(browser.number("player.clock.speed")).isEqualTo(0.5);
        browser.press("f");
        browser.press("f");
        assertThat(browser.text("document.getElementById('pace').textContent")).isEqualTo("2×");
        browser.press("ArrowLeft", true);
        browser.press("+");
        assertThat(browser.number("player.stage.camera.turnRadians")).isNegative();
        assertThat(browser.number("player.stage.camera.zoom")).isGreaterThan(1);
        browser.press("0");
        assertThat(browser.number("player.stage.camera.turnRadians")).isZero();
        assertThat(browser.number("player.stage.camera.zoom")).isEqualTo(1);
        browser.press("h");
        assertThat(browser.value("document.getElementById('keys').open")).isEqualTo(true);
        browser.press("h");
        assertThat(browser.value("document.getElementById('keys').open")).isEqualTo(false);
    }

    /** As patch.csv has it, which the port's bytes are written by. */
    @Test
    void aClickTellsPropPartNumberPortAndSlot() throws IOException {
        for (int pixel : new int[] {0, 77, 600, 1287}) {
            clickOn(pixel);
            assertThat(browser.number("player.plate.pixel")).isEqualTo(pixel);
            String told =
                    browser.text("document.getElementById('plate').innerText").replaceAll("\\s+", " ");
            String[] row = patchRow(pixel);
            assertThat(told)
                    .contains(row[1] + " pixel " + row[2] + " ")
                    .contains(" port " + row[0] + " universe " + row[3] + " slot " + row[4] + " ");
        }
        clickOn(0);
        assertThat(browser.text("document.getElementById('plate').innerText")).contains("eye");
        browser.press("Escape");
        assertThat(browser.value("document.getElementById('plate').hidden")).isEqualTo(true);
    }

    /** Without a graphics card, say. */
    @Test
    void glowIsGivenUpWhereDrawingDoesNotKeepUp() {
        browser.await("player.clock.running = true; player.paceSince = null; player.keepPace(0);"
                + " for (let k = 1; k <= 60; k++) player.keepPace(1000 + 100 * k); player.clock.running = false;");
        assertThat(browser.number("player.stage.glow")).isZero();
        assertColours();
    }

    @Test
    void dragsTurnAndTheWheelComesNearer() {
        browser.click(20, 400);
        browser.move("mousePressed", 640, 300, true);
        browser.move("mouseMoved", 700, 320, true);
        browser.move("mouseReleased", 700, 320, false);
        assertThat(browser.number("player.stage.camera.turnRadians")).isPositive();
        browser.await("player.stage.canvas.dispatchEvent(new WheelEvent('wheel', {deltaY: -200, clientX: 640,"
                + " clientY: 300, cancelable: true}));");
        assertThat(browser.number("player.stage.camera.zoom")).isGreaterThan(1.3);
    }

    @Test
    void fitsANarrowScreen() {
        browser.size(360, 640, 2);
        browser.await("await new Promise((done) => setTimeout(done, 300)); player.pick(5);");
        assertThat(browser.number("document.documentElement.scrollWidth")).isLessThanOrEqualTo(360);
        assertThat(browser.number("[...document.querySelectorAll('button, #line')].filter((e) => !e.hidden).length"))
                .isGreaterThan(7);
        assertThat(browser.value(
                        "[...document.querySelectorAll('button, #line')].filter((e) => !e.hidden).every((e) => {"
                                + " const b = e.getBoundingClientRect();"
                                + " return b.left >= 0 && b.right <= 360 && b.bottom <= 640 && b.width > 36; })"))
                .isEqualTo(true);
        assertThat(browser.number("player.stage.canvas.getBoundingClientRect().height"))
                .isGreaterThan(300);
    }

    /** No light lies under the title, and the footer keeps to the width, also with a sound, whose delay can be set. */
    @ParameterizedTest
    @CsvSource({"360, 640", "800, 700", "1200, 757"})
    void theTitleStandsClearOfTheLights(int width, int height) {
        browser.size(width, height, 1);
        browser.await("document.getElementById('title').textContent = 'Midsummer night between the allotments';"
                + " document.getElementById('mute').hidden = false; document.getElementById('lag').hidden = false;"
                + " await new Promise((done) => setTimeout(done, 300));");
        double top = browser.number("document.getElementById('lights').getBoundingClientRect().top");
        assertThat(browser.number("document.querySelector('header').getBoundingClientRect().bottom"))
                .isLessThanOrEqualTo(top);
        assertThat(browser.number("Math.min(...Array.from({length: " + PIXELS + "}, (none, i) =>"
                        + " player.stage.placeOf(i)).map(({y, radius}) => y - radius))"))
                .isPositive();
        assertThat(browser.number("document.getElementById('lights').clientHeight"))
                .isGreaterThan(0.28 * height);
        assertThat(browser.number(
                        "Math.max(...[...document.querySelectorAll('footer > *, footer button, footer label')].map((e) =>"
                                + " e.getBoundingClientRect().right))"))
                .isLessThanOrEqualTo(width);
    }

    /** Two cues that overlap in one layer, and one that follows: each in sight, and told where it lies. */
    @Test
    void cuesOfALayerThatOverlapLieInLanes() throws IOException {
        Path map = Files.writeString(folder.resolve("lanes.csv"), "prop,pixel,x,y\na,1,0,0\na,2,100,0\n");
        Path show = Files.writeString(folder.resolve("lanes.json"), """
                {"duskloom": "timeline/1", "map": "%s", "rate": 40, "length": "10s", "layers": [
                 {"name": "low", "cues": [
                  {"name": "ground", "at": "0s", "for": "10s", "on": "a", "effect": "wash", "with": {"palette": "gold"}}]},
                 {"name": "high", "cues": [
                  {"name": "late", "at": "5s", "for": "5s", "on": "a", "effect": "wash", "with": {"palette": "gold"}},
                  {"name": "long", "at": "0s", "for": "8s", "on": "a", "effect": "wash", "with": {"palette": "gold"}},
                  {"name": "last", "at": "8s", "for": "2s", "on": "a", "effect": "wash", "with": {"palette": "gold"}}]}]}
                """.formatted(map.getFileName()));
        Path film = folder.resolve("lanes.html");
        assertThat(Ran.with("film", show, "-o", film).code()).isZero();
        browser.show(film);
        assertThat(cuesAt(6)).isEqualTo("late, long, ground");
        assertThat(cuesAt(9)).isEqualTo("late, last, ground");
        assertThat(cuesAt(2)).isEqualTo("-, long, ground");
        assertThat(browser.value("document.getElementById('line').style.getPropertyValue('--lanes')"))
                .isEqualTo("3");
    }

    /** What is told at a second of the ten, from the top row to the lowest. */
    private static Object cuesAt(int second) {
        return browser.await(
                "const [second] = given; const {line} = player; const box = line.element.getBoundingClientRect();"
                        + " return [1, 3, 5].map((sixth) => line.cueAt({clientX: box.left + box.width * second / 10,"
                        + " clientY: box.top + line.ruler + (box.height - line.ruler) * sixth / 6})?.name ?? '-').join(', ');",
                second);
    }

    @Test
    void whatCannotBeReadIsSaid() throws IOException {
        String html = Files.readString(page);
        int at = html.indexOf("class=\"piece\" data-first=\"0\"");
        int from = html.indexOf('>', at) + 200;
        String broken = html.substring(0, from) + "AAAAAAAA" + html.substring(from + 8);
        Path file = Files.writeString(folder.resolve("broken.html"), broken);
        browser.show(file);
        assertThat(browser.text("document.getElementById('told').textContent"))
                .startsWith("A piece of this film cannot be read (1)");
    }

    /** As large as in the program's pictures at most: 3 % of the shorter side. */
    @Test
    void fewPixelsFarApartAreLightsAndNotAreas() throws IOException {
        Path map = Files.writeString(folder.resolve("few.csv"), "prop,pixel,x,y\na,1,0,0\na,2,100,0\na,3,200,0\n");
        Path show = Files.writeString(folder.resolve("few.json"), """
                {"duskloom": "timeline/1", "map": "%s", "rate": 40, "length": "1s", "layers": [{"cues": [
                  {"at": "0s", "for": "1s", "on": "a", "effect": "wash", "with": {"palette": "gold"}}]}]}
                """.formatted(map.getFileName()));
        Path few = folder.resolve("few.html");
        assertThat(Ran.with("film", show, "-o", few).code()).isZero();
        browser.show(few);
        double shorter = browser.number("Math.min(player.stage.canvas.width, player.stage.canvas.height)");
        for (int pixel = 0; pixel < 3; pixel++) {
            String place = "player.stage.placeOf(" + pixel + ")";
            double radius = browser.number(place + ".radius");
            assertThat(radius).isBetween(0.0299 * shorter, 0.0301 * shorter);
            double width = browser.number("player.stage.canvas.width");
            assertThat(browser.number(place + ".x")).isBetween(radius, width - radius);
        }
    }

    /** A card that comes back after the page has given it up changes nothing. */
    @Test
    void aCardThatComesBackTooLateIsLeftAlone() {
        browser.await("const lost = player.stage.canvas; player.stage.giveUpCard();"
                + " lost.dispatchEvent(new Event('webglcontextrestored'));"
                + " await new Promise((done) => setTimeout(done, 100));");
        assertThat(browser.text("player.stage.dots.constructor.name")).isEqualTo("PlainDots");
        assertThat(browser.complaints()).isEmpty();
        assertColours();
    }

    /** A page that is served puts another film into the player so. */
    @Test
    void anotherFilmGoesOnAtTheSameTime() {
        browser.await("player.seekFrame(70); player.pick(9);"
                + " player.show(new Film(player.film.facts, player.film.table, new PiecesInPage(document)));"
                + " await player.film.ready(70); await new Promise((done) => setTimeout(done, 100));");
        assertThat(browser.number("player.frame")).isEqualTo(70);
        assertThat(browser.number("player.plate.pixel")).isEqualTo(9);
        assertColours();
    }

    private static void clickOn(int pixel) {
        Map<?, ?> place = (Map<?, ?>) browser.value("player.stage.placeOf(" + pixel + ")");
        double top = browser.number("player.stage.canvas.getBoundingClientRect().top");
        browser.click(((Number) place.get("x")).doubleValue(), top + ((Number) place.get("y")).doubleValue());
    }

    private String[] patchRow(int pixel) throws IOException {
        Path ports = folder.resolve("wire");
        if (!Files.exists(ports)) {
            Path show = Project.file("demos/garden/show.json");
            assertThat(Ran.with("render", show, "-o", ports, "--as", "ports", "--frames", "0..1")
                            .code())
                    .isZero();
        }
        String prop = browser.text("player.film.facts.props[player.film.table.prop[" + pixel + "]].name");
        int number = (int) browser.number("player.film.table.number[" + pixel + "]");
        List<String> rows = Files.readAllLines(ports.resolve("patch.csv"), StandardCharsets.UTF_8);
        return rows.stream()
                .map(row -> row.split(","))
                .filter(row -> row[1].equals(prop) && row[2].equals(Integer.toString(number)))
                .findFirst()
                .orElseThrow();
    }

    private static void assertColours() {
        assertColours(browser);
    }

    /** Of four frames and a fifth of the pixels, read back in the turn in which they were drawn. */
    private static void assertColours(Browser from) {
        for (int frame : new int[] {0, 31, 32, FRAMES - 1}) {
            List<?> seen = (List<?>) from.await(
                    "const [frame] = given; player.seekFrame(frame); await player.film.ready(frame); player.redraw();"
                            + " player.drawIfNew(); const colours = [];"
                            + " for (let i = 0; i < " + PIXELS + "; i += 5) {"
                            + " const {x, y} = player.stage.placeOf(i);"
                            + " colours.push(...player.stage.dots.colourAt(Math.floor(x), Math.floor(y))); }"
                            + " return colours;",
                    frame);
            int wrong = 0;
            for (int k = 0; k < seen.size(); k++) {
                int pixel = k / 3 * 5;
                int code = rgb[3 * (PIXELS * frame + pixel) + k % 3] & 0xFF;
                wrong += Math.abs(code - ((Number) seen.get(k)).intValue()) <= 1 ? 0 : 1;
            }
            assertThat(wrong).as("colours of frame %d that are others", frame).isZero();
        }
    }
}
