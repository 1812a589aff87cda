package org.duskloom.engine.wire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.duskloom.engine.color.Srgb;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a port is, how its light is bent, and what feeds it. */
class PortTest {
    private static final Port PORT =
            Lines.port("arch", Lines.plain("GRB", 8), 1, 1, Lines.pixels(4, 6), Lines.dark(2), Lines.pixels(0, 1));

    @Test
    void countsDarkPixelsToo() {
        assertThat(PORT.pixelCount()).isEqualTo(5);
        assertThat(PORT.byteCount()).isEqualTo(15);
        assertThat(PORT.pixels()).containsExactly(4, 5, Link.DARK, Link.DARK, 0);
        assertThat(PORT.chain()).extracting(Link::isDark).containsExactly(false, true, false);
    }

    @Test
    void onlyPixelsOfTheMapAreLit() {
        Ports ports = new Ports(List.of(PORT));
        assertThat(ports.pixels().stream()).containsExactly(0, 4, 5);
        assertThat(ports.port("arch")).contains(PORT);
        assertThat(ports.port("Arch")).isEmpty();
        assertThat(ports.supplyOf(PORT)).isEmpty();
        assertThat(Ports.NONE.isEmpty()).isTrue();
    }

    /** A white light draws too; at 5 V, 20 mA a colour and 1 mA idle, common practice without a source. */
    @ParameterizedTest
    @CsvSource({"RGB, 0.061", "RGBW, 0.081"})
    void aPortThatSaysNothingHasPixelsOfCommonPractice(String colors, double amps) {
        PixelKind kind = Lines.port("a", Lines.plain(colors, 8), 1, 1, Lines.pixels(0, 1))
                .pixelKind();
        assertThat(kind.fullAmps()).isCloseTo(amps, within(1e-12));
        assertThat(kind.volts()).isEqualTo(5);
        assertThat(kind.assumed()).as("nobody wrote that").isNotEmpty();
    }

    @Test
    void aKindDrawsTheSumOfItsColours() {
        PixelKind kind = new PixelKind(
                "bullet", 12, List.of(15.0, 14.0, 13.0), 0.6, OptionalDouble.empty(), DataLine.USUAL, List.of());
        assertThat(kind.fullAmps()).isCloseTo(0.0426, within(1e-12));
        Port port = new Port(
                "a",
                List.of(Lines.pixels(0, 1)),
                Signal.USUAL,
                new Packing(1, 1, true),
                Optional.of(kind),
                Optional.empty(),
                Lines.PLACE);
        assertThat(port.pixelKind()).isSameAs(kind);
    }

    /** Half-way to a pixel there and back: 2 m of two wires are 4 m of copper. */
    @Test
    void aCableIsThereAndBack() {
        Conductor copper = new Conductor("1.5 mm2", 1.5);
        double perMetre = copper.ohmsPerMetre(20);
        Lead lead = new Lead(copper, 2);
        assertThat(lead.ohms(20)).isCloseTo(4 * perMetre, within(1e-12));
        assertThat(new Feed("arch", 0, Optional.of(lead)).ohms(20)).isEqualTo(lead.ohms(20));
        assertThat(new Feed("arch", 0, Optional.empty()).ohms(20)).isZero();
        assertThat(new PowerLine(copper, new double[] {0, 0.5, 2}, true).segmentOhms(20))
                .containsExactly(new double[] {0, perMetre, 4 * perMetre}, within(1e-12));
    }

    @Test
    void aSupplyKnowsItsFeedsAndItsShare() {
        Feed first = new Feed("arch", 0, Optional.empty());
        Feed end = new Feed("arch", 4, Optional.empty());
        Supply supply =
                new Supply("box", 5, 10, 0.8, List.of(first, new Feed("pond", 0, Optional.empty()), end), Lines.PLACE);
        assertThat(supply.allowedAmps()).isCloseTo(8, within(1e-12));
        assertThat(supply.feedsOf("arch")).containsExactly(first, end);
        assertThat(supply.feeds("pond")).isTrue();
        assertThat(supply.feeds("ponds")).isFalse();
        assertThat(new Ports(List.of(PORT), List.of(supply)).supplyOf(PORT)).contains(supply);
    }

