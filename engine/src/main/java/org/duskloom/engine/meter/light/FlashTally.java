package org.duskloom.engine.meter.light;

import java.util.Arrays;

/**
 * The worst second of the whole display and of every prop by one rule, and how many pixels flash too often at the same
 * time. A pixel counts as flashing too often from the change that is one too many until a second after the last such
 * change; so pixels whose bad seconds overlap count together, whether they flash in step or not.
 */
final class FlashTally {
    private final SignalLayout layout;
    private final int framesOfSecond;
    private final FlashField field;
    private final Worst[] byGroup;

    /** Of each pixel: until when it flashes too often; and those that do. */
    private final int[] overUntil;

    private final int[] over;
    private int overCount;
    private boolean grown;
    private final int[] overByGroup;
    private final int[] mostOverByGroup;
    private boolean isJoint;

    /** The worst second of a group. */
    private static final class Worst {
        private int most;
        private int signal;
        private int lastPlace;
        private boolean overJoint;
        private int mostOnce;
    }

    FlashTally(SignalLayout layout, int framesOfSecond, FlashField field) {
        this.layout = layout;
        this.framesOfSecond = framesOfSecond;
        this.field = field;
        int groups = layout.props().size() + 1;
        byGroup = new Worst[groups];
        Arrays.setAll(byGroup, group -> new Worst());
        for (int group = 0; group < groups; group++) {
            byGroup[group].signal = layout.pixelCount() + group;
        }
        overUntil = new int[layout.pixelCount()];
        over = new int[layout.pixelCount()];
        overByGroup = new int[groups];
        mostOverByGroup = new int[groups];
    }

    /**
     * Takes a change.
     *
     * @param count how many changes the signal had in the second that ends with this frame
     */
    void add(int signal, int place, int count) {
        int group = layout.group(signal);
        if (count > byGroup[group].most) {
            raise(byGroup[group], signal, place, count);
            raise(byGroup[byGroup.length - 1], signal, place, count);
        }
        if (count > FlashCount.ALLOWED) {
            markOver(signal, place);
        }
    }

    private void raise(Worst worst, int signal, int place, int count) {
        if (count > worst.most) {
            worst.mostOnce = isJoint ? worst.mostOnce : count;
            worst.most = count;
            worst.signal = signal;
            worst.lastPlace = place;
            worst.overJoint = isJoint;
        }
    }

    private void markOver(int signal, int place) {
        if (layout.isPixel(signal)) {
            markPixel(signal, place);
            return;
        }
        int group = layout.group(signal);
        int first = layout.firstPixel(group);
        int end = first + layout.pixelCount(group);
        for (int pixel = first; pixel < end; pixel++) {
            markPixel(pixel, place);
        }
    }

    private void markPixel(int pixel, int place) {
        if (overUntil[pixel] == 0) {
            over[overCount++] = pixel;
            overByGroup[layout.group(pixel)]++;
            grown = true;
        }
        overUntil[pixel] = place + framesOfSecond;
    }

    /** Says that a frame has been looked at. */
    void endFrame(int place) {
        if (overCount == 0) {
            return;
        }
        if (grown) {
            overByGroup[byGroup.length - 1] = overCount;
            for (int group = 0; group < mostOverByGroup.length; group++) {
                mostOverByGroup[group] = Math.max(mostOverByGroup[group], overByGroup[group]);
            }
            field.look(over, overCount);
            grown = false;
        }
        int kept = 0;
        for (int i = 0; i < overCount; i++) {
            int pixel = over[i];
            if (overUntil[pixel] > place + 1) {
                over[kept++] = pixel;
            } else {
                overUntil[pixel] = 0;
                overByGroup[layout.group(pixel)]--;
            }
        }
        overCount = kept;
    }

    void beginJoint() {
        isJoint = true;
    }

    /**
     * Whether more changes could turn the verdict.
     *
     * @param byArea whether what flashes too often is judged by its area; else one such light has settled it
     */
    boolean isOpen(boolean byArea) {
        return byArea || byGroup[byGroup.length - 1].most <= FlashCount.ALLOWED;
    }

    /**
     * What was found of a prop, or with the number of props of the whole display.
     *
     * @param frames how many there are in a round
     * @param firstFrame the number of the first of them in the show
     */
    FlashCount count(FlashRule rule, int group, long frames, long firstFrame) {
        Worst worst = byGroup[group];
        boolean whole = group == byGroup.length - 1;
        return new FlashCount(
                rule,
                worst.most,
                layout.place(worst.signal),
                firstFrame + Math.max(0, worst.lastPlace - framesOfSecond + 1) % frames,
                worst.overJoint,
                worst.mostOnce,
                mostOverByGroup[group],
                whole ? field.mostShare() : 0);
    }
}
