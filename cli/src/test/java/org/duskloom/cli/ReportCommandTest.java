package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** {@code report}, and the lines of it with which {@code render} ends. */
class ReportCommandTest {
    private static final String PORT =
            "{\"name\": \"left\", \"chain\": [\"fence\"], \"kind\": \"bullet\"," + " \"line\": {\"awg\": 20}}";
    private static final String KINDS =
            "], \"kinds\": {\"bullet\": {\"volts\": 12, \"milliamps\": [20, 20, 20], \"least\": 11.5}},";

    @TempDir
    private Path folder;

    private Path show;

    @BeforeEach
    void writeShow() throws IOException {
        show = powered(9, "");
    }

    /** 100 pixels of 61 mA at most, fed at their first by a supply of so many amperes. */
    private Path powered(double amps, String more) throws IOException {
        return WiredGarden.show(
                folder,
                100,
                40,
                PORT + KINDS + " \"supplies\": [{\"name\": \"shed\", \"volts\": 12, \"amps\": " + amps
                        + ", \"feeds\": [{\"port\": \"left\", \"lead\": {\"mm2\": 1.5, \"length\": 2000}}]}" + more);
    }

    private Ran report(Object... more) {
        Object[] arguments = new Object[more.length + 2];
        arguments[0] = "report";
        arguments[1] = show;
        System.arraycopy(more, 0, arguments, 2, more.length);
        return Ran.with(arguments).without(folder);
    }

    @Test
    void printsEverythingInWords() {
        Ran ran = report();
        assertThat(ran.code()).isZero();
        assertThat(ran.err()).isEmpty();
        assertThat(ran.out().lines().filter(line -> !line.isEmpty() && !line.startsWith(" ")))
                .anyMatch(line -> line.equals("80 frames at 40 a second, 2.0 s, 100 pixels"))
                .anyMatch(line -> line.startsWith("shed    12 V"))
                .anyMatch(line -> line.matches("left +100 .* pixel 100 at .*; \\d+ pixels under 11.50 V"))
                .anyMatch(line -> line.matches("left +1 +1.5 mm2, 2.00 m .*"))
                .anyMatch(line -> line.matches("left +3.28 ms +304.8 at most +1"))
                .anyMatch(line -> line.startsWith("As E1.31: 1 universe"))
                .anyMatch(line -> line.matches("holes +fence +100 .*"))
                .anyMatch(line -> line.contains("800 kbit/s, 280 us between frames"))
                .anyMatch(line -> line.startsWith("Mains can kill."))
                .noneMatch(line -> line.equals("Caps"))
                .allMatch(line -> line.length() <= 130);
    }

    /** 100 pixels of 61 mA are 6.10 A, which a supply of 6 A does not give. */
    @Test
    void saysWhatASupplyCouldNotGive() throws IOException {
        show = powered(6, "");
        assertThat(report().out()).contains("could not give 6.10 A, which a controller that hangs may ask for.");
        assertThat(report("-o", folder.resolve("page.html")).err())
                .contains(
                        "with all on: supply \"shed\" could not give 6.10 A, which a controller that hangs may ask for;"
                                + " it gives 6.00 A\n");
        assertThat(Ran.with("render", show, "-o", folder.resolve("six")).err())
                .contains("; with all on 6.10 A, which is more than it gives)");
        show = powered(9, "");
        assertThat(Ran.with("render", show, "-o", folder.resolve("nine")).err())
                .contains("power: ")
                .doesNotContain("with all on");
    }

    /** Its pixels are promised to work with 11.5 V, and 100 on one end have less. */
    @Test
    void renderSaysWhereTheVoltageIsTooLow() {
        assertThat(Ran.with("render", show, "-o", folder.resolve("low")).err())
                .containsPattern("least voltage \\d+\\.\\d\\d V on port \"left\" \\(TOO LOW, needs 11\\.50 V\\)\n");
    }

