package org.duskloom.engine.preview;

import java.util.Arrays;
import java.util.OptionalInt;
import org.duskloom.engine.color.Srgb;

/**
 * The one drawing of a display: strips, animated pictures and videos are made of it. Every pixel is a glowing disc
 * where it hangs, seen from the front, the whole display in the middle of the picture with some room round it. A pixel
 * without light is a faint disc, so the shape is always seen; a brighter one has exactly its colour in the middle,
 * unless another hangs over it. Not safe for use by several threads.
 */
public final class SceneDrawing {
    private static final float UNLIT_RED = Srgb.decode(Ink.UNLIT >> 16);
    private static final float UNLIT_GREEN = Srgb.decode(Ink.UNLIT >> 8 & 0xFF);
    private static final float UNLIT_BLUE = Srgb.decode(Ink.UNLIT & 0xFF);

    /** Free on each side of the display, as a share of its longer side, where the outermost pixels glow less far. */
    private static final double MARGIN = 0.045;

    /** Pictures of flat displays are no lower than this share of their width, or as the display is; of upright ones. */
    private static final double LOWEST = 0.25;

    private static final double NARROWEST = 0.5;

    /** Discs of neighbours leave a quarter of their distance free. */
    private static final double RADIUS_SHARE_OF_SPACING = 0.37;

    private static final double SMALLEST_RADIUS = 0.75;

    /**
     * Pixels nearer than this, in dots of the picture, cannot be told apart: they are drawn as an area without gaps.
     */
    private static final double NEAREST_TOLD_APART = 1.6;

    private static final double LARGEST_RADIUS_SHARE_OF_PANEL = 0.03;

    private final int width;
    private final int height;
    private final StageView view;
    private final double dotRadius;
    private final PanelLight light;
    private final double[] panelX;
    private final double[] panelY;

    /**
     * A drawing of a display.
     *
     * @param scene the display
     * @param width of the picture in dots
     * @param height of the picture in dots
     * @param pixelSize diameter of a pixel in dots; when empty, so that neighbours stay apart
     */
    public SceneDrawing(PreviewScene scene, int width, int height, OptionalInt pixelSize) {
        this.width = width;
        this.height = height;
        this.view = StageView.fit(boxOf(scene), width, height);
        this.dotRadius = pixelSize.isPresent()
                ? pixelSize.getAsInt() / 2.0
                : dotRadius(DotSpacing.median(scene.x(), scene.y()) * view.scale());
        this.light = new PanelLight(width, height, dotRadius);
        this.panelX = Arrays.stream(scene.x()).map(view::panelX).toArray();
        this.panelY = Arrays.stream(scene.y()).map(view::panelY).toArray();
    }

    /** Width to height of a picture that a display fills: infinite for a level line, 0 for an upright one. */
    public static double aspect(PreviewScene scene) {
        return boxOf(scene).aspect();
    }

    /** How far apart the pixels of a display hang, mostly, in its units; 0 if all are at one place. */
    public static double spacing(PreviewScene scene) {
        return DotSpacing.median(scene.x(), scene.y());
    }

    /** Draws the night and the lights of one frame into a picture of the drawing's size. */
    public void draw(byte[] rgb, int offset, Raster picture) {
        drawNight(picture, 0, 0);
        drawLights(rgb, offset, picture, 0, 0);
    }

    /** What a display takes, with the room round it. */
    static StageView.Box boxOf(PreviewScene scene) {
        StageView.Box box = StageView.Box.of(scene.x(), scene.y());
        double longer = Math.max(box.width(), box.height());
        return longer == 0 ? box : box.withMargin(Math.max(MARGIN, glow(box, spacing(scene)) / longer));
    }

    /** How far the light of a pixel reaches, in units of the display, in a picture with room for just that round it. */
    private static double glow(StageView.Box box, double spacing) {
        double radii = PanelLight.GLOW_RADII;
        double share = radii * LARGEST_RADIUS_SHARE_OF_PANEL;
        double shorter = Math.min(box.width(), box.height());
        double longer = Math.max(box.width(), box.height());
        double least = share * (box.width() > box.height() ? LOWEST : NARROWEST);
        // A share of the picture's shorter side, of which the room on both sides is a part.
        double largest = Math.max(share * shorter / (1 - 2 * share), least * longer / (1 - 2 * least));
        return spacing == 0 ? largest : Math.min(largest, radii * RADIUS_SHARE_OF_SPACING * spacing);
    }

    /** How far apart neighbours must be, in dots of the picture, for discs of a diameter. */
    static double spacingFor(int pixelSize) {
        return pixelSize / 2.0 / RADIUS_SHARE_OF_SPACING;
    }

    StageView view() {
        return view;
    }

    double dotRadius() {
        return dotRadius;
    }

    /** Paints the ground of a panel. */
    void drawNight(Raster sheet, int left, int top) {
        sheet.rectangle(left, top, width, height, Ink.NIGHT);
    }

    /** Draws the lights of one frame over what a panel of a sheet holds. */
    void drawLights(byte[] rgb, int offset, Raster sheet, int left, int top) {
        light.clear();
        for (int pixel = 0; pixel < panelX.length; pixel++) {
            addPixel(pixel, rgb, offset + 3 * pixel);
        }
        light.develop(sheet, left, top);
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
        double largest = LARGEST_RADIUS_SHARE_OF_PANEL * Math.min(width, height);
        if (spacing == 0) {
            return largest;
        }
        // Half the diagonal between four neighbours, and the half dot of the smooth rim.
        double gapless = spacing * StrictMath.sqrt(0.5) + 0.5;
        double apart = spacing * RADIUS_SHARE_OF_SPACING;
        return Math.min(largest, spacing < NEAREST_TOLD_APART ? gapless : Math.max(SMALLEST_RADIUS, apart));
    }
}
