package org.duskloom.engine.render;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import org.duskloom.engine.group.Member;

/**
 * What a cue, with all its plays, does in the frames that were looked at. Frames are taken in steps of a golden section
 * of them all, so that few of them lie evenly and off the periods of what is played, and all of them are met once.
 */
final class CueExam {
    /** So many frames are looked at, if there are as many, unless everything is known before. */
    static final int LEAST = 40;

    /** So many are looked at before something is taken for dark, fewer of a stage of many pixels. */
    static final int MOST = 1000;

    /** So many pixels of frames are looked at, if {@value #LEAST} frames have fewer. */
    private static final long MOST_PIXELS = 10_000_000;

    private static final int MOST_SAMPLED = 8;

    private static final double GOLDEN_SECTION = 0.6180339887498949;

    private final List<LayeredCue> plays;
    private final long frameCount;
    private final long stride;
    private final int mostFrames;
    /** What it is played on; shared with other cues. */
    private final BitSet pixels;

    private List<Member> darkMembers;
    private Sight firstTouch;
    private boolean seen;
    private int lookedAt;

    /** A frame of a play. */
    record Sight(LayeredCue play, long frame) {}

    CueExam(List<LayeredCue> plays, BitSet pixels) {
        this.plays = plays;
        this.pixels = pixels;
        this.frameCount = frameCount(plays);
        this.stride = stride(frameCount);
        this.mostFrames = mostFrames(frameCount, plays.get(0).plan().pixelCount());
        darkMembers = plays.get(0).isMask() ? List.of() : those(members(plays), pixels, true);
    }

    private static long frameCount(List<LayeredCue> plays) {
        long count = 0;
        for (LayeredCue play : plays) {
            count += play.frameCount();
        }
        return count;
    }

    /** The members of all plays, each once. */
    private static List<Member> members(List<LayeredCue> plays) {
        List<Member> first = plays.get(0).cue().members();
        if (plays.size() == 1 && first.size() == 1) {
            return first;
        }
        return plays.stream()
                .flatMap(play -> play.cue().members().stream())
                .distinct()
                .toList();
    }

    /** Those of which a pixel is among these, or else those of which none is. */
    private static List<Member> those(List<Member> members, BitSet pixels, boolean among) {
        int first = 0;
        while (first < members.size() && hasOneOf(members.get(first), pixels) == among) {
            first++;
        }
        if (first == members.size()) {
            return members;
        }
        List<Member> those = new ArrayList<>(members.subList(0, first));
        for (Member member : members.subList(first + 1, members.size())) {
            if (hasOneOf(member, pixels) == among) {
                those.add(member);
            }
        }
        return those.isEmpty() ? List.of() : those;
    }

    private static boolean hasOneOf(Member member, BitSet pixels) {
        for (int pixel : member.pixels()) {
            if (pixels.get(pixel)) {
                return true;
            }
        }
        return false;
    }

    private static long stride(long count) {
        long stride = Math.max(1, Math.round(count * GOLDEN_SECTION));
        while (greatestCommonDivisor(stride, count) > 1) {
            stride++;
        }
        return stride;
    }

    private static long greatestCommonDivisor(long a, long b) {
        return b == 0 ? a : greatestCommonDivisor(b, a % b);
    }

    /**
     * Looks until everything is known of the cue, or there is nothing more to look at.
     *
     * @param light tells of the pixels of the stage that it lights
     */
    void look(CueLight light, HiddenCues hiddenCues) {
        light.begin();
        while (lookedAt < mostFrames && !isKnown(light)) {
            Sight sight = sight(lookedAt++);
            light.look(sight.play(), sight.frame());
            judge(sight, light.touched(), hiddenCues);
        }
    }

    private void judge(Sight sight, BitSet touched, HiddenCues hiddenCues) {
        if (touched.isEmpty()) {
            return;
        }
        if (firstTouch == null) {
            firstTouch = sight;
        }
        seen = seen || hiddenCues.isSeen(sight.play().cue(), sight.frame());
        darkMembers = those(darkMembers, touched, false);
    }

    private boolean isKnown(CueLight light) {
        return seen && darkMembers.isEmpty() && (lookedAt >= LEAST || light.hasLit(pixels));
    }

    /** Whether nothing that it may light is dark so far, so that it makes no difference when it is looked at. */
    boolean isLit(CueLight light) {
        return light.hasLit(pixels);
    }

    /** The same cue, not looked at yet. */
    CueExam anew() {
        return new CueExam(plays, pixels);
    }

    /** Looks at more frames, for pixels of it that nothing has lit so far. */
    void lookFor(CueLight light) {
        light.begin();
        while (lookedAt < mostFrames && !light.hasLit(pixels)) {
            Sight sight = sight(lookedAt++);
            light.look(sight.play(), sight.frame());
        }
    }

    private Sight sight(int number) {
        long index = (number + 1) * stride % frameCount;
        for (LayeredCue play : plays) {
            if (index < play.frameCount()) {
                return new Sight(play, play.cue().firstFrame() + index);
            }
            index -= play.frameCount();
        }
        throw new IllegalStateException("frame " + index + " of " + frameCount);
    }

    private static int mostFrames(long frameCount, int pixelCount) {
        long bearable = MOST_PIXELS / Math.max(1, pixelCount);
        return (int) Math.min(frameCount, Math.max(LEAST, Math.min(MOST, bearable)));
    }

    /** The plays, in the order of the plan. */
    List<LayeredCue> plays() {
        return plays;
    }

    /** How many frames all plays have. */
    long frameCount() {
        return frameCount;
    }

    /** How many of them were looked at. */
    int lookedAt() {
        return lookedAt;
    }

    /** Whether it painted anything. */
    boolean touchesAnything() {
        return firstTouch != null;
    }

    /** Whether a frame looks another way because of it. */
    boolean isSeen() {
        return seen;
    }

    /** The members that it painted nothing on. */
    List<Member> darkMembers() {
        return darkMembers;
    }

    /** How many members it has that start before it ends. */
    long memberCount() {
        return members(plays).size();
    }

    /** The first frame looked at in which it painted something. */
    Sight firstTouch() {
        return firstTouch;
    }

    /** Where it painted something first, and where its first plays begin and end. */
    List<Sight> samples() {
        List<Sight> samples = new ArrayList<>(List.of(firstTouch));
        for (LayeredCue play : plays.subList(0, Math.min(MOST_SAMPLED, plays.size()))) {
            samples.add(new Sight(play, play.cue().firstFrame()));
            samples.add(new Sight(play, play.cue().endFrameExclusive() - 1));
        }
        return samples;
    }

    /** Adds what it is played on; members that start too late are not. */
    void addPixelsTo(BitSet played) {
        if (!plays.get(0).isMask()) {
            played.or(pixels);
        }
    }

    /** Whether one of its pixels is among these. */
    boolean hasOneOf(BitSet others) {
        return pixels.intersects(others);
    }
}
