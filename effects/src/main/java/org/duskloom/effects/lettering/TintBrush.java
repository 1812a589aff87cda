package org.duskloom.effects.lettering;

import org.duskloom.effects.kit.Ramp;
import org.duskloom.engine.effect.Brush;
import org.duskloom.engine.effect.CueTime;
import org.duskloom.engine.effect.Patch;

/**
 * Colours letters whose palettes move. The picture says how much of a light's cell letters (red) and outline (green)
 * cover; the colour is that of the palette at the middle of the cell, not at each dot that the cell covers, and it is
 * looked up only where one is covered. With several colours in both palettes a pixel costs some 35 ns, nearly all of it
 * for the picture.
 */
final class TintBrush implements Brush {
    private final Brush coverage;
    private final Ramp letters;
    private final Ramp outline;
    /** The place along the text is this times the share of the picture's width, less {@link #margin}. */
    private final float stretch;

    private final float margin;
    private final float[] letterCover = new float[Patch.CAPACITY];
    private final float[] outlineCover = new float[Patch.CAPACITY];
    /** The cells that are covered, one after the other, and their places along the text. */
    private final int[] cells = new int[Patch.CAPACITY];

    private final float[] ownPlaces = new float[Patch.CAPACITY];
    private final float[] ownRed = new float[Patch.CAPACITY];
    private final float[] ownGreen = new float[Patch.CAPACITY];
    private final float[] ownBlue = new float[Patch.CAPACITY];
    private final float[] ownAlpha = new float[Patch.CAPACITY];

    /**
     * A brush for one thread.
     *
     * @param marginShare how much of the picture's width lies on either side of the text, below 1/2
     */
    TintBrush(Brush coverage, Ramp letters, Ramp outline, double marginShare) {
        this.coverage = coverage;
        this.letters = letters;
        this.outline = outline;
        stretch = (float) (1 / (1 - 2 * marginShare));
        margin = (float) (marginShare / (1 - 2 * marginShare));
    }

    @Override
    public void begin(CueTime time) {
        coverage.begin(time);
        letters.begin(time.seconds());
        outline.begin(time.seconds());
    }

    @Override
    public void paint(int firstPixel, Patch patch) {
        int from = patch.from();
        int to = patch.to();
        coverage.paint(firstPixel, patch);
        System.arraycopy(patch.red, from, letterCover, from, to - from);
        System.arraycopy(patch.green, from, outlineCover, from, to - from);
        patch.reset(from, to);
        places(patch.first, stretch, margin, from, to);
        patch.clear();
        add(outline, outlineCover, patch);
        add(letters, letterCover, patch);
    }

    /** Adds the light of a palette where cells are covered; most are not, and looking up colours takes long. */
    private void add(Ramp ramp, float[] cover, Patch patch) {
        int count = 0;
        for (int cell = patch.from(); cell < patch.to(); cell++) {
            cells[count] = cell;
            ownPlaces[count] = patch.first[cell];
            count += cover[cell] > 0 ? 1 : 0;
        }
        ramp.fill(ownPlaces, 0, count, ownRed, ownGreen, ownBlue, ownAlpha);
        for (int i = 0; i < count; i++) {
            int cell = cells[i];
            float share = cover[cell];
            patch.red[cell] = sum(patch.red[cell], ownRed[i] * share);
            patch.green[cell] = sum(patch.green[cell], ownGreen[i] * share);
            patch.blue[cell] = sum(patch.blue[cell], ownBlue[i] * share);
            patch.alpha[cell] = sum(patch.alpha[cell], ownAlpha[i] * share);
        }
    }

    /** No more than 1, which rounding may pass. */
    private static float sum(float light, float more) {
        return Math.min(1f, light + more);
    }

    private static void places(float[] shares, float stretch, float margin, int from, int to) {
        for (int i = from; i < to; i++) {
            shares[i] = Math.min(1f, Math.max(0f, shares[i] * stretch - margin));
        }
    }
}
