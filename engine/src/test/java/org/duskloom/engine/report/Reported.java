package org.duskloom.engine.report;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.duskloom.engine.display.Display;
import org.duskloom.engine.document.Inputs;
import org.duskloom.engine.effect.PlainEffects;
import org.duskloom.engine.frame.FramePixels;
import org.duskloom.engine.frame.FrameRun;
import org.duskloom.engine.frame.RunInfo;
import org.duskloom.engine.meter.Meter;
import org.duskloom.engine.meter.MeterSink;
import org.duskloom.engine.meter.PowerMeter;
import org.duskloom.engine.meter.light.LightMeter;
import org.duskloom.engine.plan.Plan;
import org.duskloom.engine.plan.PlanCompiler;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.render.FrameRenderer;
import org.duskloom.engine.show.Show;
import org.duskloom.engine.show.ShowReader;
import org.duskloom.engine.wire.Ports;

/**
 * Reports of a show of three seconds for tests: dark, then red, then white. A fence of four pixels a metre apart, 12 V,
 * 10 mA a colour and 1 mA idle; a post of two that says nothing of its kind.
 *
 * @param show as read
 * @param report what is told of it
 */
public record Reported(Show show, Report report) {
    public static final String KIND =
            "\"kinds\": {\"bullet\": {\"volts\": 12, \"milliamps\": [10, 10, 10], \"idle\": 1, \"least\": 11.99}},";
    public static final String FENCE =
            "{\"name\": \"left\", \"chain\": [{\"skip\": 1}, \"fence\"], \"kind\": \"bullet\","
                    + " \"line\": {\"mm2\": 0.5, \"pitch\": 1000}}";
    public static final String POST = "{\"name\": \"right\", \"chain\": [\"post\"], \"colors\": \"GRBW\"}";

    private static final String TIMELINE = """
            {"duskloom": "timeline/1", "title": "Fence", "display": "display.json", "rate": 20, "length": "3s", "layers": [
              {"name": "ground", "cues": [
                {"at": "1s", "for": "1s", "on": "fence", "effect": "solid", "with": {"color": "red"}},
                {"name": "flood", "at": "2s", "for": "1s", "on": "*", "effect": "solid"}]}]}
            """;

    /** The figures of the show on a display with these fields. */
    public static Reported of(Path folder, String fields) throws IOException {
        return of(folder, fields, false);
    }

    public static Reported everythingOn(Path folder, String fields) throws IOException {
        return of(folder, fields, true);
    }

    private static Reported of(Path folder, String fields, boolean everythingOn) throws IOException {
        Files.writeString(folder.resolve("display.json"), """
                {"duskloom": "display/1", "units": "mm",
                 "shapes": {"fence": {"build": [{"line": {"from": [0, 0], "to": [3000, 0], "count": 4}}]},
                            "post": {"build": [{"line": {"from": [0, 0], "to": [0, 500], "count": 2}}]}},
                 "props": [{"name": "fence", "shape": "fence", "at": [0, 0]},
                           {"name": "post", "shape": "post", "at": [-1000, 0], "scale": 2}]%s}
                """.formatted(fields.isEmpty() ? "" : ", " + fields));
        Path file = Files.writeString(folder.resolve("show.json"), TIMELINE);
        Problems problems = new Problems();
        Show show = ShowReader.read(file, problems).orElseThrow(() -> new AssertionError(Inputs.shown(problems)));
        Plan plan = PlanCompiler.compile(show, PlainEffects.all(), problems)
                .orElseThrow(() -> new AssertionError(Inputs.shown(problems)));
        PowerMeter meter = new PowerMeter(show.display().map(Display::ports).orElse(Ports.NONE), 20);
        FrameRenderer frames = new FrameRenderer(plan, "Fence", FramePixels.of(show.map()));
        RunInfo run = frames.info();
        LightMeter light = LightMeter.ofAnyArea();
        if (everythingOn) {
            meter.begin(run);
            meter.full(0);
        } else {
            measure(frames, List.of(meter, light));
        }
        ReportSubject subject =
                new ReportSubject("Fence", run.rate(), run.frames().count(), run.pixelCount(), 20, everythingOn);
        PlayingCues playing = new PlayingCues(show.timeline(), plan);
        Report report = Report.of(subject, show.display(), meter.figures(), playing);
        return new Reported(
                show, everythingOn ? report : report.with(LightReport.of(light, frames, show.map(), playing)));
    }

    private static void measure(FrameRenderer frames, List<Meter> meters) throws IOException {
        try {
            new FrameRun(frames, frames.info().frames(), 1).into(new MeterSink(meters, frames), (done, all) -> {});
        } catch (InterruptedException stopped) {
            throw new AssertionError(stopped);
        }
    }

    /** One supply of so many amperes for the fence. */
    public static String supply(double amps) {
        return "\"supplies\": [{\"name\": \"shed \\\"old\\\"\", \"volts\": 12, \"amps\": " + amps
                + ", \"feeds\": [{\"port\": \"left\", \"at\": [1, 5], \"lead\": {\"mm2\": 1.5, \"length\": 2000}}]}]";
    }

    public static String ports(String... ports) {
        return "\"ports\": [" + String.join(", ", ports) + "]";
    }
}
