package org.duskloom.effects;

import java.util.Arrays;
import org.duskloom.engine.effect.Brush;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.CueTime;
import org.duskloom.engine.effect.Patch;
import org.duskloom.engine.effect.SettingException;

/**
 * What a brush painted on a whole canvas at one instant.
 *
 * @param red premultiplied linear light of each pixel
 * @param green likewise
 * @param blue likewise
 * @param alpha likewise
 */
public record Painting(float[] red, float[] green, float[] blue, float[] alpha) {
    private static final double CUE_SECONDS = 10;

    /** Paints a look at a second of a cue of ten seconds, with a new brush. */
    public static Painting of(Look look, Canvas canvas, double second) throws SettingException {
        return of(look.on(canvas).open(), canvas, second, Patch.CAPACITY, 0);
    }

    /** Paints in patches of a size, into cells from {@code firstCell} on, over what was left in them. */
    public static Painting of(Brush brush, Canvas canvas, double second, int patchSize, int firstCell) {
        int count = canvas.pixelCount();
        Painting painting = new Painting(new float[count], new float[count], new float[count], new float[count]);
        Patch patch = dirty();
        brush.begin(new CueTime().set(second, CUE_SECONDS));
        for (int first = 0; first < count; first += patchSize) {
            int size = Math.min(patchSize, count - first);
            patch.reset(firstCell, firstCell + size);
            brush.paint(first, patch);
            patch.fill();
            painting.keep(patch, first);
        }
        return painting;
    }

    private static Patch dirty() {
        Patch patch = new Patch();
        for (float[] plane :
                new float[][] {patch.red, patch.green, patch.blue, patch.alpha, patch.first, patch.second, patch.third
                }) {
            Arrays.fill(plane, Float.NaN);
        }
        return patch;
    }

    private void keep(Patch patch, int first) {
        int size = patch.to() - patch.from();
        System.arraycopy(patch.red, patch.from(), red, first, size);
        System.arraycopy(patch.green, patch.from(), green, first, size);
        System.arraycopy(patch.blue, patch.from(), blue, first, size);
        System.arraycopy(patch.alpha, patch.from(), alpha, first, size);
        for (int cell = patch.from(); patch.isOpaque() && cell < patch.to(); cell++) {
            if (patch.alpha[cell] != 1) {
                throw new AssertionError("said to be opaque, but alpha is " + patch.alpha[cell]);
            }
        }
    }

    /** Whether every bit is the same. */
    public boolean isSame(Painting other) {
        return Arrays.equals(red, other.red)
                && Arrays.equals(green, other.green)
                && Arrays.equals(blue, other.blue)
                && Arrays.equals(alpha, other.alpha);
    }
}
