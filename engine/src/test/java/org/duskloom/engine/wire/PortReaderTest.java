package org.duskloom.engine.wire;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.duskloom.engine.document.Inputs;
import org.duskloom.engine.document.ListNode;
import org.duskloom.engine.group.GroupReader;
import org.duskloom.engine.group.GroupTree;
import org.duskloom.engine.map.Maps;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Ports as they are written in a display, and what is said of wrong ones. */
class PortReaderTest {
    /** Global indices: daisy-1 is 0 to 2, fence 3 to 6, daisy-2 7 to 9, pond 10 to 209. */
    private static final PixelMap MAP = Maps.map("""
            prop,pixel,x,y,part
            daisy-1,1,0,0,rim
            daisy-1,2,1,0,rim
            daisy-1,3,2,0,
            fence,1,0,9,left
            fence,2,1,9,left
            fence,3,2,9,right
            fence,4,3,9,right
            daisy-2,1,0,5,rim
            daisy-2,2,1,5,rim
            daisy-2,3,2,5,
            """ + pond());

    private final Problems problems = new Problems();

    private static String pond() {
        StringBuilder rows = new StringBuilder();
        for (int i = 1; i <= 200; i++) {
            rows.append("pond,").append(i).append(',').append(i).append(",20,\n");
        }
        return rows.toString();
    }

    private Ports read(String ports) {
        GroupTree groups = GroupReader.read(Inputs.json("{\"daisies\": [\"daisy-*\"]}"), MAP, problems);
        ListNode list = (ListNode) Inputs.json("[" + ports + "]");
        return PortReader.read(
                new PortReader.Written(List.of(), Optional.of(list), Optional.empty()), groups, 0.001, problems);
    }

    private Ports sound(String ports) {
        Ports read = read(ports);
        assertThat(Inputs.shown(problems)).isEmpty();
        return read;
    }

    @Test
    void readsAPortThatSaysNothingButItsChain() {
        Port port =
                sound("{\"name\": \"left\", \"chain\": [\"fence\"]}").ports().get(0);
        assertThat(port.name()).isEqualTo("left");
        assertThat(port.signal()).isEqualTo(Signal.USUAL);
        assertThat(port.packing()).isEqualTo(new Packing(1, 1, true));
        assertThat(port.pixels()).containsExactly(3, 4, 5, 6);
    }

    @Test
    void readsEverything() {
        Port port = sound("{\"name\": \"left\", \"chain\": [{\"skip\": 1}, \"daisies\", {\"skip\": 2}, \"fence/left\"],"
                        + " \"colors\": \"GRBW\", \"bits\": 16, \"universe\": 7, \"slot\": 9, \"whole\": false,"
                        + " \"white\": [1, 0.85, 0.7], \"cap\": 0.6, \"curve\": {\"gamma\": 2.2}, \"dither\": false}")
                .ports()
                .get(0);
        assertThat(port.pixels()).containsExactly(-1, 0, 1, 2, 7, 8, 9, -1, -1, 3, 4);
        assertThat(port.chain()).extracting(Link::name).containsExactly("", "daisy-1", "daisy-2", "", "fence/left");
        assertThat(port.signal())
                .isEqualTo(Lines.signal("GRBW", 16, new Brightness(1, 0.85, 0.7, 0.6), new Curve.Gamma(2.2), false));
        assertThat(port.packing()).isEqualTo(new Packing(7, 9, false));
        assertThat(port.byteCount()).isEqualTo(11 * 8);
    }

    @ParameterizedTest
    @CsvSource({"linear, Linear", "codes, Codes"})
    void readsCurvesByWord(String word, String type) {
        Port port = sound("{\"name\": \"a\", \"chain\": [\"fence\"], \"curve\": \"" + word + "\"}")
                .ports()
                .get(0);
        assertThat(port.signal().curve().getClass().getSimpleName()).isEqualTo(type);
    }

    /** The pond fills universe 5 and 30 pixels of universe 6. */
    @Test
    void portsFollowEachOtherInUniverses() {
        Ports ports = sound(
                "{\"name\": \"a\", \"chain\": [\"pond\"], \"universe\": 5},"
                        + " {\"name\": \"b\", \"chain\": [\"fence\"]}, {\"name\": \"c\", \"chain\": [\"daisy-1\"], \"slot\": 4}");
        assertThat(ports.ports().get(1).packing()).isEqualTo(new Packing(7, 1, true));
        assertThat(ports.ports().get(2).packing()).isEqualTo(new Packing(8, 4, true));
        assertThat(ports.pixels().cardinality()).isEqualTo(207);
    }

