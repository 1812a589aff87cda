package org.duskloom.effects.bench;

import java.io.IOException;
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
 * What a frame costs to render, and to measure beside it, all on one thread, frame after frame, with nothing written:
 * see {@link MeteredRunBenchmark} for what that is of a whole run.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(java.util.concurrent.TimeUnit.NANOSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class MeterBenchmark {
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
    public void prepare() throws IOException {
        Problems problems = new Problems();
        Show show = liveliness.read(problems);
        Plan plan = PlanCompiler.compile(show, EffectRegistry.installed(), problems)
                .orElseThrow(
                        () -> new IllegalStateException(problems.inFileOrder().toString()));
        painter = new FramePainter(plan);
        RunInfo run = new FrameRenderer(plan).info();
        rgb = new byte[run.frameBytes()];
        frames = (int) run.showFrames();
        power = new PowerMeter(show.display().map(Display::ports).orElseThrow(), 20);
        power.begin(run);
        light = LightMeter.ofAnyArea();
        light.begin(run);
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
