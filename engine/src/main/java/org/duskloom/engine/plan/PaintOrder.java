package org.duskloom.engine.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.duskloom.engine.time.ExactTime;

/**
 * The canvases of a cue in the order of painting. Grounds that start together and have no pixel in common share a
 * canvas; where pixels are shared, later members are painted over earlier ones.
 */
final class PaintOrder {
    private final List<Together> canvases = new ArrayList<>();
    private final Map<ExactTime, Integer> lastCanvasByLag = new HashMap<>();
    private boolean overlapping;

    private PaintOrder() {}

    /** Grounds that share a canvas, and how much later than the cue they start. */
    record Together(ExactTime lag, List<Integer> grounds) {}

    /**
     * Sorts the grounds.
     *
     * @param lags how much later each starts
     * @param pixelCount how many pixels the stage has
     */
    static PaintOrder of(CanvasGrounds grounds, List<ExactTime> lags, int pixelCount) {
        PaintOrder order = new PaintOrder();
        int[] lastCanvasOfPixel = new int[grounds.count() == 1 ? 0 : pixelCount];
        Arrays.fill(lastCanvasOfPixel, -1);
        for (int ground = 0; ground < grounds.count(); ground++) {
            order.add(
                    ground,
                    lags.get(ground),
                    grounds.count() == 1 ? new int[0] : grounds.pixels(ground),
                    lastCanvasOfPixel);
        }
        return order;
    }

    private void add(int ground, ExactTime lag, int[] pixels, int[] lastCanvasOfPixel) {
        int under = -1;
        for (int pixel : pixels) {
            under = Math.max(under, lastCanvasOfPixel[pixel]);
        }
        overlapping |= under >= 0;
        int canvas = lastCanvasByLag.getOrDefault(lag, -1);
        if (canvas <= under) {
            canvas = canvases.size();
            canvases.add(new Together(lag, new ArrayList<>()));
            lastCanvasByLag.put(lag, canvas);
        }
        canvases.get(canvas).grounds().add(ground);
        for (int pixel : pixels) {
            lastCanvasOfPixel[pixel] = canvas;
        }
    }

    /** The canvases, to be painted one after the other. */
    List<Together> canvases() {
        return canvases;
    }

    /** Whether a pixel is in more than one of them. */
    boolean isOverlapping() {
        return overlapping;
    }
}
