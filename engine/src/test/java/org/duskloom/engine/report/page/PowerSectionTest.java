package org.duskloom.engine.report.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.duskloom.engine.report.Report;
import org.duskloom.engine.report.Reported;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Currents and voltages of a show of a dark, a red and a white second: of five pixels of 1 mA idle four draw 10 mA a
 * colour, and one is passed over: together 5, 45 and 125 mA. All places in the drawings are worked out from these by
 * hand.
 */
class PowerSectionTest {
    private static final double WHITE_AMPS = 5 * 0.001 + 4 * 0.03;

    @TempDir
    private Path folder;

    private Page page(String... fields) throws IOException {
        return written(Reported.of(folder, String.join(", ", fields)).report());
    }

    private static Page written(Report report) {
        Html html = new Html();
        new PowerSection(report, html).write();
        assertThat(html.toString()).doesNotContain("NaN", "Infinity");
        return Page.ofPiece(html);
    }

    private static String kindAndPorts() {
        return Reported.KIND + Reported.ports(Reported.FENCE);
    }

    /** The axis goes 12 % beyond the larger of supply and peak; a supply is drawn through, what is allowed dashed. */
    @Test
    void limitsOfASupplyStandAtTheirAmperes() throws IOException {
        Page page = page(kindAndPorts(), Reported.supply(0.1));

        double top = 1.12 * WHITE_AMPS;
        assertThat(Double.parseDouble(page.ofClass("line", "hard", "y1").get(0)))
                .isCloseTo(100 * (1 - 0.1 / top), within(0.005));
        assertThat(Double.parseDouble(page.ofClass("line", "soft", "y1").get(0)))
                .isCloseTo(100 * (1 - 0.08 / top), within(0.005));
        assertThat(page.texts("span")).contains("supply 0.10\u00a0A", "allowed 0.08\u00a0A", "0.14\u00a0A", "0 A");
    }

    /** Steps at a third and two thirds of the width, at 5, 45 and 125 mA of an axis of 1.12 A. */
    @Test
    void currentIsDrawnOverTime() throws IOException {
        Page page = page(kindAndPorts(), Reported.supply(1));

        assertThat(page.ofClass("path", "curve", "d")).first().isEqualTo("M0 99.55H200V95.98H400V88.84H600");
        assertThat(page.texts("span")).containsSubsequence("0:00", "3\u00a0s");
        assertThat(page.texts("figcaption"))
                .first()
                .isEqualTo("Supply shed \"old\": the most in each stretch of the show. Peak 0.13\u00a0A at 2\u00a0s,"
                        + " in flood.");
    }

    @Test
    void whatMayBeUsedWhollyHasOneLimit() throws IOException {
        Page page = page(kindAndPorts(), Reported.supply(1).replace("\"amps\"", "\"share\": 1, \"amps\""));

        assertThat(page.ofClass("line", "hard", "y1")).hasSize(1);
        assertThat(page.texts("span")).noneMatch(text -> text.startsWith("allowed"));
    }

    /** Three seconds in twelve rows: a quarter of a second each, the most of each, and no gap. */
    @Test
    void tellsTheCurveAsNumbersToo() throws IOException {
        List<List<String>> rows = page(kindAndPorts(), Reported.supply(1)).rows();

        int head = rows.indexOf(List.of("from", "to", "most"));
        assertThat(rows.subList(head + 1, head + 13))
                .startsWith(
                        List.of("0\u00a0s", "0.25\u00a0s", "0.01\u00a0A"),
                        List.of("0.25\u00a0s", "0.5\u00a0s", "0.01\u00a0A"))
                .contains(List.of("1\u00a0s", "1.25\u00a0s", "0.05\u00a0A"))
                .endsWith(List.of("2.75\u00a0s", "3\u00a0s", "0.13\u00a0A"));
    }

