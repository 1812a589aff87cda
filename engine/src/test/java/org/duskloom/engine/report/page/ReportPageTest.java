package org.duskloom.engine.report.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.xml.parsers.DocumentBuilderFactory;
import org.duskloom.engine.report.Caution;
import org.duskloom.engine.report.FlashWords;
import org.duskloom.engine.report.Report;
import org.duskloom.engine.report.ReportSubject;
import org.duskloom.engine.report.Reported;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.NodeList;

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
                        "Data",
                        "What to buy and to cut",
                        "Not said by the display",
                        "Caution");
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

    /** The page is XML too, so every element is closed and every attribute quoted. */
    private static Document parsed(String page) {
        try {
            return DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .parse(new ByteArrayInputStream(page.getBytes(StandardCharsets.UTF_8)));
        } catch (Exception fault) {
            throw new AssertionError(fault.getMessage() + " in\n" + page, fault);
        }
    }

    private static List<String> texts(String page, String tag) {
        NodeList nodes = parsed(page).getElementsByTagName(tag);
        List<String> texts = new ArrayList<>();
        for (int i = 0; i < nodes.getLength(); i++) {
            texts.add(nodes.item(i).getTextContent());
        }
        return texts;
    }
}
