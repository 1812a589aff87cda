package org.duskloom.engine.meter.light;

import java.util.ArrayList;
import java.util.List;
import org.duskloom.engine.frame.PropSpan;

/**
 * The light of props, kept by groups of a few pixels: a group of which no pixel changes costs a comparison of bytes.
 */
final class PixelGroups {
    private static final int KINDS = 3;

    private final PastColors past;
    private final FlashCounter counter;
    private final PixelScan scan;

    /** Of each group: its first pixel; and that behind the last group. */
    private final int[] firstPixel;

    /** Of each prop: its first group; and that behind the last prop. */
    private final int[] firstGroup;

    /** Of each group: luminance, R - G - B and red, as {@link CodeLight} tells them. */
    private final long[] sums;

    private final int[] noted = new int[PixelScan.MOST];
    private final boolean[] isLit;
    private final boolean[] everLit;

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
        isLit = new boolean[groups];
        everLit = new boolean[layout.pixelCount()];
    }

    /**
     * Looks at the pixels of a prop in a frame that is kept already.
     *
     * @return whether any of them has another colour than in the frame before
     */
    boolean look(int prop, int place, byte[] rgb, int offset) {
        boolean changed = false;
        for (int group = firstGroup[prop]; group < firstGroup[prop + 1]; group++) {
            if (place == 0 || !past.areSame(place, firstPixel[group], firstPixel[group + 1])) {
                changed = true;
                lookAt(group, place, rgb, offset);
            }
        }
        return changed;
    }

    private void lookAt(int group, int place, byte[] rgb, int offset) {
        int first = firstPixel[group];
        int end = firstPixel[group + 1];
        scan.look(rgb, offset, first, end);
        for (int i = 0; i < KINDS; i++) {
            sums[KINDS * group + i] = scan.sum(i);
        }
        int turning = scan.turning(first, end, noted);
        for (int i = 0; i < turning; i++) {
            counter.stepLight(noted[i], place, scan.value(noted[i]));
        }
        int reddish = scan.reddish(first, end, noted);
        for (int i = 0; i < reddish; i++) {
            counter.stepRed(noted[i], place, scan.redExcess(noted[i]));
        }
        if (!isLit[group]) {
            noteLit(group, rgb, offset);
        }
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

    /** Adds the light of a prop to luminance, R - G - B and red. */
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
