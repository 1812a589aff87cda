package org.duskloom.engine.wire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.duskloom.engine.document.Field;
import org.duskloom.engine.document.Inputs;
import org.duskloom.engine.document.ListNode;
import org.duskloom.engine.document.ObjectNode;
import org.duskloom.engine.group.GroupTree;
import org.duskloom.engine.map.Maps;
import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Kinds of pixels, wires and supplies as they are written in a display, and what is said of wrong ones. */
class SupplyReaderTest {
    private static final String BULLET = "\"bullet\": {\"volts\": 12, \"milliamps\": [13, 12, 14], \"idle\": 0.5,"
            + " \"least\": 10.5, \"kilobits\": 400, \"reset\": \"50us\"}";
    private static final String LEFT = "{\"name\": \"left\", \"chain\": [\"fence\"], \"kind\": \"bullet\","
            + " \"line\": {\"awg\": 20, \"pitch\": 75}}";

    private final Problems problems = new Problems();

    /** Five pixels in a row, 100 units apart, and three in another; lengths are millimetres. */
    private Ports read(String kinds, String ports, String supplies) {
        GroupTree groups = GroupTree.of(Maps.map("""
                prop,pixel,x,y
                fence,1,0,0
                fence,2,100,0
                fence,3,200,0
                fence,4,300,0
                fence,5,300,400
                pond,1,0,9
                pond,2,9,9
                pond,3,18,9
                """));
        List<Field> fields = ((ObjectNode) Inputs.json("{" + kinds + "}")).fields();
        PortReader.Written written = new PortReader.Written(
                fields,
                Optional.of((ListNode) Inputs.json("[" + ports + "]")),
                supplies.isEmpty() ? Optional.empty() : Optional.of((ListNode) Inputs.json("[" + supplies + "]")));
        return PortReader.read(written, groups, 0.001, problems);
    }

    private Ports sound(String kinds, String ports, String supplies) {
        Ports read = read(kinds, ports, supplies);
        assertThat(Inputs.shown(problems)).isEmpty();
        return read;
    }

    @Test
    void readsEverything() {
        Ports ports = sound(BULLET, LEFT, """
                {"name": "shed", "volts": 12, "amps": 29, "share": 0.7,
                 "feeds": [{"port": "left", "at": [1, 5], "lead": {"mm2": 1.5, "length": 800}}]}
                """);
        Port port = ports.ports().get(0);
        assertThat(port.pixelKind()).isEqualTo(port.kind().orElseThrow());
        assertThat(port.pixelKind().milliamps()).containsExactly(13.0, 12.0, 14.0);
        assertThat(port.pixelKind().fullAmps()).isCloseTo(0.0395, within(1e-12));
        assertThat(port.pixelKind().line()).isEqualTo(new DataLine(400, 50));
        assertThat(port.pixelKind().assumed()).isEmpty();
        assertThat(port.line().orElseThrow().segmentMetres()).containsExactly(0.075, 0.075, 0.075, 0.075);
        Supply supply = ports.supplyOf(port).orElseThrow();
        assertThat(supply.allowedAmps()).isCloseTo(20.3, within(1e-9));
        assertThat(supply.feedsOf("left")).extracting(Feed::pixel).containsExactly(0, 4);
        assertThat(supply.feeds().get(1).ohms(20)).isCloseTo(2 * 0.8 / 58 / 1.5, within(1e-12));
    }

