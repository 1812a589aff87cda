package org.duskloom.engine.preview;

import java.util.Arrays;
import org.duskloom.engine.color.Srgb;
import org.duskloom.engine.color.SrgbEncoder;

/**
 * One panel while its pixels are drawn, in linear light. Light beside the discs adds up, but never beyond a bound, so
 * that a dense display does not turn white; where discs overlap, the brighter one is seen. In the middle of a disc that
 * nothing overlaps stands exactly the pixel's colour.
 */
final class PanelLight {
    /** What light between the discs comes to at most, however many pixels add to it. */
    private static final float GLOW_LIMIT = 0.30f;

    /** How far the light of a pixel reaches, in radii of its disc. */
    static final double GLOW_RADII = 5;

    private static final double GLOW_STRENGTH = 0.42;

    private final int width;
    private final int height;
    private final DotStamp disc;
    private final DotStamp halo;
    private final float[] cover;
    private final float[] discs;
    private final float[] glow;

    /** Adds one weighted dot of a stamp at an index of the panel. */
    @FunctionalInterface
    private interface Inking {
        void ink(int at, float weight);
    }

    /**
     * @param width of the panel in dots
     * @param height of the panel in dots
     * @param dotRadius of a pixel's disc
     */
    PanelLight(int width, int height, double dotRadius) {
        this.width = width;
        this.height = height;
        this.disc = DotStamp.disc(dotRadius);
        this.halo = DotStamp.glow(dotRadius * GLOW_RADII + 1, GLOW_STRENGTH);
        this.cover = new float[width * height];
        this.discs = new float[3 * width * height];
        this.glow = new float[3 * width * height];
    }

    /** Makes it night again. */
    void clear() {
        Arrays.fill(cover, 0);
        Arrays.fill(discs, 0);
        Arrays.fill(glow, 0);
    }

    /** Draws the disc of a pixel that hangs at x, y from the panel's upper left corner, in linear light. */
    void addDisc(double x, double y, float red, float green, float blue) {
        stamp(disc, x, y, (at, weight) -> {
            cover[at] = Math.max(cover[at], weight);
            discs[3 * at] = Math.max(discs[3 * at], weight * red);
            discs[3 * at + 1] = Math.max(discs[3 * at + 1], weight * green);
            discs[3 * at + 2] = Math.max(discs[3 * at + 2], weight * blue);
        });
    }

    /** Adds the light that falls beside the disc. */
    void addGlow(double x, double y, float red, float green, float blue) {
        stamp(halo, x, y, (at, weight) -> {
            glow[3 * at] += weight * red;
            glow[3 * at + 1] += weight * green;
            glow[3 * at + 2] += weight * blue;
        });
    }

    private void stamp(DotStamp mark, double x, double y, Inking inking) {
        int column = (int) Math.floor(x);
        int row = (int) Math.floor(y);
        float[] weights = mark.weights(x - column, y - row);
        int left = column - mark.reach();
        int top = row - mark.reach();
        int side = mark.side();
        for (int r = Math.max(0, -top); r < Math.min(side, height - top); r++) {
            for (int c = Math.max(0, -left); c < Math.min(side, width - left); c++) {
                float weight = weights[r * side + c];
                if (weight > 0) {
                    inking.ink((top + r) * width + left + c, weight);
                }
            }
        }
    }

    /** Encodes the panel and puts it on the sheet, whose colour shows where there is no light. */
    void develop(Raster sheet, int left, int top) {
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                int at = y * width + x;
                float brightest = Math.max(glow[3 * at], Math.max(glow[3 * at + 1], glow[3 * at + 2]));
                if (brightest > 0 || cover[at] > 0) {
                    int under = sheet.colourAt(left + x, top + y);
                    sheet.dot(left + x, top + y, developed(at, brightest, under));
                }
            }
        }
    }

    private int developed(int at, float brightestGlow, int under) {
        float bound = GLOW_LIMIT / (GLOW_LIMIT + brightestGlow);
        int colour = 0;
        for (int channel = 0; channel < 3; channel++) {
            float ground = Srgb.decode(under >> 16 - 8 * channel & 0xFF);
            float between = ground + bound * glow[3 * at + channel];
            float light = discs[3 * at + channel] + (1 - cover[at]) * between;
            colour = colour << 8 | SrgbEncoder.code(light);
        }
        return colour;
    }
}
