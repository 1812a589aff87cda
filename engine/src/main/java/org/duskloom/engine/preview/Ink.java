package org.duskloom.engine.preview;

/** The colours of the sheets, sRGB as {@code 0xRRGGBB}: near black, so that the light is what one sees. */
final class Ink {
    /** The sheet round the panels. */
    static final int SHEET = 0x16181F;
    /** The night behind the pixels. */
    static final int NIGHT = 0x090A0F;
    /** A pixel without light. */
    static final int UNLIT = 0x2C2F38;
    /** Titles and times. */
    static final int TEXT = 0xDCDFE6;
    /** What is read second: counts, frame numbers, names. */
    static final int QUIET = 0x868C9A;
    /** Lines. */
    static final int RULE = 0x3A3E4A;

    private Ink() {}
}
