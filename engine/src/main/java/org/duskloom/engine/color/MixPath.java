package org.duskloom.engine.color;

/** The way from one colour to another; holds both as coordinates of the mixing space, so that a step along is cheap. */
final class MixPath {
    private final ColorMix mix;
    private final LinearColor start;
    private final LinearColor end;
    private final MixPoint startPoint;
    private final MixPoint endPoint;

    MixPath(ColorMix mix, LinearColor start, LinearColor end) {
        this.mix = mix;
        this.start = start;
        this.end = end;
        OkLch startLch = OkLch.of(OkLab.of(start));
        OkLch endLch = OkLch.of(OkLab.of(end));
        startPoint = point(mix, start, withHueOf(startLch, endLch));
        endPoint = point(mix, end, onShorterWay(withHueOf(endLch, startLch), startPoint.third()));
    }

    LinearColor at(double share) {
        if (share == 0 || start.equals(end)) {
            return start;
        }
        if (share == 1) {
            return end;
        }
        MixPoint point = startPoint.towards(endPoint, share, mix == ColorMix.OKLCH);
        return color(point.first(), point.second(), point.third(), point.alpha());
    }

    private LinearColor color(double first, double second, double third, double alpha) {
        return switch (mix) {
            case OKLAB -> new OkLab(first, second, third).toLinear(alpha);
            case OKLCH -> new OkLch(first, second, third).toLab().toLinear(alpha);
            case LINEAR -> LinearColor.clipped(first, second, third, alpha);
        };
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
