package org.duskloom.engine.show;

import java.util.List;
import java.util.Objects;
import org.duskloom.engine.display.Display;

/**
 * A display with the files it was read from.
 *
 * @param display the display
 * @param inputs the files read, the display first
 */
public record DisplayFile(Display display, List<InputFile> inputs) {
    public DisplayFile {
        Objects.requireNonNull(display, "display");
        inputs = List.copyOf(inputs);
    }
}
