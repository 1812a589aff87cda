package org.duskloom.engine.report.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.duskloom.engine.meter.PowerFigures;
import org.duskloom.engine.report.Caution;
import org.duskloom.engine.report.DataFigures;
import org.duskloom.engine.report.FeedWords;
import org.duskloom.engine.report.FlashWords;
import org.duskloom.engine.report.PartLine;
import org.duskloom.engine.report.PortTiming;
import org.duskloom.engine.report.Report;
import org.duskloom.engine.report.ReportSubject;
import org.duskloom.engine.report.Reported;
import org.duskloom.engine.time.FrameRate;
import org.duskloom.engine.wire.Ports;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The page as text: what stands in it, and that nothing of a show can break out of it. */
class ReportPageTest {
    @TempDir
    private Path folder;

    private Report report(double amps) throws IOException {
        return Reported.of(
                        folder,
                        Reported.KIND + Reported.ports(Reported.FENCE, Reported.POST) + ", " + Reported.supply(amps))
                .report();
    }

    @Test
    void beginsWithWhatIsBeyondALimit() throws IOException {
        String page = ReportPage.of(report(0.1));

        assertThat(page.indexOf("beyond")).isLessThan(page.indexOf("<h2>"));
        assertThat(texts(page, "li"))
                .contains("current supply shed \"old\" would give up to 0.13 A, and 0.08 A of its 0.10 A are allowed.");
    }

    @Test
    void saysThatNothingIsBeyondWithoutGivingLeave() throws IOException {
        Report report = Reported.of(folder, "").report();
        String page = ReportPage.of(report);

        assertThat(texts(page, "p"))
                .contains("Nothing that could be looked at is beyond its limit. That is no guarantee.")
                .contains(Caution.LINES.get(0))
                .contains(FlashWords.CAUTION.get(0));
    }

    @Test
    void holdsEverythingInItself() throws IOException {
        String page = ReportPage.of(report(0.1));

        assertThat(page).startsWith("<!DOCTYPE html>").doesNotContain("http:", "https:", "<script", "url(");
        assertThat(page).contains("default-src 'none'", "data:image/png;base64,iVBORw0KGgo");
        Caution.LINES.forEach(line -> assertThat(page).contains(Html.escaped(line)));
    }

    /** Five pixels of 31 mA at most, white at last: the cable with less on its way gives more of it. */
    @Test
    void tellsWhatFlowsThroughEachCable() throws IOException {
        String page = ReportPage.of(report(9));

        assertThat(texts(page, "h2")).contains("Feeds");
        assertThat(texts(page, "td")).contains("1.5 mm2, 2.00 m").contains("within 5.00 A");
        assertThat(texts(page, "p")).contains(FeedWords.CAUTION);
    }

    /** Of three seconds, dark, red and white, a fence is lit in two thirds, a post in one. Worked out by hand. */
    @Test
    void tellsUse() throws IOException {
        List<String> cells = texts(ReportPage.of(report(9)), "td");

        assertThat(cells).contains("33\u00a0% of the time", "67\u00a0% of the time", "0.13\u00a0A");
    }

    @Test
    void escapesWhatAShowIsCalled() throws IOException {
        Report plain = report(9);
        String title = "</style></title><script>alert('1')</script>&amp; \u0007\uD800 \"\u540d\"";
        ReportSubject subject = plain.subject();
        Report hostile = new Report(
                new ReportSubject(title, subject.rate(), subject.frameCount(), subject.pixelCount(), 20, false),
                plain.power(),
                plain.data(),
                plain.parts(),
                plain.light(),
                plain.cues());

        String page = ReportPage.of(hostile);

        assertThat(page).doesNotContain("<script");
        assertThat(texts(page, "h1"))
                .containsExactly("</style></title><script>alert('1')</script>&amp; \uFFFD\uFFFD \"\u540d\"");
    }

