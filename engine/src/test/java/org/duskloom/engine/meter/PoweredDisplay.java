package org.duskloom.engine.meter;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.duskloom.engine.frame.FramePixels;
import org.duskloom.engine.frame.RunInfo;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.time.FrameRate;
import org.duskloom.engine.wire.Conductor;
import org.duskloom.engine.wire.DataLine;
import org.duskloom.engine.wire.Feed;
import org.duskloom.engine.wire.Lead;
import org.duskloom.engine.wire.Link;
import org.duskloom.engine.wire.Packing;
import org.duskloom.engine.wire.PixelKind;
import org.duskloom.engine.wire.Port;
import org.duskloom.engine.wire.Ports;
import org.duskloom.engine.wire.PowerLine;
import org.duskloom.engine.wire.Signal;
import org.duskloom.engine.wire.Supply;

/**
 * Ten pixels of 10 mA a colour and 1 mA idle for tests, on two ports of one supply of 1 A: five with five dark ones
 * behind them, on a line with 1 ohm in every segment and in its lead, and five of which nothing more is said. One frame
 * a second.
 */
final class PoweredDisplay {
    private static final Location PLACE = Location.ofFile("display.json");

    /** A length of it there and back resists 1 ohm at 20 degrees Celsius. */
    private static final Conductor METRE_OF_HALF_AN_OHM = new Conductor("thin", 2.0 / 58);

    private PoweredDisplay() {}

    static Ports ports() {
        PixelKind kind = new PixelKind(
                "bullet", 12, List.of(10.0, 10.0, 10.0), 1, OptionalDouble.of(11.5), DataLine.USUAL, List.of());
        double[] metres = new double[9];
        Arrays.fill(metres, 1);
        Link dark = new Link("", -1, new int[] {-1, -1, -1, -1, -1}, PLACE);
        Port left = new Port(
                "left",
                List.of(pixels(0), dark),
                Signal.USUAL,
                new Packing(1, 1, true),
                Optional.of(kind),
                Optional.of(new PowerLine(METRE_OF_HALF_AN_OHM, metres, true)),
                PLACE);
        Port right = new Port(
                "right",
                List.of(pixels(5)),
                Signal.USUAL,
                new Packing(2, 1, true),
                Optional.of(kind),
                Optional.empty(),
                PLACE);
        List<Feed> feeds = List.of(
                new Feed("left", 0, Optional.of(new Lead(METRE_OF_HALF_AN_OHM, 1))),
                new Feed("right", 0, Optional.empty()));
        return new Ports(List.of(left, right), List.of(new Supply("shed", 12, 1, 0.8, feeds, PLACE)));
    }

    private static Link pixels(int first) {
        return new Link("fence", 0, IntStream.range(first, first + 5).toArray(), PLACE);
    }

    static RunInfo run(int frames) {
        return RunInfo.ofWhole("Fence", FrameRate.of(1), frames, FramePixels.unnamed(10));
    }

    /** All pixels grey of that code. */
    static byte[] frame(int code) {
        byte[] frame = new byte[30];
        Arrays.fill(frame, (byte) code);
        return frame;
    }
}
