package org.duskloom.cli;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.duskloom.engine.display.Display;
import org.duskloom.engine.frame.FrameList;
import org.duskloom.engine.frame.FrameSink;
import org.duskloom.engine.frame.FrameSource;
import org.duskloom.engine.frame.RunInfo;
import org.duskloom.engine.meter.KeptFrames;
import org.duskloom.engine.meter.MeterSink;
import org.duskloom.engine.meter.PowerMeter;
import org.duskloom.engine.meter.light.FlashFigures;
import org.duskloom.engine.meter.light.LightMeter;
import org.duskloom.engine.report.LightReport;
import org.duskloom.engine.report.PlayingCues;
import org.duskloom.engine.report.Report;
import org.duskloom.engine.report.ReportSubject;
import org.duskloom.engine.wire.Conductor;
import org.duskloom.engine.wire.Ports;

/** The meters of a show, and the report of what they have seen. */
final class ShowMeters {
    /**
     * What a rendering gives for telling of flashes where no ports say that it is about to be played: enough for 19,000
     * pixels at 40 frames a second. Looking at 100,000 would take as long as rendering them.
     */
    private static final long MOST_BYTES = 8_400_000;

    private final LoadedShow show;
    private final double copperCelsius;
    private final PowerMeter power;
    private final LightMeter light;

    /** A display of which nobody says from how far it is seen; its wires are as warm as usual. */
    static ShowMeters usual(LoadedShow show) {
        return new ShowMeters(show, Conductor.USUAL_CELSIUS, LightMeter.ofAnyArea());
    }

    /**
     * Meters of a show.
     *
     * @param copperCelsius how warm the copper of its wires is
     */
    ShowMeters(LoadedShow show, double copperCelsius, LightMeter light) {
        this.light = light;
        this.show = show;
        this.copperCelsius = copperCelsius;
        this.power = new PowerMeter(show.show().display().map(Display::ports).orElse(Ports.NONE), copperCelsius);
    }

    /**
     * What sees the frames of a run beside the rendering, each on a thread of its own: currents where there are ports,
     * and flashes there and wherever the display is not too large for looking at it unasked.
     */
    List<FrameSink> sinks(RunInfo run) {
        List<FrameSink> sinks = new ArrayList<>();
        if (hasPorts()) {
            sinks.add(new MeterSink(List.of(power), show.frames()));
        }
        if (looksForFlashes(run)) {
            sinks.add(eyes(show.frames()));
        }
        return sinks;
    }

    /** What looks for flashes, and at the joint in the frames that it has kept. */
    private MeterSink eyes(FrameSource source) {
        KeptFrames frames = new KeptFrames(source);
        return new MeterSink(List.of(frames, light), frames);
    }

    private boolean hasPorts() {
        return show.wired().wiring().isPresent();
    }

    private boolean looksForFlashes(RunInfo run) {
        return hasPorts() || LightMeter.bytes(run) <= MOST_BYTES;
    }

    /** Sees all frames of the show. */
    Report ofShow(Streams streams) throws IOException, InterruptedException {
        FrameSource source = show.frames();
        RunInfo info = source.info();
        Rendering rendering = new Rendering(source, info.frames());
        rendering.into(List.of(new MeterSink(List.of(power), source), eyes(source)), streams);
        PlayingCues playing = playing();
        return report(rendering.info(), false)
                .with(LightReport.of(light, source, show.show().map(), playing));
    }

    /** Sees everything on, as long as the show is. */
    Report ofEverythingOn() {
        RunInfo info = show.frames().info();
        power.begin(info);
        power.full(0);
        return report(info, true);
    }

    /** What was seen in a run. */
    Report report(RunInfo run, boolean everythingOn) {
        FrameList frames = run.frames();
        Optional<Display> display = show.show().display();
        ReportSubject subject = new ReportSubject(
                show.title(), run.rate(), frames.count(), run.pixelCount(), copperCelsius, everythingOn);
        return Report.of(subject, display, power.figures(), playing());
    }

    /** How often it flashed in a run; nothing where that was not looked at. */
    Optional<FlashFigures> flashes(RunInfo run) {
        return looksForFlashes(run) ? Optional.of(light.flashes()) : Optional.empty();
    }

    private PlayingCues playing() {
        return new PlayingCues(show.show().timeline(), show.plan());
    }
}
