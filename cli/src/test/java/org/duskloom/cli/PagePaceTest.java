package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * How fast a page is, in a browser that draws without a graphics card. Times are printed, and asserted only as far as
 * what is slower is broken: the machine may do other things.
 */
class PagePaceTest {
    /** What the page's own scripts take, in the order in which a frame needs them. */
    private static final String WATCHED =
            "window.spent = {}; for (const name of ['bytesOfBase64', 'crc32', 'framesOfSeries']) {"
                    + " const own = window[name]; window[name] = (...given) => { const start = performance.now();"
                    + " try { return own(...given); } finally { add(name, performance.now() - start); } }; }"
                    + "function add(name, millis) { const to = (spent[name] ??= {sum: 0, most: 0});"
                    + " to.sum += millis; to.most = Math.max(to.most, millis); }"
                    + "const draw = player.drawIfNew; player.drawIfNew = () => { const start = performance.now(); draw.call(player);"
                    + " add('draw', performance.now() - start); };";

    @TempDir
    private static Path folder;

    private static Browser browser;

    @BeforeAll
    static void open() {
        browser = Browser.open();
        browser.size(1280, 800, 1);
    }

    @AfterAll
    static void quit() {
        if (browser != null) {
            browser.close();
        }
    }

    @Test
    void theGardenIsThereAtOnce() throws IOException {
        Path page = folder.resolve("garden.html");
        assertThat(Ran.with("film", Project.file("demos/garden/show.json"), "-o", page)
                        .code())
                .isZero();
        assertThat(Files.size(page)).isLessThan(6_000_000);
        double[] millis = new double[9];
        try (Browser fresh = Browser.open()) {
            // When a frame was drawn is seen before the next one.
            fresh.before("const look = () => { if (typeof player !== 'undefined' && player.framesDrawn > 0) {"
                    + " window.drawnMillis = performance.now(); } else { requestAnimationFrame(look); } };"
                    + " requestAnimationFrame(look);");
            fresh.size(1280, 800, 1);
            for (int i = 0; i < millis.length; i++) {
                fresh.show(page);
                fresh.when("window.drawnMillis");
                millis[i] = fresh.number("drawnMillis");
                assertThat(fresh.number("player.framesDrawn")).isPositive();
            }
            assertThat(fresh.complaints()).isEmpty();
        }
        Arrays.sort(millis);
        tell(
                "the garden: %d bytes; from navigation to the first frame: median %.0f ms, least %.0f, most %.0f",
                Files.size(page), millis[4], millis[0], millis[8]);
    }

    /** Frames that are not drawn because others took too long are counted; once with the drawing left out. */
    @Test
    void tenThousandPixelsPlay() throws IOException {
        Path page = film(100, 100, "10s");
        for (boolean isDrawn : new boolean[] {true, false}) {
            browser.show(page);
            if (!isDrawn) {
                browser.await("player.stage.dots.gl.drawElements = () => {};");
            }
            Object told = browser.await(WATCHED + "const drawn = new Set(); const show = player.showTime;"
                    + " player.showTime = (frame) => { drawn.add(frame); show.call(player, frame); };"
                    + " player.toggle(); await new Promise((done) => setTimeout(done, 8000)); player.toggle();"
                    + " const last = Math.max(...drawn); const frames = last - Math.min(...drawn) + 1;"
                    + " let sum = 0; const parts = Object.entries(spent).map(([name, {sum: own, most}]) => { sum += own;"
                    + "  return `${name} ${(own / drawn.size).toFixed(2)} (most ${most.toFixed(0)})`; });"
                    + " return `${(sum / drawn.size).toFixed(2)} ms of script a frame: ${parts.join(', ')}; of ${frames} frames"
                    + " ${drawn.size} drawn; glow ${player.stage.glow}`;");
            tell("10,000 pixels, %s: %s", isDrawn ? "drawn" : "not drawn", told);
            assertThat(browser.number("player.frame")).isPositive();
        }
        assertThat(browser.complaints()).isEmpty();
    }

    @Test
    void aHundredThousandPixelsTurn() throws IOException {
        Path page = film(400, 250, "1s");
        browser.show(page);
        Object told = browser.await(WATCHED + "const start = performance.now(); const turns = 10;"
                + " for (let i = 0; i < turns; i++) { player.turn(0.02, 0.005);"
                + "  await new Promise(requestAnimationFrame); }"
                + " player.stage.dots.colourAt(0, 0); const millis = performance.now() - start;"
                + " return `${(spent.draw.sum / turns).toFixed(2)} ms of script a turn (most ${spent.draw.most.toFixed(1)}),"
                + " ${((1000 * turns) / millis).toFixed(1)} turns a second`;");
        tell("100,000 pixels: %s", told);
        assertThat(browser.number("player.stage.camera.turnRadians")).isBetween(0.19, 0.21);
        assertThat(browser.complaints()).isEmpty();
    }

    private static void tell(String form, Object... values) {
        System.err.println(String.format(Locale.ROOT, form, values));
    }

    /** A meadow that never stands still: all pixels change in every frame, so the film is as large as it gets. */
    private static Path film(int columns, int rows, String length) throws IOException {
        StringBuilder map = new StringBuilder("prop,pixel,x,y,z\n");
        for (int i = 0; i < columns * rows; i++) {
            map.append("meadow," + (i + 1) + "," + 10 * (i % columns) + "," + 10 * (i / columns) + "," + i % 7 + "\n");
        }
        Files.writeString(folder.resolve("map.csv"), map);
        Path show = Files.writeString(folder.resolve("show.json"), """
                {"duskloom": "timeline/1", "map": "map.csv", "rate": 40, "length": "%s", "layers": [
                  {"cues": [{"on": "meadow", "effect": "drift", "with": {"scale": 6, "every": "2s"}}]},
                  {"blend": "screen", "cues": [{"on": "meadow", "effect": "spin", "with": {"arms": 5, "every": "3s"}}]}]}
                """.formatted(length));
        Path page = folder.resolve(columns * rows + ".html");
        Ran ran = Ran.with("film", show, "-o", page);
        assertThat(ran.code()).as(ran.err()).isZero();
        return page;
    }
}
