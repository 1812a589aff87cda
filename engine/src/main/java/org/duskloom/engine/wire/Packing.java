package org.duskloom.engine.wire;

import java.util.ArrayList;
import java.util.List;

/**
 * Where a port starts, and whether its pixels may straddle two universes.
 *
 * @param universe the universe of the first byte, 1 to {@value UniverseRun#LAST_UNIVERSE}
 * @param slot its slot, 1 to {@value UniverseRun#SLOTS}
 * @param whole whether every pixel lies in one universe, so that slots at the end of a universe may stay unused
 */
public record Packing(int universe, int slot, boolean whole) {
    /**
     * @throws IllegalArgumentException if the universe or the slot is out of range
     */
    public Packing {
        if (universe < 1 || universe > UniverseRun.LAST_UNIVERSE || slot < 1 || slot > UniverseRun.SLOTS) {
            throw new IllegalArgumentException("universe " + universe + ", slot " + slot);
        }
    }

    /**
     * How many pixels' bytes fit into the rest of the universe from a slot; with the last one cut, where that is
     * allowed.
     */
    private int room(int fromSlot, int bytesPerPixel) {
        int free = UniverseRun.SLOTS + 1 - fromSlot;
        return whole ? free - free % bytesPerPixel : free;
    }

    /** Whether not even one whole pixel fits into the first universe. */
    boolean startsTooLate(int bytesPerPixel) {
        return room(slot, bytesPerPixel) == 0;
    }

    /** The last universe that is used. */
    long lastUniverse(long pixelCount, int bytesPerPixel) {
        long beyondFirst = pixelCount * bytesPerPixel - room(slot, bytesPerPixel);
        int full = room(1, bytesPerPixel);
        return beyondFirst <= 0 ? universe : universe + (beyondFirst + full - 1) / full;
    }

    /**
     * The runs of so many pixels, in the order of the bytes.
     *
     * @throws IllegalArgumentException if they go beyond the last universe, or none fits where they start
     */
    List<UniverseRun> runs(int pixelCount, int bytesPerPixel) {
        if (startsTooLate(bytesPerPixel) || lastUniverse(pixelCount, bytesPerPixel) > UniverseRun.LAST_UNIVERSE) {
            throw new IllegalArgumentException(pixelCount + " pixels do not fit from " + this);
        }
        List<UniverseRun> runs = new ArrayList<>();
        int end = Math.multiplyExact(pixelCount, bytesPerPixel);
        int place = slot;
        for (int done = 0; done < end; ) {
            int count = Math.min(end - done, room(place, bytesPerPixel));
            runs.add(new UniverseRun(universe + runs.size(), place, done, count));
            done += count;
            place = 1;
        }
        return List.copyOf(runs);
    }
}
