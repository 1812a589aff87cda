package org.duskloom.engine.color;

/**
 * A colour in OKLCh: OKLab with a and b as a distance and a direction (W3C CSS Color Module Level 4).
 *
 * @param lightness 0 black to 1 white
 * @param chroma distance from grey, 0 to about 0.4
 * @param hueDegrees direction: about 29 red, 142 green, 264 blue
 */
record OkLch(double lightness, double chroma, double hueDegrees) {
    /** Up to this chroma a colour is grey and its hue means nothing: the figure of CSS Color 4's sample code. */
    private static final double GREATEST_GREY_CHROMA = 4e-6;

    private static final double DEGREES_PER_RADIAN = 180 / StrictMath.PI;

    /** The same colour; its hue is in [0, 360). */
    static OkLch of(OkLab lab) {
        double chroma = Math.sqrt(lab.a() * lab.a() + lab.b() * lab.b());
        double hue = StrictMath.atan2(lab.b(), lab.a()) * DEGREES_PER_RADIAN;
        return new OkLch(lab.lightness(), chroma, reduced(hue));
    }

    /** The same colour. */
    OkLab toLab() {
        double radians = radians(hueDegrees);
        return new OkLab(lightness, chroma * StrictMath.cos(radians), chroma * StrictMath.sin(radians));
    }

    static double radians(double degrees) {
        return degrees / DEGREES_PER_RADIAN;
    }

    /** Whether it is so near to grey that its hue means nothing. */
    boolean isHuePowerless() {
        return chroma <= GREATEST_GREY_CHROMA;
    }

    /**
     * The hue that, counted on from another hue without a jump, is the shorter way round (W3C CSS Color Module Level 4,
     * "shorter"): within 180 degrees of it. A difference of exactly 180 is left as it is.
     *
     * @param fromDegrees a hue in [0, 360)
     * @param toDegrees a hue in [0, 360)
     */
    static double shorterWayTo(double toDegrees, double fromDegrees) {
        double difference = toDegrees - fromDegrees;
        if (difference > 180) {
            return toDegrees - 360;
        }
        return difference < -180 ? toDegrees + 360 : toDegrees;
    }

    /** The same hue in [0, 360). */
    static double reduced(double degrees) {
        double reduced = degrees - 360 * Math.floor(degrees / 360);
        return reduced < 360 ? reduced : 0;
    }
}
