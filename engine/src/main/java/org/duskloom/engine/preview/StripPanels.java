package org.duskloom.engine.preview;

import java.util.Optional;
import org.duskloom.engine.file.OutputRefusedException;
import org.duskloom.engine.font.PixelFont;

/** The panels of a contact strip, drawn one after the other into one picture. */
final class StripPanels {
    private final PreviewScene scene;
    private final int count;
    private final StripLayout layout;
    private final Raster sheet;
    private final SceneDrawing drawing;
    private final Optional<PropLabels> names;
    private int drawn;

    /**
     * Lays out the sheet.
     *
     * @param count how many panels there are, at least one
     * @throws OutputRefusedException if the picture would be too large
     */
    StripPanels(PreviewScene scene, int count, StripOptions options) throws OutputRefusedException {
        this.scene = scene;
        this.count = count;
        this.layout =
                StripLayout.of(SceneDrawing.aspect(scene), scene.pixelCount(), count, roomForPixels(options, scene));
        int width = layout.panelWidth();
        int height = layout.panelHeight();
        this.drawing = new SceneDrawing(scene, width, height, options.pixelSize());
        this.names = options.propNames()
                ? Optional.of(new PropLabels(scene, drawing.view(), drawing.dotRadius(), width, height))
                : Optional.empty();
        this.sheet = new Raster((int) layout.width(), (int) layout.height(), Ink.SHEET);
        drawHead();
    }

    private StripPanels(StripPanels like) {
        scene = like.scene;
        count = like.count;
        layout = like.layout;
        drawing = like.drawing;
        names = like.names;
        sheet = new Raster(like.sheet.width(), like.sheet.height(), Ink.SHEET);
        drawHead();
    }

    /** Another sheet, with empty panels, whose layout is not worked out again. Only one thread may draw into both. */
    StripPanels another() {
        return new StripPanels(this);
    }

    /** Draws a frame into the next panel. */
    void draw(long frameNumber, byte[] rgb, int offset) {
        int left = layout.panelLeft(drawn);
        int top = layout.panelTop(drawn);
        drawing.drawNight(sheet, left, top);
        names.ifPresent(labels -> labels.draw(sheet, left, top));
        drawing.drawLights(rgb, offset, sheet, left, top);
        drawLabel(frameNumber);
        drawn++;
    }

    /**
     * The picture.
     *
     * @throws IllegalStateException if panels are empty
     */
    Raster complete() {
        if (drawn < count) {
            throw new IllegalStateException(drawn + " panels of " + count);
        }
        return sheet;
    }

    /** Pixels of a size need panels in which their neighbours are as far away as they should be. */
    private static StripOptions roomForPixels(StripOptions options, PreviewScene scene) {
        double spacing = options.pixelSize().isEmpty() ? 0 : SceneDrawing.spacing(scene);
        if (spacing == 0) {
            return options;
        }
        double spacingInDots = SceneDrawing.spacingFor(options.pixelSize().getAsInt());
        double width = Math.ceil(SceneDrawing.boxOf(scene).width() / spacing * spacingInDots);
        return options.withPanelWidth((int) Math.max(StripOptions.NARROWEST, Math.min(width, Integer.MAX_VALUE)));
    }

    private void drawHead() {
        int room = sheet.width() - 2 * StripLayout.PADDING;
        Heading.draw(sheet, StripLayout.PADDING, StripLayout.PADDING, room, scene.title(), scene.size());
    }

    private void drawLabel(long frameNumber) {
        int left = layout.panelLeft(drawn);
        int top = layout.labelTop(drawn);
        int scale = layout.labelScale();
        String time = TimeLabel.of(scene.secondsOfFrame().applyAsDouble(frameNumber));
        sheet.text(time, left, top, scale, Ink.TEXT);
        int timeWidth = PixelFont.standard().width(time) * scale;
        // A caption is as large as the time; a mere number is smaller, where that can be read.
        int captionScale = scene.captions().isPresent() ? scale : Math.max(Math.min(2, scale), scale - 1);
        int room = (layout.panelWidth() - timeWidth - 8) / captionScale;
        String caption = scene.caption(frameNumber, room);
        int captionWidth = PixelFont.standard().width(caption) * captionScale;
        int captionTop = top + PixelFont.CAPITAL_ROWS * (scale - captionScale);
        sheet.text(caption, left + layout.panelWidth() - captionWidth, captionTop, captionScale, Ink.QUIET);
    }
}