    /** (code / 255) to the power, of the codes 64 and 128: 0.2509804^2.2 and so on, computed apart from the program. */
    @ParameterizedTest
    @CsvSource({
        "2.2, 1, 5.07705190066176e-6",
        "2.2, 64, 0.0477757535561707",
        "2.2, 128, 0.219519718074868",
        "2.8, 64, 0.0208444971123714",
        "2.8, 128, 0.145169509622395",
        "1, 128, 0.501960784313725"
    })
    void aGammaIsThePowerOfTheCode(double gamma, int code, double duty) {
        assertThat(new Curve.Gamma(gamma).sent(Srgb.decode(code / 255.0))).isCloseTo(duty, within(1e-9));
    }

    /** IEC 61966-2-1: half of the light has the code 0.735356983052. */
    @Test
    void codesAreSrgb() {
        assertThat(new Curve.Codes().sent(0.5)).isCloseTo(0.735356983052, within(1e-9));
        assertThat(new Curve.Codes().meansDuty()).isFalse();
        assertThat(new Curve.Linear().sent(0.5)).isEqualTo(0.5);
        assertThat(new Curve.Linear().meansDuty()).isTrue();
        assertThat(new Curve.Gamma(2.2).meansDuty()).isTrue();
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.99, 4.01, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void refusesPowersThatNobodyWants(double exponent) {
        assertThatThrownBy(() -> new Curve.Gamma(exponent)).isInstanceOf(IllegalArgumentException.class);
    }

    /** The white light has a white of its own, so only the cap dims it. */
    @Test
    void factorsOfWhiteLeaveTheWhiteLightAlone() {
        Brightness brightness = new Brightness(1, 0.9, 0.5, 0.8);
        assertThat(brightness.factor(Channel.RED)).isEqualTo(0.8);
        assertThat(brightness.factor(Channel.GREEN)).isCloseTo(0.72, within(1e-12));
        assertThat(brightness.factor(Channel.BLUE)).isEqualTo(0.4);
        assertThat(brightness.factor(Channel.WHITE)).isEqualTo(0.8);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.001, 1.001, Double.NaN})
    void refusesFactorsThatAreNone(double factor) {
        assertThatThrownBy(() -> new Brightness(factor, 1, 1, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Brightness(1, 1, 1, factor)).isInstanceOf(IllegalArgumentException.class);
    }

    /** More light never sends less, whatever the curve; nothing sends nothing and all sends all. */
    @Test
    void curvesRise() {
        for (Curve curve : List.of(new Curve.Linear(), new Curve.Codes(), new Curve.Gamma(1), new Curve.Gamma(4))) {
            double last = -1;
            for (int step = 0; step <= 1000; step++) {
                double sent = curve.sent(step / 1000.0);
                assertThat(sent).as("%s at %s", curve, step).isGreaterThanOrEqualTo(last);
                last = sent;
            }
            assertThat(curve.sent(0)).isZero();
            assertThat(curve.sent(1)).isCloseTo(1, within(1e-12));
        }
    }

    /** Frames of all ports are those of each alone, and only slots of a port are written. */
    @Test
    void framesOfAllPortsAreThoseOfEach() {
        Port other = Lines.port("pond", Lines.plain("RGBW", 8), 1, 100, Lines.pixels(6, 8));
        Ports ports = new Ports(List.of(PORT, other));
        PortFrames frames = new PortFrames(new PortMap(ports, Lines.fence(8)));
        byte[] rgb = new byte[5 + 24];
        for (int i = 0; i < rgb.length; i++) {
            rgb[i] = (byte) (i * 37);
        }
        frames.encode(9, rgb, 5);
        byte[] behind = Arrays.copyOfRange(rgb, 5, rgb.length);
        assertThat(frames.bytes(0)).isEqualTo(Lines.encode(new PortEncoder(PORT, Lines.fence(8)), 9, behind));
        assertThat(frames.bytes(1)).isEqualTo(Lines.encode(new PortEncoder(other, Lines.fence(8)), 9, behind));
        assertThat(frames.bytes(0)).as("the array stays").isSameAs(frames.bytes(0));
        byte[] packet = new byte[120];
        Arrays.fill(packet, (byte) 77);
        frames.copy(UniverseLayout.of(ports).get(0), packet, 10);
        assertThat(Arrays.copyOfRange(packet, 10, 25)).isEqualTo(frames.bytes(0));
        assertThat(Arrays.copyOfRange(packet, 109, 117)).isEqualTo(frames.bytes(1));
        assertThat(packet[9]).isEqualTo((byte) 77);
        assertThat(packet[25]).isEqualTo((byte) 77);
        assertThat(packet[108]).isEqualTo((byte) 77);
        assertThat(packet[117]).isEqualTo((byte) 77);
    }
}
