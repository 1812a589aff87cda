package org.duskloom.engine.preview;

import java.io.IOException;
import java.util.Arrays;
import java.util.Optional;
import org.duskloom.engine.color.Srgb;
import org.duskloom.engine.file.OutputRefusedException;
import org.duskloom.engine.file.StagedFile;
import org.duskloom.engine.font.PixelFont;
import org.duskloom.engine.frame.FrameBatch;
import org.duskloom.engine.frame.FrameSink;

/**
 * Chosen moments side by side in one PNG: every pixel a glowing dot where it hangs, seen from the front, each moment with
 * its time under it. A pixel without light is a faint dot, so the shape is always seen; a brighter one has exactly its colour
 * in the middle, unless another hangs over it. Holds one picture in memory, no frames.
 */
public final class ContactStrip implements FrameSink {
    private static final float UNLIT_RED = Srgb.decode(Ink.UNLIT >> 16);
    private static final float UNLIT_GREEN = Srgb.decode(Ink.UNLIT >> 8 & 0xFF);
    private static final float UNLIT_BLUE = Srgb.decode(Ink.UNLIT & 0xFF);

    /** Free on each side of the display, as a share of its longer side: the outermost pixels glow too. */
    private static final double MARGIN = 0.045;

    /** Discs of neighbours leave a quarter of their distance free. */
    private static final double RADIUS_SHARE_OF_SPACING = 0.37;

    private static final double SMALLEST_RADIUS = 0.75;

    /** Pixels nearer than this, in dots of the picture, cannot be told apart: they are drawn as an area without gaps. */
    private static final double NEAREST_TOLD_APART = 1.6;

    private static final double LARGEST_RADIUS_SHARE_OF_PANEL = 0.03;

    private final StagedFile file;
    private final PreviewScene scene;
    private final long[] frames;
    private final StripLayout layout;
    private final Raster sheet;
    private final PanelLight light;
    private final double[] panelX;
    private final double[] panelY;
    private final Optional<PropLabels> names;
    private int drawn;

    /**
     * Lays out the sheet; nothing is written yet.
     *
     * @param file takes the PNG; the strip finishes or abandons it, and does the latter if this constructor throws
     * @param scene the display
     * @param frames numbers of the frames to show, rising, at least one
     * @param options how to lay them out
     * @throws OutputRefusedException if the picture would be too large
     * @throws IllegalArgumentException if there are no frames or they do not rise
     */
    public ContactStrip(StagedFile file, PreviewScene scene, long[] frames, StripOptions options)
            throws OutputRefusedException {
        this.file = file;
        this.scene = scene;
        this.frames = frames.clone();
        StageView.Box box = StageView.Box.of(scene.x(), scene.y()).withMargin(MARGIN);
        double spacing = DotSpacing.median(scene.x(), scene.y());
        this.layout = layoutOrClose(file, box, scene, frames, roomForPixels(options, box, spacing));
        int width = layout.panelWidth();
        int height = layout.panelHeight();
        StageView view = StageView.fit(box, width, height);
        double dotRadius = options.pixelSize().isPresent()
                ? options.pixelSize().getAsInt() / 2.0
                : dotRadius(spacing * view.scale());
        this.panelX = Arrays.stream(scene.x()).map(view::panelX).toArray();
        this.panelY = Arrays.stream(scene.y()).map(view::panelY).toArray();
        this.light = new PanelLight(width, height, dotRadius);
        this.names = options.propNames()
                ? Optional.of(new PropLabels(scene, view, dotRadius, width, height))
                : Optional.empty();
        this.sheet = new Raster((int) layout.width(), (int) layout.height(), Ink.SHEET);
        drawHead();
    }

    /**
     * {@inheritDoc}
     *
     * <p>Frames that are not among the chosen ones are passed over.
     */
    @Override
    public void take(FrameBatch batch) {
        for (int i = 0; i < batch.count(); i++) {
            frame(batch.frame(i), batch.rgb(), batch.offset(i));
        }
    }