    @Test
    void portsMayShareAUniverse() {
        Ports ports = sound("{\"name\": \"a\", \"chain\": [\"fence\"], \"universe\": 5},"
                + " {\"name\": \"b\", \"chain\": [\"daisy-1\"], \"universe\": 5, \"slot\": 13}");
        assertThat(UniverseLayout.of(ports)).hasSize(1);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            "slot": 0       | "slot" of port "a" is 0 | allowed: a whole number from 1 to 512
            "slot": 513     | "slot" of port "a" is 513 | allowed: a whole number from 1 to 512
            "universe": 0   | "universe" of port "a" is 0 | allowed: a whole number from 1 to 63999
            "universe": 64000 | "universe" of port "a" is 64000 | allowed: a whole number from 1 to 63999
            "bits": 12      | "bits" of port "a" is 12 | allowed: 8 or 16
            "bits": "8"     | "bits" of port "a" is a text | allowed: 8 or 16
            "dither": true, "bits": 16 | "dither" of port "a" is true, and does nothing at 16 bits | leave it out
            "dither": true, "curve": "codes" | "dither" of port "a" is true, and does nothing to codes | leave it out
            "cap": 1.2      | "cap" of port "a" is 1.2 | allowed: a number from 0 to 1
            "white": [1, 1] | "white" of port "a" has 2 items | allowed: 3 numbers
            "white": [1, 2, 1] | item 2 of "white" of port "a" is 2 | allowed: a number from 0 to 1
            "colors": "GRG" | the colours "GRG" hold G twice | allowed: R, G and B once each in any order, with W for a white light too
            "curve": "gama" | "curve" of port "a" is "gama" | allowed: linear, codes
            "curve": {"gamma": 9} | "gamma" of "curve" of port "a" is 9 | allowed: a number from 1 to 4
            "colour": "RGB" | port "a" has no field "colour" | did you mean "colors"?
            "slot": 511     | a pixel of port "a" takes 3 slots, and from slot 511 on there are 2 | allowed: up to 510, or any with "whole": false
            """)
    void refusesWrongFields(String field, String message, String hint) {
        assertThat(read("{\"name\": \"a\", \"chain\": [\"fence\"], " + field + "}")
                        .ports())
                .isEmpty();
        assertThat(Inputs.shown(problems))
                .singleElement()
                .asString()
                .contains(message)
                .contains(hint);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            "fence", "fence/left" | pixel 1 of "fence" and 1 more are on port "a" twice
            "skip 1", "fence"     | there is no prop and no group "skip 1"; pixels that stay dark are written {"skip": 1}
            "Skip:12", "fence"    | there is no prop and no group "Skip:12"; pixels that stay dark are written {"skip": 12}
            "daisy-3"             | there is no prop and no group "daisy-3" (did you mean "daisy-1"?)
            "fence/top"           | "fence" has no part "top"
            {"skip": 0}           | "skip" of an object in "chain" of port "a" is 0
            {"skip": 10001}       | "skip" of an object in "chain" of port "a" is 10001
            {"leave": 1}          | an object in "chain" of port "a" has no field "leave"
            7                     | an item of "chain" of port "a" must be a text, not the number 7
            ``                    | "chain" of port "a" is empty
            """)
    void refusesWrongChains(String chain, String message) {
        assertThat(read("{\"name\": \"a\", \"chain\": [" + chain + "]}").ports())
                .isEmpty();
        assertThat(Inputs.shown(problems))
                .anySatisfy(shown -> assertThat(shown).contains(message.replace(" (did you mean \"daisy-1\"?)", "")));
    }

    @Test
    void refusesAPixelOnTwoPorts() {
        read("{\"name\": \"a\", \"chain\": [\"daisies\", \"fence/right\"]},\n"
                + "{\"name\": \"b\", \"chain\": [\"fence\", \"pond\"]}");
        assertThat(Inputs.shown(problems))
                .singleElement()
                .asString()
                .startsWith("in.json:2:25: ")
                .contains("pixel 3 of \"fence\" and 1 more are on two ports: \"a\" and \"b\"")
                .contains("the first time at in.json:1:37");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            left  | two ports are called "left"
            LEFT  | the port names "left" and "LEFT" differ by upper and lower case only
            a/b   | the port name "a/b" holds /, which is not allowed in names
            a:b   | the port name "a:b" cannot be the name of a file
            Com1  | the port name "Com1" cannot be the name of a file: Windows keeps it for a device
            nul.x | the port name "nul.x" cannot be the name of a file: Windows keeps it for a device
            end.  | the port name "end." cannot be the name of a file
            """)
    void refusesNames(String name, String message) {
        read("{\"name\": \"left\", \"chain\": [\"fence\"]}, {\"name\": \"" + name + "\", \"chain\": [\"pond\"]}");
        assertThat(Inputs.shown(problems)).singleElement().asString().contains(message);
    }

    @Test
    void refusesUniversesThatRunIntoThoseOfAnother() {
        Ports ports = read("{\"name\": \"a\", \"chain\": [\"pond\"], \"universe\": 5},\n"
                + "{\"name\": \"b\", \"universe\": 6, \"slot\": 88, \"chain\": [\"fence\"]}");
        assertThat(ports.ports()).extracting(Port::name).containsExactly("a");
        assertThat(Inputs.shown(problems))
                .singleElement()
                .asString()
                .startsWith("in.json:2:27: ")
                .contains("port \"b\" runs into port \"a\": both have slots 88 to 90 of universe 6")
                .contains("universe 7 and those after it are free");
    }

    @Test
    void refusesUniversesBeyondTheLast() {
        read("{\"name\": \"a\", \"chain\": [\"pond\"], \"universe\": 63999}");
        assertThat(Inputs.shown(problems))
                .singleElement()
                .asString()
                .contains("port \"a\" takes universes 63999 to 64000")
                .contains("63999");
    }

    @Test
    void aPortAfterTheLastUniverseSaysSoToo() {
        read(
                "{\"name\": \"a\", \"chain\": [\"fence\"], \"universe\": 63999}, {\"name\": \"b\", \"chain\": [\"pond\"]}");
        assertThat(Inputs.shown(problems))
                .singleElement()
                .asString()
                .contains("port \"b\" takes universes 64000 to 64001");
    }

    /** Where a port is unknown, nothing is said of the universes of the next one, which nobody could know. */
    @Test
    void reportsAllProblemsAtOnceAndNoneThatFollow() {
        read(
                "{\"name\": \"a\", \"chain\": [\"fense\"], \"bits\": 9}, {\"name\": \"b\", \"chain\": [\"fence\"], \"cap\": 2}");
        assertThat(Inputs.shown(problems)).hasSize(3);
        assertThat(List.of("fense", "bits", "cap"))
                .allSatisfy(word ->
                        assertThat(String.join("\n", Inputs.shown(problems))).contains(word));
    }
}
