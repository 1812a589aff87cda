package org.duskloom.engine.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.assertj.core.data.Offset;
import org.duskloom.engine.document.CsvStyle;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Tables as a spreadsheet reads them, by the parser of a library: every figure under its own heading. */
class ReportTablesTest {
    private static final Offset<Double> MILLIONTH = within(1e-6);

    @TempDir
    private Path folder;

    private Map<String, String> tables;

    @BeforeEach
    void write() throws IOException {
        Reported reported = Reported.of(
                folder, Reported.KIND + Reported.ports(Reported.FENCE, Reported.POST) + ", " + Reported.supply(0.2));
        tables = ReportTables.of(reported.report(), reported.show().map(), CsvStyle.COMMAS);
    }

    @Test
    void everyRowHasACellForEveryHeading() throws IOException {
        for (String name : ReportTables.NAMES) {
            if (name.endsWith(".csv")) {
                assertThat(rows(name)).as(name).isNotEmpty().allMatch(CSVRecord::isConsistent);
            }
        }
    }

    /**
     * 125 mA of 0.2 A, of which 80 % may flow; with everything on 5 x 31 mA; 12 V x 0.175 As an hour's 3600th
     * part.
     */
    @Test
    void tellsOfSupplies() throws IOException {
        CSVRecord shed = rows("supplies.csv").get(0);
        assertThat(shed.get("supply")).isEqualTo("shed \"old\"");
        assertThat(number(shed, "allowed_amps")).isCloseTo(0.16, MILLIONTH);
        assertThat(number(shed, "peak_amps")).isCloseTo(0.125, MILLIONTH);
        assertThat(number(shed, "peak_at")).isEqualTo(2);
        assertThat(shed.get("peak_cues")).isEqualTo("flood");
        assertThat(number(shed, "margin_amps")).isCloseTo(0.035, MILLIONTH);
        assertThat(number(shed, "everything_on_amps")).isCloseTo(0.155, MILLIONTH);
        assertThat(number(shed, "watt_hours")).isCloseTo(12 * 0.175 / 3600, MILLIONTH);
    }

    /** Five pixels of 24 bits at 800 kbit/s and 280 us of pause: 430 us. */
    @Test
    void tellsOfPorts() throws IOException {
        CSVRecord left = rows("ports.csv").get(0);
        CSVRecord right = rows("ports.csv").get(1);
        assertThat(left.get("port")).isEqualTo("left");
        assertThat(left.get("supply")).isEqualTo("shed \"old\"");
        assertThat(left.get("kind")).isEqualTo("bullet");
        assertThat(left.get("pixels")).isEqualTo("5");
        assertThat(left.get("least_pixel")).isEqualTo("3");
        assertThat(number(left, "frame_ms")).isCloseTo(0.43, MILLIONTH);
        assertThat(left.get("first_universe")).isEqualTo("1");
        assertThat(right.get("first_universe")).isEqualTo("2");
        assertThat(right.get("least_volts")).isEmpty();
        assertThat(number(right, "peak_amps")).isCloseTo(0.042, MILLIONTH);
    }

    /** The feeds share what flows; watts are amperes times 12 V, and both feeds have two metres of wire. */
    @Test
    void tellsOfFeeds() throws IOException {
        double amps = 0;
        for (CSVRecord feed : rows("feeds.csv")) {
            assertThat(feed.get("port")).isEqualTo("left");
            assertThat(feed.get("wire")).isEqualTo("1.5 mm2");
            assertThat(feed.get("metres")).isEqualTo("2");
            assertThat(number(feed, "peak_watts")).isCloseTo(12 * number(feed, "peak_amps"), within(1e-5));
            assertThat(number(feed, "everything_on_watts"))
                    .isCloseTo(12 * number(feed, "everything_on_amps"), within(1e-5));
            amps += number(feed, "everything_on_amps");
        }
        assertThat(amps).isCloseTo(0.155, within(2e-6));
    }

    /** Pixels are numbered along the line and in their prop; those that are passed over are in none. */
    @Test
    void tellsOfPixelsOfALine() throws IOException {
        List<CSVRecord> rows = rows("volts.csv");
        assertThat(rows).extracting(row -> row.get("place")).containsExactly("1", "2", "3", "4", "5");
        assertThat(rows).extracting(row -> row.get("pixel")).containsExactly("", "1", "2", "3", "4");
        assertThat(rows).extracting(row -> row.get("prop")).containsExactly("", "fence", "fence", "fence", "fence");
        assertThat(rows).allMatch(row -> number(row, "least_at") == 2);
        for (CSVRecord row : rows) {
            assertThat(row.get("too_low")).isEqualTo(number(row, "least_volts") < 11.99 ? "yes" : "");
        }
    }

