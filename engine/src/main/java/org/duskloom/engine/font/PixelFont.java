package org.duskloom.engine.font;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A small font for labels, the project's own drawing: letters about five dots wide, capitals seven dots high, each as
 * wide as it needs. Needs nothing of the system, so labels look the same everywhere. Knows printable ASCII, some signs
 * and letters with the usual marks over them; draws a box for anything else.
 */
public final class PixelFont {
    /** Rows of a line, from the marks over capitals to the tails. */
    public static final int ROWS = 11;

    /** Rows above the capitals, taken by marks only. */
    public static final int CAPITAL_ROW = 2;

    /** Rows of a capital letter. */
    public static final int CAPITAL_ROWS = 7;

    private static final int GAP = 1;
    private static final int SMALL_ROW = CAPITAL_ROW + 2;
    private static final PixelFont STANDARD = load("pixel-font.txt");

    private final Map<Integer, Glyph> glyphs;
    private final Glyph box = new Glyph(5, new int[] {0, 0, 31, 17, 17, 17, 17, 17, 31, 0, 0});

    /**
     * One character.
     *
     * @param width in dots
     * @param rows {@link #ROWS} rows of bits, the leftmost dot in bit 0
     */
    private record Glyph(int width, int[] rows) {
        Glyph widened(int newWidth) {
            int shift = (newWidth - width) / 2;
            int[] shifted = rows.clone();
            for (int row = 0; row < ROWS; row++) {
                shifted[row] <<= shift;
            }
            return new Glyph(newWidth, shifted);
        }

        int firstInkRow() {
            int row = 0;
            while (row < ROWS - 1 && rows[row] == 0) {
                row++;
            }
            return row;
        }
    }

    /** Takes one dot of a text. */
    @FunctionalInterface
    public interface Dots {
        /** The dot at a column from the left and a row from the top of the line is part of a letter. */
        void ink(int column, int row);
    }

    private PixelFont(Map<Integer, Glyph> glyphs) {
        this.glyphs = glyphs;
    }

    /** The font. */
    public static PixelFont standard() {
        return STANDARD;
    }

    /** How many columns a text takes. */
    public int width(String text) {
        int width = text.codePoints()
                .map(codePoint -> glyph(codePoint).width() + GAP)
                .sum();
        return Math.max(0, width - GAP);
    }

    /** Draws a text, dot by dot. */
    public void draw(String text, Dots dots) {
        int left = 0;
        for (int codePoint : text.codePoints().toArray()) {
            Glyph glyph = glyph(codePoint);
            for (int row = 0; row < ROWS; row++) {
                for (int column = 0; column < glyph.width(); column++) {
                    if ((glyph.rows()[row] >> column & 1) != 0) {
                        dots.ink(left + column, row);
                    }
                }
            }
            left += glyph.width() + GAP;
        }
    }

    /** The longest beginning of a text that fits, with an ellipsis where something is missing; may be empty. */
    public String fitted(String text, int columns) {
        if (width(text) <= columns) {
            return text;
        }
        int[] codePoints = text.codePoints().toArray();
        for (int count = codePoints.length - 1; count > 0; count--) {
            String shortened = new String(codePoints, 0, count).stripTrailing() + "…";
            if (width(shortened) <= columns) {
                return shortened;
            }
        }
        return "";
    }

    /** Whether there is a letter for a code point; a box stands for those that are not there. */
    public boolean has(int codePoint) {
        return glyph(codePoint) != box;
    }

    private Glyph glyph(int codePoint) {
        Glyph glyph = glyphs.get(codePoint);
        return glyph != null ? glyph : composed(codePoint);
    }

    /** Unicode takes a letter with a mark apart into the letter and the mark: those are drawn over each other. */
    private Glyph composed(int codePoint) {
        int[] pieces = Normalizer.normalize(Character.toString(codePoint), Normalizer.Form.NFD)
                .codePoints()
                .toArray();
        Glyph letter = glyphs.get(pieces[0]);
        Glyph mark = pieces.length == 2 ? glyphs.get(pieces[1]) : null;
        return letter == null || mark == null ? box : over(mark, letter, pieces[0] == 'i' || pieces[0] == 'j');
    }

    private static Glyph over(Glyph mark, Glyph letter, boolean losesDot) {
        int width = Math.max(mark.width(), letter.width());
        int[] rows = letter.widened(width).rows().clone();
        if (losesDot) {
            rows[CAPITAL_ROW] = 0;
        }
        int top = new Glyph(width, rows).firstInkRow();
        boolean above = mark.firstInkRow() < SMALL_ROW;
        int lift = above ? SMALL_ROW - top : 0;
        int[] marks = mark.widened(width).rows();
        for (int row = 0; row < ROWS; row++) {
            if (marks[row] != 0) {
                rows[Math.max(0, row - lift)] |= marks[row];
            }
        }
        return new Glyph(width, rows);
    }

    private static PixelFont load(String resource) {
        try (InputStream in = PixelFont.class.getResourceAsStream(resource)) {
            return new PixelFont(parse(new String(in.readAllBytes(), StandardCharsets.UTF_8)));
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    /** Blocks divided by empty lines, the first of them prose: a line of names, then the rows of all of them. */
    private static Map<Integer, Glyph> parse(String text) {
        Map<Integer, Glyph> glyphs = new HashMap<>();
        List<String> blocks = new ArrayList<>(List.of(text.split("\\R\\R")));
        for (String block : blocks.subList(1, blocks.size())) {
            List<String[]> lines = block.lines().map(line -> line.split(" +")).toList();
            String[] names = lines.get(0);
            for (int i = 0; i < names.length; i++) {
                glyphs.put(codePoint(names[i]), glyph(lines, i));
            }
        }
        return Map.copyOf(glyphs);
    }

    private static Glyph glyph(List<String[]> lines, int index) {
        int[] rows = new int[ROWS];
        for (int line = 1; line < lines.size(); line++) {
            String dots = lines.get(line)[index];
            for (int column = 0; column < dots.length(); column++) {
                rows[CAPITAL_ROW + line - 1] |= (dots.charAt(column) == '#' ? 1 : 0) << column;
            }
        }
        return new Glyph(lines.get(1)[index].length(), rows);
    }

    private static int codePoint(String name) {
        if (name.equals("space")) {
            return ' ';
        }
        return name.startsWith("U+") && name.length() > 2
                ? Integer.parseInt(name.substring(2), 16)
                : name.codePointAt(0);
    }
}
