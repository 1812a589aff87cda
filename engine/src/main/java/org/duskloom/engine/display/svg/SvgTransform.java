package org.duskloom.engine.display.svg;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.duskloom.engine.geometry.Degrees;
import org.duskloom.engine.problem.TextFormatException;
import org.duskloom.engine.text.Quoted;
import org.joml.Matrix3x2d;

/** The attribute {@code transform}: W3C SVG 1.1, section 7.6. */
final class SvgTransform {
    private static final Pattern STEP = Pattern.compile("([a-zA-Z]+)\\s*\\(([^()]*)\\)[\\s,]*");

    private SvgTransform() {}

    /** The matrix from the places inside to those outside. */
    static Matrix3x2d parse(String text) throws TextFormatException {
        Matrix3x2d all = new Matrix3x2d();
        Matcher steps = STEP.matcher(text);
        int at = text.length() - text.stripLeading().length();
        while (at < text.length()) {
            if (!steps.region(at, text.length()).lookingAt()) {
                throw new TextFormatException(
                        "the transform " + Quoted.of(text) + " cannot be read", "such as translate(10, 20) rotate(30)");
            }
            all.mul(step(steps.group(1), new SvgScan(steps.group(2)).rest()));
            at = steps.end();
        }
        return all;
    }

    private static Matrix3x2d step(String word, List<Double> n) throws TextFormatException {
        int count = n.size();
        if (word.equals("matrix") && count == 6) {
            return new Matrix3x2d(n.get(0), n.get(1), n.get(2), n.get(3), n.get(4), n.get(5));
        }
        if (word.equals("translate") && (count == 1 || count == 2)) {
            return new Matrix3x2d(1, 0, 0, 1, n.get(0), count == 2 ? n.get(1) : 0);
        }
        if (word.equals("scale") && (count == 1 || count == 2)) {
            return new Matrix3x2d(n.get(0), 0, 0, n.get(count - 1), 0, 0);
        }
        if (word.equals("rotate") && (count == 1 || count == 3)) {
            return count == 1 ? turn(n.get(0)) : turnAbout(n.get(0), n.get(1), n.get(2));
        }
        if (word.equals("skewX") && count == 1) {
            return new Matrix3x2d(1, 0, StrictMath.tan(StrictMath.toRadians(n.get(0))), 1, 0, 0);
        }
        if (word.equals("skewY") && count == 1) {
            return new Matrix3x2d(1, StrictMath.tan(StrictMath.toRadians(n.get(0))), 0, 1, 0, 0);
        }
        throw new TextFormatException(
                "the transform " + word + " with " + count + " numbers is not understood",
                "allowed: matrix, translate, scale, rotate, skewX, skewY");
    }

    private static Matrix3x2d turn(double degrees) {
        double cos = Degrees.cosine(degrees);
        double sin = Degrees.sine(degrees);
        return new Matrix3x2d(cos, sin, -sin, cos, 0, 0);
    }

    private static Matrix3x2d turnAbout(double degrees, double x, double y) {
        return new Matrix3x2d(1, 0, 0, 1, x, y).mul(turn(degrees)).mul(new Matrix3x2d(1, 0, 0, 1, -x, -y));
    }
}
