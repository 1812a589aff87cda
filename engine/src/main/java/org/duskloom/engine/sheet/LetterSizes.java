package org.duskloom.engine.sheet;

import java.util.ArrayList;
import java.util.List;
import org.duskloom.engine.font.PixelFont;

/** Which sizes of letters are tried, the largest first: until every number has a place beside its pixel. */
final class LetterSizes {
    private static final double LARGEST_MM = 8;

    /** Smaller ones are hard to read on paper. */
    private static final double SMALLEST_MM = 1.6;

    private static final double OF_SPACING = 0.22;
    private static final double STEP = 0.85;

    /** Letters of two dots for each of the font are easy to read. */
    private static final int EASY_DOTS = 2 * PixelFont.CAPITAL_ROWS;

    /** The longer side of a shape, in dots, where there is room enough. */
    private static final double USUAL_SIDE = 2600;

    /** The same where there is not. */
    private static final double LONGEST_SIDE = 4000;

    /** The same of one row, where it is cut into rows. */
    private static final double SIDE_OF_ROW = 1600;

    private static final double NOTHING = 1e-9;
    private static final double USUAL_DOTS_PER_MM = 2;
    private static final double MOST_DOTS_PER_MM = 12;

    private LetterSizes() {}

    /** Into how many rows that suit a screen the longer side is cut, if it is longer than usual. */
    static int rows(double longerSideMm, double dotsPerMm) {
        double side = longerSideMm * dotsPerMm;
        return side > USUAL_SIDE + NOTHING ? (int) Math.ceil(side / SIDE_OF_ROW) : 1;
    }

    /** A size for a picture. */
    record ForPicture(double dotsPerMm, int letterDots) {
        double letterMm() {
            return letterDots / dotsPerMm;
        }
    }

    /** Heights of capitals on paper, in millimetres. */
    static List<Double> onPaper(double spacingMm) {
        List<Double> sizes = new ArrayList<>();
        double size = Math.min(LARGEST_MM, OF_SPACING * spacingMm);
        while (size > SMALLEST_MM) {
            sizes.add(size);
            size *= STEP;
        }
        sizes.add(SMALLEST_MM);
        return sizes;
    }

    /**
     * Scales of a picture: larger and larger ones, and small letters on the largest.
     *
     * @param mostRows into how many rows the longer side may be cut
     */
    static List<ForPicture> onPicture(double longerSideMm, int mostRows) {
        List<ForPicture> sizes = new ArrayList<>();
        double longest = mostRows == 1 ? LONGEST_SIDE : mostRows * SIDE_OF_ROW;
        double most = Math.min(MOST_DOTS_PER_MM, longest / longerSideMm);
        double scale = Math.min(Math.min(USUAL_DOTS_PER_MM, USUAL_SIDE / longerSideMm), most);
        while (scale < most) {
            sizes.add(new ForPicture(scale, EASY_DOTS));
            scale /= STEP;
        }
        sizes.add(new ForPicture(most, EASY_DOTS));
        sizes.add(new ForPicture(most, EASY_DOTS / 2));
        return sizes;
    }
}
