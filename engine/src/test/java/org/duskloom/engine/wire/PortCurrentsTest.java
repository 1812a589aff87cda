package org.duskloom.engine.wire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.duskloom.engine.color.Srgb;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What pixels draw, against duties worked out from the sRGB curve of IEC 61966-2-1. */
class PortCurrentsTest {
    private static final double CLOSE = 1e-12;

    private static PixelKind kind(double idle, Double... milliamps) {
        return new PixelKind("k", 12, List.of(milliamps), idle, OptionalDouble.empty(), DataLine.USUAL, List.of());
    }

    private static double[] drawn(Signal signal, PixelKind kind, int... codes) {
        int pixels = codes.length / 3;
        return drawn(signal, kind, List.of(Lines.pixels(0, pixels)), codes);
    }

    private static double[] drawn(Signal signal, PixelKind kind, List<Link> chain, int... codes) {
        Port port = new Port(
                "left", chain, signal, new Packing(1, 1, true), Optional.of(kind), Optional.empty(), Lines.PLACE);
        PortCurrents currents = new PortCurrents(port);
        double[] amps = new double[currents.pixelCount()];
        currents.fillIdle(amps);
        currents.fill(Lines.bytes(codes), 0, amps);
        return amps;
    }

    /** Duty is linear light: code 128 is on for 0.215860500114 of the time, 64 for 0.0512694583740. */
    @Test
    void aColourDrawsItsCurrentTimesItsDuty() {
        double[] amps = drawn(Lines.plain("RGB", 8), kind(1, 10.0, 20.0, 30.0), 255, 0, 0, 128, 64, 0, 0, 0, 255);
        assertThat(amps)
                .usingComparatorWithPrecision(CLOSE)
                .containsExactly(0.011, 0.001 + 0.00215860500113899 + 0.001025389167480864, 0.031);
    }

    /** Every pixel of the line counts, whichever way it runs; pixels that are not on it and those before it do not. */
    @ParameterizedTest
    @CsvSource({"2 3 4, 2 3 4", "4 3 2, 2 3 4", "2 4 7, 2 4 7", "7 3 4 0, 0 3 4 7"})
    void knowsWhetherALineShowsTheSame(String chain, String counting) {
        int[] pixels =
                Arrays.stream(chain.split(" ")).mapToInt(Integer::parseInt).toArray();
        List<String> counts = List.of(counting.split(" "));
        Port port = Lines.port(
                "left", Lines.plain("RGB", 8), 1, 1, Lines.dark(2), new Link("fence", 0, pixels, Lines.PLACE));
        PortCurrents currents = new PortCurrents(port);
        byte[] before = new byte[24];
        for (int at = 0; at < before.length; at++) {
            byte[] now = new byte[3 + before.length];
            now[3 + at] = 1;
            assertThat(currents.areSame(before, 0, now, 3))
                    .as("byte %d", at)
                    .isEqualTo(!counts.contains(String.valueOf(at / 3)));
        }
    }

    /** The numbers of a kind stand in the order of the wire. */
    @Test
    void theNumbersFollowTheColoursOfThePort() {
        assertThat(drawn(Lines.plain("GRB", 8), kind(0, 10.0, 20.0, 30.0), 255, 0, 0)[0])
                .isCloseTo(0.020, within(CLOSE));
    }

    /** Every LED full on, 60 mA: the figure of common practice. White at code 128 draws 21.6 % of it. */
    @ParameterizedTest
    @CsvSource({"255, 0.061", "128, 0.013951630006834", "0, 0.001"})
    void whiteOfCommonPractice(int code, double amps) {
        assertThat(drawn(Lines.plain("RGB", 8), PixelKind.usual(3), code, code, code)[0])
                .isCloseTo(amps, within(CLOSE));
    }

    @Test
    void whiteAndCapLowerTheDuty() {
        Signal signal = Lines.signal("RGB", 8, new Brightness(1, 0.5, 0.25, 0.6), new Curve.Linear(), true);
        assertThat(drawn(signal, kind(0, 10.0, 10.0, 10.0), 255, 255, 255)[0])
                .isCloseTo(0.006 + 0.003 + 0.0015, within(CLOSE));
    }

    /** A receiver of codes makes of them the light that they stand for: the same current. */
    @Test
    void codesAreNotDuties() {
        Signal codes = Lines.signal("RGB", 8, Brightness.FULL, new Curve.Codes(), false);
        assertThat(drawn(codes, kind(0, 10.0, 10.0, 10.0), 128, 0, 0)[0]).isCloseTo(0.00215860500113899, within(CLOSE));
    }

