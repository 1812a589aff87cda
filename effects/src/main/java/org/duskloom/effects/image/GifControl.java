package org.duskloom.effects.image;

/**
 * How an image of a GIF is shown: its graphic control extension.
 *
 * @param transparent the index of the colour that lets the image before shine through, or -1
 */
record GifControl(Easel.Afterwards afterwards, double seconds, int transparent) {
    /** Images that shall be seen for no time get a tenth of a second: common practice of viewers, no source. */
    private static final int NO_TIME_HUNDREDTHS = 10;

    private static final int BYTES = 4;

    static final GifControl NONE = new GifControl(Easel.Afterwards.STAYS, NO_TIME_HUNDREDTHS / 100.0, -1);

    static GifControl of(GifBytes in) throws ImageException {
        int length = in.next();
        if (length != BYTES) {
            throw ImageException.damaged("the control of an image has " + length + " bytes, not " + BYTES);
        }
        int flags = in.next();
        int hundredths = in.nextShort();
        int index = in.next();
        in.skipBlocks();
        Easel.Afterwards afterwards = switch (flags >> 2 & 7) {
            case 2 -> Easel.Afterwards.IS_CLEARED;
            case 3 -> Easel.Afterwards.GIVES_WAY_TO_WHAT_WAS_BEFORE;
            default -> Easel.Afterwards.STAYS;
        };
        return new GifControl(
                afterwards, (hundredths == 0 ? NO_TIME_HUNDREDTHS : hundredths) / 100.0, (flags & 1) != 0 ? index : -1);
    }
}
