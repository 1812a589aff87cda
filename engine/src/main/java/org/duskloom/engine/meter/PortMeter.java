package org.duskloom.engine.meter;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.duskloom.engine.frame.RunInfo;
import org.duskloom.engine.wire.Feed;
import org.duskloom.engine.wire.Port;
import org.duskloom.engine.wire.PortCurrents;
import org.duskloom.engine.wire.Supply;

/** Measures the current of one port, and the voltages along its line where they can be known. */
final class PortMeter {
    private final Port port;
    private final PortCurrents currents;
    private final double[] amps;
    private final double idleAmps;
    private final AmpTally tally;
    private final Optional<Line> line;
    private double now;

    /** What is kept of the line of a port. */
    private static final class Line {
        private final LineNetwork network;
        private final List<Feed> feeds;
        private final MostDrops drops;
        private final double[] peakAmps;
        private final double[] fullAmps;

        Line(LineNetwork network, List<Feed> feeds) {
            this.network = network;
            this.feeds = feeds;
            this.drops = new MostDrops(network);
            this.peakAmps = new double[feeds.size()];
            this.fullAmps = new double[feeds.size()];
        }

        double measure(long frame, double[] amps) {
            double sum = network.solve(amps);
            drops.raise(frame);
            raiseFeeds(peakAmps);
            return sum;
        }

        void raiseFeeds(double[] most) {
            for (int i = 0; i < most.length; i++) {
                most[i] = Math.max(most[i], network.sourceAmps(i));
            }
        }

        VoltFigures figures(Port port) {
            double[] mostDrop = drops.most();
            double[] least = new double[mostDrop.length];
            int deepest = 0;
            for (int i = 0; i < least.length; i++) {
                least[i] = network.sourceVolts() - mostDrop[i];
                deepest = mostDrop[i] > mostDrop[deepest] ? i : deepest;
            }
            LeadFigures[] leads = new LeadFigures[feeds.size()];
            for (int i = 0; i < leads.length; i++) {
                leads[i] = new LeadFigures(feeds.get(i), peakAmps[i], fullAmps[i]);
            }
            return new VoltFigures(
                    network.sourceVolts(),
                    least,
                    drops.frames(),
                    deepest,
                    port.pixelKind().leastVolts(),
                    List.of(leads));
        }
    }

    /**
     * A meter of a port.
     *
     * @param supply what feeds it; nothing where nobody says
     * @param celsius how warm the copper is
     */
    PortMeter(Port port, Optional<Supply> supply, double celsius) {
        this.port = port;
        this.currents = new PortCurrents(port);
        this.amps = new double[currents.pixelCount()];
        this.tally = new AmpTally(currents.fullAmps());
        this.line = supply.flatMap(feeding -> line(port, feeding, celsius));
        line.ifPresent(known -> {
            currents.fillFull(amps);
            known.network.solve(amps);
            known.raiseFeeds(known.fullAmps);
        });
        currents.fillIdle(amps);
        this.idleAmps = Arrays.stream(amps).sum();
    }

    private static Optional<Line> line(Port port, Supply supply, double celsius) {
        List<Feed> feeds = supply.feedsOf(port.name());
        return port.line()
                .map(wire -> new Line(
                        new LineNetwork(
                                wire.segmentOhms(celsius),
                                feeds.stream()
                                        .map(feed -> new LineNetwork.Source(
                                                feed.pixel(), feed.ohms(celsius), supply.volts()))
                                        .toList()),
                        feeds));
    }

    void begin(RunInfo run) {
        tally.begin(run);
    }

    /**
     * Measures a frame. Where the line shows the same as before, currents and voltages are the same too.
     *
     * @param before holds the frame before; empty for the first
     * @param beforeOffset where that starts
     */
    void frame(long frame, byte[] rgb, int offset, byte[] before, int beforeOffset) {
        if (before.length > 0 && currents.areSame(before, beforeOffset, rgb, offset)) {
            tally.add(frame, now);
        } else {
            currents.fill(rgb, offset, amps);
            measure(frame);
        }
    }

    /** Measures every colour of every pixel full on. */
    void full(long frame) {
        currents.fillFull(amps);
        measure(frame);
    }

    private void measure(long frame) {
        now = line.isPresent() ? line.get().measure(frame, amps) : sum();
        tally.add(frame, now);
    }

    private double sum() {
        double sum = 0;
        for (double pixel : amps) {
            sum += pixel;
        }
        return sum;
    }

    /** What it draws in the frame that was measured last, in amperes. */
    double now() {
        return now;
    }

    double idleAmps() {
        return idleAmps;
    }

    double fullAmps() {
        return currents.fullAmps();
    }

    PortFigures figures() {
        return new PortFigures(port, tally.figures(), idleAmps, fullAmps(), line.map(known -> known.figures(port)));
    }
}
