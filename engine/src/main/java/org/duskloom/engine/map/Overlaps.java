package org.duskloom.engine.map;

import java.util.Arrays;
import java.util.function.BiPredicate;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.text.Counted;

/** Finds pixels that hang at exactly the same place, which mostly is a row copied and not changed. */
public final class Overlaps {
    private Overlaps() {}

    /** Adds one warning with the count and the first example, if there are any; gives the map back. */
    public static PixelMap warned(PixelMap map, Problems problems) {
        return warned(map, (earlier, later) -> false, problems);
    }

    /**
     * The same but for pixels of two props of which more was said already.
     *
     * @param isKnown whether that is so of an earlier and a later prop, by their indices
     */
    public static PixelMap warned(PixelMap map, BiPredicate<Integer, Integer> isKnown, Problems problems) {
        int[] table = new int[Integer.highestOneBit(map.pixelCount()) * 4];
        Arrays.fill(table, -1);
        int count = 0;
        int firstPixel = -1;
        int firstTwin = -1;
        for (int pixel = 0; pixel < map.pixelCount(); pixel++) {
            int twin = enter(map.stage(), pixel, table);
            if (twin >= 0 && !isKnown.test(map.propIndexOf(twin), map.propIndexOf(pixel))) {
                firstPixel = count == 0 ? pixel : firstPixel;
                firstTwin = count == 0 ? twin : firstTwin;
                count++;
            }
        }
        if (count > 0) {
            warn(map, count, firstTwin, firstPixel, problems);
        }
        return map;
    }

    /** Enters the pixel into an open hash table; gives the pixel that was there before at the same place, or -1. */
    private static int enter(Positions stage, int pixel, int[] table) {
        int slot = hash(stage, pixel) & table.length - 1;
        while (table[slot] >= 0) {
            if (isSamePlace(stage, table[slot], pixel)) {
                return table[slot];
            }
            slot = slot + 1 & table.length - 1;
        }
        table[slot] = pixel;
        return -1;
    }

    private static boolean isSamePlace(Positions stage, int a, int b) {
        return stage.x(a) == stage.x(b) && stage.y(a) == stage.y(b) && stage.z(a) == stage.z(b);
    }

    private static int hash(Positions stage, int pixel) {
        // Adding zero makes one of the two zeros.
        long bits = Double.doubleToLongBits(stage.x(pixel) + 0.0);
        bits = bits * 0x9E3779B97F4A7C15L + Double.doubleToLongBits(stage.y(pixel) + 0.0);
        bits = (bits ^ bits >>> 29) * 0x9E3779B97F4A7C15L + Double.doubleToLongBits(stage.z(pixel) + 0.0);
        bits = (bits ^ bits >>> 32) * 0x9E3779B97F4A7C15L;
        return (int) (bits >>> 32);
    }

    private static void warn(PixelMap map, int count, int twin, int pixel, Problems problems) {
        Location place = map.props().get(map.propIndexOf(pixel)).definedAt();
        String many = Counted.of(count, "pixel") + (count == 1 ? " hangs" : " hang");
        problems.warn(
                place,
                many + " at the very place of another: " + shown(map, pixel) + " and " + shown(map, twin),
                "leave it so if they are mounted back to back");
    }

    private static String shown(PixelMap map, int pixel) {
        Prop prop = map.props().get(map.propIndexOf(pixel));
        return "pixel " + (pixel - prop.firstPixel() + 1) + " of \"" + prop.name() + "\"";
    }
}