    /** A gamma is sent as duty: code 128 at 2.2 is on for 0.219519718074868 of the time. */
    @Test
    void aGammaIsADuty() {
        Signal gamma = Lines.signal("RGB", 8, Brightness.FULL, new Curve.Gamma(2.2), true);
        assertThat(drawn(gamma, kind(0, 10.0, 10.0, 10.0), 128, 0, 0)[0]).isCloseTo(0.00219519718074868, within(1e-9));
    }

    /**
     * White takes over the least: sRGB 200, 150, 100 gives red 0.450142759994, green 0.177549633634, blue 0 and white
     * 0.127437680436, together 0.755130074, where three colours take 1.010005435.
     */
    @Test
    void aWhiteLightTakesOver() {
        double four = drawn(Lines.plain("RGBW", 8), kind(0, 1000.0, 1000.0, 1000.0, 1000.0), 200, 150, 100)[0];
        double three = drawn(Lines.plain("RGB", 8), kind(0, 1000.0, 1000.0, 1000.0), 200, 150, 100)[0];
        assertThat(four).isCloseTo(0.755130074, within(1e-9));
        assertThat(three).isCloseTo(1.010005435, within(1e-9));
        double weighted = drawn(Lines.plain("GRBW", 8), kind(0, 100.0, 200.0, 300.0, 400.0), 200, 150, 100)[0];
        assertThat(weighted)
                .isCloseTo(0.1 * 0.177549633634 + 0.2 * 0.450142759994 + 0.4 * 0.127437680436, within(1e-9));
    }

    /** With a gamma what is left is bent after the white light has taken its share. */
    @Test
    void aWhiteLightAndAGamma() {
        Curve gamma = new Curve.Gamma(2.2);
        Signal signal = Lines.signal("RGBW", 8, new Brightness(1, 1, 1, 0.5), gamma, true);
        double drawn = drawn(signal, kind(0, 100.0, 200.0, 300.0, 400.0), 200, 150, 100)[0];
        double expected = 0.1 * gamma.sent(0.5 * 0.450142759994)
                + 0.2 * gamma.sent(0.5 * 0.177549633634)
                + 0.4 * gamma.sent(0.5 * 0.127437680436);
        assertThat(drawn).isCloseTo(expected, within(1e-9));
    }

    @Test
    void darkPixelsDrawWhatIsIdle() {
        List<Link> chain = List.of(Lines.dark(1), Lines.pixels(0, 1), Lines.dark(2));
        assertThat(drawn(Lines.plain("RGB", 8), kind(2, 10.0, 10.0, 10.0), chain, 255, 255, 255))
                .usingComparatorWithPrecision(CLOSE)
                .containsExactly(0.002, 0.032, 0.002, 0.002);
    }

    /** A controller that hangs asks neither for the cap nor for what is dark. */
    @Test
    void everythingOnKnowsNoCap() {
        Signal signal = Lines.signal("GRBW", 8, new Brightness(1, 0.5, 0.5, 0.1), new Curve.Linear(), true);
        Port port = new Port(
                "left",
                List.of(Lines.dark(1), Lines.pixels(0, 3)),
                signal,
                new Packing(1, 1, true),
                Optional.of(kind(1, 10.0, 11.0, 12.0, 13.0)),
                Optional.empty(),
                Lines.PLACE);
        PortCurrents currents = new PortCurrents(port);
        double[] amps = new double[4];
        currents.fillFull(amps);
        assertThat(amps).usingComparatorWithPrecision(CLOSE).containsExactly(0.047, 0.047, 0.047, 0.047);
        assertThat(currents.fullAmps()).isCloseTo(0.188, within(CLOSE));
    }

    /** Pixels of a frame may hang on the line in any order. */
    @Test
    void anyOrderOfPixels() {
        int[] order = {4, 3, 2, -1, 0, 5, 5 - 4, 6, 8, 10, 7};
        byte[] rgb = new byte[33];
        for (int i = 0; i < 11; i++) {
            rgb[3 * i + 1] = (byte) (20 * i);
        }
        Link link = new Link("fence", 0, order, Lines.PLACE);
        Port port = new Port(
                "left",
                List.of(link),
                Lines.plain("RGB", 8),
                new Packing(1, 1, true),
                Optional.of(kind(1, 5.0, 10.0, 5.0)),
                Optional.empty(),
                Lines.PLACE);
        PortCurrents currents = new PortCurrents(port);
        double[] amps = new double[order.length];
        currents.fillIdle(amps);
        currents.fill(rgb, 0, amps);
        for (int i = 0; i < order.length; i++) {
            double light = order[i] < 0 ? 0 : Srgb.decode(20 * order[i] / 255.0);
            assertThat(amps[i]).isCloseTo(0.001 + 0.01 * light, within(CLOSE));
        }
    }
}
