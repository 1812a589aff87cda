package org.duskloom.effects.morph;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Pairs of a dot and a pixel that it may light, as they are found; up to a number of them. */
final class Meetings {
    private final long most;
    private int[] dots = new int[64];
    private int[] pixels = new int[64];
    private int count;
    private boolean crowded;

    Meetings(long most) {
        this.most = Math.min(most, Integer.MAX_VALUE / 4);
    }

    /**
     * Adds a pair.
     *
     * @param pixel by its place in the grid
     */
    void add(int dot, int pixel) {
        if (count >= most) {
            crowded = true;
            return;
        }
        if (count == dots.length) {
            dots = Arrays.copyOf(dots, 2 * count);
            pixels = Arrays.copyOf(pixels, 2 * count);
        }
        dots[count] = dot;
        pixels[count++] = pixel;
    }

    /** How many there are. */
    int count() {
        return count;
    }

    /** Whether there were more than are allowed. */
    boolean isCrowded() {
        return crowded;
    }

    /**
     * What may meet on each step of a leg, of these pairs.
     *
     * @param spots where the pixels of the grid are
     */
    List<Leg> legs(Spots spots, LegSteps steps) {
        List<LegWriter> writers = Stream.generate(() -> new LegWriter(count / LegSteps.COUNT))
                .limit(LegSteps.COUNT)
                .toList();
        for (int pair : byPixel(spots.count())) {
            int list = steps.listOf(dots[pair], spots, pixels[pair]);
            if (list >= 0) {
                writers.get(list).add(pixels[pair], dots[pair]);
            }
        }
        List<int[]> lists = writers.stream().map(LegWriter::list).toList();
        return IntStream.range(0, LegSteps.COUNT)
                .mapToObj(step -> new Leg(lists.subList(steps.firstList(step), steps.endList(step)), steps.reach(step)))
                .toList();
    }

    /** The numbers of the pairs in the order of their pixels. */
    private int[] byPixel(int pixelCount) {
        int[] next = new int[pixelCount + 1];
        for (int i = 0; i < count; i++) {
            next[pixels[i] + 1]++;
        }
        for (int pixel = 0; pixel < pixelCount; pixel++) {
            next[pixel + 1] += next[pixel];
        }
        int[] order = new int[count];
        for (int i = 0; i < count; i++) {
            order[next[pixels[i]]++] = i;
        }
        return order;
    }
}
