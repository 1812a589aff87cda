package org.duskloom.engine.wire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.IntStream;
import org.duskloom.engine.color.Srgb;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What the bytes of a port promise as a whole: the same light and the same current, however they are ordered. */
class PortEncoderTest {
    private static final int PIXELS = 60;
    private static final List<Double> MILLIAMPS = List.of(11.0, 13.0, 17.0, 19.0);
    private static final Brightness DIMMED = new Brightness(1, 0.8, 0.6, 0.9);

    /** Signals whose bytes mean for how much of the time a colour is on. */
    enum Duty {
        THREE("GRB", new Curve.Linear()),
        FOUR("BWRG", new Curve.Linear()),
        BENT("BGR", new Curve.Gamma(2.2)),
        FOUR_BENT("WRGB", new Curve.Gamma(2.8));

        private final String colors;
        private final Curve curve;

        Duty(String colors, Curve curve) {
            this.colors = colors;
            this.curve = curve;
        }

        private Port port(int bits) {
            Signal signal = Lines.signal(colors, bits, DIMMED, curve, true);
            PixelKind kind = new PixelKind(
                    "bud",
                    12,
                    MILLIAMPS.subList(0, colors.length()),
                    0,
                    OptionalDouble.empty(),
                    DataLine.USUAL,
                    List.of());
            return new Port(
                    "left",
                    List.of(Lines.pixels(0, PIXELS)),
                    signal,
                    new Packing(1, 1, true),
                    Optional.of(kind),
                    Optional.empty(),
                    Lines.PLACE);
        }
    }

    private static byte[] frame(long seed) {
        byte[] rgb = new byte[3 * PIXELS];
        new Random(seed).nextBytes(rgb);
        return rgb;
    }

    private static PortEncoder encoder(String colors, int bits, boolean dither, Link... chain) {
        Signal signal = Lines.signal(colors, bits, Brightness.FULL, new Curve.Linear(), dither);
        return new PortEncoder(Lines.port("left", signal, 1, 1, chain), Lines.fence(PIXELS));
    }

    private static double[] reckoned(Port port, byte[] rgb) {
        double[] amps = new double[PIXELS];
        new PortCurrents(port).fill(rgb, 0, amps);
        return amps;
    }

    /** Current is the share of time that is sent times the current of the colour: each byte asks for so much. */
    @ParameterizedTest
    @EnumSource
    void whatIsReckonedToBeDrawnIsWhatSixteenBitsAskFor(Duty duty) {
        Port port = duty.port(16);
        byte[] rgb = frame(1);
        int[] sent = Lines.unsigned(Lines.encode(new PortEncoder(port, Lines.fence(PIXELS)), 0, rgb));
        double[] reckoned = reckoned(port, rgb);
        int colors = duty.colors.length();
        for (int pixel = 0; pixel < PIXELS; pixel++) {
            double amps = 0;
            for (int color = 0; color < colors; color++) {
                int at = 2 * (pixel * colors + color);
                amps += MILLIAMPS.get(color) / 1000 * (sent[at] << 8 | sent[at + 1]) / 65_535;
            }
            assertThat(amps).as("pixel %d", pixel).isCloseTo(reckoned[pixel], within(0.5 / 65_535 * 0.06));
        }
    }

    /** The same in the mean of dithered frames, each colour off by less than a step of one frame in all of them. */
    @ParameterizedTest
    @EnumSource
    void whatIsReckonedToBeDrawnIsTheMeanOfDitheredBytes(Duty duty) {
        int frames = 400;
        Port port = duty.port(8);
        byte[] rgb = frame(2);
        PortEncoder encoder = new PortEncoder(port, Lines.fence(PIXELS));
        double[] amps = new double[PIXELS];
        for (int frame = 0; frame < frames; frame++) {
            int[] sent = Lines.unsigned(Lines.encode(encoder, 5_000_000_000L + frame, rgb));
            for (int i = 0; i < sent.length; i++) {
                int colors = duty.colors.length();
                amps[i / colors] += MILLIAMPS.get(i % colors) / 1000 * sent[i] / 255 / frames;
            }
        }
        assertThat(amps).containsExactly(reckoned(port, rgb), within(0.06 / 255 / frames));
    }

