package org.duskloom.effects.lettering;

import java.util.List;
import org.duskloom.effects.kit.area.LightImage;
import org.duskloom.engine.color.LinearColor;
import org.duskloom.engine.color.Palette;
import org.duskloom.engine.color.PaletteStyle;

/**
 * A line of dots as a picture: each dot a square of the colour that the palette has at its column, with an outline
 * round the letters.
 *
 * @param image what is seen
 * @param columns how wide it is, in dots
 * @param rows how high it is, in dots
 * @param capitalRows rows of a capital
 * @param capitalMiddle where the middle of a capital is, as a share of the height from the top
 * @param marginShare how much of the width lies on either side of the text, for the outline
 */
record LetterPicture(
        LightImage image, double columns, double rows, int capitalRows, double capitalMiddle, double marginShare) {
    /** An outline that is no whole number of dots is drawn in quarters of a dot. */
    private static final int QUARTERS = 4;

    /**
     * Colours of letters.
     *
     * @param letters along the text, from 0 at the left to 1
     * @param outline likewise
     * @param thickness of the outline, in dots; 0 for none
     */
    record Colors(Palette letters, Palette outline, double thickness) {
        /** Letters in red and outline in green, for {@link TintBrush}. */
        static Colors coverage(double thickness) {
            return new Colors(single(new LinearColor(1, 0, 0, 1)), single(new LinearColor(0, 1, 0, 1)), thickness);
        }

        private static Palette single(LinearColor color) {
            return Palette.evenly(List.of(color), PaletteStyle.SMOOTH);
        }
    }

    static LetterPicture of(DotLine line, Colors colors) {
        int scale = scale(colors.thickness);
        int margin = (int) Math.rint(colors.thickness * scale);
        Sheet sheet = new Sheet(line, scale, margin);
        sheet.drawOutline(colors.outline, margin);
        sheet.drawLetters(colors.letters);
        double rows = (double) sheet.height / scale;
        double middle = (double) margin / scale + line.capitalTop() + line.capitalRows() / 2.0;
        return new LetterPicture(
                new LightImage(sheet.width, sheet.height, sheet.light),
                (double) sheet.width / scale,
                rows,
                line.capitalRows(),
                middle / rows,
                (double) margin / sheet.width);
    }

    /** How many pixels the picture will have. */
    static long pixels(DotLine line, double thickness) {
        int scale = scale(thickness);
        int margin = (int) Math.rint(thickness * scale);
        return (line.columns() * (long) scale + 2L * margin) * (line.rows() * (long) scale + 2L * margin);
    }

    private static int scale(double thickness) {
        return thickness == Math.rint(thickness) ? 1 : QUARTERS;
    }

    /** The pixels while they are drawn; several to a dot where the outline asks for it. */
    private static final class Sheet {
        private final DotLine line;
        private final int scale;
        private final int margin;
        private final int width;
        private final int height;
        private final float[] light;

        Sheet(DotLine line, int scale, int margin) {
            this.line = line;
            this.scale = scale;
            this.margin = margin;
            width = line.columns() * scale + 2 * margin;
            height = line.rows() * scale + 2 * margin;
            light = new float[width * height * LightImage.CHANNELS];
        }

        void drawLetters(Palette palette) {
            for (int x = 0; x < width; x++) {
                LinearColor color = palette.at(place(x));
                for (int y = 0; y < height; y++) {
                    if (isLetter(x, y)) {
                        set(x, y, color);
                    }
                }
            }
        }

        /** Everything that lies no farther from a letter than the reach, along rows and columns. */
        void drawOutline(Palette palette, int reach) {
            boolean[] near = new boolean[width * height];
            for (int y = 0; y < height && reach > 0; y++) {
                for (int x = 0; x < width; x++) {
                    if (isLetter(x, y)) {
                        markRow(near, x - reach, x + reach, y);
                    }
                }
            }
            for (int x = 0; x < width && reach > 0; x++) {
                LinearColor color = palette.at(place(x));
                int last = -reach - 1;
                for (int y = -reach; y < height; y++) {
                    last = y + reach < height && near[(y + reach) * width + x] ? y + reach : last;
                    if (y >= 0 && y - last <= reach) {
                        set(x, y, color);
                    }
                }
            }
        }

        private void markRow(boolean[] near, int from, int to, int y) {
            for (int x = Math.max(0, from); x <= Math.min(width - 1, to); x++) {
                near[y * width + x] = true;
            }
        }

        private boolean isLetter(int x, int y) {
            return line.isLit(Math.floorDiv(x - margin, scale), Math.floorDiv(y - margin, scale));
        }

        /** Where a column lies along the text. */
        private double place(int x) {
            return Math.min(1, Math.max(0, (x - margin + 0.5) / (line.columns() * scale)));
        }

        private void set(int x, int y, LinearColor color) {
            int at = (y * width + x) * LightImage.CHANNELS;
            light[at] = color.red() * color.alpha();
            light[at + 1] = color.green() * color.alpha();
            light[at + 2] = color.blue() * color.alpha();
            light[at + 3] = color.alpha();
        }
    }
}
