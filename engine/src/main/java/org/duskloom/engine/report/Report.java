package org.duskloom.engine.report;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeSet;
import org.duskloom.engine.display.Display;
import org.duskloom.engine.meter.PowerFigures;
import org.duskloom.engine.wire.Port;
import org.duskloom.engine.wire.Ports;

/**
 * All that is told of a show, before it is written down.
 *
 * @param subject what it is about
 * @param power currents and voltages; no supplies and ports where the display has none
 * @param data what the data ask of their lines
 * @param parts what to buy and to cut; none where there is no display
 * @param light what eyes get of the show; nothing where it was not looked at
 * @param cues which cues play at a moment
 */
public record Report(
        ReportSubject subject,
        PowerFigures power,
        DataFigures data,
        List<PartLine> parts,
        Optional<LightReport> light,
        PlayingCues cues) {
    public Report {
        Objects.requireNonNull(subject, "subject");
        Objects.requireNonNull(power, "power");
        Objects.requireNonNull(data, "data");
        Objects.requireNonNull(cues, "cues");
        parts = List.copyOf(parts);
    }

    /**
     * A report.
     *
     * @param display what the show is played on; nothing where it is a map
     */
    public static Report of(ReportSubject subject, Optional<Display> display, PowerFigures power, PlayingCues cues) {
        Ports ports = display.map(Display::ports).orElse(Ports.NONE);
        return new Report(
                subject,
                power,
                DataFigures.of(ports, subject.rate()),
                display.map(PartsList::of).orElse(List.of()),
                Optional.empty(),
                cues);
    }

    /** The same, with what eyes get. */
    public Report with(LightReport seen) {
        return new Report(subject, power, data, parts, Optional.of(seen), cues);
    }

    /** When a frame is shown, in seconds. */
    public double secondsOf(long frame) {
        return subject.rate().secondsOf(frame);
    }

    /**
     * Which figures nobody wrote, in words with the ports that they are for; they are common practice and have no
     * source.
     */
    public List<String> assumptions() {
        TreeSet<String> assumed = new TreeSet<>();
        for (Port port : data.ports().stream().map(PortTiming::port).toList()) {
            List<String> figures = port.pixelKind().assumed();
            if (!figures.isEmpty()) {
                String whose = port.kind().map(kind -> "kind " + kind.name()).orElse("port " + port.name());
                assumed.add(whose + ": " + String.join(", ", figures));
            }
        }
        return List.copyOf(assumed);
    }
}
