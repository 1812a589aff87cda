package org.duskloom.effects.bench;

import java.util.Arrays;
import org.duskloom.effects.Canvases;
import org.duskloom.effects.Look;
import org.duskloom.engine.color.ColorMix;
import org.duskloom.engine.effect.SettingException;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Frames per second of one effect by itself: all its patches, filled, without blending and encoding. {@link
 * BenchmarkMain} fills in every installed effect.
 */
@State(Scope.Thread)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 3, time = 1)
public class KernelBenchmark {
    private static final double RATE = 40;

    /** The effect. */
    @Param("sweep")
    public String effect;

    /** How many pixels the canvas has. */
    @Param({"360", "10000", "100000"})
    public int pixels;

    /** How many colours the palette has; 0 leaves it as it is. */
    @Param("2")
    public int colors;

    /** The setting {@code width}, where there is one. */
    @Param("0.5")
    public double width;

    /** The setting {@code soft}, where there is one. */
    @Param("0.25")
    public double soft;

    /** Another number to set, such as {@code size=3}. */
    @Param("")
    public String given;

    private KernelFrames frames;
    private int frame;

    /** Compiles the effect. */
    @Setup
    public void prepare() throws SettingException {
        Look look = Look.of(effect).withIfThere("width", width).withIfThere("soft", soft);
        String[] palette = {"#2a4bd0", "#ff9e5e", "#7b3fa0", "gold", "teal", "tomato", "orchid"};
        if (colors > 0) {
            String[] first = Arrays.copyOf(palette, colors);
            look.withIfThere("palette", Look.evenly(ColorMix.OKLAB, first));
        }
        if (!given.isEmpty()) {
            String[] parts = given.split("=", 2);
            look.with(parts[0], Double.parseDouble(parts[1]));
        }
        frames = new KernelFrames(look.on(Canvases.of(Canvases.scattered(pixels))), pixels);
    }

    /** One frame after the other. */
    @Benchmark
    public float frame(PixelFrames counter) {
        counter.pixelFrames += pixels;
        return frames.paint(frame++ / RATE, 1e6);
    }
}
