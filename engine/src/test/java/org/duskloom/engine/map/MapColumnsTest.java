package org.duskloom.engine.map;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.Collectors;
import org.duskloom.engine.document.Inputs;
import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The header of a pixel map, as a spreadsheet gives it: its columns in any order, written in any case, with notes. */
class MapColumnsTest {
    private static final List<List<String>> COLUMNS = List.of(
            List.of("prop", "bench", "bench"),
            List.of("pixel", "2", "1"),
            List.of("x", "1", "2"),
            List.of("y", "3", "4"),
            List.of("z", "5", "6"),
            List.of("part", "seat", "seat;back"),
            List.of("ownx", "7", "8"),
            List.of("owny", "9", "10"),
            List.of("ownz", "11", "12"));

    private final Problems problems = new Problems();

    private static String csv(List<List<String>> columns) {
        StringBuilder csv = new StringBuilder();
        for (int row = 0; row < columns.get(0).size(); row++) {
            int line = row;
            csv.append(columns.stream().map(column -> column.get(line)).collect(Collectors.joining(",")))
                    .append('\n');
        }
        return csv.toString();
    }

    private List<String> saidOf(String csv) {
        MapReader.read(Inputs.source("map.csv", csv), problems);
        return Inputs.shown(problems);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void theOrderOfTheColumnsMeansNothing(long seed) {
        Random random = new Random(seed);
        List<List<String>> shuffled = new ArrayList<>(COLUMNS);
        shuffled.add(List.of("#bought", "in May", "2"));
        Collections.shuffle(shuffled, random);
        String written = csv(shuffled);
        String header = written.substring(0, written.indexOf('\n'));
        String shouted = random.nextBoolean() ? written : written.replace(header, header.toUpperCase(Locale.ROOT));
        Maps.assertSame(Maps.map(shouted), Maps.map(csv(COLUMNS)));
    }

    @Test
    void readsEachColumnAsWhatItsNameSays() {
        PixelMap map = Maps.map(csv(COLUMNS));
        assertThat(List.of(map.stage().x(0), map.stage().y(0), map.stage().z(0)))
                .containsExactly(2.0, 4.0, 6.0);
        assertThat(List.of(map.own().x(1), map.own().y(1), map.own().z(1))).containsExactly(7.0, 9.0, 11.0);
        assertThat(map.props().get(0).part("back").orElseThrow().pixels()).containsExactly(0);
    }

    @ParameterizedTest
    @ValueSource(strings = {"ownx", "owny", "ownz", "ownx,ownz", "owny,ownz"})
    void ownAxesAreGivenTogether(String own) {
        String zeros = own.replaceAll("own.", "0");
        assertThat(saidOf("prop,pixel,x,y," + own + "\na,1,0,0," + zeros + "\n"))
                .containsExactly("map.csv:1:1: error: the columns ownx and owny belong together; give both, and ownz"
                        + " where props have depth, or none of them");
    }

    @ParameterizedTest
    @ValueSource(strings = {"sure", "Sure", "SURE"})
    void placesInAPictureAreNoMap(String sure) {
        assertThat(saidOf("# tripod by the shed\nprop,pixel,x,y," + sure + "\na,1,640,480,0.9\n"))
                .containsExactly("map.csv:2:16: error: the column \"sure\" says that these are places in a picture, as"
                        + " \"duskloom locate\" writes them, and not on the stage; \"duskloom map DISPLAY.json --from\""
                        + " makes a pixel map of them; without a display leave out the column, and change the sign of"
                        + " every y, which counts down in a picture");
    }

    @Test
    void placesInAPictureAreNoShape() {
        assertThat(MapReader.readShape(Inputs.source("s.csv", "pixel,x,y,sure\n1,0,0,1\n"), "s", problems))
                .isEmpty();
        assertThat(Inputs.shown(problems)).singleElement().asString().startsWith("s.csv:1:11: error: the column");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            prop,pixel,x,y,prat  | 1:16 | there is no column "prat"; did you mean "part"?
            prop,pixel,x,y,color | 1:16 | there is no column "color"; a column of notes may stay if its name begins with #
            prop,pixel,x,y,X     | 1:16 | the column "X" stands twice in the header; first at map.csv:1:12
            """)
    void columnsThatAreNoneAreTold(String header, String place, String message) {
        assertThat(saidOf(header + "\na,1,0,0,0\n")).containsExactly("map.csv:" + place + ": error: " + message);
    }

    /** The pixels of a shape are of one prop, and stand in its own axes. */
    @ParameterizedTest
    @ValueSource(strings = {"prop", "ownx"})
    void aShapeHasNoColumnOfTheStage(String column) {
        String csv = "pixel,x,y," + column + "\n1,0,0,0\n";
        assertThat(MapReader.readShape(Inputs.source("s.csv", csv), "s", problems))
                .isEmpty();
        assertThat(Inputs.shown(problems))
                .singleElement()
                .asString()
                .startsWith("s.csv:1:11: error: there is no column \"" + column + "\"");
    }
}
