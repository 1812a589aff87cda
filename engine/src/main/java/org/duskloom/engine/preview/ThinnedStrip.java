package org.duskloom.engine.preview;

import java.io.IOException;
import java.util.List;
import java.util.stream.IntStream;
import org.duskloom.engine.frame.FrameBatch;
import org.duskloom.engine.frame.FrameSink;
import org.duskloom.engine.frame.PropSpan;

/**
 * A time strip of every n-th pixel, for displays that have more pixels than a picture has rows: a whole one takes
 * hundreds of megabytes.
 */
final class ThinnedStrip implements FrameSink {
    /** With more rows a picture is thinned: few programs open a taller one. */
    private static final int MOST_ROWS = (1 << 16) - 1;

    /** So many rows are left then. */
    private static final int THINNED_ROWS = 1 << 14;

    /** And so many cells, three bytes each: a screen's width of columns, beside displays that fill the memory. */
    private static final int MOST_CELLS = 25_000_000;

    private final TimeStrip strip;
    private final int distance;
    private final byte[] some;

    /**
     * @param strip of {@link #thinned} pixels
     * @param distance from a pixel that is shown to the next one
     */
    ThinnedStrip(TimeStrip strip, int distance, int pixelCount) {
        this.strip = strip;
        this.distance = distance;
        this.some = new byte[3 * shownBefore(pixelCount, distance)];
    }

    /**
     * How far the pixels are from each other that a strip shows: 1 unless all of them would be too many.
     *
     * @param exact whether all are shown if there is any room for them
     */
    static int distance(PreviewScene scene, boolean exact) {
        if (!exact) {
            return distance(scene.pixelCount());
        }
        return TimeStrip.mostColumns(scene) > 0 ? 1 : thinning(scene.pixelCount());
    }

    /** The same for so many pixels, none of which must be shown. */
    static int distance(int pixels) {
        return pixels <= MOST_ROWS ? 1 : thinning(pixels);
    }

    private static int thinning(int pixels) {
        return (pixels - 1) / THINNED_ROWS + 1;
    }

    /** The scene of the first pixel and every n-th after it; says so in its title. */
    static PreviewScene thinned(PreviewScene scene, int distance) {
        int count = shownBefore(scene.pixelCount(), distance);
        double[] x = IntStream.range(0, count)
                .mapToDouble(i -> scene.x()[i * distance])
                .toArray();
        double[] y = IntStream.range(0, count)
                .mapToDouble(i -> scene.y()[i * distance])
                .toArray();
        List<PropSpan> props = scene.props().stream()
                .filter(prop -> span(prop, distance).pixelCount() > 0)
                .map(prop -> span(prop, distance))
                .toList();
        String told = "one pixel in " + distance;
        String title = scene.title().isEmpty() ? told : scene.title() + ", " + told;
        return new PreviewScene(title, x, y, props, scene.secondsOfFrame(), scene.captions());
    }

    /** How many columns a strip of a {@link #thinned} scene has at most. */
    static int mostColumns(PreviewScene thinned) {
        return MOST_CELLS / thinned.pixelCount();
    }

    private static PropSpan span(PropSpan prop, int distance) {
        int first = shownBefore(prop.firstPixel(), distance);
        return new PropSpan(prop.name(), first, shownBefore(prop.firstPixel() + prop.pixelCount(), distance) - first);
    }

    /** How many pixels with lower numbers are shown. */
    private static int shownBefore(int pixel, int distance) {
        return (pixel + distance - 1) / distance;
    }

    @Override
    public void take(FrameBatch batch) throws IOException {
        for (int i = 0; i < batch.count(); i++) {
            int from = batch.offset(i);
            for (int to = 0; to < some.length; to += 3, from += 3 * distance) {
                some[to] = batch.rgb()[from];
                some[to + 1] = batch.rgb()[from + 1];
                some[to + 2] = batch.rgb()[from + 2];
            }
            strip.frame(batch.frame(i), some);
        }
    }

    @Override
    public void finish() throws IOException {
        strip.finish();
    }

    @Override
    public void close() {
        strip.close();
    }
}