    /** A peak of 125 mA is more than the 80 % that are allowed of 0.1 A, and less than those of 1 A. */
    @Test
    void judgesASupplyBesideItsFigures() throws IOException {
        assertThat(page(kindAndPorts(), Reported.supply(0.1)).rows())
                .anySatisfy(row -> assertThat(row)
                        .startsWith("shed \"old\"", "12.00\u00a0V", "0.06\u00a0A")
                        .contains("0.08\u00a0A of 0.10\u00a0A", "\u2717 too much"));
        assertThat(page(kindAndPorts(), Reported.supply(1)).rows())
                .anySatisfy(row -> assertThat(row).contains("0.80\u00a0A of 1.00\u00a0A", "within"));
    }

    /**
     * Ticks stand in the middle of their pixels: of five in the chain the first and the last, at 60 and 540 of 600.
     */
    @Test
    void feedsStandAtTheirPixels() throws IOException {
        Page page = page(kindAndPorts(), Reported.supply(1));

        assertThat(page.ofClass("line", "tick", "x1")).containsExactly("60", "540");
        assertThat(page.texts("figcaption")).last().asString().contains("Fed at 1, 5 (ticks).");
        assertThat(page.texts("span")).endsWith("pixel 1", "pixel 5");
    }

    /**
     * A supply of 11.9 V for pixels that need 11.99 V: what is needed is the upper edge, and no pixel comes up to it.
     */
    @Test
    void whatIsNeededStandsAboveASupplyThatGivesTooLittle() throws IOException {
        Page page = page(kindAndPorts(), Reported.supply(1).replace("\"volts\": 12", "\"volts\": 11.9"));

        assertThat(page.texts("span")).contains("needs 11.99\u00a0V").endsWith("pixel 1", "pixel 5");
        assertThat(page.ofClass("line", "soft", "y1")).last().isEqualTo("0");
        assertThat(page.ofClass("path", "curve", "d")).last().asString().doesNotStartWith("M0 0");
        assertThat(page.rows())
                .anySatisfy(row -> assertThat(row).startsWith("left").contains("\u2717 5 too low"));
    }

    @Test
    void saysWhatIsNotKnown() throws IOException {
        assertThat(page("").texts("p"))
                .containsExactly("Nothing is known of it: the pixels of this show hang on no \"ports\".");
        assertThat(page(Reported.ports(Reported.POST)).texts("p"))
                .containsExactly(
                        "The display has no \"supplies\", so there are no limits to compare with.",
                        "Not known: no port has both a \"line\" and a supply that feeds it.");
    }

    /** Nothing of a show was measured, so nothing is drawn over time; the lines are known all the same. */
    @Test
    void everythingOnIsNoCurveOverTime() throws IOException {
        Page page = written(Reported.everythingOn(folder, kindAndPorts() + ", " + Reported.supply(1))
                .report());

        assertThat(page.texts("figcaption")).singleElement().asString().startsWith("Port left");
    }

    /** Names stand as they are, in words, in tables and in what is read aloud; none becomes markup. */
    @Test
    void namesAreNoMarkup() throws IOException {
        String name = "<figcaption><script>'x'&lt \"";
        Page page = page(
                Reported.KIND + Reported.ports(Reported.FENCE.replace("\"left\"", "\"R&D's\"")),
                Reported.supply(1)
                        .replace("\"left\"", "\"R&D's\"")
                        .replace("shed \\\"old\\\"", name.replace("\"", "\\\"")));

        assertThat(page.elements("script")).isEmpty();
        assertThat(page.texts("th")).contains(name, "R&D's");
        assertThat(page.texts("figcaption")).first().asString().startsWith("Supply " + name + ": ");
        assertThat(page.elements("svg").stream().map(svg -> svg.getAttribute("aria-label")))
                .containsExactly(
                        "Current of supply " + name + " over time, between 0.01\u00a0A and 0.13\u00a0A",
                        "Least voltage along port R&D's, from 12.00\u00a0V of its supply down to 11.99\u00a0V");
    }
}
