package org.duskloom.engine.meter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.duskloom.engine.frame.FrameBatch;
import org.duskloom.engine.frame.FrameList;
import org.duskloom.engine.frame.FrameReader;
import org.duskloom.engine.time.FrameSpan;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What a line shows again is not measured again. A run of such frames has to have the figures that its frames have
 * alone: by the laws of means and of the greatest and least, whatever was there before.
 */
class RepeatedFramesTest {
    private static final double CLOSE = 1e-9;

    /** Frames of ten pixels on two lines. Many show again what was there, on one line or on both, or long before. */
    private static List<byte[]> frames(SplittableRandom random, int count) {
        List<byte[]> frames = new ArrayList<>();
        byte[] now = new byte[30];
        for (int i = 0; i < count; i++) {
            int change = random.nextInt(5);
            now = change == 4 && i > 0 ? frames.get(random.nextInt(i)) : now.clone();
            if (change % 4 != 0) {
                // The left line, the right one, or a single colour of a single pixel.
                int from = change == 1 ? 0 : change == 2 ? 15 : random.nextInt(30);
                int end = change == 3 ? from + 1 : from + 15;
                for (int at = from; at < end; at++) {
                    now[at] = (byte) random.nextInt(256);
                }
            }
            frames.add(now);
        }
        return frames;
    }

    /** The same frames from a run, a few at a time, whatever number that is. */
    private static PowerFigures measuredInBatches(List<byte[]> frames, SplittableRandom random) throws IOException {
        PowerMeter meter = new PowerMeter(PoweredDisplay.ports(), 20);
        MeterSink sink = new MeterSink(List.of(meter), null);
        sink.begin(PoweredDisplay.run(frames.size()));
        FrameReader reader = (frame, rgb, offset) -> System.arraycopy(frames.get((int) frame), 0, rgb, offset, 30);
        for (int first = 0; first < frames.size(); ) {
            int end = Math.min(frames.size(), first + 1 + random.nextInt(9));
            sink.take(FrameBatch.of(FrameList.of(new FrameSpan(first, end)), 30, reader));
            first = end;
        }
        return meter.figures();
    }

    @ParameterizedTest
    @ValueSource(longs = {9, 10, 11})
    void itMakesNoDifferenceHowManyComeTogether(long seed) throws IOException {
        SplittableRandom random = new SplittableRandom(seed);
        List<byte[]> frames = frames(random, 80);
        assertThat(measuredInBatches(frames, random)).usingRecursiveComparison().isEqualTo(measured(frames));
    }

    private static PowerFigures measured(List<byte[]> frames) {
        PowerMeter meter = new PowerMeter(PoweredDisplay.ports(), 20);
        meter.begin(PoweredDisplay.run(frames.size()));
        for (int i = 0; i < frames.size(); i++) {
            // Behind other bytes, as a frame stands in a batch.
            byte[] batch = new byte[37];
            System.arraycopy(frames.get(i), 0, batch, 7, 30);
            meter.frame(i, batch, 7);
        }
        return meter.figures();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void aRunIsTheSumOfItsFrames(long seed) {
        List<byte[]> frames = frames(new SplittableRandom(seed), 80);
        PowerFigures all = measured(frames);
        for (int port = 0; port < 2; port++) {
            double sum = 0;
            double peak = -1;
            int peakFrame = 0;
            for (int i = 0; i < frames.size(); i++) {
                double amps = measured(List.of(frames.get(i)))
                        .ports()
                        .get(port)
                        .amps()
                        .peak();
                sum += amps;
                peakFrame = amps > peak ? i : peakFrame;
                peak = Math.max(peak, amps);
            }
            AmpFigures figures = all.ports().get(port).amps();
            assertThat(figures.mean()).isCloseTo(sum / frames.size(), within(CLOSE));
            assertThat(figures.peak()).isCloseTo(peak, within(CLOSE));
            assertThat(figures.peakFrame()).isEqualTo(peakFrame);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {6, 7, 8})
    void theLeastVoltageIsThatOfSomeFrame(long seed) {
        List<byte[]> frames = frames(new SplittableRandom(seed), 60);
        VoltFigures all = measured(frames).ports().get(0).volts().orElseThrow();
        for (int pixel = 0; pixel < all.leastByPixel().length; pixel++) {
            double least = Double.POSITIVE_INFINITY;
            int at = 0;
            for (int i = 0; i < frames.size(); i++) {
                double volts = measured(List.of(frames.get(i)))
                        .ports()
                        .get(0)
                        .volts()
                        .orElseThrow()
                        .leastByPixel()[pixel];
                at = volts < least ? i : at;
                least = Math.min(least, volts);
            }
            assertThat(all.leastByPixel()[pixel]).isCloseTo(least, within(CLOSE));
            assertThat(all.leastFrameByPixel()[pixel]).isEqualTo(at);
        }
    }
}
