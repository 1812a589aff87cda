package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The page of the report of the garden in a browser. */
class ReportBrowserTest {
    @TempDir
    private static Path folder;

    private static Browser browser;
    private static Path page;

    @BeforeAll
    static void make() {
        browser = Browser.open();
        page = folder.resolve("garden.html");
        Ran ran = Ran.with("report", Project.file("demos/garden/show.json"), "-o", page);
        assertThat(ran.code()).as(ran.err()).isZero();
    }

    @AfterAll
    static void quit() {
        if (browser != null) {
            browser.close();
        }
    }

    @Test
    void asksForNothingAndComplainsOfNothing() {
        browser.size(1280, 800, 1);
        browser.complaints();
        browser.requests();
        browser.go(page.toUri().toString());
        browser.when("document.readyState === 'complete'");

        assertThat(browser.requests()).containsExactly(page.toUri().toString());
        assertThat(browser.complaints()).isEmpty();
        assertThat(browser.number("document.querySelector('.moments img').naturalWidth"))
                .isGreaterThanOrEqualTo(320);
    }

    /**
     * Tables scroll in boxes of their own; everything else keeps within the page, no word is smaller than 11 dots, and
     * a picture of the worst second takes at least two fifths of a phone's width.
     */
    @ParameterizedTest
    @ValueSource(ints = {360, 1280})
    void fits(int width) {
        browser.size(width, 800, 1);
        browser.go(page.toUri().toString());
        browser.when("document.readyState === 'complete'");

        assertThat(browser.number("document.documentElement.scrollWidth")).isEqualTo(width);
        assertThat(browser.number("[...document.querySelectorAll('main *')].filter((e) => !e.closest('.wide table')"
                        + " && !e.closest('svg') && e.getBoundingClientRect().right > innerWidth + 0.5).length"))
                .isZero();
        assertThat(browser.number(
                        "Math.min(...[...document.querySelectorAll('main *')].filter((e) => !e.closest('svg'))"
                                + ".map((e) => parseFloat(getComputedStyle(e).fontSize)))"))
                .isGreaterThanOrEqualTo(11);
        assertThat(browser.number("document.querySelectorAll('.plot svg').length"))
                .isEqualTo(7);
        assertThat(browser.number(
                        "Math.min(...[...document.querySelectorAll('.moments img')].map((e) => e.clientWidth))"))
                .isGreaterThanOrEqualTo(140);
        // A note that wraps at every word would make a row of a table as high as a phone.
        assertThat(browser.number("Math.max(...[...document.querySelectorAll('tr')].map((e) => e.clientHeight))"))
                .isLessThan(130);
    }

    /** What is judged is said by words and marks: without any colour the same is read. */
    @Test
    void needsNoColour() throws IOException {
        assertThat(verdictOf(page)).startsWith("Nothing").contains("beyond").contains("no guarantee");
        assertThat(browser.number("[...document.querySelectorAll('svg[role=img]')].filter((e) =>"
                        + " !e.getAttribute('aria-label')).length"))
                .isZero();

        Path flashing = folder.resolve("flashing.html");
        assertThat(Ran.with("report", flashingShow(), "-o", flashing).code()).isZero();
        assertThat(verdictOf(flashing)).contains("beyond").contains("flashing");
    }

    private static String verdictOf(Path report) {
        browser.go(report.toUri().toString());
        browser.when("document.readyState === 'complete'");
        return browser.text("document.querySelector('.verdict').innerText");
    }

    /** White and black in turn, ten times a second. */
    private static Path flashingShow() throws IOException {
        Files.writeString(folder.resolve("map.csv"), "prop,pixel,x,y\nlamp,1,0,0\nlamp,2,100,0\n");
        return Files.writeString(folder.resolve("flashing.json"), """
                {"duskloom": "timeline/1", "map": "map.csv", "rate": 40, "length": "2s", "layers": [{"cues": [
                  {"at": "0s", "for": "50ms", "on": "lamp", "effect": "wash", "with": {"palette": "white"},
                   "repeat": {"every": "100ms", "count": 20}}]}]}
                """);
    }

    /** A4 is 595 by 842 points. */
    @Test
    void printsOnA4() throws IOException {
        browser.size(1280, 800, 1);
        browser.go(page.toUri().toString());
        browser.when("document.readyState === 'complete'");

        byte[] pdf = browser.pdf();
        Files.write(folder.resolve("report.pdf"), pdf);

        String text = new String(pdf, StandardCharsets.ISO_8859_1);
        assertThat(text).startsWith("%PDF-").containsPattern("/MediaBox \\[0 0 59[45][.0-9]* 84[12][.0-9]*\\]");
        assertThat(pdf.length).isBetween(50_000, 3_000_000);
    }
}
