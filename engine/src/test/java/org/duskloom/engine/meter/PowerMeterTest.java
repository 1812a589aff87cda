package org.duskloom.engine.meter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.duskloom.engine.frame.FrameBatch;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Currents, energy and voltages of whole runs, against what is worked out by hand. */
class PowerMeterTest {
    private static final double CLOSE = 1e-9;
    private static final byte[] WHITE = PoweredDisplay.frame(255);
    private static final byte[] BLACK = PoweredDisplay.frame(0);

    private static PowerFigures measured(byte[]... frames) {
        PowerMeter meter = new PowerMeter(PoweredDisplay.ports(), 20);
        meter.begin(PoweredDisplay.run(frames.length));
        for (int i = 0; i < frames.length; i++) {
            meter.frame(i, frames[i], 0);
        }
        return meter.figures();
    }

    /** 10 pixels of 31 mA at 12 V for an hour: 3.72 Wh; with 5 of them dark on the line and idle at 1 mA, 3.78 Wh. */
    @Test
    void theEnergyOfAConstantShow() {
        byte[][] hour = new byte[3600][];
        Arrays.fill(hour, WHITE);
        PowerMeter meter = new PowerMeter(PoweredDisplay.ports(), 20);
        meter.begin(PoweredDisplay.run(3600));
        for (int i = 0; i < hour.length; i++) {
            meter.frame(i, hour[i], 0);
        }
        SupplyFigures shed = meter.figures().supplies().get(0);
        assertThat(shed.amps().mean()).isCloseTo(0.315, within(CLOSE));
        assertThat(shed.amps().peak()).isCloseTo(0.315, within(CLOSE));
        assertThat(shed.wattHours()).isCloseTo(3.78, within(1e-6));
    }

    @Test
    void thePeakIsItsFirstFrame() {
        AmpFigures left = measured(BLACK, PoweredDisplay.frame(128), WHITE, BLACK, WHITE)
                .ports()
                .get(0)
                .amps();
        assertThat(left.peakFrame()).isEqualTo(2);
        assertThat(left.peak()).isCloseTo(0.155 + 0.005, within(CLOSE));
        assertThat(left.mean())
                .isCloseTo((2 * 0.01 + 2 * 0.16 + 0.01 + 5 * 0.03 * 0.215860500113899) / 5, within(CLOSE));
    }

    @Test
    void portsAddUpToTheirSupplyInEveryFigureThatAdds() {
        SplittableRandom random = new SplittableRandom(7);
        byte[][] frames = new byte[200][];
        for (int i = 0; i < frames.length; i++) {
            frames[i] = new byte[30];
            random.nextBytes(frames[i]);
        }
        PowerFigures figures = measured(frames);
        SupplyFigures shed = figures.supplies().get(0);
        double mean =
                figures.ports().stream().mapToDouble(port -> port.amps().mean()).sum();
        double full =
                figures.ports().stream().mapToDouble(PortFigures::fullAmps).sum();
        double idle =
                figures.ports().stream().mapToDouble(PortFigures::idleAmps).sum();
        double peaks =
                figures.ports().stream().mapToDouble(port -> port.amps().peak()).sum();
        assertThat(shed.amps().mean()).isCloseTo(mean, within(CLOSE));
        assertThat(shed.fullAmps()).isCloseTo(full, within(CLOSE));
        assertThat(shed.idleAmps()).isCloseTo(idle, within(CLOSE));
        assertThat(shed.amps().peak()).isLessThan(peaks);
        assertThat(shed.wattHours()).isCloseTo(12 * mean * 200 / 3600, within(CLOSE));
    }

    /** In each frame alone the ports' currents are the supply's, and the feeds' the port's. */
    @Test
    void everyFrameAddsUp() {
        SplittableRandom random = new SplittableRandom(8);
        for (int i = 0; i < 50; i++) {
            byte[] frame = new byte[30];
            random.nextBytes(frame);
            PowerFigures figures = measured(frame);
            double ports = figures.ports().stream()
                    .mapToDouble(port -> port.amps().peak())
                    .sum();
            assertThat(figures.supplies().get(0).amps().peak()).isCloseTo(ports, within(CLOSE));
            PortFigures left = figures.ports().get(0);
            double feeds = left.volts().orElseThrow().leads().stream()
                    .mapToDouble(LeadFigures::peakAmps)
                    .sum();
            assertThat(feeds).isCloseTo(left.amps().peak(), within(CLOSE));
        }
    }

