package org.duskloom.engine.preview;

import org.duskloom.engine.file.OutputRefusedException;
import org.duskloom.engine.font.PixelFont;
import org.duskloom.engine.text.Counted;

/**
 * Where things stand on a contact strip, in dots of the picture: a head with the title, then panels in rows, each with
 * a line under it for its time.
 *
 * @param columns panels side by side
 * @param rows rows of panels
 * @param panelWidth width of a panel
 * @param panelHeight height of a panel
 */
record StripLayout(int columns, int rows, int panelWidth, int panelHeight) {
    static final int PADDING = 24;
    static final int TITLE_SCALE = 3;

    private static final int GAP = 16;
    private static final int LABEL_LEAD = 8;
    private static final int HEAD = PADDING + TITLE_SCALE * PixelFont.CAPITAL_ROWS + GAP;
    private static final int SCREEN_WIDTH = 1800;
    private static final int SCREEN_HEIGHT = 1250;
    private static final int LARGEST_PANEL_DOTS = 1_000_000;
    private static final int SHORTEST_LONG_SIDE = 240;
    private static final int LONG_SIDE_PER_ROOT_OF_PIXELS = 60;
    /**
     * From which width of a panel on letters have twice, three times, four times the size: they grow with the picture.
     */
    private static final int[] LABEL_SCALES_FROM = {110, 520, 840};

    private static final double FLATTEST = 7;
    private static final double STEEPEST = 0.4;

    /**
     * Chooses what the options leave open: of the layouts that are not wider than a screen, the one with the largest
     * panels, the fewest empty places and the least that is beyond the lower edge of a screen. Panels whose width is
     * given may need a picture wider than a screen; it is then not wider than high.
     *
     * @param displayAspect width to height of the display, 0 to infinity; panels follow it within bounds
     * @param pixels of the display: few of them need no large panel
     * @param panels how many moments there are
     * @throws OutputRefusedException if the sheet would be too large
     */
    static StripLayout of(double displayAspect, int pixels, int panels, StripOptions options)
            throws OutputRefusedException {
        double aspect = Math.max(STEEPEST, Math.min(FLATTEST, displayAspect));
        StripLayout best = options.columns().isPresent()
                ? withColumns(Math.min(panels, options.columns().getAsInt()), aspect, pixels, panels, options)
                : chosen(aspect, pixels, panels, options);
        String name = "a strip of " + Counted.grouped(panels, "moment");
        SheetSize.refuseTooLarge(name, best.width(), best.height(), "choose fewer moments or smaller panels");
        SheetSize.refuseLargePanel(best.panelWidth(), best.panelHeight());
        return best;
    }

    private static StripLayout chosen(double aspect, int pixels, int panels, StripOptions options) {
        StripLayout best = withColumns(1, aspect, pixels, panels, options);
        for (int columns = 2; columns <= panels; columns++) {
            StripLayout layout = withColumns(columns, aspect, pixels, panels, options);
            // Many panels do not fit a screen, whatever their layout: better wide than a tower.
            if (layout.width() > SCREEN_WIDTH && (options.panelWidth().isEmpty() || layout.width() > layout.height())) {
                break;
            }
            best = layout.worth(panels) >= best.worth(panels) ? layout : best;
        }
        return best;
    }

    private static StripLayout withColumns(int columns, double aspect, int pixels, int panels, StripOptions options) {
        int rows = (panels - 1) / columns + 1;
        int width = options.panelWidth().orElse(chosenWidth(columns, rows, aspect, pixels));
        return new StripLayout(columns, rows, width, (int) Math.max(1, Math.rint(width / aspect)));
    }

    private static int chosenWidth(int columns, int rows, double aspect, int pixels) {
        double across = (SCREEN_WIDTH - 2.0 * PADDING + GAP) / columns - GAP;
        double upright = (SCREEN_HEIGHT - HEAD - PADDING + GAP) / (double) rows - belowPanel(across);
        double widthOfLongSide = Math.min(1, aspect);
        double smallest = SHORTEST_LONG_SIDE * widthOfLongSide;
        double enough = smallest + LONG_SIDE_PER_ROOT_OF_PIXELS * Math.sqrt(pixels) * widthOfLongSide;
        double largest = Math.min(enough, Math.sqrt(LARGEST_PANEL_DOTS * aspect));
        double fitting = Math.min(Math.min(across, upright * aspect), largest);
        return (int) Math.max(StripOptions.NARROWEST, Math.max(smallest, fitting));
    }

    private double worth(int panels) {
        double places = (double) columns * rows;
        double seenAtOnce = Math.min(1, (double) SCREEN_HEIGHT / height());
        return (double) panelWidth * panelWidth * panels / places * seenAtOnce;
    }

    long width() {
        return 2L * PADDING + (long) columns * (panelWidth + GAP) - GAP;
    }

    long height() {
        return HEAD + (long) rows * (panelHeight + belowPanel(panelWidth)) - GAP + PADDING;
    }

    int panelLeft(int index) {
        return PADDING + index % columns * (panelWidth + GAP);
    }

    int panelTop(int index) {
        return HEAD + index / columns * (panelHeight + belowPanel(panelWidth));
    }

    /** Where the capitals of a panel's label begin. */
    int labelTop(int index) {
        return panelTop(index) + panelHeight + LABEL_LEAD;
    }

    /** Size of the letters under a panel. */
    int labelScale() {
        return labelScale(panelWidth);
    }

    private static int labelScale(double panelWidth) {
        int scale = 1;
        while (scale <= LABEL_SCALES_FROM.length && panelWidth >= LABEL_SCALES_FROM[scale - 1]) {
            scale++;
        }
        return scale;
    }

    /** From the lower edge of a panel to the panel under it. */
    private static int belowPanel(double panelWidth) {
        return LABEL_LEAD + PixelFont.CAPITAL_ROWS * labelScale(panelWidth) + GAP;
    }
}
