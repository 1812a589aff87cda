package org.duskloom.effects.image;

/** One image of a GIF, packed. */
final class GifImage {
    private static final int HAS_COLORS = 0x80;
    private static final int INTERLACED = 0x40;

    /** First rows and steps of the four passes of an interlaced image. */
    private static final int[][] PASSES = {{0, 8}, {4, 8}, {2, 4}, {1, 2}};

    private final int left;
    private final int top;
    private final int width;
    private final int height;
    private final boolean interlaced;
    private final int[] colors;
    private final GifControl control;
    private final int indexBits;
    private final byte[] data;

    private GifImage(GifBytes in, GifControl control, int[] commonColors) throws ImageException {
        left = in.nextShort();
        top = in.nextShort();
        width = in.nextShort();
        height = in.nextShort();
        int flags = in.next();
        interlaced = (flags & INTERLACED) != 0;
        colors = (flags & HAS_COLORS) != 0 ? in.colors(flags) : commonColors;
        indexBits = in.next();
        data = in.blocks();
        this.control = control;
        ImageLimits.check(width, height, 1);
    }

    static GifImage of(GifBytes in, GifControl control, int[] commonColors) throws ImageException {
        return new GifImage(in, control, commonColors);
    }

    int width() {
        return width;
    }

    int height() {
        return height;
    }

    /** Unpacks the image and puts it on the easel. */
    void show(Easel easel) throws ImageException {
        byte[] indices = GifCodes.indices(data, indexBits, width * height);
        int[] pixels = new int[indices.length];
        int from = 0;
        for (int[] pass : interlaced ? PASSES : new int[][] {{0, 1}}) {
            for (int row = pass[0]; row < height; row += pass[1]) {
                for (int x = 0; x < width; x++) {
                    pixels[row * width + x] = color(indices[from++] & 255);
                }
            }
        }
        easel.show(new Easel.Piece(left, top, width, height, pixels), true, control.afterwards(), control.seconds());
    }

    private int color(int index) throws ImageException {
        if (index == control.transparent()) {
            return 0;
        }
        if (index >= colors.length) {
            throw ImageException.damaged("a pixel has colour " + index + " of a palette of " + colors.length);
        }
        return colors[index];
    }
}
