package org.duskloom.effects.image;

/** How large pictures may be; looked at before any pixel is decoded, so that a small file cannot fill the memory. */
final class ImageLimits {
    static final int MOST_MEGAPIXELS = 16;
    static final int MOST_IMAGES = 4096;
    static final int MOST_MEGABYTES = 256;
    static final int MOST_FILE_MEGABYTES = 256;

    private static final int BYTES_OF_A_PIXEL = 4;

    private ImageLimits() {}

    /**
     * Refuses a picture that is too large.
     *
     * @param width in pixels, as the file's header says
     * @param images how many images of this size there are
     */
    static void check(long width, long height, long images) throws ImageException {
        String size = "has " + width + " x " + height + " pixels";
        if (width < 1 || height < 1) {
            throw ImageException.damaged("it " + size);
        }
        if (width > (MOST_MEGAPIXELS << 20) / height) {
            throw new ImageException(
                    size + ", more than " + MOST_MEGAPIXELS + " megapixels",
                    "make it smaller: a few pixels for each light are enough");
        }
        if (images > MOST_IMAGES) {
            throw new ImageException(
                    "has " + images + " images, more than " + MOST_IMAGES, "leave out every other image");
        }
        if (width * height * images * BYTES_OF_A_PIXEL > (long) MOST_MEGABYTES << 20) {
            throw new ImageException(
                    size + " in each of its " + images + " images, which take more than " + MOST_MEGABYTES + " MB",
                    "make it smaller: a few pixels for each light are enough");
        }
    }
}
