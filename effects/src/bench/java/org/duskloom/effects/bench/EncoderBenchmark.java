package org.duskloom.effects.bench;

import org.duskloom.engine.color.SrgbEncoder;
import org.duskloom.engine.effect.Patch;
import org.duskloom.engine.random.StableHash;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Patches of linear light encoded to bytes: by the engine's exact table, and by {@link RootEncoder}. */
@State(Scope.Thread)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 3, time = 1)
public class EncoderBenchmark {
    private final Patch light = new Patch();
    private final Patch work = new Patch();
    private final byte[] rgb = new byte[3 * Patch.CAPACITY + 1];

    /** Makes light of all brightnesses. */
    @Setup
    public void prepare() {
        for (int i = 0; i < Patch.CAPACITY; i++) {
            light.red[i] = StableHash.unitFloat(StableHash.draw(i, 1));
            light.green[i] = StableHash.unitFloat(StableHash.draw(i, 2));
            light.blue[i] = StableHash.unitFloat(StableHash.draw(i, 3));
        }
    }

    /** The engine's encoder. */
    @Benchmark
    public byte exact(PixelFrames counter) {
        copy();
        SrgbEncoder.encode(work.red, work.green, work.blue, Patch.CAPACITY, rgb, 0);
        counter.pixelFrames += Patch.CAPACITY;
        return rgb[0];
    }

    /** The inexact one. */
    @Benchmark
    public byte root(PixelFrames counter) {
        copy();
        RootEncoder.encode(work.red, work.green, work.blue, Patch.CAPACITY, rgb);
        counter.pixelFrames += Patch.CAPACITY;
        return rgb[0];
    }

    private void copy() {
        System.arraycopy(light.red, 0, work.red, 0, Patch.CAPACITY);
        System.arraycopy(light.green, 0, work.green, 0, Patch.CAPACITY);
        System.arraycopy(light.blue, 0, work.blue, 0, Patch.CAPACITY);
    }
}
