package org.duskloom.effects.drift;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.SplittableRandom;
import org.duskloom.effects.Canvases;
import org.duskloom.effects.kit.WindowOffsets;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.Settings;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The planes that each of some pixels is between, against what {@link OctaveSpace} says of each plane. */
class PlanePairsTest {
    private static final int PIXELS = 90;
    private static final Canvas CANVAS = Canvases.of(Canvases.scattered(PIXELS));

    private final OctaveSpace space = new OctaveSpace(CANVAS, NoisePlaces.of(CANVAS, Settings.of(Map.of())), 1);
    private final PlanePairs pairs = new PlanePairs(space);
    private WindowOffsets starts;

    @BeforeEach
    void measure() {
        float[] offsets = new float[PIXELS];
        for (int pixel = 0; pixel < PIXELS; pixel++) {
            offsets[pixel] = space.start(pixel);
        }
        starts = new WindowOffsets(offsets);
    }

    /**
     * Before any pass the plane just below a pixel and the next; after so many passes, so many planes farther.
     */
    @Test
    void areThePlanesBelowAndAbove() {
        pairs.advance(0, 0, starts);
        requirePlanes(0, 0);
        pairs.advance(12, 0, starts);
        requirePlanes(12, 0);
        pairs.advance(-3, 0, starts);
        requirePlanes(-3, 0);
    }

    /** Whatever the way there: small steps, none, back, and far away. */
    @Test
    void areTheSameFromWhereverTheyCome() {
        SplittableRandom random = new SplittableRandom(17);
        double passes = 0;
        for (int step = 0; step < 300; step++) {
            passes += random.nextInt(20) == 0 ? random.nextDouble(-50, 50) : random.nextDouble(-0.1, 0.15);
            long whole = (long) Math.floor(passes);
            pairs.advance(whole, (float) (passes - whole), starts);
            requirePlanes(whole, (float) (passes - whole));
        }
    }

    /** When a pixel comes to its next plane, what was above it is below it: light does not jump. */
    @Test
    void handOnWhatWasAbove() {
        pairs.advance(4, 0, starts);
        float[] above = pairs.nextValues().clone();
        float[] slopesAbove = pairs.nextSlopes().clone();
        pairs.advance(5, 0, starts);
        assertThat(pairs.values()).containsExactly(above);
        assertThat(pairs.slopes()).containsExactly(slopesAbove);
    }

    private void requirePlanes(long whole, float fraction) {
        float[][] expected = new float[4][PIXELS];
        for (int pixel = 0; pixel < PIXELS; pixel++) {
            int goneBy = (int) whole + (space.start(pixel) + fraction >= 1 ? 1 : 0);
            space.fill(pixel, goneBy, expected[0], expected[1]);
            space.fill(pixel, goneBy + 1, expected[2], expected[3]);
        }
        assertThat(pairs.values()).containsExactly(expected[0]);
        assertThat(pairs.slopes()).containsExactly(expected[1]);
        assertThat(pairs.nextValues()).containsExactly(expected[2]);
        assertThat(pairs.nextSlopes()).containsExactly(expected[3]);
    }
}
