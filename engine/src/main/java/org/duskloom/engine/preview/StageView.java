package org.duskloom.engine.preview;

import java.util.Arrays;

/**
 * From stage coordinates to a panel: true proportions, the display's bounding box in the middle.
 *
 * @param scale dots of the picture per stage unit
 * @param stageCentreX the middle of the display's bounding box
 * @param stageCentreY the middle of the display's bounding box
 * @param panelCentreX where that comes to lie, from the panel's left edge
 * @param panelCentreY where that comes to lie, from the panel's upper edge
 */
record StageView(double scale, double stageCentreX, double stageCentreY, double panelCentreX, double panelCentreY) {

    /** A display's bounding box. */
    record Box(double left, double bottom, double width, double height) {
        static Box of(double[] x, double[] y) {
            double left = Arrays.stream(x).min().orElse(0);
            double bottom = Arrays.stream(y).min().orElse(0);
            return new Box(
                    left,
                    bottom,
                    Arrays.stream(x).max().orElse(0) - left,
                    Arrays.stream(y).max().orElse(0) - bottom);
        }

        /** The same box with some room on all sides. */
        Box withMargin(double share) {
            double margin = share * Math.max(width, height);
            return new Box(left - margin, bottom - margin, width + 2 * margin, height + 2 * margin);
        }

        /** Width to height: infinite for a level line, 0 for an upright one, 1 for a single point. */
        double aspect() {
            return width == 0 && height == 0 ? 1 : width / height;
        }
    }

    /** Fits a box into a panel. */
    static StageView fit(Box box, int panelWidth, int panelHeight) {
        double scale = Math.min(panelWidth / box.width(), panelHeight / box.height());
        return new StageView(
                Double.isFinite(scale) ? scale : 1,
                box.left() + box.width() / 2,
                box.bottom() + box.height() / 2,
                panelWidth / 2.0,
                panelHeight / 2.0);
    }

    double panelX(double stageX) {
        return panelCentreX + (stageX - stageCentreX) * scale;
    }

    double panelY(double stageY) {
        return panelCentreY - (stageY - stageCentreY) * scale;
    }
}
