package org.duskloom.engine.display.svg;

import java.util.List;
import org.duskloom.engine.problem.TextFormatException;
import org.duskloom.engine.text.Quoted;
import org.joml.Matrix3x2d;

/** The outermost {@code svg}: how large a user unit is on paper. W3C SVG 1.1, sections 7.7 and 7.8. */
final class SvgPage {
    private SvgPage() {}

    /**
     * The matrix from user units to millimetres on the page, y still down.
     *
     * @param width the attribute, or null; and so the others
     */
    static Matrix3x2d millimetresFromUser(String width, String height, String viewBox, String aspect)
            throws TextFormatException {
        if (viewBox == null) {
            return new Matrix3x2d().scale(SvgLength.MM_PER_PX);
        }
        List<Double> box = new SvgScan(viewBox).rest();
        if (box.size() != 4 || !(box.get(2) > 0) || !(box.get(3) > 0)) {
            throw new TextFormatException(
                    "the viewBox " + Quoted.of(viewBox) + " is no area",
                    "x, y, width and height, the last two above 0");
        }
        double wide = box.get(2);
        double high = box.get(3);
        // What is a share of a window has no size of its own: user units are px then.
        double scaleX = hasSize(width) ? SvgLength.millimetres(width) / wide : Double.NaN;
        double scaleY = hasSize(height) ? SvgLength.millimetres(height) / high : scaleX;
        scaleX = Double.isNaN(scaleX) ? scaleY : scaleX;
        if (Double.isNaN(scaleX)) {
            scaleX = SvgLength.MM_PER_PX;
            scaleY = SvgLength.MM_PER_PX;
        }
        if (!(scaleX > 0) || !(scaleY > 0)) {
            throw new TextFormatException("the drawing has no size", "give width and height above 0, such as 200mm");
        }
        return fitted(box, scaleX, scaleY, aspect == null ? "xMidYMid" : aspect.strip());
    }

    private static Matrix3x2d fitted(List<Double> box, double scaleX, double scaleY, String aspect)
            throws TextFormatException {
        Matrix3x2d fromCorner = new Matrix3x2d(1, 0, 0, 1, -box.get(0), -box.get(1));
        if (aspect.equals("none")) {
            return new Matrix3x2d().scale(scaleX, scaleY).mul(fromCorner);
        }
        if (!aspect.matches("xMidYMid( meet)?")) {
            throw new TextFormatException(
                    "preserveAspectRatio " + Quoted.of(aspect) + " is not understood", "allowed: xMidYMid, none");
        }
        double scale = Math.min(scaleX, scaleY);
        double freeX = (scaleX - scale) * box.get(2) / 2;
        double freeY = (scaleY - scale) * box.get(3) / 2;
        return new Matrix3x2d(scale, 0, 0, scale, freeX, freeY).mul(fromCorner);
    }

    /** Whether a length says how long something is on paper, and not on a screen or in shares of it. */
    static boolean isOnPaper(String length) {
        return length != null && length.strip().matches("(?i).*(mm|cm|in|pt|pc|q)");
    }

    private static boolean hasSize(String length) {
        return length != null
                && !length.strip().endsWith("%")
                && !length.strip().equals("auto");
    }
}
