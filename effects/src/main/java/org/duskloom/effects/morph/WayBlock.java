package org.duskloom.effects.morph;

import java.util.Arrays;
import java.util.List;
import org.duskloom.effects.kit.Levels;
import org.duskloom.engine.color.ColorMix;
import org.duskloom.engine.color.CubicMix;
import org.duskloom.engine.color.LinearColor;

/**
 * Some ways between colours that do not move, through OKLab, alpha and all. Colours are multiplied by their alpha
 * before they are mixed and divided after (W3C CSS Color Module Level 4, "Interpolating with Alpha"), so the mix of two
 * translucent colours is that of the opaque ones at another share: {@code endAlpha · share / (startAlpha · (1 − share)
 * + endAlpha · share)}. Immutable.
 */
final class WayBlock {
    private static final float LEAST_ALPHA = 1e-30f;

    private final float[][] red;
    private final float[][] green;
    private final float[][] blue;
    private final float[] startAlpha;
    private final float[] endAlpha;
    /** Whether all colours at both ends are: then one alpha and one share are those of all ways. */
    private final boolean opaque;

    WayBlock(List<FixedWays.Ends> ways) {
        List<CubicMix> mixes = ways.stream().map(WayBlock::opaqueMix).toList();
        red = planes(mixes.stream().map(CubicMix::red).toList());
        green = planes(mixes.stream().map(CubicMix::green).toList());
        blue = planes(mixes.stream().map(CubicMix::blue).toList());
        startAlpha = new float[ways.size()];
        endAlpha = new float[ways.size()];
        for (int way = 0; way < startAlpha.length; way++) {
            startAlpha[way] = ways.get(way).start().alpha();
            endAlpha[way] = ways.get(way).end().alpha();
        }
        opaque = ways.stream()
                .allMatch(way -> way.start().alpha() == 1 && way.end().alpha() == 1);
    }

    private static CubicMix opaqueMix(FixedWays.Ends ends) {
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

    int count() {
        return startAlpha.length;
    }

    /** The colours at a share of every way, into the planes of scratch. */
    void fill(float share, ColorWays.Colors colors) {
        if (opaque) {
            float alpha = alpha(1, 1, share);
            float opaqueShare = opaqueShare(1, alpha, share);
            Arrays.fill(colors.alpha, 0, count(), alpha);
            light(red, opaqueShare, alpha, count(), colors.red);
            light(green, opaqueShare, alpha, count(), colors.green);
            light(blue, opaqueShare, alpha, count(), colors.blue);
        } else {
            fillAlphas(share, colors.alpha, colors.shares);
            light(red, colors, count(), colors.red);
            light(green, colors, count(), colors.green);
            light(blue, colors, count(), colors.blue);
        }
    }

    private void fillAlphas(float share, float[] alphas, float[] shares) {
        for (int i = 0; i < startAlpha.length; i++) {
            alphas[i] = alpha(startAlpha[i], endAlpha[i], share);
        }
        for (int i = 0; i < startAlpha.length; i++) {
            shares[i] = opaqueShare(endAlpha[i], alphas[i], share);
        }
    }

    private static float alpha(float start, float end, float share) {
        return Math.min(1f, start * (1f - share) + end * share);
    }

    /** How far a mix of opaque colours is gone that is this one. */
    private static float opaqueShare(float endAlpha, float alpha, float share) {
        return Math.min(1f, endAlpha * share / Math.max(LEAST_ALPHA, alpha));
    }

    /** A channel of colours that all have one alpha. */
    private static void light(float[][] planes, float share, float alpha, int count, float[] light) {
        float[] c0 = planes[0];
        float[] c1 = planes[1];
        float[] c2 = planes[2];
        float[] c3 = planes[3];
        for (int i = 0; i < count; i++) {
            light[i] = c0[i] + share * (c1[i] + share * (c2[i] + share * c3[i]));
        }
        for (int i = 0; i < count; i++) {
            light[i] = Levels.clipped(light[i]) * alpha;
        }
    }

    private static void light(float[][] planes, ColorWays.Colors colors, int count, float[] light) {
        float[] c0 = planes[0];
        float[] c1 = planes[1];
        float[] c2 = planes[2];
        float[] c3 = planes[3];
        float[] shares = colors.shares;
        for (int i = 0; i < count; i++) {
            float s = shares[i];
            light[i] = c0[i] + s * (c1[i] + s * (c2[i] + s * c3[i]));
        }
        float[] alpha = colors.alpha;
        for (int i = 0; i < count; i++) {
            light[i] = Levels.clipped(light[i]) * alpha[i];
        }
    }
}
