package org.duskloom.engine.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.duskloom.engine.document.CsvStyle;
import org.duskloom.engine.document.Inputs;
import org.duskloom.engine.document.ListNode;
import org.duskloom.engine.document.Node;
import org.duskloom.engine.document.NumberNode;
import org.duskloom.engine.document.ObjectNode;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.meter.PortFigures;
import org.duskloom.engine.meter.SupplyFigures;
import org.duskloom.engine.time.FrameRate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A report of a show that can be worked out on paper, and every way in which it is written. */
class ReportTest {
    private static final double CLOSE = 1e-9;

    @TempDir
    private Path folder;

    private Reported both() throws IOException {
        return Reported.of(
                folder, Reported.KIND + Reported.ports(Reported.FENCE, Reported.POST) + ", " + Reported.supply(0.2));
    }

    /** Dark: 5 x 1 mA; red: 5 + 4 x 10; white: 5 + 4 x 30 mA, a second each. */
    @Test
    void currentsAndEnergyOfASupply() throws IOException {
        SupplyFigures shed = both().report().power().supplies().get(0);
        assertThat(shed.amps().mean()).isCloseTo((0.005 + 0.045 + 0.125) / 3, within(CLOSE));
        assertThat(shed.amps().peak()).isCloseTo(0.125, within(CLOSE));
        assertThat(shed.amps().peakFrame()).isEqualTo(40);
        assertThat(shed.wattHours()).isCloseTo(12 * 0.175 / 3600, within(CLOSE));
        assertThat(shed.peakShare()).isCloseTo(0.625, within(CLOSE));
        assertThat(shed.marginAmps()).isCloseTo(0.035, within(CLOSE));
    }

    /** Without a kind: 20 mA a colour, of which a white pixel needs its white light alone, and 1 mA. */
    @Test
    void aPortWithoutAKindIsCommonPractice() throws IOException {
        Report report = both().report();
        PortFigures post = report.power().ports().get(1);
        assertThat(post.amps().peak()).isCloseTo(2 * 0.021, within(CLOSE));
        assertThat(post.volts()).isEmpty();
        assertThat(report.assumptions())
                .containsExactly(
                        "kind bullet: 800 kbit/s, 280 us between frames",
                        "port right: 5 V, 20 mA a colour, 1 mA idle, 800 kbit/s, 280 us between frames");
    }

    @Test
    void namesTheCuesOfAMoment() throws IOException {
        PlayingCues cues = both().report().cues();
        assertThat(cues.at(0)).isEmpty();
        assertThat(cues.at(39)).containsExactly("ground: solid");
        assertThat(cues.at(40)).containsExactly("flood");
    }

    /** 5 pixels of 24 bits and 2 of 32 at 800 kbit/s, and 280 us: 430 us and 360 us. */
    @Test
    void dataOfAFrame() throws IOException {
        Report report = both().report();
        DataFigures data = report.data();
        assertThat(data.ports().get(0).frameMillis()).isCloseTo(0.43, within(CLOSE));
        assertThat(data.ports().get(0).highestRate()).isCloseTo(1e6 / 430, within(1e-6));
        assertThat(data.ports().get(1).frameMillis()).isCloseTo(0.36, within(CLOSE));
        assertThat(data.universes()).isEqualTo(2);
        assertThat(data.ports()).allMatch(port -> port.carries(report.subject().rate()));
    }

    /**
     * 512 pixels of 24 bits, and 280 us: 63.939 frames a second (by the bit times of the pixels' data sheets).
     */
    @Test
    void tooManyFramesAreNotCarried() throws IOException {
        PortTiming some = both().report().data().ports().get(0);
        PortTiming timing = new PortTiming(some.port(), 1000 / 63.939, 63.939, 1, 4);
        assertThat(timing.carries(FrameRate.of(63))).isTrue();
        assertThat(timing.carries(FrameRate.of(64))).isFalse();
        assertThat(new PortTiming(some.port(), 25, 40, 1, 2).carries(FrameRate.of(40)))
                .isTrue();
    }