    /** Sixty frames are sixty stretches of 50 ms, one behind the other: a second each of 5, 45 and 125 mA. */
    @Test
    void tellsHowTheCurrentGoes() throws IOException {
        List<CSVRecord> rows = rows("current.csv");
        assertThat(rows).hasSize(60);
        for (int i = 0; i < 60; i++) {
            assertThat(number(rows.get(i), "from")).isCloseTo(i * 0.05, MILLIONTH);
            assertThat(number(rows.get(i), "to")).isCloseTo((i + 1) * 0.05, MILLIONTH);
            double amps = i < 20 ? 0.005 : i < 40 ? 0.045 : 0.125;
            assertThat(number(rows.get(i), "peak_amps")).isCloseTo(amps, MILLIONTH);
        }
    }

    /**
     * Red has 0.2126 of the luminance of white (WCAG 2.2); of the fence in one second of three, white in
     * another.
     */
    @Test
    void tellsOfLight() throws IOException {
        CSVRecord fence = rows("use.csv").get(0);
        assertThat(fence.get("pixels")).isEqualTo("4");
        assertThat(number(fence, "dark_share")).isCloseTo(1 / 3.0, MILLIONTH);
        assertThat(number(fence, "mean_light")).isCloseTo(1.2126 / 3, MILLIONTH);
        assertThat(fence.get("never_lit")).isEqualTo("0");
        assertThat(rows("cues.csv")).extracting(row -> row.get("cue")).containsExactly("ground: solid", "flood");
        assertThat(number(rows("cues.csv").get(0), "mean_light")).isCloseTo(0.2126, MILLIONTH);
        assertThat(rows("flashes.csv").get(0).get("changes_of_light")).isEqualTo("1");
        assertThat(rows("flashes.csv").get(1).get("changes_of_red")).isEqualTo("0");
    }

    /** The same cells, to a spreadsheet of a country where a comma is the decimal sign. */
    @Test
    void writesSemicolonsToo() throws IOException {
        Reported all = Reported.everythingOn(
                folder, Reported.KIND + Reported.ports(Reported.FENCE) + ", " + Reported.supply(0.2));
        tables = ReportTables.of(all.report(), all.show().map(), CsvStyle.COMMAS);
        Map<String, String> others = ReportTables.of(all.report(), all.show().map(), CsvStyle.SEMICOLONS);
        CSVFormat format = CSVFormat.RFC4180.builder().setDelimiter(';').get();
        for (String name : List.of("supplies.csv", "volts.csv", ReportTables.PARTS)) {
            assertThat(others.get(name)).startsWith("\uFEFF");
            List<CSVRecord> rows =
                    CSVParser.parse(others.get(name).substring(1), format).getRecords();
            List<CSVRecord> expected =
                    CSVParser.parse(tables.get(name), CSVFormat.RFC4180).getRecords();
            assertThat(rows).as(name).hasSameSizeAs(expected);
            for (int i = 0; i < rows.size(); i++) {
                assertThat(rows.get(i).toList())
                        .containsExactlyElementsOf(expected.get(i).stream()
                                .map(cell -> cell.matches("-?\\d+\\.\\d+") ? cell.replace('.', ',') : cell)
                                .toList());
            }
        }
        assertThat(others.get("supplies.csv")).contains(";0,2;").doesNotContain("0.2");
        assertThat(others.get("caution.txt")).isEqualTo(tables.get("caution.txt"));
    }

    /** Without light looked at, as with everything on, these tables have headings alone. */
    @Test
    void leavesOutWhatWasNotLookedAt() throws IOException {
        Reported all = Reported.everythingOn(
                folder, Reported.KIND + Reported.ports(Reported.FENCE) + ", " + Reported.supply(0.2));
        tables = ReportTables.of(all.report(), all.show().map(), CsvStyle.COMMAS);
        assertThat(rows("flashes.csv")).isEmpty();
        assertThat(rows("use.csv")).isEmpty();
        assertThat(rows("cues.csv")).isEmpty();
        assertThat(rows("supplies.csv")).hasSize(1);
        assertThat(tables.get("caution.txt")).isEqualTo(String.join("\n", Caution.LINES) + "\n");
    }

    private List<CSVRecord> rows(String name) throws IOException {
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (CSVParser parser = CSVParser.parse(tables.get(name), format)) {
            return new ArrayList<>(parser.getRecords());
        }
    }

    private static double number(CSVRecord row, String heading) {
        return Double.parseDouble(row.get(heading));
    }
}