    @Test
    void whatIsNotWrittenIsCommonPracticeAndSaysSo() {
        Ports ports = sound(
                "\"bare\": {\"volts\": 5, \"milliamps\": [12, 12, 12]}",
                "{\"name\": \"a\", \"chain\": [\"fence\"], \"kind\": \"bare\"}, {\"name\": \"b\", \"chain\": [\"pond\"],"
                        + " \"colors\": \"GRBW\"}",
                "{\"name\": \"shed\", \"volts\": 5, \"amps\": 10, \"feeds\": [{\"port\": \"a\"}]}");
        assertThat(ports.ports().get(0).pixelKind().assumed())
                .containsExactly("1 mA idle", "800 kbit/s", "280 us between frames");
        PixelKind usual = ports.ports().get(1).pixelKind();
        assertThat(usual.milliamps()).containsExactly(20.0, 20.0, 20.0, 20.0);
        assertThat(usual.assumed()).hasSize(5);
        Supply supply = ports.supplies().get(0);
        assertThat(supply.share()).isEqualTo(0.8);
        assertThat(supply.feeds()).containsExactly(new Feed("a", 0, Optional.empty()));
        assertThat(ports.supplyOf(ports.ports().get(1))).isEmpty();
    }

    /** A tenth more than from place to place; the way past two dark pixels is shared evenly. */
    @Test
    void withoutAPitchTheWireFollowsThePlaces() {
        Port port = sound(
                        "",
                        "{\"name\": \"a\", \"chain\": [{\"skip\": 1}, \"fence\", {\"skip\": 2}, \"pond\"],"
                                + " \"line\": {\"mm2\": 0.5}}",
                        "")
                .ports()
                .get(0);
        double jump = Math.hypot(300, 391);
        double mean = 1.1e-3 * (700 + jump + 18) / 9;
        double[] metres = port.line().orElseThrow().segmentMetres();
        assertThat(port.line().orElseThrow().measured()).isFalse();
        assertThat(metres)
                .usingComparatorWithPrecision(1e-12)
                .containsExactly(
                        mean,
                        0.11,
                        0.11,
                        0.11,
                        0.44,
                        1.1e-3 * jump / 3,
                        1.1e-3 * jump / 3,
                        1.1e-3 * jump / 3,
                        0.0099,
                        0.0099);
    }

