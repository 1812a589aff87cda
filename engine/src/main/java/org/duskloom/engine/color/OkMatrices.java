package org.duskloom.engine.color;

/**
 * The matrices between linear sRGB, XYZ (D65), cone responses and OKLab, as in the sample code of W3C CSS Color Module
 * Level 4; OKLab itself is by B. Ottosson, "A perceptual color space for image processing", 2020.
 */
final class OkMatrices {
    static final Matrix3 XYZ_FROM_RGB = new Matrix3(
            506752 / 1228815.0,
            87881 / 245763.0,
            12673 / 70218.0,
            87098 / 409605.0,
            175762 / 245763.0,
            12673 / 175545.0,
            7918 / 409605.0,
            87881 / 737289.0,
            1001167 / 1053270.0);
    static final Matrix3 CONES_FROM_XYZ = new Matrix3(
            0.8190224379967030,
            0.3619062600528904,
            -0.1288737815209879,
            0.0329836539323885,
            0.9292868615863434,
            0.0361446663506424,
            0.0481771893596242,
            0.2642395317527308,
            0.6335478284694309);
    static final Matrix3 LAB_FROM_CUBE_ROOTS = new Matrix3(
            0.2104542683093140,
            0.7936177747023054,
            -0.0040720430116193,
            1.9779985324311684,
            -2.4285922420485799,
            0.4505937096174110,
            0.0259040424655478,
            0.7827717124575296,
            -0.8086757549230774);
    static final Matrix3 CUBE_ROOTS_FROM_LAB = new Matrix3(
            1,
            0.3963377773761749,
            0.2158037573099136,
            1,
            -0.1055613458156586,
            -0.0638541728258133,
            1,
            -0.0894841775298119,
            -1.2914855480194092);
    static final Matrix3 CONES_FROM_RGB = CONES_FROM_XYZ.after(XYZ_FROM_RGB);
    static final Matrix3 RGB_FROM_CONES = rgbFromXyz().after(xyzFromCones());

    private OkMatrices() {}

    private static Matrix3 xyzFromCones() {
        return new Matrix3(
                1.2268798758459243,
                -0.5578149944602171,
                0.2813910456659647,
                -0.0405757452148008,
                1.1122868032803170,
                -0.0717110580655164,
                -0.0763729366746601,
                -0.4214933324022432,
                1.5869240198367816);
    }

    /** The exact inverse of {@link #XYZ_FROM_RGB}. */
    private static Matrix3 rgbFromXyz() {
        return new Matrix3(
                12831 / 3959.0,
                -329 / 214.0,
                -1974 / 3959.0,
                -851781 / 878810.0,
                1648619 / 878810.0,
                36519 / 878810.0,
                705 / 12673.0,
                -2585 / 12673.0,
                705 / 667.0);
    }
}
