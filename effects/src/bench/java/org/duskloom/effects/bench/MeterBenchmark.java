package org.duskloom.effects.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.duskloom.engine.display.Display;
import org.duskloom.engine.effect.EffectRegistry;
import org.duskloom.engine.frame.RunInfo;
import org.duskloom.engine.meter.PowerMeter;
import org.duskloom.engine.meter.light.LightMeter;
import org.duskloom.engine.plan.Plan;
import org.duskloom.engine.plan.PlanCompiler;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.render.FramePainter;
import org.duskloom.engine.render.FrameRenderer;
import org.duskloom.engine.show.Show;
import org.duskloom.engine.show.ShowReader;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * What a frame costs to render, and to measure beside it, all on one thread, frame after frame: of 1,000 pixels on two
 * ports of 500, each fed at five points, or of the demo of an evening in the garden.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(java.util.concurrent.TimeUnit.NANOSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class MeterBenchmark {
    private static final Path GARDEN = Path.of("demos", "garden", "show.json");
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

    private static final String STILL = """
            {"duskloom": "timeline/1", "display": "display.json", "rate": 40, "length": "600s", "layers": [
              {"name": "ground", "cues": [{"at": "0s", "for": "600s", "on": "*", "effect": "wash",
                "with": {"palette": ["#1b2a6b", "#ff9e5e"]}}]},
              {"name": "light", "blend": "screen", "cues": [{"at": "0s", "for": "600s", "on": "a", "effect": "chase",
                "with": {"palette": "gold", "every": "6s"}}]}
            ]}
            """;

    /** How much of the display changes from frame to frame. */
    public enum Liveliness {
        /** Every pixel in every frame: three layers, a sweep under a spin under a twinkle. */
        LIVELY,

        /** A light that runs over one of two lines, on a ground that stays. */
        STILL,

        /** The demo of an evening in the garden, 1,288 pixels on four ports; run from the project or a module of it. */
        GARDEN
    }

    /** How much changes. */
    @Param
    public Liveliness liveliness;

    private FramePainter painter;
    private PowerMeter power;
    private LightMeter light;
    private byte[] rgb;
    private int frame;
    private int frames;
    private long count;

    /** Writes the files, reads and compiles them, and renders what is measured. */
    @Setup
    public void prepare() throws IOException, InterruptedException {
        Problems problems = new Problems();
        Show show = liveliness == Liveliness.GARDEN ? garden(problems) : written(problems);
        Plan plan = PlanCompiler.compile(show, EffectRegistry.installed(), problems)
                .orElseThrow(
                        () -> new IllegalStateException(problems.inFileOrder().toString()));
        painter = new FramePainter(plan);
        RunInfo run = new FrameRenderer(plan).info();
        rgb = new byte[run.frameBytes()];
        frames = (int) Math.min(14_400, run.showFrames());
        power = new PowerMeter(show.display().map(Display::ports).orElseThrow(), 20);
        power.begin(run);
        light = LightMeter.ofAnyArea();
        light.begin(run);
    }

    private static Show garden(Problems problems) throws IOException {
        return ShowReader.read(Files.exists(GARDEN) ? GARDEN : Path.of("..").resolve(GARDEN), problems)
                .orElseThrow();
    }

    private Show written(Problems problems) throws IOException {
        Path folder = Files.createTempDirectory("bench");
        Files.writeString(folder.resolve("display.json"), DISPLAY);
        Path timeline = Files.writeString(
                folder.resolve("show.json"),
                liveliness == Liveliness.STILL
                        ? STILL
                        : PipelineBenchmark.Colors.PLAIN
                                .timeline()
                                .replace("\"map\": \"map.csv\"", "\"display\": \"display.json\""));
        Show show = ShowReader.read(timeline, problems).orElseThrow();
        Files.delete(timeline);
        Files.delete(folder.resolve("display.json"));
        Files.delete(folder);
        return show;
    }

    /** Painted, blended and encoded to bytes. */
    @Benchmark
    public byte render() {
        frame = (frame + 1) % frames;
        painter.render(frame, rgb, 0);
        return rgb[0];
    }

    /** The same, with currents, and the voltages at all pixels. */
    @Benchmark
    public byte withPower() {
        byte first = render();
        power.frame(frame, rgb, 0);
        return first;
    }

    /** The same, with flashes, and what is used. */
    @Benchmark
    public byte withLight() {
        byte first = render();
        light.frame(count++, rgb, 0);
        return first;
    }

    /** The same, with both: what a report sees. */
    @Benchmark
    public byte withBoth() {
        byte first = withPower();
        light.frame(count++, rgb, 0);
        return first;
    }
}