    @Test
    void saysWhichCapKeepsASupplyInItsShare() throws IOException {
        assertThat(report("--cap").out()).contains("Caps").contains("supply \"shed\" keeps within its share as it is.");
        show = powered(2, "");
        Ran ran = report("--cap");
        assertThat(ran.code()).isZero();
        assertThat(ran.out())
                .contains("supply \"shed\" would have to give more than its 2 A")
                .containsPattern("\"cap\": 0\\.\\d+ on port \"left\" instead of 1");
    }

    /** Where the report goes into a file, nothing but the caps is printed. */
    @Test
    void tellsCapsAloneBesideFiles() throws IOException {
        show = powered(2, "");
        Ran ran = report("--cap", "-o", folder.resolve("page.html").toString());
        assertThat(ran.code()).isZero();
        assertThat(ran.out())
                .startsWith("Caps")
                .containsPattern("\"cap\": 0\\.\\d+ on port \"left\" instead of 1")
                .doesNotContain("Supplies", "Flashing", "Caution");
    }

    /** 100 times 61 mA. */
    @Test
    void theWorstCaseIsEverythingOn() {
        Ran ran = report("--what-if", "white");
        assertThat(ran.out())
                .startsWith("Fence: everything on, not the show")
                .contains("6.10 A")
                .contains("all the time");
    }

    @Test
    void warmWiresDropMore() {
        assertThat(report("--copper", "70").out()).isNotEqualTo(report().out());
    }

    /** The drop of hundred pixels along thin wires is more than there is to drop. */
    @Test
    void wireThatCannotCarryItIsCalledThat() throws IOException {
        show = powered(9, "");
        Path display = folder.resolve("display.json");
        Files.writeString(display, Files.readString(display).replace("\"awg\": 20", "\"awg\": 40"));
        assertThat(report().out())
                .containsPattern("left +100 .* none +pixel 100 at .*; the")
                .contains("wire cannot carry this");
    }

