package org.duskloom.engine.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.duskloom.engine.display.Display;
import org.duskloom.engine.display.DisplayReader;
import org.duskloom.engine.document.JsonReader;
import org.duskloom.engine.document.SourceText;
import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.api.Test;

class ScaledShapeTest {
    private static final String SHAPES = """
            "a": {"build": [{"line": {"from": [0, 0], "to": [10, 0], "count": 2}}]},
            "A": {"build": [{"ring": {"count": 4, "radius": 5}}]},
            "a-scale-0.9": {"build": [{"ring": {"count": 4, "radius": 5}}]},
            "stage": {"build": [{"ring": {"count": 4, "radius": 5}}]},
            "b": {"build": [{"ring": {"count": 4, "radius": 5}}]},
            "unused": {"build": [{"ring": {"count": 4, "radius": 5}}]}""";

    /** Whoever takes the wrong one of two sheets drills the wrong plate. */
    @Test
    void noTwoSheetsShareAName() {
        List<ScaledShape> all = scaled("""
                {"name": "p", "shape": "a", "at": [0, 0], "scale": 0.9},
                {"name": "q", "shape": "a-scale-0.9", "at": [20, 0]},
                {"name": "r", "shape": "stage", "at": [40, 0]},
                {"name": "s", "shape": "A", "at": [60, 0]},
                {"name": "t", "shape": "a", "at": [80, 0]}""");
        SheetNames names = new SheetNames(all);
        assertThat(IntStream.range(0, all.size()).mapToObj(place -> names.shape(place, View.FRONT)))
                .containsExactly("a-scale-0.9-2-front", "a-front", "a-scale-0.9-front", "stage-2-front", "A-2-front");
        assertThat(Stream.of(View.values()).map(names::stage)).containsExactly("stage", "stage-back");
        assertThat(names.shape(3, View.BACK)).isEqualTo("stage-2-back");
    }

    private static List<ScaledShape> scaled(String props) {
        Problems problems = new Problems();
        String text = "{\"duskloom\": \"display/1\", \"shapes\": {" + SHAPES + "}, \"props\": [" + props + "]}";
        Display display = SourceText.of(text.getBytes(StandardCharsets.UTF_8), "d", problems)
                .flatMap(source -> JsonReader.read(source, problems))
                .flatMap(root -> DisplayReader.read(root, (written, found) -> Optional.empty(), problems))
                .orElseThrow();
        return ScaledShape.of(display.props());
    }

    @Test
    void isOneForEveryScaleInUse() {
        List<ScaledShape> all = scaled("""
                {"name": "p", "shape": "b", "at": [0, 0], "scale": 2},
                {"name": "q", "shape": "a", "at": [20, 0], "turn": 90},
                {"name": "r", "shape": "b", "at": [40, 0], "scale": 0.9},
                {"name": "s", "shape": "b", "at": [60, 0]},
                {"name": "t", "shape": "b", "at": [80, 0], "scale": 2, "mirror": "x"}""");
        assertThat(all).extracting(ScaledShape::sheetName).containsExactly("b-scale-0.9", "b", "b-scale-2", "a");
        assertThat(all)
                .extracting(ScaledShape::props)
                .containsExactly(List.of("r"), List.of("s"), List.of("p", "t"), List.of("q"));
        assertThat(all).extracting(ScaledShape::otherScales).containsExactly(true, true, true, false);
    }

    @Test
    void isNotDrawnAsDrawnIfNobodyBuildsItSo() {
        List<ScaledShape> all = scaled("{\"name\": \"p\", \"shape\": \"a\", \"at\": [0, 0], \"scale\": 0.25}");
        assertThat(all).extracting(ScaledShape::scale).containsExactly(0.25);
        assertThat(all.get(0).otherScales()).isFalse();
    }
}
