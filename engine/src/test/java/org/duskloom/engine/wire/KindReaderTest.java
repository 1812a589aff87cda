package org.duskloom.engine.wire;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.duskloom.engine.document.Inputs;
import org.duskloom.engine.document.ObjectNode;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Kinds of pixels as a sheet of data says what they need, and what is said of figures in the wrong unit. */
class KindReaderTest {
    private static final TextNode BUD = (TextNode) Inputs.json("\"bud\"");

    private final Problems problems = new Problems();

    private KindReader kinds(String written) {
        return new KindReader(((ObjectNode) Inputs.json("{" + written + "}")).fields(), problems);
    }

    private Optional<PixelKind> bud(String fields) {
        return kinds("\"bud\": {\"volts\": 5, \"milliamps\": [12, 12, 12], " + fields + "}")
                .find(BUD, ColorOrder.RGB, "port \"left\"");
    }

    /** Sheets write the pause in either unit, with or without a blank. */
    @ParameterizedTest
    @CsvSource({"280us, 280", "280 us, 280", "0.28ms, 280", "0us, 0", "000050us, 50", "12.5us, 12.5", "100 ms, 100000"})
    void readsThePauseInEitherUnit(String written, double micros) {
        assertThat(bud("\"reset\": \"" + written + "\"").orElseThrow().line().resetMicros())
                .isEqualTo(micros);
        assertThat(Inputs.shown(problems)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "us", "-1us", "1e3us", ".5ms", "5.ms", "280 µs", "280US", "280us ", "1234567us", "٣us"})
    void refusesOtherPauses(String written) {
        assertThat(bud("\"reset\": \"" + written + "\"")).isEmpty();
        assertThat(Inputs.shown(problems))
                .containsExactly("in.json:1:58: error: \"reset\" of kind \"bud\" is \"" + written
                        + "\"; write a number and us or ms, such as \"280us\"");
    }

    @Test
    void refusesPausesOfMoreThanATenthOfASecond() {
        assertThat(bud("\"reset\": \"100.01ms\"")).isEmpty();
        assertThat(Inputs.shown(problems))
                .containsExactly("in.json:1:58: error: \"reset\" of kind \"bud\" is 100.01ms; allowed: up to 100ms");
    }

    /** What nobody wrote is named one by one, so that a report can say of each that it has no source. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            "least": 4                                         | 1 mA idle, 800 kbit/s, 280 us between frames
            "idle": 0.6                                        | 800 kbit/s, 280 us between frames
            "kilobits": 400, "idle": 1                         | 280 us between frames
            "kilobits": 800, "idle": 1, "reset": "280us"       | ''
            """)
    void namesTheFiguresThatNobodyWrote(String fields, String assumed) {
        assertThat(String.join(", ", bud(fields).orElseThrow().assumed())).isEqualTo(assumed);
    }

    /** No pixel is promised to work with more than it is made for, but with as much it may be. */
    @Test
    void theLeastIsUpToWhatItIsMadeFor() {
        assertThat(bud("\"least\": 5").orElseThrow().leastVolts()).hasValue(5);
        assertThat(bud("\"least\": 5.01")).isEmpty();
        assertThat(Inputs.shown(problems))
                .containsExactly("in.json:1:58: error: \"least\" of kind \"bud\" is 5.01, which is more than its"
                        + " \"volts\"; allowed: up to 5");
    }

    /** A figure a thousand times too small is doubted, and one at the limit is not; the limits have no source. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            0.5     | 0.02    | ''    | ''
            0       | 0       | ''    | ''
            0.4999  | 0.02    | 499.9 | ''
            0.00001 | 0.0199  | 0.01  | 19.9
            1e-7    | 0.001   | 0.0001 | 1
            """)
    void doubtsAmperesForMilliamperes(String color, String idle, String colorMeant, String idleMeant) {
        kinds("\"bud\": {\"volts\": 5, \"milliamps\": [12, " + color + ", " + color + "], \"idle\": " + idle + "}");
        assertThat(problems.errorCount()).isZero();
        String shown = String.join("\n", Inputs.shown(problems));
        assertThat(shown.lines().count()).isEqualTo((colorMeant.isEmpty() ? 0 : 1) + (idleMeant.isEmpty() ? 0 : 1));
        assertThat(shown)
                .contains(colorMeant.isEmpty() ? "" : "if these are amperes, write " + colorMeant + ", which")
                .contains(idleMeant.isEmpty() ? "" : "if these are amperes, write " + idleMeant + ", which");
    }

    /** A kind with an error is known by name all the same: the port that has it is told nothing more. */
    @Test
    void aWrongKindIsNotAnUnknownOne() {
        KindReader kinds =
                kinds("\"bud\": {\"volts\": 5}, \"a/b\": {}, \"spare\": {\"volts\": 5, \"milliamps\": [1, 1, 1]}");
        assertThat(kinds.find(BUD, ColorOrder.RGB, "port \"left\"")).isEmpty();
        kinds.warnOfUnused();
        assertThat(Inputs.shown(problems))
                .containsExactly(
                        "in.json:1:9: error: kind \"bud\" lacks the field \"milliamps\"",
                        "in.json:1:23: error: the name \"a/b\" of a kind holds /, which is not allowed in names",
                        "in.json:1:23: warning: no port is of the kind \"a/b\"",
                        "in.json:1:34: warning: no port is of the kind \"spare\"");
    }

    @Test
    void aKindHasTheColoursOfItsPort() throws Exception {
        KindReader kinds = kinds("\"bud\": {\"volts\": 5, \"milliamps\": [12, 12, 12, 20]}");
        assertThat(kinds.find(BUD, ColorOrder.parse("GRBW"), "port \"left\"")).isPresent();
        assertThat(kinds.find(BUD, ColorOrder.RGB, "port \"left\"")).isEmpty();
        assertThat(Inputs.shown(problems))
                .containsExactly(
                        "in.json:1:1: error: kind \"bud\" says what 4 colours draw, and port \"left\" has 3: RGB;"
                                + " \"milliamps\" has a number for each of them, in this order");
    }
}
