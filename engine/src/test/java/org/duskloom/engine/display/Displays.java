package org.duskloom.engine.display;

import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import org.duskloom.engine.document.Inputs;
import org.duskloom.engine.document.JsonReader;
import org.duskloom.engine.document.SourceText;
import org.duskloom.engine.problem.Problems;

/** Displays for tests. */
final class Displays {
    private Displays() {}

    /** Reads a display; the files that it names are texts by name. */
    static Optional<Display> read(String json, Map<String, String> files, Problems problems) {
        ShapeFiles shapeFiles = (written, reported) -> SourceText.of(
                files.getOrDefault(written.value(), "").getBytes(StandardCharsets.UTF_8), written.value(), reported);
        return SourceText.of(json.getBytes(StandardCharsets.UTF_8), "garden.json", problems)
                .flatMap(source -> JsonReader.read(source, problems))
                .flatMap(root -> DisplayReader.read(root, shapeFiles, problems))
                .filter(display -> !problems.hasErrors());
    }

    /** The display of that JSON text, which must be sound. */
    static Display display(String json, Map<String, String> files) {
        Problems problems = new Problems();
        return read(json, files, problems).orElseThrow(() -> new AssertionError(Inputs.shown(problems)));
    }

    /** A display of those shapes and props, which must be sound. */
    static Display display(String shapes, String props) {
        return display(json(shapes, props), Map.of());
    }

    static String json(String shapes, String props) {
        return "{\"duskloom\": \"display/1\", \"shapes\": {" + shapes + "}, \"props\": [" + props + "]}";
    }

    /** One shape with these build steps, which must be sound. */
    static Shape shape(String steps) {
        return display("\"a\": {\"build\": [" + steps + "]}", "{\"name\": \"p\", \"shape\": \"a\", \"at\": [0, 0]}")
                .shapes()
                .get(0);
    }
}
