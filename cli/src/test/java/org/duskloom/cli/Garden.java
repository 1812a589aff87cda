package org.duskloom.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * A small show, and a small display. The show: two daisies of six pixels and a fence of eight, two seconds at 40 frames
 * per second.
 */
final class Garden {
    static final int PIXELS = 20;
    static final int FRAMES = 80;

    private Garden() {}

    /** Writes the show into a folder, which is made. */
    static Path in(Path folder) throws IOException {
        return in(folder, "2s");
    }

    /** The same with another length. */
    static Path in(Path folder, String length) throws IOException {
        Files.createDirectories(folder);
        Files.writeString(folder.resolve("map.csv"), map());
        return Files.writeString(folder.resolve("show.json"), """
                {
                  "duskloom": "timeline/1",
                  "title": "Longest day",
                  "map": "map.csv",
                  "groups": {"daisies": ["daisy-*"]},
                  "rate": 40,
                  "length": "%s",
                  "seed": 7,
                  "layers": [
                    {"name": "ground", "cues": [
                      {"at": "0s", "for": "2s", "on": ["*"], "effect": "sweep",
                       "with": {"palette": ["#1b2a6b", "#ff9e5e"], "every": "1.5s", "soft": 0.2}},
                      {"at": "500ms", "for": "1s", "on": ["daisies"], "spread": "each", "effect": "chase",
                       "with": {"palette": "gold", "every": "700ms"}, "fade": {"in": "250ms"}}
                    ]},
                    {"name": "sparkle", "blend": "screen", "opacity": 0.8, "cues": [
                      {"at": "0s", "for": "2s", "on": ["fence"], "effect": "twinkle"}
                    ]}
                  ]
                }
                """.formatted(length));
    }

    /**
     * A display of two daisies, one of them turned, and a fence; 18 pixels in three props, two groups, a shape to
     * spare.
     */
    static Path display(Path folder) throws IOException {
        Files.createDirectories(folder);
        return Files.writeString(folder.resolve("display.json"), """
                {
                  "duskloom": "display/1",
                  "units": "cm",
                  "shapes": {
                    "daisy": {
                      "build": [{"ring": {"count": 6, "radius": 20, "start": 90}, "part": "rim"}],
                      "parts": {"top": "6, 1-2"}
                    },
                    "fence": {"build": [{"line": {"from": [0, 0], "to": [100, 0], "count": 6}}]},
                    "bench": {"build": [{"line": {"from": [0, 0], "to": [50, 0], "count": 3}}]}
                  },
                  "props": [
                    {"name": "daisy-1", "shape": "daisy", "at": [0, 100]},
                    {"name": "daisy-2", "shape": "daisy", "at": [100, 100], "turn": 90},
                    {"name": "fence", "shape": "fence", "at": [0, 0]}
                  ],
                  "groups": {"daisies": ["daisy-*"], "garden": ["daisies", "fence"]}
                }
                """);
    }

    private static String map() {
        StringBuilder csv = new StringBuilder("prop,pixel,x,y\n");
        for (int daisy = 1; daisy <= 2; daisy++) {
            int[] x = {0, 9, 9, 0, -9, -9};
            int[] y = {10, 5, -5, -10, -5, 5};
            for (int k = 0; k < 6; k++) {
                csv.append("daisy-" + daisy + "," + (k + 1) + "," + (50 * daisy + x[k]) + "," + (40 + y[k]) + "\n");
            }
        }
        for (int k = 0; k < 8; k++) {
            csv.append("fence," + (k + 1) + "," + 20 * k + ",0\n");
        }
        return csv.toString();
    }
}
