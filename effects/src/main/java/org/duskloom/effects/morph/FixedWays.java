package org.duskloom.effects.morph;

import java.util.List;
import org.duskloom.engine.color.ColorMix;
import org.duskloom.engine.color.CubicMix;
import org.duskloom.engine.color.LinearColor;

/**
 * Ways between colours that do not move, through OKLab, alpha and all. Colours are multiplied by their alpha before
 * they are mixed and divided after (W3C CSS Color Module Level 4, "Interpolating with Alpha"), so the mix of two
 * translucent colours is that of the opaque ones at another share: {@code endAlpha · share / (startAlpha · (1 − share)
 * + endAlpha · share)}. Immutable.
 */
final class FixedWays implements ColorWays {
    private static final float LEAST_ALPHA = 1e-30f;

    private final float[][] red;
    private final float[][] green;
    private final float[][] blue;
    private final float[] startAlpha;
    private final float[] endAlpha;

    /** The colours between which a way goes. */
    record Ends(LinearColor start, LinearColor end) {}

    FixedWays(List<Ends> ways) {
        List<CubicMix> mixes = ways.stream().map(FixedWays::opaqueMix).toList();
        red = planes(mixes.stream().map(CubicMix::red).toList());
        green = planes(mixes.stream().map(CubicMix::green).toList());
        blue = planes(mixes.stream().map(CubicMix::blue).toList());
        startAlpha = new float[ways.size()];
        endAlpha = new float[ways.size()];
        for (int way = 0; way < startAlpha.length; way++) {
            startAlpha[way] = ways.get(way).start().alpha();
            endAlpha[way] = ways.get(way).end().alpha();
        }
    }

    private static CubicMix opaqueMix(Ends ends) {
        LinearColor start = ends.start().withAlpha(1);
        return CubicMix.between(start, ends.end().withAlpha(1), ColorMix.OKLAB).orElseThrow();
    }

    /** The factors of 1, of the share, of its square and of its cube, each for all ways. */
    private static float[][] planes(List<double[]> cubics) {
        float[][] planes = new float[4][cubics.size()];
        for (int way = 0; way < cubics.size(); way++) {
            for (int term = 0; term < planes.length; term++) {
                planes[term][way] = (float) cubics.get(way)[term];
            }
        }
        return planes;
    }

    @Override
    public int count() {
        return startAlpha.length;
    }

    @Override
    public void fill(double seconds, float share, Colors colors) {
        int count = startAlpha.length;
        alphas(startAlpha, endAlpha, share, count, colors.alpha);
        opaqueShares(endAlpha, colors.alpha, share, count, colors.shares);
        light(red, colors.shares, colors.alpha, count, colors.red);
        light(green, colors.shares, colors.alpha, count, colors.green);
        light(blue, colors.shares, colors.alpha, count, colors.blue);
    }

    private static void alphas(float[] start, float[] end, float share, int count, float[] alphas) {
        float left = 1f - share;
        for (int i = 0; i < count; i++) {
            alphas[i] = Math.min(1f, start[i] * left + end[i] * share);
        }
    }

    private static void opaqueShares(float[] endAlpha, float[] alpha, float share, int count, float[] shares) {
        for (int i = 0; i < count; i++) {
            shares[i] = Math.min(1f, endAlpha[i] * share / Math.max(LEAST_ALPHA, alpha[i]));
        }
    }

    private static void light(float[][] planes, float[] shares, float[] alpha, int count, float[] light) {
        float[] c0 = planes[0];
        float[] c1 = planes[1];
        float[] c2 = planes[2];
        float[] c3 = planes[3];
        for (int i = 0; i < count; i++) {
            float s = shares[i];
            light[i] = c0[i] + s * (c1[i] + s * (c2[i] + s * c3[i]));
        }
        for (int i = 0; i < count; i++) {
            light[i] = Math.min(1f, Math.max(0f, light[i])) * alpha[i];
        }
    }
}