    @Test
    void partsToBuyAndToCut() throws IOException {
        assertThat(both().report().parts())
                .extracting(part ->
                        part.group() + "|" + part.item() + "|" + ReportNumbers.text(part.count()) + "|" + part.unit())
                .containsExactly(
                        "pixels|bullet|5|pieces",
                        "pixels|of no kind|2|pieces",
                        "holes|fence|4|pieces",
                        "holes|post at 2|2|pieces",
                        "data line|port left|4|m",
                        "data line|port right|1.1|m",
                        "supply wire, from pixel to pixel|0.5 mm2|8|m",
                        "supply wire, leads|1.5 mm2|8.8|m",
                        "ports|data outputs|2|pieces",
                        "supplies|shed \"old\": 12 V, 0.2 A|1|pieces");
    }

    @Test
    void pixelsOnNoPortAreCounted() throws IOException {
        assertThat(Reported.of(folder, Reported.KIND + Reported.ports(Reported.FENCE))
                        .report()
                        .parts())
                .anySatisfy(part -> {
                    assertThat(part.item()).isEqualTo("on no port");
                    assertThat(part.count()).isEqualTo(2);
                });
    }

    @Test
    void jsonHoldsWhatProgramsNeed() throws IOException {
        ObjectNode json = (ObjectNode) Inputs.json(ReportJson.of(both().report()));
        assertThat(text(json, "duskloom")).isEqualTo("report/1");
        ObjectNode supply = (ObjectNode) list(json, "supplies").get(0);
        assertThat(supply.fields().stream().map(field -> field.name()))
                .startsWith("name", "meanAmps", "p99Amps", "peakAmps", "peakAt", "peakCues", "wattHours", "share");
        assertThat(number(supply, "peakAmps")).isEqualTo(0.125);
        assertThat(number(supply, "peakAt")).isEqualTo(2);
        assertThat(number(supply, "share")).isEqualTo(0.625);
        ObjectNode port = (ObjectNode) list(json, "ports").get(0);
        assertThat(port.fields().stream().map(field -> field.name()))
                .startsWith(
                        "name",
                        "pixels",
                        "peakAmps",
                        "leastVolts",
                        "leastPixel",
                        "leastAt",
                        "frameMillis",
                        "highestRate",
                        "universes");
        assertThat(number(port, "leastPixel")).isEqualTo(3);
        assertThat(number(port, "leastAt")).isEqualTo(2);
        assertThat(number(port, "leastVolts")).isBetween(11.9, 12.0);
        ObjectNode post = (ObjectNode) list(json, "ports").get(1);
        assertThat(post.value("leastVolts")).isEmpty();
        assertThat(list(json, "parts")).hasSize(10);
        assertThat(list(json, "caps")).hasSize(1);
        assertThat(list(json, "caution")).hasSize(Caution.LINES.size());
    }

    private static List<Node> list(ObjectNode json, String name) {
        return ((ListNode) json.value(name).orElseThrow()).items();
    }

    private static String text(ObjectNode json, String name) {
        return ((TextNode) json.value(name).orElseThrow()).value();
    }

    private static double number(ObjectNode json, String name) {
        return ((NumberNode) json.value(name).orElseThrow()).value();
    }

    @Test
    void tablesForASpreadsheet() throws IOException {
        Reported reported = both();
        Map<String, String> tables =
                ReportTables.of(reported.report(), reported.show().map(), CsvStyle.COMMAS);
        assertThat(tables.keySet()).containsExactlyElementsOf(ReportTables.NAMES);
        assertThat(tables.get("supplies.csv").lines().toList().get(1))
                .startsWith("\"shed \"\"old\"\"\",12,0.2,0.8,0.16,0.058333,")
                .contains(",0.125,2,flood,0.035,");
        assertThat(tables.get("ports.csv").lines().toList().get(2))
                .contains("right,,,2,")
                .contains(",,,,,0.36,");
        assertThat(tables.get("volts.csv").lines())
                .hasSize(6)
                .anyMatch(row -> row.startsWith("left,1,,,"))
                .anyMatch(row -> row.startsWith("left,2,fence,1,"));
        assertThat(tables.get("feeds.csv").lines()).hasSize(3);
        assertThat(tables.get("parts.csv")).startsWith(ReportTables.PARTS_HEADER + "\n");
        assertThat(tables.get("current.csv").lines()).hasSize(61);
        assertThat(tables.get("caution.txt")).contains("local").contains("guarantee");
    }

