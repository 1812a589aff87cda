package org.duskloom.engine.meter.light;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.duskloom.engine.color.Srgb;
import org.duskloom.engine.frame.PropSpan;

/** Counts how much of a display is used. */
final class UseTally {
    private static final int MOST_COLUMNS = 240;

    /** In so many frames of a second colours are looked at; of a long run in so many frames of the run, evenly. */
    private static final int COLOR_FRAMES_PER_SECOND = 4;

    private static final int COLOR_FRAMES_OF_RUN = 400;

    private static final int CODE = 0xFF;

    private final SignalLayout layout;
    private final long frameCount;
    private final long colorStride;
    private final long[] darkFrames;
    private final double[] lightSums;
    private final double[][] columnSums;
    private final int[] columnFrames;
    private final double[] hueLight = new double[LightHue.values().length];
    private int frames;

    /** That of the frame that is looked at. */
    private int column;

    UseTally(SignalLayout layout, long frameCount, int framesOfSecond) {
        this.layout = layout;
        this.frameCount = frameCount;
        colorStride = Math.max(
                Math.max(1, framesOfSecond / COLOR_FRAMES_PER_SECOND),
                (frameCount + COLOR_FRAMES_OF_RUN - 1) / COLOR_FRAMES_OF_RUN);
        int props = layout.props().size();
        darkFrames = new long[props];
        lightSums = new double[props];
        columnFrames = new int[(int) Math.max(1, Math.min(MOST_COLUMNS, frameCount))];
        columnSums = new double[props][columnFrames.length];
    }

    /** Takes the mean light of a prop in the frame that is looked at. */
    void prop(int prop, double luminance, boolean dark) {
        darkFrames[prop] += dark ? 1 : 0;
        lightSums[prop] += luminance;
        columnSums[prop][column] += luminance;
    }

    /** Says that a frame has been looked at. */
    void endFrame(byte[] rgb, int offset) {
        if (frames % colorStride == 0) {
            for (int i = offset; i < offset + 3 * layout.pixelCount(); i += 3) {
                addColor(rgb[i] & CODE, rgb[i + 1] & CODE, rgb[i + 2] & CODE);
            }
        }
        columnFrames[column]++;
        frames++;
        long next = (long) frames * columnFrames.length / Math.max(1, frameCount);
        column = (int) Math.min(columnFrames.length - 1, next);
    }

    private void addColor(int r, int g, int b) {
        if ((r | g | b) != 0) {
            hueLight[LightHue.of(r, g, b).ordinal()] += Srgb.decode(r) + Srgb.decode(g) + Srgb.decode(b);
        }
    }

    /** @param everLit of each pixel, whether any frame lights it */
    UseFigures figures(boolean[] everLit) {
        List<PropUse> props = new ArrayList<>();
        for (int prop = 0; prop < layout.props().size(); prop++) {
            props.add(prop(prop, everLit));
        }
        return new UseFigures(props, hues());
    }

    private PropUse prop(int prop, boolean[] everLit) {
        PropSpan span = layout.props().get(prop);
        int[] neverLit = IntStream.range(0, span.pixelCount())
                .filter(pixel -> !everLit[span.firstPixel() + pixel])
                .toArray();
        float[] columns = new float[columnFrames.length];
        for (int i = 0; i < columns.length; i++) {
            columns[i] = columnFrames[i] == 0 ? 0 : (float) (columnSums[prop][i] / columnFrames[i]);
        }
        double all = Math.max(1, frames);
        return new PropUse(
                span.name(), span.pixelCount(), darkFrames[prop] / all, lightSums[prop] / all, neverLit, columns);
    }

    private List<UseFigures.HueShare> hues() {
        double all = Arrays.stream(hueLight).sum();
        List<UseFigures.HueShare> shares = new ArrayList<>();
        for (LightHue hue : LightHue.values()) {
            if (hueLight[hue.ordinal()] > 0) {
                shares.add(new UseFigures.HueShare(hue, hueLight[hue.ordinal()] / all));
            }
        }
        shares.sort(Comparator.comparingDouble(UseFigures.HueShare::share).reversed());
        return shares;
    }
}
