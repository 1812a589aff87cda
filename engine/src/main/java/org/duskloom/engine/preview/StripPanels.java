package org.duskloom.engine.preview;

import java.util.Optional;
import org.duskloom.engine.file.OutputRefusedException;
import org.duskloom.engine.font.PixelFont;

/** The panels of a contact strip, drawn one after the other into one picture. */
final class StripPanels {
    private final PreviewScene scene;
    private final long[] frames;
    private final StripLayout layout;
    private final Raster sheet;
    private final SceneDrawing drawing;
    private final Optional<PropLabels> names;
    private int drawn;

    /**
     * Lays out the sheet.
     *
     * @param frames numbers of the frames to show, rising, at least one
     * @throws OutputRefusedException if the picture would be too large
     * @throws IllegalArgumentException if there are no frames or they do not rise
     */
    StripPanels(PreviewScene scene, long[] frames, StripOptions options) throws OutputRefusedException {
        requireRising(frames);
        this.scene = scene;
        this.frames = frames.clone();
        this.layout = StripLayout.of(
                SceneDrawing.aspect(scene), scene.pixelCount(), frames.length, roomForPixels(options, scene));
        int width = layout.panelWidth();
        int height = layout.panelHeight();
        this.drawing = new SceneDrawing(scene, width, height, options.pixelSize());
        this.names = options.propNames()
                ? Optional.of(new PropLabels(scene, drawing.view(), drawing.dotRadius(), width, height))
                : Optional.empty();
        this.sheet = new Raster((int) layout.width(), (int) layout.height(), Ink.SHEET);
        drawHead();
    }

    /** Draws a frame if it is the next of those that are shown; the others are passed over. */
    void frame(long frameNumber, byte[] rgb, int offset) {
        if (drawn == frames.length || frameNumber < frames[drawn]) {
            return;
        }
        if (frameNumber > frames[drawn]) {
            throw new IllegalStateException("frame " + frames[drawn] + " of the strip was not rendered");
        }
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
     * @throws IllegalStateException if frames that are to be shown did not come
     */
    Raster complete() {
        if (drawn < frames.length) {
            throw new IllegalStateException("frame " + frames[drawn] + " of the strip was not rendered");
        }
        return sheet;
    }

    /** Pixels of a size need panels in which their neighbours are as far away as they should be. */
    private static StripOptions roomForPixels(StripOptions options, PreviewScene scene) {
        double spacing = DotSpacing.median(scene.x(), scene.y());
        if (options.pixelSize().isEmpty() || spacing == 0) {
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
        // A caption is as large as the time; a mere number is smaller.
        int captionScale = scene.captions().isPresent() ? scale : Math.max(1, scale - 1);
        int room = (layout.panelWidth() - timeWidth - 8) / captionScale;
        String caption = scene.caption(frameNumber, room);
        int captionWidth = PixelFont.standard().width(caption) * captionScale;
        int captionTop = top + PixelFont.CAPITAL_ROWS * (scale - captionScale);
        sheet.text(caption, left + layout.panelWidth() - captionWidth, captionTop, captionScale, Ink.QUIET);
    }

    private static void requireRising(long[] frames) {
        for (int i = 1; i < frames.length; i++) {
            if (frames[i] <= frames[i - 1]) {
                throw new IllegalArgumentException("frame " + frames[i] + " after " + frames[i - 1]);
            }
        }
        if (frames.length == 0) {
            throw new IllegalArgumentException("no frames");
        }
    }
}
