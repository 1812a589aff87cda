package org.duskloom.engine.compare;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.duskloom.engine.frame.FrameBatch;
import org.duskloom.engine.frame.FrameSink;
import org.duskloom.engine.time.FrameSpan;

/** Takes {@link PairedFrames} and keeps in what they differ: which frames, which props, by how much. */
public final class Differences implements FrameSink {
    /** How many spans of frames are kept; the others are counted as frames only. */
    public static final int MOST_SPANS = 1000;

    private final Comparison comparison;
    private final int firstBytes;
    private final List<PropDifference> props = new ArrayList<>();
    private final List<FrameSpan> spans = new ArrayList<>();
    private long frames;
    private boolean hasMoreSpans;

    /**
     * Nothing was looked at yet.
     *
     * @param comparison what is compared
     * @param firstPixels how many pixels a frame of the first rendering has
     */
    public Differences(Comparison comparison, int firstPixels) {
        this.comparison = comparison;
        this.firstBytes = 3 * firstPixels;
        comparison.props().forEach(pair -> props.add(new PropDifference(pair.name())));
    }

    @Override
    public void take(FrameBatch batch) {
        for (int i = 0; i < batch.count(); i++) {
            boolean differs = false;
            for (int k = 0; k < props.size(); k++) {
                differs |= differs(batch, i, comparison.props().get(k), props.get(k));
            }
            if (differs) {
                frames++;
                addToSpans(batch.frame(i));
            }
        }
    }

    private boolean differs(FrameBatch batch, int index, Comparison.Pair pair, PropDifference into) {
        byte[] rgb = batch.rgb();
        int first = batch.offset(index) + 3 * pair.first();
        int second = batch.offset(index) + firstBytes + 3 * pair.second();
        int bytes = 3 * pair.count();
        if (Arrays.equals(rgb, first, first + bytes, rgb, second, second + bytes)) {
            return false;
        }
        into.add(batch.frame(index), rgb, first, second, pair.count());
        return true;
    }

    private void addToSpans(long frame) {
        int last = spans.size() - 1;
        if (last >= 0 && spans.get(last).endFrameExclusive() == frame) {
            spans.set(last, new FrameSpan(spans.get(last).firstFrame(), frame + 1));
        } else if (spans.size() < MOST_SPANS) {
            spans.add(new FrameSpan(frame, frame + 1));
        } else {
            hasMoreSpans = true;
        }
    }

    /** How many frames differ. */
    public long frames() {
        return frames;
    }

    /** Which frames differ, the first {@value #MOST_SPANS} spans of them. */
    public List<FrameSpan> spans() {
        return List.copyOf(spans);
    }

    /** Whether there are more spans than are kept. */
    public boolean hasMoreSpans() {
        return hasMoreSpans;
    }

    /** The props that differ, in the order in which they are compared. */
    public List<PropDifference> props() {
        return props.stream().filter(prop -> prop.frames() > 0).toList();
    }

    /** The prop with the largest difference, the first of them where there are several; nothing if no frame differs. */
    public Optional<PropDifference> worst() {
        return props().stream()
                .min(Comparator.comparingInt(prop -> -prop.largest().codes()));
    }
}
