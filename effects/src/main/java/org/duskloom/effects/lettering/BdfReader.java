package org.duskloom.effects.lettering;

import java.util.BitSet;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.duskloom.engine.effect.Shown;
import org.duskloom.engine.problem.Problems;

/**
 * Reads fonts in BDF: Character Bitmap Distribution Format 2.1, Adobe, X Consortium Standard, and what later files add
 * to it. The numbers of the letters are taken as Unicode; letters without a number are left out.
 */
final class BdfReader {
    /** Larger letters, in dots, are a mistake. */
    private static final int LARGEST = 256;

    private static final int HEX = 16;
    private static final int HEX_BITS = 4;

    private final BdfLines lines;
    private final Problems problems;
    private final Map<Integer, BdfGlyph> glyphs = new HashMap<>();
    private Optional<BdfBox> box = Optional.empty();
    private OptionalInt capitalHeight = OptionalInt.empty();

    private BdfReader(BdfLines lines, Problems problems) {
        this.lines = lines;
        this.problems = problems;
    }

    /** The font of a file, or nothing if errors were added. */
    static Optional<BdfFont> read(byte[] file, String shownName, Problems problems) {
        int errorsBefore = problems.errorCount();
        BdfReader reader = new BdfReader(new BdfLines(file, shownName, problems), problems);
        reader.readFont();
        return problems.errorCount() > errorsBefore
                ? Optional.empty()
                : Optional.of(new BdfFont(reader.box.orElseThrow(), reader.glyphs, reader.capitalHeight));
    }

    private void readFont() {
        if (!lines.next() || !lines.is("STARTFONT")) {
            lines.error(
                    "the file does not begin with STARTFONT", "is it a BDF font? other kinds can be converted to BDF");
            return;
        }
        while (!lines.is("ENDFONT")) {
            if (!lines.next()) {
                lines.error("the file ends without ENDFONT", "it is cut off; get it again");
                return;
            }
            readItem();
        }
        if (box.isEmpty()) {
            lines.error("there is no FONTBOUNDINGBOX", "it says the size of a line: width, height, x and y");
        }
        if (glyphs.isEmpty()) {
            lines.error("there is no letter with a number", "each STARTCHAR needs its ENCODING");
        }
    }

    private void readItem() {
        switch (lines.keyword()) {
            case "FONTBOUNDINGBOX" -> box = readBox();
            case "CAP_HEIGHT" ->
                lines.numbers(1, "a number of dots").ifPresent(number -> capitalHeight = OptionalInt.of(number[0]));
            case "STARTCHAR" -> readGlyph();
            default -> {
                // Names, sizes on paper and the like do not matter here.
            }
        }
    }

    private Optional<BdfBox> readBox() {
        Optional<int[]> numbers = lines.numbers(4, "four whole numbers: width, height, x and y");
        if (numbers.isPresent() && isOutside(numbers.get()[0]) | isOutside(numbers.get()[1])) {
            lines.error(
                    lines.keyword() + " is " + numbers.get()[0] + " x " + numbers.get()[1] + " dots",
                    "allowed: 0 to " + LARGEST + " each way");
            return Optional.empty();
        }
        return numbers.map(n -> new BdfBox(n[0], n[1], limited(n[2]), limited(n[3])));
    }

    private static boolean isOutside(int dots) {
        return dots < 0 || dots > LARGEST;
    }

    private static int limited(int dots) {
        return Math.max(-LARGEST, Math.min(LARGEST, dots));
    }

    private void readGlyph() {
        int encoding = -1;
        OptionalInt advance = OptionalInt.empty();
        Optional<BdfBox> own = Optional.empty();
        Optional<BitSet> ink = Optional.empty();
        boolean boxed = false;
        boolean drawn = false;
        lines.next();
        while (!lines.is("ENDCHAR")) {
            if (isCut()) {
                lines.error("a letter does not end with ENDCHAR", "each STARTCHAR needs its ENDCHAR");
                return;
            }
            boxed |= lines.is("BBX");
            drawn |= lines.is("BITMAP");
            switch (lines.keyword()) {
                case "ENCODING" ->
                    encoding =
                            lines.numbers(1, "a number, or -1").map(n -> n[0]).orElse(-1);
                case "DWIDTH" -> advance = firstOf(lines.numbers(2, "two whole numbers: the way to the next letter"));
                case "BBX" -> own = drawn ? lateBox() : readBox();
                case "BITMAP" -> ink = own.isPresent() ? readBitmap(own.get()) : skipBitmap(boxed);
                default -> {
                    // Widths on paper and the like do not matter here.
                }
            }
            if (!lines.is("ENDCHAR") && !isCut()) {
                lines.next();
            }
        }
        if (!drawn) {
            lines.error("a letter has no BITMAP", "behind BBX: a line of hexadecimal digits for each row of dots");
        }
        keep(encoding, advance, own, ink);
    }

    private Optional<BdfBox> lateBox() {
        lines.error("BBX stands behind BITMAP", "it says how many rows and columns BITMAP has, so it comes before");
        return Optional.empty();
    }

    /** Whether a letter is over without its end. */
    private boolean isCut() {
        return lines.is("") || lines.is("STARTCHAR") || lines.is("ENDFONT");
    }

    private static OptionalInt firstOf(Optional<int[]> numbers) {
        return numbers.isPresent() ? OptionalInt.of(limited(numbers.get()[0])) : OptionalInt.empty();
    }

    private void keep(int encoding, OptionalInt advance, Optional<BdfBox> own, Optional<BitSet> ink) {
        if (own.isPresent() && ink.isPresent() && encoding >= 0) {
            int width = own.get().width();
            glyphs.putIfAbsent(encoding, new BdfGlyph(advance.orElse(width), own.get(), ink.get()));
        }
    }

    /** Looks at the rows of a letter whose size is not known, if only for what can be no row at all. */
    private Optional<BitSet> skipBitmap(boolean boxed) {
        if (!boxed) {
            lines.error("BITMAP stands before BBX", "BBX says how many rows and columns there are");
        }
        while (lines.next() && !lines.is("ENDCHAR") && !isCut()) {
            readRow(0, 0, new BitSet());
        }
        return Optional.empty();
    }

    private Optional<BitSet> readBitmap(BdfBox own) {
        BitSet ink = new BitSet();
        boolean sound = true;
        for (int row = 0; row < own.height(); row++) {
            if (!lines.next() || lines.is("ENDCHAR") || isCut()) {
                lines.error("the letter ends after " + row + " of " + own.height() + " rows of dots", "");
                return Optional.empty();
            }
            sound &= readRow(own.width(), row, ink);
        }
        return sound ? Optional.of(ink) : Optional.empty();
    }

    private boolean readRow(int width, int row, BitSet ink) {
        String digits = lines.keyword();
        if (digits.length() * HEX_BITS < width || !digits.matches("[0-9A-Fa-f]*")) {
            lines.error(
                    (width == 0 ? "a row of dots has " : "a row of " + width + " dots has ") + Shown.text(digits),
                    "it needs " + (width == 0 ? "" : (width + 7) / 8 * 2 + " ") + "hexadecimal digits");
            return false;
        }
        for (int column = 0; column < width; column++) {
            int digit = Character.digit(digits.charAt(column / HEX_BITS), HEX);
            ink.set(row * width + column, (digit >> HEX_BITS - 1 - column % HEX_BITS & 1) != 0);
        }
        return true;
    }
}
