package org.duskloom.engine.display;

import java.util.Arrays;
import java.util.BitSet;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.text.Quoted;

/**
 * Reads pixel ranges such as {@code 1-6, 9, 14-10}: pixel numbers from 1, in the order written; a falling range runs
 * backwards. No pixel may stand twice.
 */
final class PixelRanges {
    private static final Pattern RANGE = Pattern.compile("([0-9]{1,9})(?:\\s*-\\s*([0-9]{1,9}))?");
    private static final String FORM = "pixels are written as in 1-6, 9, 14-10";

    private final TextNode written;
    private final String what;
    private final int pixelCount;
    private final Problems problems;
    private final BitSet taken = new BitSet();
    private int[] pixels = new int[16];
    private int size;

    private PixelRanges(TextNode written, String what, int pixelCount, Problems problems) {
        this.written = written;
        this.what = what;
        this.pixelCount = pixelCount;
        this.problems = problems;
    }

    /**
     * Reads ranges.
     *
     * @param written the text
     * @param what whose pixels they are, for messages
     * @param pixelCount how many pixels there are to choose from
     * @param problems where errors go
     * @return indices from 0, or nothing if an error was added
     */
    static Optional<int[]> read(TextNode written, String what, int pixelCount, Problems problems) {
        int errorsBefore = problems.errorCount();
        PixelRanges ranges = new PixelRanges(written, what, pixelCount, problems);
        for (String range : written.value().split(",", -1)) {
            ranges.add(range.strip());
        }
        return problems.errorCount() > errorsBefore
                ? Optional.empty()
                : Optional.of(Arrays.copyOf(ranges.pixels, ranges.size));
    }

    private void add(String range) {
        Matcher matcher = RANGE.matcher(range);
        if (!matcher.matches()) {
            error(range.isEmpty() ? "lacks a pixel number" : "holds " + Quoted.of(range), hint(range));
            return;
        }
        int from = Integer.parseInt(matcher.group(1));
        int to = matcher.group(2) == null ? from : Integer.parseInt(matcher.group(2));
        if (from < 1 || to < 1 || from > pixelCount || to > pixelCount) {
            error("holds " + Quoted.of(range), "allowed: pixels 1 to " + pixelCount);
            return;
        }
        add(from - 1, to - 1);
    }

    private void add(int from, int to) {
        int step = from <= to ? 1 : -1;
        for (int pixel = from; pixel != to + step; pixel += step) {
            if (taken.get(pixel)) {
                error("holds pixel " + (pixel + 1) + " twice", "every pixel of a part stands once");
                return;
            }
            taken.set(pixel);
            if (size == pixels.length) {
                pixels = Arrays.copyOf(pixels, size * 2);
            }
            pixels[size++] = pixel;
        }
    }

    private void error(String message, String hint) {
        problems.error(written.location(), what + " " + message, hint);
    }

    private static String hint(String range) {
        if (range.matches("[0-9]+\\s*[\u2010-\u2015\u2212]\\s*[0-9]+")) {
            return "a range is written with the plain hyphen: -";
        }
        return range.matches("[0-9\\s-]*") ? FORM : FORM + "; parts stand in a list: [\"rim\", \"petals/1\"]";
    }
}
