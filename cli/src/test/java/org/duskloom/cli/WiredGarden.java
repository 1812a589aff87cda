package org.duskloom.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A show of two seconds on a fence of pixels that hang on ports. */
final class WiredGarden {
    private WiredGarden() {}

    /** A fence of so many pixels with those ports: the inside of a JSON list. */
    static Path show(Path folder, int pixels, int rate, String ports) throws IOException {
        Files.createDirectories(folder);
        Files.writeString(folder.resolve("display.json"), """
                {
                  "duskloom": "display/1",
                  "units": "mm",
                  "shapes": {"fence": {"build": [{"line": {"from": [0, 0], "to": [9000, 0], "count": %d}}]}},
                  "props": [{"name": "fence", "shape": "fence", "at": [0, 0]}]%s
                }
                """.formatted(
                        pixels, ports.isEmpty() ? "" : ",\n  \"ports\": [" + ports + "]"));
        return Files.writeString(folder.resolve("show.json"), """
                {
                  "duskloom": "timeline/1",
                  "title": "Fence",
                  "display": "display.json",
                  "rate": %d,
                  "length": "2s",
                  "layers": [{"cues": [{"at": "0s", "for": "2s", "on": "fence", "effect": "sweep", "with": {"every": "1s"}}]}]
                }
                """.formatted(rate));
    }
}
