package org.duskloom.effects.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.duskloom.engine.display.Display;
import org.duskloom.engine.effect.EffectRegistry;
import org.duskloom.engine.file.IfExists;
import org.duskloom.engine.format.FrameOutputs;
import org.duskloom.engine.format.Origin;
import org.duskloom.engine.format.OutputFolder;
import org.duskloom.engine.format.RgbKind;
import org.duskloom.engine.frame.FramePixels;
import org.duskloom.engine.frame.FrameRun;
import org.duskloom.engine.frame.FrameSink;
import org.duskloom.engine.frame.Progress;
import org.duskloom.engine.frame.RunInfo;
import org.duskloom.engine.meter.MeterSink;
import org.duskloom.engine.meter.PowerMeter;
import org.duskloom.engine.meter.light.LightMeter;
import org.duskloom.engine.plan.Plan;
import org.duskloom.engine.plan.PlanCompiler;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.render.FrameRenderer;
import org.duskloom.engine.report.LightReport;
import org.duskloom.engine.report.PlayingCues;
import org.duskloom.engine.report.Report;
import org.duskloom.engine.report.ReportSubject;
import org.duskloom.engine.show.Show;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/**
 * What meters add to a whole run of a show, as the commands do it on all processors: {@code render} with its frames,
 * digest and manifest in a folder, the same with meters beside it, and {@code report} with its figures, short of the
 * page.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 20)
@Measurement(iterations = 20)
public class MeteredRunBenchmark {
    private static final double CELSIUS = 20;
    private static final int THREADS = Runtime.getRuntime().availableProcessors();

    /** How much changes. */
    @Param
    public Liveliness liveliness;

    private Show show;
    private Plan plan;
    private FrameRenderer source;
    private Path folder;
    private Path out;

    /** Reads and compiles the show. */
    @Setup
    public void prepare() throws IOException {
        Problems problems = new Problems();
        show = liveliness.read(problems);
        plan = PlanCompiler.compile(show, EffectRegistry.installed(), problems).orElseThrow();
        source = new FrameRenderer(plan, "a show", FramePixels.of(show.map()));
        folder = Files.createTempDirectory("bench");
        out = folder.resolve("out");
    }

    /** Removes what a run has written. */
    @TearDown(Level.Invocation)
    public void sweep() throws IOException {
        Files.deleteIfExists(out.resolve("frames.rgb"));
        Files.deleteIfExists(out.resolve("frames.json"));
        Files.deleteIfExists(out);
    }

    /** Removes the folder. */
    @TearDown
    public void end() throws IOException {
        Files.delete(folder);
    }

    /** Renders into files. */
    @Benchmark
    public String render(ProcessorTime processors) throws IOException, InterruptedException {
        processors.start();
        write(List.of());
        processors.stop();
        return source.info().title();
    }

    /** Renders into files with meters beside it. */
    @Benchmark
    public Report renderWithMeters(ProcessorTime processors) throws IOException, InterruptedException {
        processors.start();
        Meters meters = meters();
        write(meters.sinks());
        Report report = meters.power();
        meters.light.flashes();
        processors.stop();
        return report;
    }

    /** Measures alone, and looks closer at cues. */
    @Benchmark
    public Report report(ProcessorTime processors) throws IOException, InterruptedException {
        processors.start();
        Meters meters = meters();
        run().into(meters.sinks(), Progress.SILENT);
        Report report = meters.power().with(LightReport.of(meters.light, source, show.map(), playing()));
        processors.stop();
        return report;
    }

    private FrameRun run() {
        return new FrameRun(source, source.info().frames(), THREADS);
    }

    private void write(List<FrameSink> meters) throws IOException, InterruptedException {
        OutputFolder files = new OutputFolder(out, IfExists.REFUSE, target -> {});
        Origin origin = new Origin("0", List.of());
        try (FrameOutputs outputs = new FrameOutputs(files, List.of(new RgbKind()), run().info(), origin)) {
            List<FrameSink> sinks = new ArrayList<>(outputs.sinks());
            sinks.addAll(meters);
            run().into(sinks, Progress.SILENT);
            outputs.publish();
        }
    }

    private PlayingCues playing() {
        return new PlayingCues(show.timeline(), plan);
    }

    private Meters meters() {
        Display display = show.display().orElseThrow();
        return new Meters(new PowerMeter(display.ports(), CELSIUS), LightMeter.ofAnyArea());
    }

    /** What measures in one run. */
    private final class Meters {
        private final PowerMeter power;
        private final LightMeter light;

        Meters(PowerMeter power, LightMeter light) {
            this.power = power;
            this.light = light;
        }

        List<FrameSink> sinks() {
            return List.of(new MeterSink(List.of(power), source), new MeterSink(List.of(light), source));
        }

        Report power() {
            RunInfo run = source.info();
            ReportSubject subject =
                    new ReportSubject(run.title(), run.rate(), run.showFrames(), run.pixelCount(), CELSIUS, false);
            return Report.of(subject, Optional.of(show.display().orElseThrow()), power.figures(), playing());
        }
    }
}