    /** What the white light takes over the others give up: each colour's light and the white are what was asked for. */
    @Test
    void aColourAndTheWhiteLightGiveTheLightOfTheCode() {
        byte[] rgb = frame(3);
        int[] codes = Lines.unsigned(rgb);
        int[] sent = Lines.unsigned(Lines.encode(encoder("RGBW", 16, false, Lines.pixels(0, PIXELS)), 0, rgb));
        int[] levels = IntStream.range(0, 4 * PIXELS)
                .map(i -> sent[2 * i] << 8 | sent[2 * i + 1])
                .toArray();
        for (int i = 0; i < codes.length; i++) {
            int white = levels[4 * (i / 3) + 3];
            double light = 65_535 * Srgb.decode(codes[i] / 255.0);
            assertThat(levels[4 * (i / 3) + i % 3] + white).isCloseTo((int) light, within(2));
        }
    }

    /** A line whose colours come in another order sends the same bytes in that order, dithered in the same way. */
    @ParameterizedTest
    @ValueSource(strings = {"RBGW", "GRBW", "GBRW", "BRGW", "BGRW", "WRGB", "WBGR", "RWGB", "GBWR"})
    void theOrderOfTheColoursOrdersTheBytesAlone(String colors) {
        byte[] usual = Lines.encode(encoder("RGBW", 8, true, Lines.pixels(0, PIXELS)), 77, frame(4));
        byte[] other = Lines.encode(encoder(colors, 8, true, Lines.pixels(0, PIXELS)), 77, frame(4));
        for (int i = 0; i < other.length; i++) {
            assertThat(other[i]).isEqualTo(usual[i / 4 * 4 + "RGBW".indexOf(colors.charAt(i % 4))]);
        }
    }

    /** Only the bytes of pixels that are lit are written, wherever the port's bytes are to lie. */
    @ParameterizedTest
    @ValueSource(ints = {8, 16})
    void nothingBesideLitPixelsIsWritten(int bits) {
        PortEncoder encoder = encoder("RGB", bits, true, Lines.dark(2), Lines.pixels(3, 5), Lines.dark(1));
        assertThat(encoder.byteCount()).isEqualTo(15 * bits / 8);
        byte[] bytes = new byte[encoder.byteCount() + 20];
        Arrays.fill(bytes, (byte) 0x5A);
        byte[] rgb = new byte[7 + 3 * PIXELS];
        Arrays.fill(rgb, (byte) 255);
        encoder.encode(1, rgb, 7, bytes, 10);
        int from = 10 + 6 * bits / 8;
        for (int i = 0; i < bytes.length; i++) {
            boolean lit = i >= from && i < from + 6 * bits / 8;
            assertThat(bytes[i]).as("byte %d", i).isEqualTo(lit ? (byte) 255 : (byte) 0x5A);
        }
    }

    /** Many threads may share an encoder, and take frames in any order. */
    @Test
    void framesDependOnNothingButTheirNumberAndTheirCodes() {
        PortEncoder shared = encoder("GRBW", 8, true, Lines.pixels(0, PIXELS));
        List<byte[]> alone = IntStream.range(0, 200)
                .mapToObj(frame -> Lines.encode(encoder("GRBW", 8, true, Lines.pixels(0, PIXELS)), frame, frame(frame)))
                .toList();
        List<byte[]> together = IntStream.range(0, 200)
                .parallel()
                .map(i -> 199 - i)
                .mapToObj(frame -> Lines.encode(shared, frame, frame(frame)))
                .toList();
        for (int frame = 0; frame < 200; frame++) {
            assertThat(together.get(199 - frame)).isEqualTo(alone.get(frame));
        }
    }
}
