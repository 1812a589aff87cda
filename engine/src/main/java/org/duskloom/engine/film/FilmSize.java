package org.duskloom.engine.film;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.duskloom.engine.preview.PreviewScene;
import org.duskloom.engine.preview.SceneDrawing;
import org.duskloom.engine.problem.TextFormatException;
import org.duskloom.engine.text.Quoted;

/**
 * How large the pictures of a film are, in dots.
 *
 * @param width 2 to {@value #LONGEST}
 * @param height 2 to {@value #LONGEST}
 */
public record FilmSize(int width, int height) {
    /** The longest side. */
    public static final int LONGEST = 8192;

    /** How many dots there are at most: light is added up for each of them. */
    public static final int MOST_DOTS = 10_000_000;

    private static final Pattern FORM = Pattern.compile("([0-9]{1,9})x([0-9]{1,9})");

    /** @throws IllegalArgumentException if a side, or both together, are out of range */
    public FilmSize {
        if (width < 2 || height < 2 || width > LONGEST || height > LONGEST || (long) width * height > MOST_DOTS) {
            throw new IllegalArgumentException(width + " by " + height + " dots");
        }
    }

    /**
     * Reads {@code 1280x720}.
     *
     * @throws TextFormatException if it is something else, or out of range
     */
    public static FilmSize parse(String text) throws TextFormatException {
        String allowed = "write width and height in dots, such as 1280x720; each from 2 to " + LONGEST
                + ", together at most 10 million dots";
        Matcher matcher = FORM.matcher(text);
        if (!matcher.matches()) {
            throw new TextFormatException(Quoted.of(text) + " is not a size", allowed);
        }
        try {
            return new FilmSize(Integer.parseInt(matcher.group(1)), Integer.parseInt(matcher.group(2)));
        } catch (IllegalArgumentException outOfRange) {
            throw new TextFormatException("the size " + Quoted.of(text) + " is out of range", allowed);
        }
    }

    /**
     * The largest even size with the proportions of a display that fits a bound. A single prop may be a mere line: no
     * picture is narrower than half its height, or lower than a quarter of its width.
     */
    static FilmSize fitting(PreviewScene scene, FilmSize bound) {
        double aspect = Math.max(0.5, Math.min(4, SceneDrawing.aspect(scene)));
        double width = Math.min(bound.width, bound.height * aspect);
        return new FilmSize(even(width), even(width / aspect));
    }

    /** Whether both sides are even, which most video needs: colour is kept for two dots at a time. */
    public boolean isEven() {
        return width % 2 == 0 && height % 2 == 0;
    }

    int dots() {
        return width * height;
    }

    private static int even(double side) {
        return Math.max(2, (int) Math.rint(side / 2) * 2);
    }

    @Override
    public String toString() {
        return width + "x" + height;
    }
}
