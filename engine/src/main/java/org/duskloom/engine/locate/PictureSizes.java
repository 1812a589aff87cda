package org.duskloom.engine.locate;

import java.io.IOException;

/** All pictures of a run are of one size. */
final class PictureSizes {
    /** What cameras make is smaller; each dot of a picture takes some bytes while it is read. */
    private static final long MOST_DOTS = 250_000_000;

    private PictureSizes() {}

    static PictureSize requireAlike(Pictures pictures) throws IOException, PicturesRefusedException {
        PictureSize usual = usual(pictures);
        int odd = -1;
        int others = 0;
        for (int picture = pictures.count() - 1; picture >= 0; picture--) {
            boolean isUsual = pictures.size(picture).equals(usual);
            odd = isUsual ? odd : picture;
            others += isUsual ? 1 : 0;
        }
        if (odd < 0) {
            requireRoom(pictures.name(0), usual);
            return usual;
        }
        if (2 * others < pictures.count()) {
            throw new PicturesRefusedException(
                    pictures.name(odd),
                    "has " + pictures.size(odd) + " dots, and hardly two of the pictures are of one size",
                    "is it the folder with the photos of the run? they are taken with one camera that nobody touches");
        }
        throw oneOdd(pictures.name(odd), pictures.size(odd), usual);
    }

    private static void requireRoom(String name, PictureSize size) throws PicturesRefusedException {
        if ((long) size.width() * size.height() > MOST_DOTS) {
            throw new PicturesRefusedException(
                    name,
                    "has " + size + " dots, more than 250 million",
                    "make all pictures of the run smaller, by the same share");
        }
    }

    private static PicturesRefusedException oneOdd(String name, PictureSize size, PictureSize usual) {
        boolean turned = size.isUpright() != usual.isUpright();
        return new PicturesRefusedException(
                name,
                turned
                        ? "is " + shape(size) + ", and the others are " + shape(usual)
                        : "has " + size + " dots, and the others " + usual,
                "all pictures of a run are taken with one camera that nobody touches; take it again, or leave out what"
                        + " is no picture of the run");
    }

    private static String shape(PictureSize size) {
        return (size.isUpright() ? "upright, " : "wider than high, ") + size;
    }

    /** The size that most of the first three have; else that of the first. */
    private static PictureSize usual(Pictures pictures) throws IOException, PicturesRefusedException {
        PictureSize first = pictures.size(0);
        if (pictures.count() > 2 && pictures.size(1).equals(pictures.size(2))) {
            return pictures.size(1);
        }
        return first;
    }
}
