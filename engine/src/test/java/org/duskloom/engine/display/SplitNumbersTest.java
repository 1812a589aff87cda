package org.duskloom.engine.display;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.duskloom.engine.document.Inputs;
import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SplitNumbersTest {
    private static final String SHAPES = "\"s\": {\"build\": [{\"ring\": {\"count\": 12, \"radius\": 5}}]}";

    private final Problems problems = new Problems();

    private void read(String... places) {
        StringBuilder props = new StringBuilder();
        for (int i = 0; i < places.length; i++) {
            props.append(i == 0 ? "" : ", ").append("{\"name\": \"p" + i + "\", \"shape\": \"s\", \"at\": ");
            props.append(places[i]).append("}");
        }
        Displays.read(Displays.json(SHAPES, props.toString()), Map.of(), problems);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            [-90,5, 90] | [-90.5, 90]
            [12,25, -3.5] | [12.25, -3.5]
            """)
    void warnsOfADecimalCommaInAPlace(String written, String meant) {
        read("[0, 100]", written, "[50, 100]");
        assertThat(Inputs.shown(problems))
                .singleElement()
                .asString()
                .contains(
                        "warning: a place of three numbers, and others have two; if its first comma is a decimal sign,"
                                + " write " + meant + "; else put a space behind it");
    }

    @ParameterizedTest
    @ValueSource(strings = {"[-90, 5, 90]", "[-90,5,90]", "[-90,-5, 90]", "[-9.5,5, 90]", "[90, 5]"})
    void isSilentOnOtherPlaces(String written) {
        read("[0, 100]", written, "[50, 100]");
        assertThat(Inputs.shown(problems)).isEmpty();
    }

    /** Where some are deep beyond doubt, or none is flat, the three numbers are meant. */
    @ParameterizedTest
    @ValueSource(strings = {"[50, 100, 20]", "[50,100, 20]"})
    void isSilentWhereOthersAreDeep(String other) {
        read("[-90,5, 90]", other, other.startsWith("[50, ") ? "[1, 2]" : "[7,8, 9]");
        assertThat(Inputs.shown(problems)).isEmpty();
    }
}
