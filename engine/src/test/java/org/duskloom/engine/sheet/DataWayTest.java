package org.duskloom.engine.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.duskloom.engine.display.Display;
import org.duskloom.engine.display.DisplayReader;
import org.duskloom.engine.document.JsonReader;
import org.duskloom.engine.document.SourceText;
import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.api.Test;

/** Data lines on the stage sheet, held against places that are worked out by hand. */
class DataWayTest {
    /** Lines of 100 units to the right: a ends at (100, 0, 0), b begins at (400, 400, 0), c at (500, 400, 120). */
    private static Display display(String units, String ports) {
        String text = """
                {"duskloom": "display/1", "units": "%s",
                 "shapes": {"l": {"build": [{"line": {"from": [0, 0], "to": [100, 0], "count": 11}}]}},
                 "props": [{"name": "a", "shape": "l", "at": [0, 0]}, {"name": "b", "shape": "l", "at": [400, 400]},
                   {"name": "c", "shape": "l", "at": [500, 400, 120]}],
                 "ports": [%s]}
                """.formatted(units, ports);
        Problems problems = new Problems();
        Optional<Display> display = SourceText.of(text.getBytes(StandardCharsets.UTF_8), "d", problems)
                .flatMap(source -> JsonReader.read(source, problems))
                .flatMap(root -> DisplayReader.read(root, (written, found) -> Optional.empty(), problems));
        assertThat(problems.errorCount()).isZero();
        return display.orElseThrow();
    }

    /** From (100, 0) to (400, 400) is 500; from (500, 400, 0), the end of b, to the beginning of c 120. */
    @Test
    void lengthIsTheSumOfTheHops() {
        String port = "{\"name\": \"left\", \"chain\": [{\"skip\": 2}, \"a\", {\"skip\": 1}, \"b\", \"c\"]}";
        DataWay way = DataWay.of(display("mm", port)).get(0);
        assertThat(way.hops()).containsExactly(new DataWay.Hop(10, 11), new DataWay.Hop(21, 22));
        assertThat(way.lengthMm()).isCloseTo(620, within(1e-9));
        assertThat(way.firstPixel()).isZero();
        assertThat(DataWay.of(display("in", port)).get(0).lengthMm()).isCloseTo(620 * 25.4, within(1e-6));
    }

    @Test
    void wordsTellWhatHangsOnThePort() {
        String ports = "{\"name\": \"left\", \"chain\": [{\"skip\": 160}, \"b\", \"a\"]},"
                + " {\"name\": \"right\", \"chain\": [\"c\"], \"universe\": 9}";
        List<DataWay> ways = DataWay.of(display("cm", ports));
        assertThat(ways.get(0).words())
                .containsExactly("port left: 182 pixels, universes 1 to 2, 6.40 m from prop to prop: 160 dark, b, a");
        assertThat(ways.get(1).words())
                .containsExactly("port right: 11 pixels, universe 9, 0.00 m from prop to prop: c");
    }

    @Test
    void longChainsAreBroken() {
        String skips = "{\"skip\": 1}, ".repeat(40);
        List<String> words = DataWay.of(display("mm", "{\"name\": \"left\", \"chain\": [" + skips + "\"a\"]}"))
                .get(0)
                .words();
        assertThat(words).hasSizeGreaterThan(2).allMatch(line -> line.length() <= 96);
        assertThat(String.join(" ", words)).endsWith("1 dark, a");
    }

    @Test
    void theSheetHasALineForEachHopAndAnArrowThatPointsAlongIt() {
        Display display = display("mm", "{\"name\": \"left\", \"chain\": [\"a\", \"b\"]}");
        List<Stroke> strokes = StageSheet.draw(display).strokes();
        assertThat(strokes).filteredOn(Stroke.Line.class::isInstance).anySatisfy(stroke -> {
            Stroke.Line line = (Stroke.Line) stroke;
            assertThat(new double[] {line.fromX(), line.fromY(), line.toX(), line.toY()})
                    .containsExactly(100, 0, 400, 400);
            assertThat(line.color()).isEqualTo(SheetColors.part(0));
        });
        assertThat(strokes)
                .filteredOn(Stroke.Arrow.class::isInstance)
                .singleElement()
                .satisfies(stroke -> {
                    Stroke.Arrow arrow = (Stroke.Arrow) stroke;
                    assertThat(arrow.directionX()).isCloseTo(0.6, within(1e-12));
                    assertThat(arrow.directionY()).isCloseTo(0.8, within(1e-12));
                });
        assertThat(strokes)
                .filteredOn(Stroke.Text.class::isInstance)
                .anySatisfy(stroke -> assertThat(((Stroke.Text) stroke).words()).startsWith("port left: 22 pixels"));
    }
}
