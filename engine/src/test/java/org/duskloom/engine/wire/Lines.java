package org.duskloom.engine.wire;

import java.util.List;
import java.util.stream.IntStream;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.map.Prop;
import org.duskloom.engine.problem.Location;

/** Ports for tests: on a map of one fence. */
final class Lines {
    static final Location PLACE = Location.ofFile("display.json");

    private Lines() {}

    static PixelMap fence(int pixels) {
        double[] zeros = new double[pixels];
        double[] x = IntStream.range(0, pixels).asDoubleStream().toArray();
        Positions positions = new Positions(x, zeros, zeros);
        return new PixelMap(List.of(new Prop("fence", 0, pixels, List.of(), PLACE)), positions, positions);
    }

    static Link pixels(int from, int toExclusive) {
        return new Link("fence", 0, IntStream.range(from, toExclusive).toArray(), PLACE);
    }

    static Link dark(int count) {
        return new Link("", -1, IntStream.generate(() -> Link.DARK).limit(count).toArray(), PLACE);
    }

    static Signal signal(String colors, int bits, Brightness brightness, Curve curve, boolean dither) {
        try {
            return new Signal(ColorOrder.parse(colors), bits, brightness, curve, dither);
        } catch (org.duskloom.engine.problem.TextFormatException e) {
            throw new AssertionError(e);
        }
    }

    /** Linear, full, not dithered. */
    static Signal plain(String colors, int bits) {
        return signal(colors, bits, Brightness.FULL, new Curve.Linear(), false);
    }

    static Port port(String name, Signal signal, int universe, int slot, Link... chain) {
        return new Port(name, List.of(chain), signal, new Packing(universe, slot, true), PLACE);
    }

    /** What is sent for some pixels, given as sRGB codes, in frame 0. */
    static int[] sent(Signal signal, int... codes) {
        int pixels = codes.length / 3;
        PortEncoder encoder = new PortEncoder(port("left", signal, 1, 1, pixels(0, pixels)), fence(pixels));
        return unsigned(encode(encoder, 0, bytes(codes)));
    }

    static byte[] encode(PortEncoder encoder, long frame, byte[] rgb) {
        byte[] bytes = new byte[encoder.byteCount()];
        encoder.encode(frame, rgb, 0, bytes, 0);
        return bytes;
    }

    static byte[] bytes(int... values) {
        byte[] bytes = new byte[values.length];
        for (int i = 0; i < values.length; i++) {
            bytes[i] = (byte) values[i];
        }
        return bytes;
    }

    static int[] unsigned(byte[] bytes) {
        return IntStream.range(0, bytes.length).map(i -> bytes[i] & 0xFF).toArray();
    }
}
