package org.duskloom.effects.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.show.Show;
import org.duskloom.engine.show.ShowReader;

/**
 * What is measured, by how much of the display changes from frame to frame: 14,400 frames of 1,000 pixels on two ports
 * of 500, each fed at five points, or a demo.
 */
public enum Liveliness {
    /** Every pixel in every frame: three layers, a sweep under a spin under a twinkle. */
    LIVELY(PipelineBenchmark.Colors.PLAIN
            .timeline()
            .replace("\"map\": \"map.csv\"", "\"display\": \"display.json\"")
            .replace("600s", "360s")),

    /** A light that runs over one of two lines, on a ground that stays. */
    STILL("""
            {"duskloom": "timeline/1", "display": "display.json", "rate": 40, "length": "360s", "layers": [
              {"name": "ground", "cues": [{"at": "0s", "for": "360s", "on": "*", "effect": "wash",
                "with": {"palette": ["#1b2a6b", "#ff9e5e"]}}]},
              {"name": "light", "blend": "screen", "cues": [{"at": "0s", "for": "360s", "on": "a", "effect": "chase",
                "with": {"palette": "gold", "every": "6s"}}]}
            ]}
            """),

    /** The demo of an evening in the garden, 1,288 pixels on four ports; run from the project or a module of it. */
    GARDEN("") {
        @Override
        Show read(Problems problems) throws IOException {
            Path show = Path.of("demos", "garden", "show.json");
            return ShowReader.read(Files.exists(show) ? show : Path.of("..").resolve(show), problems)
                    .orElseThrow();
        }
    };

    private static final String DISPLAY = """
            {"duskloom": "display/1", "units": "mm",
             "shapes": {"fence": {"build": [{"line": {"from": [0, 0], "to": [37500, 9000], "count": 500}}]}},
             "props": [{"name": "a", "shape": "fence", "at": [0, 0]}, {"name": "b", "shape": "fence", "at": [0, 900]}],
             "kinds": {"bullet": {"volts": 12, "milliamps": [13, 13, 13], "least": 10.5}},
             "ports": [
               {"name": "left", "chain": ["a"], "kind": "bullet", "line": {"awg": 20, "pitch": 75}},
               {"name": "right", "chain": ["b"], "kind": "bullet", "line": {"awg": 20}}],
             "supplies": [{"name": "shed", "volts": 12, "amps": 50, "feeds": [
               {"port": "left", "at": [1, 126, 251, 376, 500], "lead": {"mm2": 1.5, "length": 3000}},
               {"port": "right", "at": [1, 126, 251, 376, 500], "lead": {"mm2": 1.5, "length": 3000}}]}]}
            """;

    private final String timeline;

    Liveliness(String timeline) {
        this.timeline = timeline;
    }

    /** Reads the show, of which files are written first unless they are there. */
    Show read(Problems problems) throws IOException {
        Path folder = Files.createTempDirectory("bench");
        Path display = Files.writeString(folder.resolve("display.json"), DISPLAY);
        Path show = Files.writeString(folder.resolve("show.json"), timeline);
        try {
            return ShowReader.read(show, problems)
                    .orElseThrow(() ->
                            new IllegalStateException(problems.inFileOrder().toString()));
        } finally {
            Files.delete(show);
            Files.delete(display);
            Files.delete(folder);
        }
    }
}