    private void frame(long frameNumber, byte[] rgb, int offset) {
        if (drawn == frames.length || frameNumber < frames[drawn]) {
            return;
        }
        if (frameNumber > frames[drawn]) {
            throw new IllegalStateException("frame " + frames[drawn] + " of the strip was not rendered");
        }
        int left = layout.panelLeft(drawn);
        int top = layout.panelTop(drawn);
        sheet.rectangle(left, top, layout.panelWidth(), layout.panelHeight(), Ink.NIGHT);
        names.ifPresent(labels -> labels.draw(sheet, left, top));
        light.clear();
        for (int pixel = 0; pixel < scene.pixelCount(); pixel++) {
            addPixel(pixel, rgb, offset + 3 * pixel);
        }
        light.develop(sheet, left, top);
        drawLabel(frameNumber);
        drawn++;
    }

    /**
     * {@inheritDoc}
     *
     * @throws IllegalStateException if chosen frames did not come
     */
    @Override
    public void finish() throws IOException {
        if (drawn < frames.length) {
            throw new IllegalStateException("frame " + frames[drawn] + " of the strip was not rendered");
        }
        sheet.writePng(file);
    }

    @Override
    public void close() {
        file.close();
    }

    /** Pixels of a size need panels in which their neighbours are as far away as they should be. */
    private static StripOptions roomForPixels(StripOptions options, StageView.Box box, double spacing) {
        if (options.pixelSize().isEmpty() || spacing == 0) {
            return options;
        }
        double spacingInDots = options.pixelSize().getAsInt() / 2.0 / RADIUS_SHARE_OF_SPACING;
        double width = Math.ceil(box.width() / spacing * spacingInDots);
        return options.withPanelWidth((int) Math.max(StripOptions.NARROWEST, Math.min(width, Integer.MAX_VALUE)));
    }

    private static StripLayout layoutOrClose(
            StagedFile file, StageView.Box box, PreviewScene scene, long[] frames, StripOptions options)
            throws OutputRefusedException {
        try {
            requireRising(frames);
            return StripLayout.of(box.aspect(), scene.pixelCount(), frames.length, options);
        } catch (OutputRefusedException | IllegalArgumentException refused) {
            file.close();
            throw refused;
        }
    }

    private void addPixel(int pixel, byte[] rgb, int at) {
        double x = panelX[pixel];
        double y = panelY[pixel];
        float red = Srgb.decode(rgb[at] & 0xFF);
        float green = Srgb.decode(rgb[at + 1] & 0xFF);
        float blue = Srgb.decode(rgb[at + 2] & 0xFF);
        float brightest = Math.max(red, Math.max(green, blue));
        if (brightest < UNLIT_BLUE) {
            float missing = 1 - brightest / UNLIT_BLUE;
            light.addDisc(x, y, red + missing * UNLIT_RED, green + missing * UNLIT_GREEN, blue + missing * UNLIT_BLUE);
        } else {
            light.addDisc(x, y, red, green, blue);
        }
        if (brightest > 0) {
            light.addGlow(x, y, red, green, blue);
        }
    }

    /** Discs follow the spacing of the pixels, but neither fill a panel nor vanish. In dots of the picture. */
    private double dotRadius(double spacing) {
        double largest = LARGEST_RADIUS_SHARE_OF_PANEL * Math.min(layout.panelWidth(), layout.panelHeight());
        if (spacing == 0) {
            return largest;
        }
        // Half the diagonal between four neighbours, and the half dot of the smooth rim.
        double gapless = spacing * StrictMath.sqrt(0.5) + 0.5;
        double apart = spacing * RADIUS_SHARE_OF_SPACING;
        return Math.min(largest, spacing < NEAREST_TOLD_APART ? gapless : Math.max(SMALLEST_RADIUS, apart));
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
        // A caption is as large as the time; a mere number is small.
        int captionScale = scene.captions().isPresent() ? scale : 1;
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
