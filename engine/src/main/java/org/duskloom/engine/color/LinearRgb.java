package org.duskloom.engine.color;

/** Linear light of the sRGB primaries in double precision; a part outside [0, 1] is a colour that sRGB cannot show. */
record LinearRgb(double red, double green, double blue) {
    static LinearRgb of(LinearColor color) {
        return new LinearRgb(color.red(), color.green(), color.blue());
    }

    LinearColor clipped(double alpha) {
        return LinearColor.clipped(red, green, blue, alpha);
    }
}