    @Test
    void writesFilesThatAgree() throws IOException {
        Ran ran = report(
                "-o", folder.resolve("r.html"), "--json", folder.resolve("r.json"), "--csv", folder.resolve("r"));
        assertThat(ran.code()).as(ran.err()).isZero();
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err().lines())
                .hasSize(3)
                .anyMatch(line -> line.equals("12 files of the report of show.json"))
                .anyMatch(line ->
                        line.matches("voltage: \\d+ pixels of port left get less than the 11.50 V they need, .*"))
                .anyMatch(line -> line.startsWith("caution: "));
        String json = Files.readString(folder.resolve("r.json"));
        assertThat(json).startsWith("{\n  \"duskloom\": \"report/1\",");
        assertThat(report("--json", "-")).isEqualTo(new Ran(0, json, ""));
        String supply = Files.readAllLines(folder.resolve("r/supplies.csv")).get(1);
        assertThat(json).contains("\"peakAmps\": " + supply.split(",")[7] + ",");
        assertThat(Files.readString(folder.resolve("r.html"))).contains("<!DOCTYPE html>");
        assertThat(Files.readString(folder.resolve("r/parts.csv"))).contains("holes,fence,100,pieces");
    }

    /** All files or none: where one may not be written, the others are not either. */
    @Test
    void replacesOnlyWithForce() throws IOException {
        Files.writeString(folder.resolve("r.json"), "mine");
        Ran ran = report("-o", folder.resolve("r.html"), "--json", folder.resolve("r.json"));
        assertThat(ran.code()).isEqualTo(1);
        assertThat(ran.err()).contains("r.json").contains("--force");
        assertThat(folder.resolve("r.html")).doesNotExist();
        assertThat(report("-o", folder.resolve("r.html"), "--json", folder.resolve("r.json"), "--force")
                        .code())
                .isZero();
        assertThat(Files.readString(folder.resolve("r.json"))).contains("report/1");
    }

    /** What 'sheet' calls parts.csv is another table; the two are kept apart even with --force. */
    @Test
    void leavesTheTableOfASheetAlone() throws IOException {
        assertThat(Ran.with("sheet", folder.resolve("display.json"), "-o", folder.resolve("sheets"))
                        .code())
                .isZero();
        String parts = Files.readString(folder.resolve("sheets/parts.csv"));
        Ran ran = report("--csv", folder.resolve("sheets"), "--force");
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err())
                .contains("sheets/parts.csv is a table that 'sheet' wrote; give --csv a folder of its own");
        assertThat(Files.readString(folder.resolve("sheets/parts.csv"))).isEqualTo(parts);
        assertThat(folder.resolve("sheets/supplies.csv")).doesNotExist();
    }

    /** Whatever stands between the cells. */
    @Test
    void knowsTheTableOfASheetWithSemicolons() throws IOException {
        Path sheets = folder.resolve("sheets");
        Path display = folder.resolve("display.json");
        assertThat(Ran.with("sheet", display, "-o", sheets, "--semicolons").code())
                .isZero();
        assertThat(report("--csv", sheets, "--force").err()).contains("sheets/parts.csv is a table that 'sheet' wrote");
        assertThat(report("--csv", folder.resolve("r"), "--semicolons").code()).isZero();
        assertThat(Files.readString(folder.resolve("r/parts.csv"))).contains("group;item;count;unit;note\n");
        assertThat(Ran.with("sheet", display, "-o", folder.resolve("r"), "--force")
                        .err())
                .contains("r/parts.csv is a table that 'report' wrote");
    }

    @Test
    void semicolonsAreForTables() {
        Ran ran = report("--semicolons");
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("--semicolons says how tables are written; --csv names their folder");
    }

    /** Nor does 'sheet' replace the list for the shop. */
    @Test
    void isLeftAloneByASheet() throws IOException {
        assertThat(report("--csv", folder.resolve("r")).code()).isZero();
        String parts = Files.readString(folder.resolve("r/parts.csv"));
        Ran ran = Ran.with("sheet", folder.resolve("display.json"), "-o", folder.resolve("r"), "--force");
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err())
                .contains("r/parts.csv is a table that 'report' wrote; give -o a folder of its own, or move it away");
        assertThat(Files.readString(folder.resolve("r/parts.csv"))).isEqualTo(parts);
        assertThat(folder.resolve("r/places.csv")).doesNotExist();
    }

    @Test
    void neverReplacesAnInput() {
        Ran ran = report("--json", show, "--force");
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("show.json");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            --what-if | black      | --what-if is "black"; allowed: white
            --copper  | 200        | --copper is 200; allowed: -50 to 150
            --copper  | warm       | --copper
            -o        | report.pdf | -o report.pdf: the report is a page; give it a name that ends in .html
            --csv     | -          | --csv: - is the standard output
            """)
    void refusesWrongOptions(String option, String value, String message) {
        Ran ran = report(option, value);
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains(message);
    }

    @Test
    void aShowOnAMapIsToldWhatIsMissing() throws IOException {
        Path garden = Garden.in(folder.resolve("map"));
        Ran ran = Ran.with("report", garden);
        assertThat(ran.code()).as(ran.err()).isZero();
        assertThat(ran.out()).contains("the show's pixels hang on no \"ports\"").contains("Mains can kill.");
    }

    @Test
    void aDisplayWithoutSuppliesIsToldCurrents() throws IOException {
        show = WiredGarden.show(folder, 100, 40, "{\"name\": \"left\", \"chain\": [\"fence\"]}");
        Ran ran = report("--cap");
        assertThat(ran.out())
                .contains("The display says of no \"supplies\" what they may give.")
                .contains("no supply feeds it")
                .contains("Without \"supplies\" there is no share to keep.")
                .contains("port left: 5 V, 20 mA a colour, 1 mA idle");
    }

    @Test
    void wrongInputIsNamedWithItsPlace() throws IOException {
        show = powered(0, ", {\"name\": \"barn\", \"volts\": 5, \"amps\": 4, \"feeds\": [{\"port\": \"leeft\"}]}");
        Ran ran = report();
        assertThat(ran.code()).isEqualTo(3);
        assertThat(ran.err())
                .containsPattern("display.json:6:\\d+: error: \"amps\" of supply \"shed\" is 0")
                .contains("there is no port \"leeft\"; did you mean \"left\"?");
    }

    @Test
    void renderEndsWithSomeLines() {
        Ran ran = Ran.with("render", show, "-o", folder.resolve("out")).without(folder);
        assertThat(ran.code()).isZero();
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err().lines().map(line -> line.replaceAll(":.*", "")))
                .containsExactly("out", "power", "data", "flashing", "caution");
    }

    /** Without ports nothing is known of power; flashes are told all the same, and what a file holds stays as it is. */
    @Test
    void renderOfAMapSaysNothingOfPower() throws IOException {
        Ran ran = Ran.with("render", Garden.in(folder.resolve("map")), "-o", folder.resolve("out"));
        assertThat(ran.err()).doesNotContain("power").doesNotContain("caution");
        assertThat(ran.err().lines().skip(1))
                .hasSize(1)
                .allMatch(line -> line.startsWith("flashing: ") && line.endsWith("; no guarantee for anyone"));
        assertThat(ran.out()).isEmpty();
    }

    /** A wash that turns on and off ten times a second, on a map. */
    @Test
    void renderOfAMapTellsOfFlashes() throws IOException {
        Ran ran = Ran.with("render", flashingMap(), "-o", folder.resolve("out"));
        assertThat(ran.code()).as(ran.err()).isZero();
        assertThat(ran.err()).contains("\nflashing: TOO OFTEN, 20 changes of light in the second from ");
        assertThat(ran.out()).isEmpty();
    }

    /** 20 changes where 6 are allowed: 20/6 of 100 ms, rounded up. */
    @Test
    void saysHowFarPlaysThatRepeatMustBeApart() throws IOException {
        assertThat(Ran.with("report", flashingMap()).out().replaceAll("\\s+", " "))
                .contains(
                        "its plays start every 0.1s; at least 0.334s (\"every\" of its \"repeat\", or a longer \"for\")"
                                + " if that is what flashes.");
    }

    private Path flashingMap() throws IOException {
        Path map = Garden.in(folder.resolve("map"));
        return Files.writeString(map, """
                {"duskloom": "timeline/1", "map": "map.csv", "rate": 40, "length": "2s", "layers": [{"cues": [
                  {"at": "0s", "for": "50ms", "on": "*", "effect": "wash", "repeat": {"count": 20, "every": "100ms"}}]}]}
                """);
    }

    /** Of 30,000 lights that nothing feeds yet it would take as long as rendering; where there are ports it is told. */
    @Test
    void renderLeavesFlashesOfGreatDisplaysWithoutPortsToTheReport() throws IOException {
        assertThat(toldOfANet("")).contains("flashing: not looked at with so many pixels; 'duskloom report' does");
        assertThat(toldOfANet(", \"ports\": [{\"name\": \"all\", \"chain\": [\"net\"]}]"))
                .contains("flashing: ")
                .doesNotContain("not looked at with");
    }

    private String toldOfANet(String ports) throws IOException {
        Path show = folder.resolve("great.json");
        Files.writeString(folder.resolve("great-display.json"), """
                {"duskloom": "display/1", "units": "mm",
                 "shapes": {"net": {"build": [{"grid": {"columns": 1000, "rows": 30, "spacing": [10, 10], "corner": "bottom-left", "path": "serpentine"}}]}},
                 "props": [{"name": "net", "shape": "net", "at": [0, 0]}]PORTS}
                """.replace("PORTS", ports));
        Files.writeString(show, """
                {"duskloom": "timeline/1", "display": "great-display.json", "rate": 40, "length": "50ms", "layers": [
                  {"cues": [{"at": "0s", "for": "50ms", "on": "*", "effect": "wash"}]}]}
                """);
        Ran ran = Ran.with("render", show, "-o", folder.resolve("great"), "--force");
        assertThat(ran.code()).as(ran.err()).isZero();
        return ran.err();
    }

    /** Music tempts to flash with every drum; the demo keeps a third under what is allowed. */
    @Test
    void theDemoWithMusicStaysCalm() {
        assertThat(Ran.with("report", Project.file("demos/evening/show.json")).out())
                .containsPattern("light +[0-4] +6 ")
                .containsPattern("saturated red +[0-4] +6 ");
    }

    /** A display that others build after must not be one that hurts: three flashes in any second at the most. */
    @Test
    void theGardenFlashesNoMoreThanItMay() {
        Ran ran = Ran.with("report", Project.file("demos/garden/show.json"));
        assertThat(ran.out())
                .contains("Nothing flashes more than three times within a second. That is no guarantee.")
                .contains("Passing is no guarantee for anyone");
    }

    /** A chase of red that passes each pixel five times a second: what is found, where, and what to write instead. */
    @Test
    void saysWhatToSlowDown() throws IOException {
        Files.writeString(
                show,
                Files.readString(show)
                        .replace(
                                "\"effect\": \"sweep\", \"with\": {\"every\": \"1s\"}",
                                "\"name\": \"flicker\", \"effect\": \"chase\", \"with\": {\"every\": \"200ms\","
                                        + " \"palette\": [\"red\"]}"));
        Ran ran = report();
        assertThat(ran.code()).as(ran.err()).isZero();
        assertThat(ran.out())
                .contains("It flashes too often. Passing would be no guarantee either.")
                .containsPattern("\\nsaturated red +1[01] +6 ")
                .containsPattern("; cues there: flicker\\.")
                .containsPattern("In flicker: \"every\" is 200ms; at least 3(34|67)ms if that is what flashes");
        assertThat(Ran.with("render", show, "-o", folder.resolve("frames")).err())
                .contains("flashing: TOO OFTEN, 1");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "0    | --seen-from is 0; allowed: 0.5 to 10000 metres",
                "-3   | --seen-from is -3; allowed: 0.5 to 10000 metres",
                "8m   | '8m' is not a number",
                "12,5 | the decimal sign is a dot: 12.5"
            })
    void refusesDistances(String written, String message) {
        Ran ran = report("--seen-from=" + written);
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains(message);
    }

    @Test
    void refusesADistanceWithoutFlashesOrUnits() throws IOException {
        assertThat(report("--seen-from", "8", "--what-if", "white").err()).contains("--what-if looks at none");
        Ran map = Ran.with("report", Garden.in(folder.resolve("map")), "--seen-from", "8");
        assertThat(map.code()).isEqualTo(2);
        assertThat(map.err()).contains("needs a display that says its \"units\"");
    }

    /** From far enough any display is small. */
    @Test
    void distanceDecidesByArea() {
        assertThat(report("--seen-from", "1000").out()).contains("Seen from 1000.0 m, what flashes too often");
    }

    /** Without ports there is no power to tell of; the page and the tables are written all the same. */
    @Test
    void writesThePageOfAMap() throws IOException {
        Path map = Garden.in(folder.resolve("map"));
        Ran ran = Ran.with("report", map, "-o", folder.resolve("m.html"), "--csv", folder.resolve("tables"));
        assertThat(ran.code()).as(ran.err()).isZero();
        assertThat(ran.err()).contains("; that is no guarantee").contains("caution: ");
        assertThat(Files.readString(folder.resolve("m.html")))
                .contains("hang on no")
                .contains("<h2>Flashing</h2>");
        assertThat(Files.readString(folder.resolve("tables/use.csv"))).startsWith("prop,pixels,dark_share,mean_light,");
    }
}
