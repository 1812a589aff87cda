package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Two versions of a small show, of its display, of a song and so on, of which other bytes are written. */
record TwoVersions(Path older, Path newer) {
    static TwoVersions in(Path folder) throws IOException {
        return new TwoVersions(version(folder.resolve("older"), 100, 0.5), version(folder.resolve("newer"), 120, 0.6));
    }

    private static Path version(Path folder, int height, double beatSeconds) throws IOException {
        Files.createDirectories(folder);
        Files.writeString(folder.resolve("display.json"), """
                {
                  "duskloom": "display/1",
                  "units": "cm",
                  "shapes": {
                    "daisy": {"build": [{"ring": {"count": 6, "radius": 20, "start": 90}, "part": "rim"}]},
                    "fence": {"build": [{"line": {"from": [0, 0], "to": [%d, 0], "count": 6}}]}
                  },
                  "props": [
                    {"name": "daisy-1", "shape": "daisy", "at": [0, 100]},
                    {"name": "daisy-2", "shape": "daisy", "at": [100, %d], "turn": 90},
                    {"name": "fence", "shape": "fence", "at": [0, 0]}
                  ],
                  "kinds": {"bullet": {"volts": 12, "milliamps": [13, 13, 13], "idle": 0.6}},
                  "ports": [
                    {"name": "left", "kind": "bullet", "line": {"awg": 20, "pitch": 10}, "chain": ["daisy-1", "fence"]},
                    {"name": "right", "kind": "bullet", "line": {"awg": 20, "pitch": 10}, "chain": ["daisy-2"]}
                  ],
                  "supplies": [{"name": "shed", "volts": 12, "amps": 5,
                    "feeds": [{"port": "left", "at": [1]}, {"port": "right", "at": [1]}]}]
                }
                """.formatted(height, height));
        Path show = Files.writeString(folder.resolve("show.json"), """
                {
                  "duskloom": "timeline/1",
                  "title": "Fence",
                  "display": "display.json",
                  "rate": 3,
                  "length": "2s",
                  "layers": [{"cues": [{"at": "0s", "for": "2s", "on": "*", "effect": "sweep", "with": {"every": "%d00ms"}}]}]
                }
                """.formatted(height / 10));
        Files.write(folder.resolve("song.wav"), song(beatSeconds));
        run("map", folder.resolve("display.json"), "-o", folder.resolve("measured.csv"));
        for (int shard = 1; shard <= 2; shard++) {
            run(
                    "render",
                    show,
                    "-o",
                    folder.resolve("shard-" + shard),
                    "--shard",
                    shard + "/2",
                    "--as",
                    "rgb,npy,singles,ports,packets");
        }
        return folder;
    }

    private static void run(Object... arguments) {
        Ran ran = Ran.with(arguments);
        assertThat(ran.code()).as(ran.err()).isZero();
    }

    /** Twelve seconds of clicks. */
    private static byte[] song(double beatSeconds) {
        return WavFile.of(12, second -> {
            double since = second % beatSeconds;
            double fading = Math.max(0, 1 - since / 0.05);
            return 30_000 * fading * Math.sin(2 * Math.PI * 800 * since);
        });
    }
}
