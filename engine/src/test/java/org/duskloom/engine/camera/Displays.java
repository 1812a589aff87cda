package org.duskloom.engine.camera;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.duskloom.engine.display.Display;
import org.duskloom.engine.display.DisplayReader;
import org.duskloom.engine.display.ShapeFiles;
import org.duskloom.engine.document.Inputs;
import org.duskloom.engine.document.JsonReader;
import org.duskloom.engine.document.SourceText;
import org.duskloom.engine.problem.Problems;

/** Displays to take pictures of. */
public final class Displays {
    private Displays() {}

    /** The garden of the demos: 1,288 pixels in 18 props, with a pond that is tilted. */
    public static Display garden() {
        try {
            return of(Files.readString(Path.of("../demos/garden/display.json")));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A display from its text. */
    public static Display of(String json) {
        Problems problems = new Problems();
        ShapeFiles none = (written, reported) -> Optional.empty();
        return SourceText.of(json.getBytes(StandardCharsets.UTF_8), "display.json", problems)
                .flatMap(source -> JsonReader.read(source, problems))
                .flatMap(root -> DisplayReader.read(root, none, problems))
                .orElseThrow(() -> new AssertionError(Inputs.shown(problems)));
    }
}
