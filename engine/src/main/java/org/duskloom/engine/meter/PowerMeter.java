package org.duskloom.engine.meter;

import java.util.ArrayList;
import java.util.List;
import org.duskloom.engine.frame.FrameBatch;
import org.duskloom.engine.frame.RunInfo;
import org.duskloom.engine.wire.Port;
import org.duskloom.engine.wire.Ports;
import org.duskloom.engine.wire.Supply;

/** Measures what the ports and supplies of a display give while a show runs. */
public final class PowerMeter implements Meter {
    private final List<PortMeter> ports = new ArrayList<>();
    private final List<SupplyTally> supplies = new ArrayList<>();
    private byte[] before = {};
    private int frameBytes;
    private double seconds;

    /** A supply and the meters of what it feeds. */
    private record SupplyTally(Supply supply, List<PortMeter> ports, AmpTally tally) {
        static SupplyTally of(Supply supply, List<PortMeter> ports) {
            double full = ports.stream().mapToDouble(PortMeter::fullAmps).sum();
            return new SupplyTally(supply, ports, new AmpTally(full));
        }

        void add(long frame) {
            double amps = 0;
            for (int i = 0; i < ports.size(); i++) {
                amps += ports.get(i).now();
            }
            tally.add(frame, amps);
        }

        SupplyFigures figures(double seconds) {
            AmpFigures amps = tally.figures();
            return new SupplyFigures(
                    supply,
                    amps,
                    ports.stream().mapToDouble(PortMeter::idleAmps).sum(),
                    ports.stream().mapToDouble(PortMeter::fullAmps).sum(),
                    supply.volts() * amps.mean() * seconds / 3600);
        }
    }

    /**
     * A meter of a display.
     *
     * @param wiring its ports and supplies
     * @param celsius how warm the copper of its wires is
     */
    public PowerMeter(Ports wiring, double celsius) {
        for (Port port : wiring.ports()) {
            ports.add(new PortMeter(port, wiring.supplyOf(port), celsius));
        }
        for (Supply supply : wiring.supplies()) {
            List<PortMeter> fed = new ArrayList<>();
            for (int i = 0; i < ports.size(); i++) {
                if (supply.feeds(wiring.ports().get(i).name())) {
                    fed.add(ports.get(i));
                }
            }
            supplies.add(SupplyTally.of(supply, fed));
        }
    }

    @Override
    public void begin(RunInfo run) {
        before = new byte[0];
        frameBytes = run.frameBytes();
        ports.forEach(port -> port.begin(run));
        supplies.forEach(supply -> supply.tally.begin(run));
        seconds = run.rate().secondsOf(run.frames().count());
    }

    @Override
    public void frame(long frame, byte[] rgb, int offset) {
        measure(frame, rgb, offset, before, 0);
        keep(rgb, offset);
    }

    /** The frame before stands in the batch, but for the first. */
    @Override
    public void take(FrameBatch frames) {
        byte[] rgb = frames.rgb();
        measure(frames.frame(0), rgb, frames.offset(0), before, 0);
        for (int i = 1; i < frames.count(); i++) {
            measure(frames.frame(i), rgb, frames.offset(i), rgb, frames.offset(i - 1));
        }
        keep(rgb, frames.offset(frames.count() - 1));
    }

    private void measure(long frame, byte[] rgb, int offset, byte[] lastRgb, int lastOffset) {
        for (int i = 0; i < ports.size(); i++) {
            ports.get(i).frame(frame, rgb, offset, lastRgb, lastOffset);
        }
        addSupplies(frame);
    }

    private void keep(byte[] rgb, int offset) {
        before = before.length == 0 ? new byte[frameBytes] : before;
        System.arraycopy(rgb, offset, before, 0, frameBytes);
    }

    /**
     * Measures a frame with every colour of every pixel full on, dark pixels too, whatever {@code cap} and {@code
     * white} say: what a controller may show that hangs.
     */
    public void full(long frame) {
        for (int i = 0; i < ports.size(); i++) {
            ports.get(i).full(frame);
        }
        addSupplies(frame);
    }

    private void addSupplies(long frame) {
        for (int i = 0; i < supplies.size(); i++) {
            supplies.get(i).add(frame);
        }
    }

    /** What was measured so far. */
    public PowerFigures figures() {
        return new PowerFigures(
                supplies.stream().map(supply -> supply.figures(seconds)).toList(),
                ports.stream().map(PortMeter::figures).toList());
    }
}