    /**
     * Five pixels of 31 mA and five idle ones on a line of 1 ohm segments fed through 1 ohm at its first pixel: drops
     * summed by hand, 0.16 A in the lead and so on.
     */
    @Test
    void voltagesOfALineWorkedOutByHand() {
        VoltFigures volts = measured(BLACK, WHITE, BLACK).ports().get(0).volts().orElseThrow();
        double[] amps = {0.031, 0.031, 0.031, 0.031, 0.031, 0.001, 0.001, 0.001, 0.001, 0.001};
        double drop = 0;
        for (int k = 0; k < amps.length; k++) {
            drop += Arrays.stream(amps, k, amps.length).sum();
            assertThat(volts.leastByPixel()[k]).isCloseTo(12 - drop, within(CLOSE));
        }
        assertThat(volts.leastPixel()).isEqualTo(9);
        assertThat(volts.leastFrame()).isEqualTo(1);
        assertThat(volts.least()).isCloseTo(12 - drop, within(CLOSE));
        assertThat(volts.promised()).hasValue(11.5);
        assertThat(volts.tooLowCount()).isEqualTo(3);
        assertThat(volts.leads())
                .singleElement()
                .satisfies(lead -> assertThat(lead.peakAmps()).isCloseTo(0.16, within(CLOSE)));
    }

    @Test
    void warmCopperDropsMore() {
        PowerMeter warm = new PowerMeter(PoweredDisplay.ports(), 70);
        warm.begin(PoweredDisplay.run(1));
        warm.frame(0, WHITE, 0);
        double cold = 12 - measured(WHITE).ports().get(0).volts().orElseThrow().least();
        double dropped =
                12 - warm.figures().ports().get(0).volts().orElseThrow().least();
        assertThat(dropped / cold).isCloseTo(1 + 0.00393 * 50, within(CLOSE));
    }

    @Test
    void whereNoWireIsSaidNoVoltageIs() {
        assertThat(measured(WHITE).ports().get(1).volts()).isEmpty();
    }

    /** Every colour of all 15 pixels on, dark ones too: 15 times 31 mA, for the length of the run. */
    @Test
    void everythingOn() {
        PowerMeter meter = new PowerMeter(PoweredDisplay.ports(), 20);
        meter.begin(PoweredDisplay.run(3600));
        meter.full(0);
        SupplyFigures shed = meter.figures().supplies().get(0);
        assertThat(shed.amps().peak()).isCloseTo(15 * 0.031, within(CLOSE));
        assertThat(shed.wattHours()).isCloseTo(12 * 15 * 0.031, within(CLOSE));
        assertThat(shed.peakShare()).isCloseTo(0.465, within(CLOSE));
        assertThat(shed.marginAmps()).isCloseTo(0.8 - 0.465, within(CLOSE));
    }

    /** The current of the whole run in columns: each is the peak of its stretch. */
    @ParameterizedTest
    @ValueSource(ints = {1, 7, 600, 601, 5000})
    void theColumnsOfTheChartMissNoPeak(int count) {
        byte[][] frames = new byte[count][];
        Arrays.fill(frames, BLACK);
        frames[count - 1] = WHITE;
        double[] columns = measured(frames).supplies().get(0).amps().columns();
        assertThat(columns).hasSizeBetween(1, 600);
        assertThat(columns[columns.length - 1]).isCloseTo(0.315, within(CLOSE));
    }

    @Test
    void aSinkShowsEachFrameOnce() {
        PowerMeter meter = new PowerMeter(PoweredDisplay.ports(), 20);
        MeterSink sink = new MeterSink(java.util.List.of(meter), null);
        sink.begin(PoweredDisplay.run(2));
        sink.take(FrameBatch.of(0, WHITE));
        sink.take(FrameBatch.of(1, BLACK));
        assertThat(meter.figures().supplies().get(0).amps().mean()).isCloseTo((0.315 + 0.015) / 2, within(CLOSE));
    }
}
