package org.duskloom.effects.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.duskloom.effects.Canvases;
import org.duskloom.engine.effect.EffectRegistry;
import org.duskloom.engine.plan.Plan;
import org.duskloom.engine.plan.PlanCompiler;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.render.FramePainter;
import org.duskloom.engine.show.ShowReader;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Frames per second of three layers, from the files on: painted, blended and encoded to bytes by one thread. */
@State(Scope.Thread)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class PipelineBenchmark {
    private static final String TIMELINE = """
            {"duskloom": "timeline/1", "map": "map.csv", "rate": 40, "length": "600s", "layers": [
              {"name": "ground", "opacity": 0.9, "cues": [{"at": "0s", "for": "600s", "on": "*", "effect": "sweep",
                "with": {"palette": GROUND, "width": 1, "toward": 30, "every": "3s"}}]},
              {"name": "arms", "blend": "screen", "opacity": 0.9, "cues": [
                {"at": "0s", "for": "600s", "on": "*", "effect": "spin",
                "with": {"palette": ARMS, "soft": 0.25, "every": "4s"}}]},
              {"name": "sparkle", "blend": "lighten", "opacity": 0.9, "cues": [
                {"at": "0s", "for": "600s", "on": "*", "effect": "twinkle",
                "with": {"palette": SPARKLE, "every": "2s"}}]}
            ]}
            """;

    /** How many colours the palettes have. */
    public enum Colors {
        /** Two to sweep, one for the arms, one for the sparkle. */
        PLAIN("[\"#1b2a6b\", \"#ff9e5e\"]", "\"gold\"", "\"white\""),
        /** Three to sweep, two for the arms, two for the sparkle. */
        RICH("[\"#1b2a6b\", \"#7b3fa0\", \"#ff9e5e\"]", "[\"#2a4bd0\", \"#ff9e5e\"]", "[\"white\", \"gold\"]");

        private final String ground;
        private final String arms;
        private final String sparkle;

        Colors(String ground, String arms, String sparkle) {
            this.ground = ground;
            this.arms = arms;
            this.sparkle = sparkle;
        }

        String timeline() {
            return TIMELINE.replace("GROUND", ground).replace("ARMS", arms).replace("SPARKLE", sparkle);
        }
    }

    /** Which palettes. */
    @Param
    public Colors colors;

    /** How many pixels there are, in ten props. */
    @Param({"360", "10000", "100000"})
    public int pixels;

    private FramePainter painter;
    private byte[] rgb;
    private long frame;
    private long frameCount;

    /** Writes the files, reads and compiles them. */
    @Setup
    public void prepare() throws IOException {
        Path folder = Files.createTempDirectory("bench");
        Path timeline = Files.writeString(folder.resolve("timeline.json"), colors.timeline());
        Path map = Files.writeString(folder.resolve("map.csv"), map());
        Problems problems = new Problems();
        Plan plan = ShowReader.read(timeline, problems)
                .flatMap(show -> PlanCompiler.compile(show, EffectRegistry.installed(), problems))
                .orElseThrow(
                        () -> new IllegalStateException(problems.inFileOrder().toString()));
        Files.delete(timeline);
        Files.delete(map);
        Files.delete(folder);
        painter = new FramePainter(plan);
        rgb = new byte[3 * pixels];
        frameCount = plan.frameCount();
    }

    /** One frame after the other. */
    @Benchmark
    public byte frame(PixelFrames counter) {
        painter.render(frame, rgb, 0);
        frame = (frame + 1) % frameCount;
        counter.pixelFrames += pixels;
        return rgb[0];
    }

    private String map() {
        StringBuilder csv = new StringBuilder("prop,pixel,x,y\n");
        double[][] places = Canvases.scattered(pixels);
        int perProp = pixels / 10;
        for (int i = 0; i < pixels; i++) {
            csv.append(String.format(
                    Locale.ROOT, "daisy-%d,%d,%.4f,%.4f%n", i / perProp, i % perProp + 1, places[i][0], places[i][1]));
        }
        return csv.toString();
    }
}
