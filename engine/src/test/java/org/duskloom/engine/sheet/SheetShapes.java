package org.duskloom.engine.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.duskloom.engine.display.Display;
import org.duskloom.engine.display.DisplayReader;
import org.duskloom.engine.document.JsonReader;
import org.duskloom.engine.document.SourceText;
import org.duskloom.engine.problem.Problems;

/** Shapes read from the words of a display. */
final class SheetShapes {
    private SheetShapes() {}

    /** A shape of build steps alone, at a scale. */
    static ScaledShape built(String steps, double scale) {
        return written("{\"build\": [" + steps + "]}", scale);
    }

    /** A shape as a display holds it. */
    static ScaledShape written(String shape, double scale) {
        String text = "{\"duskloom\": \"display/1\", \"shapes\": {\"a\": " + shape
                + "}, \"props\": [{\"name\": \"a-1\", \"shape\": \"a\", \"at\": [0, 0]}]}";
        Problems problems = new Problems();
        Optional<Display> display = SourceText.of(text.getBytes(StandardCharsets.UTF_8), "d", problems)
                .flatMap(source -> JsonReader.read(source, problems))
                .flatMap(root -> DisplayReader.read(root, (written, found) -> Optional.empty(), problems));
        assertThat(problems.errorCount()).isZero();
        return new ScaledShape(display.orElseThrow().shapes().get(0), scale, List.of("a-1"), false);
    }
}