    @Test
    void writesFiguresWithADotInEveryCountry() throws IOException {
        String page = ReportPage.of(report(0.1));
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            assertThat(ReportPage.of(report(0.1))).isEqualTo(page);
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void everythingOnHasNoFlashes() throws IOException {
        Report report = Reported.everythingOn(
                        folder, Reported.KIND + Reported.ports(Reported.FENCE) + ", " + Reported.supply(0.1))
                .report();

        assertThat(texts(ReportPage.of(report), "h2"))
                .containsExactly(
                        "Current",
                        "Voltage along each line",
                        "Feeds",
                        "Data",
                        "What to buy and to cut",
                        "Not said by the display",
                        "Caution");
    }

    /** A show of no frame on a map of no pixel: whatever has nothing to tell is left out, and no figure is none. */
    @Test
    void anEmptyShowIsAPageToo() throws IOException {
        Report show = report(9);
        Report empty = new Report(
                new ReportSubject("", FrameRate.of(40), 0, 0, 20, false),
                new PowerFigures(List.of(), List.of()),
                DataFigures.of(Ports.NONE, FrameRate.of(40)),
                List.of(),
                Optional.empty(),
                show.cues());

        String page = ReportPage.of(empty);

        assertThat(page).doesNotContain("NaN", "Infinity", "null");
        assertThat(texts(page, "h2")).containsExactly("Current", "Caution");
        assertThat(texts(page, "p"))
                .contains("0 frames at 40 a second, 0\u00a0s long, 0 pixels; wires at 20.0 \u00b0C.");
    }

    /**
     * Cable that is rounded to the nearest tenth may be too short; 0.1 + 0.2 of floating point (IEEE 754) is no more
     * than 0.3.
     */
    @Test
    void whatIsCutIsRoundedUp() throws IOException {
        Report show = report(9);
        List<PartLine> parts = List.of(
                new PartLine("supply wire", "long", 2.01, "m", ""),
                new PartLine("supply wire", "even", 0.1 + 0.2, "m", "<there> & back"),
                new PartLine("pixels", "bullet", 4, "pieces", ""));

        List<List<String>> rows = Page.of(ReportPage.of(
                        new Report(show.subject(), show.power(), show.data(), parts, show.light(), show.cues())))
                .rows();

        assertThat(rows)
                .contains(List.of("supply wire", "long", "2.1\u00a0m", ""))
                .contains(List.of("supply wire", "even", "0.3\u00a0m", "<there> & back"))
                .contains(List.of("pixels", "bullet", "4\u00a0pieces", ""));
    }

    /**
     * 20 frames a second are 50 ms each: a line that takes 10 us longer is too slow, and its rate is rounded down.
     */
    @Test
    void judgesWhatALineCarries() throws IOException {
        Report show = report(9);
        PortTiming timing = show.data().ports().get(0);
        PortTiming slow = new PortTiming(timing.port(), 50.01, 1000 / 50.01, 3, 5);
        PortTiming enough = new PortTiming(timing.port(), 50, 20, 7, 7);
        DataFigures data = new DataFigures(List.of(slow, enough), 3, 1_234_567, 512, 44.0995, 512);

        Page page = Page.of(
                ReportPage.of(new Report(show.subject(), show.power(), data, show.parts(), show.light(), show.cues())));

        assertThat(page.rows())
                .contains(List.of("left", "50.01\u00a0ms", "19.9", "3 to 5", "\u2717 too slow"))
                .contains(List.of("left", "50.00\u00a0ms", "20.0", "7", "fast enough"));
        assertThat(page.texts("p"))
                .contains("As E1.31: 3 universes, 1.23 Mbit/s on the network. As DMX512: the fullest universe has 512"
                        + " slots, 44.0 times a second at most; at 20 a second a line carries 512.");
    }

    /** Values 0, 1, 1, 4 of 0 to 4 over a width of 600 and a height of 100. */
    @Test
    void plotsSteps() {
        Html html = new Html();
        new Plot(new double[] {0, 1, 1, 4}, 0, 4)
                .limit(2, "half <here>", true)
                .mark(0.5)
                .draw(html, "told", "0", "4", "left", "right");

        assertThat(html.toString())
                .contains("class=\"curve\" d=\"M0 100H150V75H450V0H600\"")
                .contains("class=\"hard\" x1=\"0\" x2=\"600\" y1=\"50\" y2=\"50\"")
                .contains("class=\"tick\" x1=\"300\" x2=\"300\"")
                .contains("top:50%\">half &lt;here&gt;</span>");
    }

    private static List<String> texts(String page, String tag) {
        return Page.of(page).texts(tag);
    }
}
