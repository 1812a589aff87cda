package org.duskloom.engine.locate;

import java.util.stream.IntStream;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.map.Prop;

/**
 * Refuses what is much fainter than its neighbours on the wire, or far off the wire's run: windows and wet ground
 * mirror lights whose own light is hidden.
 */
final class WireCheck {
    /** How many neighbours on either side say what is usual. */
    private static final int NEIGHBOURS = 6;

    /** What is fainter than this share of its neighbours is a reflection. */
    private static final double FAINT = 0.45;

    /** What is farther off both of its neighbours than so many usual steps is off the run. */
    private static final double FAR_STEPS = 6;

    private final Candidates candidates;

    private WireCheck(Candidates candidates) {
        this.candidates = candidates;
    }

    static void check(Candidates candidates, PixelMap map) {
        WireCheck check = new WireCheck(candidates);
        for (Prop prop : map.props()) {
            int[] found = IntStream.range(prop.firstPixel(), prop.firstPixel() + prop.pixelCount())
                    .filter(candidates::has)
                    .toArray();
            boolean[] wrong = new boolean[found.length];
            for (int i = 0; i < found.length; i++) {
                wrong[i] = check.isFaint(found, i) || check.isFarOff(found, i);
            }
            IntStream.range(0, found.length).filter(i -> wrong[i]).forEach(i -> candidates.refuse(found[i]));
        }
    }

    private boolean isFaint(int[] found, int at) {
        double[] light = around(found, at)
                .filter(i -> i != at)
                .mapToDouble(i -> candidates.of(found[i]).flux)
                .sorted()
                .toArray();
        return light.length >= 3 && candidates.of(found[at]).flux < FAINT * light[light.length / 2];
    }

    private boolean isFarOff(int[] found, int at) {
        if (at == 0 || at == found.length - 1) {
            return false;
        }
        double[] steps = around(found, at)
                .filter(i -> i > 0)
                .mapToDouble(i -> step(found[i - 1], found[i]))
                .sorted()
                .toArray();
        double far = FAR_STEPS * steps[steps.length / 2];
        return step(found[at - 1], found[at]) > far && step(found[at], found[at + 1]) > far;
    }

    private static IntStream around(int[] found, int at) {
        return IntStream.rangeClosed(Math.max(0, at - NEIGHBOURS), Math.min(found.length - 1, at + NEIGHBOURS));
    }

    /** How far it is from a pixel to the next one that was found, for each pixel between. */
    private double step(int from, int to) {
        return candidates.of(from).distanceTo(candidates.of(to)) / (to - from);
    }
}