    @Test
    void aLineOfDarkPixelsAloneNeedsAPitch() {
        read("", "{\"name\": \"a\", \"chain\": [{\"skip\": 3}], \"line\": {\"mm2\": 0.5}}", "");
        assertThat(Inputs.shown(problems)).singleElement().asString().contains("\"pitch\"");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            "volts": 0, "milliamps": [1, 1, 1]    | "volts" of kind "k" is 0 | allowed: a number from 1 to 60
            "volts": 12, "milliamps": [1, 1]      | "milliamps" of kind "k" has 2 items | allowed: 3 to 4 numbers
            "volts": 12, "milliamps": [1, -1, 1]  | item 2 of "milliamps" of kind "k" is -1 | allowed: a number from 0 to 1000
            "volts": 12                           | kind "k" lacks the field "milliamps" | ``
            "volts": 12, "milliamps": [1, 1, 1], "least": 13 | "least" of kind "k" is 13, which is more than its "volts" | allowed: up to 12
            "volts": 12, "milliamps": [1, 1, 1], "kilobits": 0 | "kilobits" of kind "k" is 0 | allowed: a number from 1 to 100000
            "volts": 12, "milliamps": [1, 1, 1], "reset": "280" | "reset" of kind "k" is "280" | write a number and us or ms, such as "280us"
            "volts": 12, "milliamps": [1, 1, 1], "reset": "2s" | "reset" of kind "k" is "2s" | write a number and us or ms
            "volts": 12, "milliamps": [1, 1, 1], "reset": "200ms" | "reset" of kind "k" is 200ms | allowed: up to 100ms
            "volts": 12, "milliamp": [1, 1, 1]    | kind "k" lacks the field "milliamps" | is "milliamp" meant for it?
            """)
    void refusesWrongKinds(String fields, String message, String hint) {
        read("\"k\": {" + fields + "}", "{\"name\": \"a\", \"chain\": [\"fence\"], \"kind\": \"k\"}", "");
        assertThat(Inputs.shown(problems))
                .anySatisfy(shown -> assertThat(shown).contains(message).contains(hint == null ? "" : hint));
        assertThat(Inputs.shown(problems)).noneMatch(shown -> shown.contains("there is no kind"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            "kind": "bulet"                     | there is no kind "bulet" | did you mean "bullet"?
            "kind": "bullet", "colors": "GRBW"  | kind "bullet" says what 3 colours draw, and port "a" has 4: GRBW | "milliamps" has a number for each
            "line": {"pitch": 75}               | "line" of port "a" has neither "awg" nor "mm2" | its size stands in "awg" or in "mm2"
            "line": {"awg": 20, "mm2": 0.5}     | "line" of port "a" has both "awg" and "mm2" | its size stands in "awg" or in "mm2"
            "line": {"mm2": 0}                  | "mm2" of "line" of port "a" is 0 | allowed: a number from 0.01 to 1000
            "line": {"awg": 18.5}               | "awg" of "line" of port "a" is 18.5 | allowed: a whole number from 0 to 40
            "line": {"awg": 20, "pitch": 0}     | "pitch" of "line" of port "a" is 0 | allowed: a number from 0.001 to 1000000
            "line": {"awg": 20, "pitch": -5}    | "pitch" of "line" of port "a" is -5 | allowed: a number from 0.001 to 1000000
            "line": {"awg": 20, "step": 5}      | "line" of port "a" has no field "step" | allowed: awg, mm2, pitch
            """)
    void refusesWrongFieldsOfPorts(String fields, String message, String hint) {
        read(BULLET, "{\"name\": \"a\", \"chain\": [\"fence\"], " + fields + "}", "");
        assertThat(Inputs.shown(problems))
                .singleElement()
                .asString()
                .contains(message)
                .contains(hint);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            "volts": 0, "amps": 9        | {"port": "left"} | "volts" of supply "shed" is 0 | allowed: a number from 1 to 60
            "volts": 12, "amps": 0       | {"port": "left"} | "amps" of supply "shed" is 0 | allowed: a number from 0.01 to 10000
            "volts": 12                  | {"port": "left"} | supply "shed" lacks the field "amps" | ``
            "volts": 12, "amps": 9, "share": 1.2 | {"port": "left"} | "share" of supply "shed" is 1.2 | allowed: a number from 0.01 to 1
            "volts": 12, "amps": 9       | ``               | "feeds" of supply "shed" is empty | say which ports it feeds
            "volts": 12, "amps": 9       | {"port": "leeft"} | there is no port "leeft" | did you mean "left"?
            "volts": 5, "amps": 9        | {"port": "left"} | supply "shed" gives 5 V to port "left", whose pixels of kind "bullet" are made for 12 V | give the port
            "volts": 12, "amps": 9       | {"port": "left", "at": [6]} | is 6, and the chain of port "left" has 5 pixels | allowed: 1 to 5
            "volts": 12, "amps": 9       | {"port": "left", "at": [0]} | is 0, and the chain of port "left" has 5 pixels | allowed: 1 to 5
            "volts": 12, "amps": 9       | {"port": "left", "at": [1.5]} | "at" of a feed of supply "shed" is 1.5 | allowed: a whole number from 1 to 5
            "volts": 12, "amps": 9       | {"port": "left", "at": [2, 2]} | supply "shed" feeds pixel 2 of port "left" twice | add the "mm2"
            "volts": 12, "amps": 9       | {"port": "left", "at": 1} | "at" of a feed of supply "shed" must be a list | put it in brackets
            "volts": 12, "amps": 9       | {"port": "left", "lead": {"length": 800}} | has neither "awg" nor "mm2" | its size stands in
            "volts": 12, "amps": 9       | {"port": "left", "lead": {"awg": 18}} | lacks the field "length" | ``
            "volts": 12, "amps": 9       | {"port": "left", "lead": {"awg": 18, "length": -1}} | is -1 | allowed: a number from 0 to 1000000
            "volts": 12, "amps": 9       | {"port": "left", "lead": {"awg": 41, "length": 1}} | is 41 | allowed: a whole number from 0 to 40
            """)
    void refusesWrongSupplies(String fields, String feeds, String message, String hint) {
        Ports read = read(
                BULLET,
                LEFT,
                "{\"name\": \"shed\", " + fields + ", \"feeds\": [" + (feeds == null ? "" : feeds) + "]}");
        assertThat(read.supplies()).isEmpty();
        assertThat(Inputs.shown(problems))
                .singleElement()
                .asString()
                .startsWith("in.json:1:")
                .contains(message)
                .contains(hint == null ? "" : hint);
    }

    /** All at once, each once. */
    @Test
    void tellsOfEveryPixelThatIsFedTwice() {
        read(
                BULLET,
                LEFT,
                "{\"name\": \"shed\", \"volts\": 12, \"amps\": 9, \"feeds\": [{\"port\": \"left\", \"at\": [2, 4, 2]},"
                        + " {\"port\": \"left\", \"at\": [4, 2, 1]}]}");
        assertThat(Inputs.shown(problems))
                .hasSize(2)
                .anySatisfy(shown -> assertThat(shown).contains("feeds pixel 2 of port \"left\" twice"))
                .anySatisfy(shown -> assertThat(shown).contains("feeds pixel 4 of port \"left\" twice"));
    }

    /** Nobody knows which of the two is meant: a feed of each is no pixel that is fed twice. */
    @Test
    void saysNothingOfFeedsOfTwoPortsOfOneName() {
        read(
                BULLET,
                LEFT + ", " + LEFT,
                "{\"name\": \"shed\", \"volts\": 12, \"amps\": 9, \"feeds\": [{\"port\": \"left\"},"
                        + " {\"port\": \"left\"}]}, {\"name\": \"barn\", \"volts\": 5, \"amps\": 9, \"feeds\": [{\"port\": \"left\"}]}");
        assertThat(Inputs.shown(problems))
                .anySatisfy(shown -> assertThat(shown).contains("two ports are called \"left\""))
                .noneSatisfy(shown -> assertThat(shown).containsAnyOf("feeds", "fed by", "gives 5 V"));
    }

    @Test
    void refusesAPortOnTwoSupplies() {
        read(
                BULLET,
                LEFT,
                "{\"name\": \"shed\", \"volts\": 12, \"amps\": 9, \"feeds\": [{\"port\": \"left\"}]},\n"
                        + "{\"name\": \"barn\", \"volts\": 12, \"amps\": 9, \"feeds\": [{\"port\": \"left\", \"at\": [5]}]}");
        assertThat(Inputs.shown(problems))
                .singleElement()
                .asString()
                .startsWith("in.json:2:61: ")
                .contains("port \"left\" is fed by two supplies: supply \"shed\" and supply \"barn\"")
                .contains("the first time at in.json:1:62");
    }

    @Test
    void refusesTwoSuppliesOfOneName() {
        read(
                BULLET,
                LEFT,
                "{\"name\": \"shed\", \"volts\": 12, \"amps\": 9, \"feeds\": [{\"port\": \"left\"}]},\n"
                        + "{\"name\": \"shed\", \"volts\": 12, \"amps\": 9, \"feeds\": [{\"port\": \"left\", \"at\": [5]}]}");
        assertThat(Inputs.shown(problems))
                .anySatisfy(shown ->
                        assertThat(shown).startsWith("in.json:2:10: ").contains("two supplies are called \"shed\""));
    }

    /** Slips of a factor of 1000; what is usual is common practice, no source. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            [0.013, 0.013, 0.013] | 1      | 9    | "milliamps" of kind "bullet" has 0.013, and a colour of a pixel mostly draws 5 to 60 mA; if these are amperes, write 13, which is as many milliamperes
            [20, 20, 0.02]        | 1      | 9    | "milliamps" of kind "bullet" has 0.02, and a colour of a pixel mostly draws 5 to 60 mA; if these are amperes, write 20, which is as many milliamperes
            [13, 13, 13]          | 0.0006 | 9    | "idle" of kind "bullet" has 0.0006, and a dark pixel mostly draws 0.3 to 1.5 mA; if these are amperes, write 0.6, which is as many milliamperes
            [13, 13, 13]          | 1      | 8000 | "amps" of supply "shed" is 8000, and a supply for pixels mostly gives 1 to 100 A; if these are milliamperes, write 8, which is as many amperes
            [0, 0.5, 1000]        | 0      | 300  | ``
            [13, 13, 13]          | 0.02   | 0.5  | ``
            """)
    void warnsOfFiguresInAnotherUnit(String milliamps, String idle, String amps, String warning) {
        read(
                "\"bullet\": {\"volts\": 12, \"milliamps\": " + milliamps + ", \"idle\": " + idle + "}",
                LEFT,
                "{\"name\": \"shed\", \"volts\": 12, \"amps\": " + amps + ", \"feeds\": [{\"port\": \"left\"}]}");
        List<String> shown = Inputs.shown(problems);
        if (warning.isEmpty()) {
            assertThat(shown).isEmpty();
        } else {
            assertThat(shown).singleElement().asString().startsWith("in.json:").endsWith(": warning: " + warning);
        }
    }

