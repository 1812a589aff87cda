package org.duskloom.effects.bench;

import org.duskloom.effects.Canvases;
import org.duskloom.engine.effect.SettingException;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * How long a frame takes of an effect of which one setting moves: all its patches, filled, without blending and
 * encoding. {@link BenchmarkMain} fills in every setting that moves of every installed effect, and a sweep that stays.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(java.util.concurrent.TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 3, time = 1)
public class MovingBenchmark {
    private static final int RATE = 40;

    /** Effect and setting; see {@link MovingLook}. */
    @Param("sweep")
    public String moving;

    /** How many pixels the canvas has. */
    @Param("10000")
    public int pixels;

    private KernelFrames frames;
    private int frame;

    /** Compiles the effect. */
    @Setup
    public void prepare() throws SettingException {
        frames = new KernelFrames(MovingLook.of(moving).on(Canvases.of(Canvases.scattered(pixels))), pixels);
    }

    /** One frame after the other; from the start again when the setting has moved all its way. */
    @Benchmark
    public float frame() {
        frame = (frame + 1) % (int) (MovingLook.SECONDS * RATE);
        return frames.paint((double) frame / RATE, MovingLook.SECONDS);
    }
}
