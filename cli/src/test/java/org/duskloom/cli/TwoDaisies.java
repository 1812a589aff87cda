package org.duskloom.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A small display for {@code check}. */
final class TwoDaisies {
    private TwoDaisies() {}

    /** Two rings of six, one of them where the test says; the group names the first only by its exact name. */
    static Path display(Path folder, String second, String at) throws IOException {
        return Files.writeString(folder.resolve("display.json"), """
                {
                  "duskloom": "display/1",
                  "units": "cm",
                  "shapes": {"daisy": {"build": [{"ring": {"count": 6, "radius": 90}}]}},
                  "props": [
                    {"name": "daisy-1", "shape": "daisy", "at": [0, 0]},
                    {"name": "%s", "shape": "daisy", "at": %s}
                  ],
                  "groups": {"daisies": ["daisy-*"]}
                }
                """.formatted(second, at));
    }
}