    /**
     * 0.005 A flow always and 0.12 A more with light. Of 0.11 A and a share of 0.8, 0.088 A may flow: (0.088 -
     * 0.005) / 0.12 is 0.69.
     */
    @ParameterizedTest
    @CsvSource({"0.11, '', 0.69", "0.11, ', \"cap\": 0.5',", "0.07, ', \"cap\": 0.5', 0.42"})
    void theCapThatKeepsASupplyInItsShare(double amps, String cap, Double advised) throws IOException {
        String fence = Reported.FENCE.replace("}}", "}" + cap + "}");
        Report report = Reported.of(folder, Reported.KIND + Reported.ports(fence) + ", " + Reported.supply(amps))
                .report();
        CapAdvice advice = CapAdvice.of(report).get(0);
        assertThat(advice.isKept()).isEqualTo(advised == null);
        if (advised == null) {
            assertThat(advice.ports()).isEmpty();
            return;
        }
        assertThat(advice.ports())
                .singleElement()
                .satisfies(port -> assertThat(port.cap()).isEqualTo(advised));
        String capped = Reported.FENCE.replace("}}", "}, \"cap\": " + advised + "}");
        Report after = Reported.of(folder, Reported.KIND + Reported.ports(capped) + ", " + Reported.supply(amps))
                .report();
        assertThat(after.power().supplies().get(0).marginAmps()).isBetween(0.0, 0.0013);
    }

    /**
     * A gamma bends dim light up, so that half the light is more than half the duty: the cap goes lower, and
     * holds.
     */
    @ParameterizedTest
    @CsvSource({"1", "1.8", "2.2", "3"})
    void theCapHoldsWithAGamma(double gamma) throws IOException {
        String curve = ", \"curve\": {\"gamma\": " + gamma + "}";
        String fence = Reported.FENCE.replace("}}", "}" + curve + "}");
        Report report = Reported.of(folder, Reported.KIND + Reported.ports(fence) + ", " + Reported.supply(0.07))
                .report();
        double cap = CapAdvice.of(report).get(0).ports().get(0).cap();
        String capped = Reported.FENCE.replace("}}", "}" + curve + ", \"cap\": " + cap + "}");
        Report after = Reported.of(folder, Reported.KIND + Reported.ports(capped) + ", " + Reported.supply(0.07))
                .report();
        assertThat(after.power().supplies().get(0).marginAmps()).isBetween(0.0, 0.02);
    }

    /** More flows in the dark than may. */
    @Test
    void noCapHelpsAgainstWhatIsIdle() throws IOException {
        Report report = Reported.of(
                        folder,
                        Reported.KIND.replace("\"idle\": 1", "\"idle\": 100") + Reported.ports(Reported.FENCE) + ", "
                                + Reported.supply(0.5))
                .report();
        CapAdvice advice = CapAdvice.of(report).get(0);
        assertThat(advice.isKept()).isFalse();
        assertThat(advice.possible()).isFalse();
    }

    /** Everything on takes 5 x 31 mA whatever the cap; 0.08 A of 0.1 A may flow, full white needs half a cap. */
    @Test
    void everythingOn() throws IOException {
        String fence = Reported.FENCE.replace("}}", "}, \"cap\": 0.1}");
        Report report = Reported.everythingOn(
                        folder, Reported.KIND + Reported.ports(fence) + ", " + Reported.supply(0.1))
                .report();
        SupplyFigures shed = report.power().supplies().get(0);
        assertThat(shed.amps().peak()).isCloseTo(0.155, within(CLOSE));
        assertThat(shed.wattHours()).isCloseTo(12 * 0.155 * 3 / 3600, within(CLOSE));
        assertThat(CapAdvice.of(report).get(0).ports().get(0).cap()).isEqualTo(0.5);
    }

    @Test
    void aDisplayWithoutPortsHasHolesAlone() throws IOException {
        Report report = Reported.of(folder, "").report();
        assertThat(report.power().ports()).isEmpty();
        assertThat(report.parts()).extracting(PartLine::group).containsExactly("pixels", "holes", "holes");
        assertThat(Inputs.json(ReportJson.of(report))).isNotNull();
    }
}