    /** A port without a kind is taken for one of 5 V, so that a supply of 12 V has to be spoken about. */
    @Test
    void asksForTheKindWhereTheVoltsDoNotFit() {
        read(
                "",
                "{\"name\": \"left\", \"chain\": [\"fence\"]}",
                "{\"name\": \"shed\", \"volts\": 12, \"amps\": 9, \"feeds\": [{\"port\": \"left\"}]}");
        assertThat(Inputs.shown(problems))
                .singleElement()
                .asString()
                .contains(
                        "gives 12 V to port \"left\"; that port has no \"kind\", and its pixels are taken for such of 5 V")
                .contains("give the port the \"kind\" of its pixels");
    }

    /** One that is named by one port is used; of ports with errors of their own nothing more is said. */
    @Test
    void warnsOfAKindThatNoPortHas() {
        read(BULLET + ",\n\"bare\": {\"volts\": 5, \"milliamps\": [12, 12, 12]}", LEFT, "");
        assertThat(Inputs.shown(problems))
                .singleElement()
                .asString()
                .startsWith("in.json:2:1: ")
                .contains("no port is of the kind \"bare\"");
        assertThat(problems.errorCount()).isZero();
    }

    /** A port of a wrong kind is not taken for one that says no kind; what else is wrong with it is told. */
    @Test
    void whatIsWrongWithAKindIsToldOnce() {
        String fed = "\"volts\": 12, \"amps\": 9, \"feeds\": [{\"port\": \"left\"}]}";
        Ports read = read(
                "\"bullet\": {\"volts\": 0, \"milliamps\": [1, 1, 1]}",
                LEFT,
                "{\"name\": \"shed\", " + fed + ", {\"name\": \"barn\", " + fed);
        assertThat(read.ports()).isEmpty();
        assertThat(Inputs.shown(problems)).hasSize(2);
        assertThat(Inputs.shown(problems).get(0)).contains("\"volts\" of kind \"bullet\" is 0");
        assertThat(Inputs.shown(problems).get(1)).contains("port \"left\" is fed by two supplies");
    }

    /** Nothing is said of a port that has an error of its own. */
    @Test
    void reportsAllProblemsAtOnceAndNoneThatFollow() {
        read(
                "\"bullet\": {\"volts\": 0, \"milliamps\": [1, 1, 1]}",
                "{\"name\": \"left\", \"chain\": [\"fense\"], \"kind\": \"bullet\"}",
                "{\"name\": \"shed\", \"volts\": 99, \"amps\": 9, \"feeds\": [{\"port\": \"left\"}]}");
        assertThat(Inputs.shown(problems)).hasSize(3);
    }
}
