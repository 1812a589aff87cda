package org.duskloom.engine.locate;

import java.io.IOException;

/** All pictures of a run are of one size. */
final class PictureSizes {
    private PictureSizes() {}

    static PictureSize requireAlike(Pictures pictures) throws IOException, PicturesRefusedException {
        PictureSize usual = usual(pictures);
        for (int picture = 0; picture < pictures.count(); picture++) {
            PictureSize size = pictures.size(picture);
            if (!size.equals(usual)) {
                boolean turned = size.isUpright() != usual.isUpright();
                throw new PicturesRefusedException(
                        pictures.name(picture),
                        turned
                                ? "is " + shape(size) + ", and the others are " + shape(usual)
                                : "has " + size + " dots, and the others " + usual,
                        "all pictures of a run are taken with one camera that nobody touches; take it again, or leave"
                                + " out what is no picture of the run");
            }
        }
        return usual;
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
