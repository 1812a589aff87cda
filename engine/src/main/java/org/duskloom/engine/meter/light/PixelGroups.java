package org.duskloom.engine.meter.light;

import java.util.ArrayList;
import java.util.List;
import org.duskloom.engine.frame.PropSpan;

/**
 * The light of props, kept by groups of a few pixels: a group of which no pixel changes costs a comparison of bytes.
 */
final class PixelGroups {
    private static final int KINDS = 2;

    /** So many pixels are decided about at a time, so that what is kept of them is still near. */
    private static final int AT_A_TIME = 2048;

    private final PastColors past;
    private final FlashCounter counter;
    private final PixelScan scan;

    /** Of each group: its first pixel; and that behind the last group. */
    private final int[] firstPixel;

    /** Of each prop: its first group; and that behind the last prop. */
    private final int[] firstGroup;

    /** Of each group: luminance and R - G - B, as {@link CodeLight} tells them. */
    private final long[] sums;

    private final boolean[] hasChanged;
    private final boolean[] isLit;
    private final boolean[] everLit;

    /** Of the pixels that are found in a frame, how many have been counted. */
    private int counted;

    PixelGroups(SignalLayout layout, PastColors past, FlashCounter counter) {
        this.past = past;
        this.counter = counter;
        this.scan = counter.scan();
        List<Integer> starts = new ArrayList<>();
        firstGroup = new int[layout.props().size() + 1];
        for (int prop = 0; prop < layout.props().size(); prop++) {
            firstGroup[prop] = starts.size();
            PropSpan span = layout.props().get(prop);
            for (int i = 0; i < span.pixelCount(); i += PixelScan.MOST) {
                starts.add(span.firstPixel() + i);
            }
        }
        firstGroup[layout.props().size()] = starts.size();
        starts.add(layout.pixelCount());
        firstPixel = starts.stream().mapToInt(Integer::intValue).toArray();
        int groups = starts.size() - 1;
        sums = new long[KINDS * groups];
        hasChanged = new boolean[groups];
        isLit = new boolean[groups];
        everLit = new boolean[layout.pixelCount()];
    }

    /** Looks at all pixels in a frame that is kept already. Groups side by side are decided about together. */
    void look(int place, byte[] rgb, int offset) {
        scan.clear();
        counted = 0;
        int undecided = 0;
        for (int group = 0; group < hasChanged.length; group++) {
            int first = firstPixel[group];
            int end = firstPixel[group + 1];
            hasChanged[group] = place == 0 || !past.areSame(place, first, end);
            if (hasChanged[group]) {
                lookUp(group, rgb, offset);
            }
            if (!hasChanged[group] || end - undecided > AT_A_TIME) {
                scan.decide(undecided, first);
                undecided = hasChanged[group] ? first : end;
            }
        }
        scan.decide(undecided, firstPixel[hasChanged.length]);
    }

    private void lookUp(int group, byte[] rgb, int offset) {
        long sum = scan.lookUp(rgb, offset, firstPixel[group], firstPixel[group + 1]);
        sums[KINDS * group] = CodeLight.luminance(sum);
        sums[KINDS * group + 1] = CodeLight.redExcess(sum);
        if (!isLit[group]) {
            noteLit(group, rgb, offset);
        }
    }

    /**
     * Counts the changes of the pixels of a prop; to be called of all props in their order.
     *
     * @return whether any of them has another colour than in the frame before
     */
    boolean step(int prop, int place) {
        int end = firstPixel[firstGroup[prop + 1]];
        while (counted < scan.foundCount() && scan.found(counted) < end) {
            int pixel = scan.found(counted++);
            counter.stepLight(pixel, place, scan.value(pixel));
            counter.stepRed(pixel, place, scan.value(pixel), scan.redExcess(pixel));
        }
        boolean changed = false;
        for (int group = firstGroup[prop]; group < firstGroup[prop + 1]; group++) {
            changed |= hasChanged[group];
        }
        return changed;
    }

    private void noteLit(int group, byte[] rgb, int offset) {
        boolean all = true;
        for (int pixel = firstPixel[group]; pixel < firstPixel[group + 1]; pixel++) {
            int at = offset + 3 * pixel;
            everLit[pixel] |= (rgb[at] | rgb[at + 1] | rgb[at + 2]) != 0;
            all &= everLit[pixel];
        }
        isLit[group] = all;
    }

    /** Adds the light of a prop to luminance and R - G - B. */
    void addProp(int prop, long[] totals) {
        for (int group = firstGroup[prop]; group < firstGroup[prop + 1]; group++) {
            for (int i = 0; i < KINDS; i++) {
                totals[i] += sums[KINDS * group + i];
            }
        }
    }

    /** Of each pixel, whether a frame has lit it. */
    boolean[] everLit() {
        return everLit;
    }
}
