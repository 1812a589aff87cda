package org.duskloom.engine.color;

/**
 * The way from one colour to another; holds both as coordinates of the mixing space, so that a step along is cheap.
 * Immutable.
 */
public final class MixPath {
    private final ColorMix mix;
    private final LinearColor start;
    private final LinearColor end;
    private final boolean still;
    private final MixLine line;

    /** The way from a start to an end through the space of a mix. */
    public MixPath(ColorMix mix, LinearColor start, LinearColor end) {
        this.mix = mix;
        this.start = start;
        this.end = end;
        OkLch startLch = OkLch.of(OkLab.of(start));
        OkLch endLch = OkLch.of(OkLab.of(end));
        MixPoint startPoint = point(mix, start, withHueOf(startLch, endLch));
        MixPoint endPoint = point(mix, end, onShorterWay(withHueOf(endLch, startLch), startPoint.third()));
        still = start.equals(end);
        line = new MixLine(startPoint, endPoint, mix == ColorMix.OKLCH);
    }

    /** The colour at a share of the way, as {@link ColorMix#mix} has it. */
    public LinearColor at(double share) {
        if (share == 0 || still) {
            return start;
        }
        if (share == 1) {
            return end;
        }
        float[] color = new float[4];
        fillBetween(share, color, 0);
        return new LinearColor(color[0], color[1], color[2], color[3]);
    }

    /**
     * Writes the colour at a share of the way: the very floats of {@link #at}. Allocates nothing.
     *
     * @param target receives red, green, blue and alpha, the light not multiplied by alpha
     * @param offset where the four floats begin
     */
    public void fill(double share, float[] target, int offset) {
        if (share == 0 || still) {
            put(start, target, offset);
        } else if (share == 1) {
            put(end, target, offset);
        } else {
            fillBetween(share, target, offset);
        }
    }

    private void fillBetween(double share, float[] target, int offset) {
        double alpha = line.alphaAt(share);
        if (!(alpha > 0)) {
            put(LinearColor.TRANSPARENT, target, offset);
            return;
        }
        double first = line.firstAt(share, alpha);
        double second = line.secondAt(share, alpha);
        double third = line.thirdAt(share, alpha);
        switch (mix) {
            case OKLAB -> OkLab.fillLinear(first, second, third, target, offset);
            case OKLCH -> fillFromHue(first, second, third, target, offset);
            case LINEAR -> put(first, second, third, target, offset);
        }
        target[offset + 3] = LinearColor.share(alpha);
    }

    private static void fillFromHue(double lightness, double chroma, double hueDegrees, float[] target, int offset) {
        double radians = OkLch.radians(hueDegrees);
        OkLab.fillLinear(lightness, chroma * StrictMath.cos(radians), chroma * StrictMath.sin(radians), target, offset);
    }

    private static void put(LinearColor color, float[] target, int offset) {
        target[offset] = color.red();
        target[offset + 1] = color.green();
        target[offset + 2] = color.blue();
        target[offset + 3] = color.alpha();
    }

    private static void put(double red, double green, double blue, float[] target, int offset) {
        target[offset] = LinearColor.share(red);
        target[offset + 1] = LinearColor.share(green);
        target[offset + 2] = LinearColor.share(blue);
    }

    private static MixPoint point(ColorMix mix, LinearColor color, OkLch lch) {
        return switch (mix) {
            case OKLAB -> MixPoint.of(OkLab.of(color), color.alpha());
            case OKLCH -> MixPoint.of(lch, color.alpha());
            case LINEAR -> new MixPoint(color.red(), color.green(), color.blue(), color.alpha());
        };
    }

    private static OkLch withHueOf(OkLch lch, OkLch other) {
        return lch.isHuePowerless() ? new OkLch(lch.lightness(), lch.chroma(), other.hueDegrees()) : lch;
    }

    private static OkLch onShorterWay(OkLch lch, double fromDegrees) {
        double hue = OkLch.shorterWayTo(lch.hueDegrees(), fromDegrees);
        return new OkLch(lch.lightness(), lch.chroma(), hue);
    }
}
