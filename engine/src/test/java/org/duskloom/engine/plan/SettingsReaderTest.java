package org.duskloom.engine.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.duskloom.engine.color.ColorMix;
import org.duskloom.engine.color.LinearColor;
import org.duskloom.engine.color.Palette;
import org.duskloom.engine.color.PaletteStop;
import org.duskloom.engine.effect.ColorTrack;
import org.duskloom.engine.effect.NumberTrack;
import org.duskloom.engine.effect.PaletteTrack;
import org.duskloom.engine.effect.Period;
import org.duskloom.engine.effect.Settings;
import org.duskloom.engine.timeline.Cases;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class SettingsReaderTest {
    private static final LinearColor RED = LinearColor.ofCodes(255, 0, 0);
    private static final LinearColor BLUE = LinearColor.ofCodes(0, 0, 255);

    @Test
    void readsEveryKindOfSetting() {
        Settings settings = Probe.settings("""
                "size": 0.25, "arms": 5, "color": "red", "palette": ["red", "blue"], "every": "90f", "rise": "0s",
                "from": "centre", "reverse": false, "part": "rim/top", "file": "pom.xml\"""");
        assertThat(settings.value(Probe.SIZE).at(3)).isEqualTo(0.25);
        assertThat(settings.value(Probe.ARMS).at(3)).isEqualTo(5);
        assertThat(settings.value(Probe.COLOR).at(3)).isEqualTo(RED);
        assertThat(settings.value(Probe.PALETTE).first().stops())
                .containsExactly(new PaletteStop(0, RED), new PaletteStop(1, BLUE));
        assertThat(settings.value(Probe.EVERY)).contains(Period.ofSeconds(2.25));
        assertThat(settings.value(Probe.RISE)).contains(Period.ofSeconds(0));
        assertThat(settings.value(Probe.FROM)).isEqualTo("centre");
        assertThat(settings.value(Probe.REVERSE)).isFalse();
        assertThat(settings.value(Probe.PART)).isEqualTo("rim/top");
        assertThat(settings.value(Probe.FILE))
                .hasValueSatisfying(file -> assertThat(file).isRegularFile());
    }

    @Test
    void givesTheStandardsWhereNothingIsSet() {
        Settings settings = Probe.settings("");
        assertThat(settings.value(Probe.SIZE).at(3)).isEqualTo(0.5);
        assertThat(settings.value(Probe.EVERY)).contains(Period.ofSeconds(2));
        assertThat(settings.isGiven(Probe.EVERY)).isFalse();
    }

    /**
     * A palette is the name of one, a colour, a list of colours, or stops with a style; a name goes before a colour.
     */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            "dusk"                                 | 2
            "red"                                  | 1
            ["red", "blue", "gold"]                | 3
            {"stops": ["red", ["blue", 0.7]], "step": true} | 2
            """)
    void readsPalettes(String palette, int stops) {
        Palette read =
                Probe.settings("\"palette\": " + palette).value(Probe.PALETTE).first();
        assertThat(read.stops()).hasSize(stops);
    }

    @Test
    void prefersAPaletteToAColourOfTheSameName() {
        Probe probe = new Probe();
        TestShow.of(
                        org.duskloom.engine.map.Maps.map("prop,pixel,x,y\na,1,0,0\n"),
                        "\"palettes\": {\"gold\": [\"red\", \"blue\"]}, \"layers\": [{\"cues\": ["
                                + "{\"on\": \"a\", \"effect\": \"probe\", \"with\": {\"palette\": \"gold\"}}]}]")
                .with(probe)
                .plan();
        assertThat(probe.settings.get(0).value(Probe.PALETTE).first().stops()).hasSize(2);
    }

    /**
     * The sum of doubles (IEEE 754) of 0.1 and twice 0.1 lies above 0.3, though a message says 0.3: what one cue plays
     * does not hang on whether another one says 0.3 before it.
     */
    @ParameterizedTest
    @CsvSource({"true", "false"})
    void aSumIsNotTakenForTheNumberThatIsWrittenAlike(boolean writtenFirst) {
        String written = "{\"on\": \"a\", \"effect\": \"probe\", \"with\": {\"size\": 0.3}}";
        String summed = "{\"on\": \"a\", \"effect\": \"probe\", \"for\": \"1s\", \"with\": {\"size\": 0.1},"
                + " \"repeat\": {\"count\": 3, \"change\": {\"size\": 0.1}}}";
        Probe probe = new Probe();
        TestShow.of(
                        org.duskloom.engine.map.Maps.map("prop,pixel,x,y\na,1,0,0\n"),
                        "\"layers\": [{\"cues\": [" + (writtenFirst ? written + ", " + summed : summed + ", " + written)
                                + "]}]")
                .with(probe)
                .plan();
        assertThat(probe.settings.stream()
                        .map(settings -> settings.value(Probe.SIZE).at(0)))
                .containsExactlyInAnyOrder(0.3, 0.1, 0.1 + 0.1, 0.1 + 2 * 0.1);
    }

    /** Easing toward a key as in W3C CSS Easing Functions Level 1: the ease-in of a half is 0.315357. */
    @Test
    void readsKeysOfNumbers() {
        NumberTrack track = Probe.settings(
                        "\"size\": {\"keys\": [[\"0s\", 0.2], [\"40f\", 1, \"ease-in\"], [\"3s\", 0.2]]}")
                .value(Probe.SIZE);
        assertThat(track.at(-1)).isEqualTo(0.2);
        assertThat(track.at(0.5)).isEqualTo(0.2 + 0.8 * 0.315357, within(1e-6));
        assertThat(track.at(1)).isEqualTo(1);
        assertThat(track.at(2)).isEqualTo(0.6, within(1e-12));
        assertThat(track.at(9)).isEqualTo(0.2);
    }

    /**
     * Half-way from black to white is an eighth of the light in OKLab (B. Ottosson, 2020), half of it in linear light.
     */
    @ParameterizedTest
    @CsvSource({
        "'', 0.125",
        "', \"mix\": \"oklab\"', 0.125",
        "', \"mix\": \"oklch\"', 0.125",
        "', \"mix\": \"linear\"', 0.5"
    })
    void readsKeysOfColours(String mix, double light) {
        ColorTrack track = Probe.settings(
                        "\"color\": {\"keys\": [[\"0s\", \"black\"], [\"2s\", \"white\"]]" + mix + "}")
                .value(Probe.COLOR);
        assertThat((double) track.at(1).red()).isEqualTo(light, within(1e-5));
        assertThat(ColorMix.of("oklab")).contains(ColorMix.OKLAB);
    }

    /**
     * Half-way, every place has half of the light of the one palette and half of that of the other. The palette dusk
     * begins with the red of code 27, whose light is ((27/255 + 0.055) / 1.055)^2.4 = 0.0109601 (IEC 61966-2-1), and
     * ends with code 255.
     */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            "red"                       | 0.5 | 0.5
            ["red", "blue"]             | 0.5 | 0
            "dusk"                      | 0.00548005 | 0.5
            {"stops": ["blue", "red"]}  | 0   | 0.5
            """)
    void readsKeysOfPalettes(String palette, double redAtStart, double redAtEnd) {
        PaletteTrack track = Probe.settings("\"palette\": {\"keys\": [[\"0s\", \"black\"], [\"2s\", " + palette
                        + ", \"linear\"]], \"mix\": \"linear\"}")
                .value(Probe.PALETTE);
        float[] colors = new float[8];
        track.picked(each -> List.of(each.at(0), each.at(1))).fill(1, colors);
        assertThat(track.isConstant()).isFalse();
        assertThat((double) colors[0]).isEqualTo(redAtStart, within(1e-6));
        assertThat((double) colors[4]).isEqualTo(redAtEnd, within(1e-6));
    }

    static Stream<Object[]> faults() {
        return Cases.of("""
                "palette": {"keys": []}
                    show.json:3:61: error: "keys" of "palette" of probe is empty; such as [["0s", 0], ["2s", 1]]
                "palette": {"keys": [["0s", "dsuk"], ["1s", ["red", "blu"]]]}
                    show.json:3:69: error: a key of "palette" of probe: "dsuk" is neither a palette nor a colour; did you mean the palette "dusk"?
                    show.json:3:93: error: a colour of a key of "palette" of probe: "blu" is not a colour; did you mean "blue"?
                "palette": {"keys": [["0s", "red"]], "step": true}
                    show.json:3:78: error: "palette" of probe has no field "step"; allowed: keys, mix
                "laps": {"keys": [["0s", 1], ["2s", 3]]}
                    show.json:3:49: error: "laps" of probe cannot move; a cue has one number of laps
                "from": {"keys": [["0s", "edge"]]}
                    show.json:3:49: error: "from" of probe cannot move; it has one value over the whole cue
                "sise": 1
                    show.json:3:41: error: the effect probe has no setting "sise"; did you mean "size"?
                "zzz": 1
                    show.json:3:41: error: the effect probe has no setting "zzz"; allowed: size, arms, color, palette, every, rise, from, reverse, part, file, laps
                "size": 1.5
                    show.json:3:49: error: "size" of probe is 1.5; allowed: a number from 0 to 1
                "size": "0.5"
                    show.json:3:49: error: "size" of probe must be a number, not the text "0.5"; write 0.5 without quotes
                "size": null
                    show.json:3:49: error: "size" of probe must be a number, not null; leave the field out instead
                "size": [1]
                    show.json:3:49: error: "size" of probe must be a number, not a list
                "arms": 2.5
                    show.json:3:49: error: "arms" of probe is 2.5; allowed: a whole number from 1 to 100
                "arms": 0
                    show.json:3:49: error: "arms" of probe is 0; allowed: a whole number from 1 to 100
                "arms": {"keys": [["0s", 1], ["1s", 1.5]]}
                    show.json:3:77: error: a key of "arms" of probe is 1.5; allowed: a whole number from 1 to 100
                "color": "rde"
                    show.json:3:50: error: "color" of probe: "rde" is not a colour; did you mean "red"?
                "color": 3
                    show.json:3:50: error: "color" of probe is a number; it must be a colour, such as "#ff9e5e"
                "palette": "dsuk"
                    show.json:3:52: error: "palette" of probe: "dsuk" is neither a palette nor a colour; did you mean the palette "dusk"?
                "palette": "zzzzzz"
                    show.json:3:52: error: "palette" of probe: "zzzzzz" is neither a palette nor a colour; write a CSS colour name, #rgb, #rrggbb, rgb(), hsl(), hwb(), oklab() or oklch()
                "palette": ["red", "blu"]
                    show.json:3:60: error: a colour of "palette" of probe: "blu" is not a colour; did you mean "blue"?
                "palette": []
                    show.json:3:52: error: "palette" of probe is empty; such as ["#1b2a6b", "#ff9e5e"]
                "palette": 3
                    show.json:3:52: error: "palette" of probe must be a colour, a list of colours or an object { }, not a number; such as ["#1b2a6b", "#ff9e5e"]
                "palette": {"stops": ["red"], "ciclic": true}
                    show.json:3:71: error: "palette" of probe has no field "ciclic"; did you mean "cyclic"?
                "every": "0s"
                    show.json:3:50: error: "every" of probe: the time "0s" is zero; it must be longer than 0s
                "every": 900
                    show.json:3:50: error: "every" of probe must be a time, not the number 900; write it with a unit, such as "900ms"
                "every": 40
                    show.json:3:50: error: "every" of probe must be a time, not the number 40; write it with a unit, such as "40s" or "40ms"
                "every": 12.5
                    show.json:3:50: error: "every" of probe must be a time, not the number 12.5; write it with a unit, such as "12.5s"
                "every": 2
                    show.json:3:50: error: "every" of probe must be a time, not the number 2; write it with a unit, such as "2s"
                "every": "2"
                    show.json:3:50: error: "every" of probe: the time "2" has no unit; write "2s" for seconds or "2ms"
                "every": "-1s"
                    show.json:3:50: error: "every" of probe: the time "-1s" is negative (-1s); it must be longer than 0s
                "every": "@chorus"
                    show.json:3:50: error: "every" of probe: the time "@chorus" starts from a cue or a marker, which cannot be used here; write a number and a unit, such as "3s", "250ms", "1:02.5" or "90f"
                "rise": "-1ms"
                    show.json:3:49: error: "rise" of probe: the time "-1ms" is negative (-0.001s); it must be 0s or longer
                "every": {"keys": []}
                    show.json:3:50: error: "every" of probe cannot move; it has one value over the whole cue; to change the pace, move "phase"
                "from": "center"
                    show.json:3:49: error: "from" of probe is "center"; did you mean "centre"? allowed: edge, centre
                "from": 1
                    show.json:3:49: error: "from" of probe must be a text, not the number 1; allowed: edge, centre
                "reverse": "true"
                    show.json:3:52: error: "reverse" of probe must be true or false, not the text "true"; write true without quotes
                "part": "rim/top/left"
                    show.json:3:49: error: "part" of probe is too long; allowed: up to 8 characters
                "part": 3
                    show.json:3:49: error: "part" of probe must be a text, not the number 3; write "3" in quotes
                "file": "pom.xlm"
                    show.json:3:49: error: there is no file "pom.xlm"; did you mean "pom.xml"?
                "file": "src"
                    show.json:3:49: error: "src" is a folder, not a file; name the file inside it
                "file": ""
                    show.json:3:49: error: "" is not the name of a file
                "file": 3
                    show.json:3:49: error: "file" of probe must be a text, not the number 3; write "3" in quotes
                "size": {}
                    show.json:3:49: error: "size" of probe lacks the field "keys"
                "size": {"keys": []}
                    show.json:3:58: error: "keys" of "size" of probe is empty; such as [["0s", 0], ["2s", 1]]
                "size": {"keys": 3}
                    show.json:3:58: error: "keys" of "size" of probe must be a list [ ], not the number 3; put it in brackets: [ ]
                "size": {"key": [["0s", 1]]}
                    show.json:3:49: error: "size" of probe lacks the field "keys"; is "key" meant for it?
                    show.json:3:50: error: "size" of probe has no field "key"; did you mean "keys"?
                "size": {"keys": [["0s", 1]], "mix": "linear"}
                    show.json:3:71: error: "size" of probe has no field "mix"; allowed: keys
                "size": {"keys": [["0s"]]}
                    show.json:3:59: error: a key of "size" of probe has 1 instead of 2 or 3 values; write a time, a value and perhaps an easing, such as ["1s", 0.5, "ease-in-out"]
                "size": {"keys": [["0s", 1, "linear", 2]]}
                    show.json:3:59: error: a key of "size" of probe has 4 instead of 2 or 3 values; write a time, a value and perhaps an easing, such as ["1s", 0.5, "ease-in-out"]
                "size": {"keys": ["0s"]}
                    show.json:3:59: error: a key of "size" of probe must be a list [ ], not the text "0s"; put it in brackets: [ ]
                "size": {"keys": [[0, 1]]}
                    show.json:3:60: error: the time of a key of "size" of probe must be a time, not the number 0; write it with a unit, such as "0s"
                "size": {"keys": [["0s", 2]]}
                    show.json:3:66: error: a key of "size" of probe is 2; allowed: a number from 0 to 1
                "size": {"keys": [["0s", 1e400]]}
                    show.json:3:66: error: 1e400 is too large for a number; a number is finite, and a whole number at most 2^53 - 1 = 9007199254740991
                "size": {"keys": [["1s", 0], ["0.5s", 1]]}
                    show.json:3:71: error: a key of "size" of probe at 0.5s stands after one at 1s; list the keys by time
                "size": {"keys": [["0s", 0], ["1s", 1, "ease-inn"]]}
                    show.json:3:80: error: the easing of a key of "size" of probe: "ease-inn" is not an easing; did you mean "ease-in"?
                "color": {"keys": [["0s", "red"], ["1s", "blu"]], "mix": "lab"}
                    show.json:3:82: error: a key of "color" of probe: "blu" is not a colour; did you mean "blue"?
                    show.json:3:98: error: "mix" of "color" of probe is "lab"; allowed: oklab, oklch, linear
                "color": {"keys": [["1s", "red"], ["0s", "blue"]]}
                    show.json:3:76: error: a key of "color" of probe at 0s stands after one at 1s; list the keys by time
                "from": "centre", "reverse": true
                    show.json:3:70: error: probe: reverse does not go with from centre; leave one out
                "arms": 13
                    show.json:3:23: error: probe: size does not go with 13 arms
                "size": 2, "arms": "3", "colour": "red", "every": "0s"
                    show.json:3:49: error: "size" of probe is 2; allowed: a number from 0 to 1
                    show.json:3:60: error: "arms" of probe must be a whole number, not the text "3"; write 3 without quotes
                    show.json:3:65: error: the effect probe has no setting "colour"; did you mean "color"?
                    show.json:3:91: error: "every" of probe: the time "0s" is zero; it must be longer than 0s
                """);
    }

    /** The cue opens on line 3, its settings at column 42. */
    @ParameterizedTest
    @MethodSource("faults")
    void teachesWhatIsWrong(String with, List<String> problems) {
        assertThat(problems(with)).isEqualTo(problems);
    }

    private static List<String> problems(String with) {
        return TestShow.withCue(
                        "prop,pixel,x,y\na,1,0,0\n", "{\"on\": \"a\", \"effect\": \"probe\", \"with\": {" + with + "}}")
                .with(new Probe())
                .problems();
    }
}
