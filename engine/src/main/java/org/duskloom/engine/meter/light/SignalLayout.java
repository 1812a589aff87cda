package org.duskloom.engine.meter.light;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import org.duskloom.engine.frame.FramePixels;
import org.duskloom.engine.frame.PropSpan;

/** Which number stands for which light: first all pixels in wiring order, then the props, at last the whole. */
record SignalLayout(int pixelCount, List<PropSpan> props, int[] propOfPixel) {
    /** Pixels of which nobody says whose they are count as one prop. */
    static SignalLayout of(FramePixels pixels) {
        int pixelCount = pixels.count();
        List<PropSpan> props = pixels.props().isEmpty() ? List.of(new PropSpan("", 0, pixelCount)) : pixels.props();
        int[] propOfPixel = new int[pixelCount];
        for (int prop = 0; prop < props.size(); prop++) {
            PropSpan span = props.get(prop);
            Arrays.fill(propOfPixel, span.firstPixel(), span.firstPixel() + span.pixelCount(), prop);
        }
        return new SignalLayout(pixelCount, props, propOfPixel);
    }

    int signalCount() {
        return pixelCount + props.size() + 1;
    }

    int ofProp(int prop) {
        return pixelCount + prop;
    }

    int ofWhole() {
        return pixelCount + props.size();
    }

    boolean isPixel(int signal) {
        return signal < pixelCount;
    }

    /** The prop that a signal belongs to; the number of props for the whole. */
    int group(int signal) {
        return isPixel(signal) ? propOfPixel[signal] : signal - pixelCount;
    }

    /** The first pixel of a group, as {@link #group} numbers them. */
    int firstPixel(int group) {
        return group == props.size() ? 0 : props.get(group).firstPixel();
    }

    int pixelCount(int group) {
        return group == props.size() ? pixelCount : props.get(group).pixelCount();
    }

    FlashPlace place(int signal) {
        if (signal == ofWhole()) {
            return new FlashPlace(OptionalInt.empty(), OptionalInt.empty());
        }
        int prop = group(signal);
        OptionalInt pixel =
                isPixel(signal) ? OptionalInt.of(signal - props.get(prop).firstPixel()) : OptionalInt.empty();
        return new FlashPlace(OptionalInt.of(prop), pixel);
    }
}
