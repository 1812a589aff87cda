package org.duskloom.engine.display;

import static org.assertj.core.api.Assertions.assertThat;

import com.code_intelligence.jazzer.junit.DictionaryEntries;
import com.code_intelligence.jazzer.junit.FuzzTest;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.duskloom.engine.document.JsonReader;
import org.duskloom.engine.document.SourceText;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.problem.Problems;

/** Any bytes at all as displays; the files that a display names hold three pixels, as a table or as a drawing. */
class DisplayFuzzTest {
    private static final String TABLE = "pixel,x,y\n1,0,0\n2,1,0\n3,1,1\n";
    private static final String DRAWING =
            "<svg xmlns=\"http://www.w3.org/2000/svg\"><circle cx=\"1\" cy=\"1\" r=\"1\"/><circle cx=\"9\" cy=\"1\" r=\"1\"/></svg>";

    @FuzzTest(maxDuration = "6h", maxExecutions = 1_000_000)
    @DictionaryEntries({
        "shapes",
        "props",
        "groups",
        "ports",
        "kinds",
        "supplies",
        "ring",
        "line",
        "grid",
        "helix",
        "arc",
        "spokes",
        "polyline",
        "points",
        "svg",
        "csv",
        "count",
        "radius",
        "mirror",
        "tilt",
        "turn",
        "scale",
        "parts",
        "chain",
        "curve",
        "1e308",
        "-1",
        "1000000"
    })
    void display(byte[] input) {
        Problems problems = new Problems();
        Optional<Display> display = SourceText.of(input, "display.json", problems)
                .flatMap(source -> JsonReader.read(source, problems))
                .flatMap(root -> DisplayReader.read(root, DisplayFuzzTest::file, problems));
        assertThat(display.isPresent() || problems.hasErrors()).isTrue();
    }

    private static Optional<SourceText> file(TextNode written, Problems problems) {
        String text = written.value().endsWith("svg") ? DRAWING : TABLE;
        return SourceText.of(text.getBytes(StandardCharsets.UTF_8), "file", problems);
    }
}
