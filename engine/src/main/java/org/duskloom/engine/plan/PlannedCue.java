package org.duskloom.engine.plan;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.function.Supplier;
import org.duskloom.engine.color.BlendMode;
import org.duskloom.engine.digest.Fingerprint;
import org.duskloom.engine.effect.NumberTrack;
import org.duskloom.engine.group.Member;
import org.duskloom.engine.time.FrameSpan;
import org.duskloom.engine.timeline.Cue;
import org.duskloom.engine.timeline.SceneCue;

/** A cue as it runs: frame numbers, kernels and where they paint. Immutable, as far as anybody sees. */
public final class PlannedCue implements PlannedItem {
    private static final PlannedShare[] NO_SHARES = {};
    private static final PlannedGroup[] NO_GROUPS = {};

    private final Body body;
    private final FrameSpan frames;
    private final PlannedShare[] shares;
    private final PlannedGroup[] groups;
    private final PlannedCanvas[] canvases;
    /** Of which it is a play, the body being that of the first of them; null if it stands alone. */
    private final PlannedPlays plays;

    private final int playNumber;
    private final LazyFingerprint fingerprint = new LazyFingerprint();

    /**
     * A cue of a plan.
     *
     * @param groups in which it stands, from the outside in
     */
    PlannedCue(Body body, List<PlannedGroup> groups) {
        this.body = body;
        this.frames = body.span().frames();
        this.shares = body.shares().isEmpty() ? NO_SHARES : body.shares().toArray(PlannedShare[]::new);
        this.groups = groups.isEmpty() ? NO_GROUPS : groups.toArray(PlannedGroup[]::new);
        this.canvases = body.canvases().canvases().toArray(PlannedCanvas[]::new);
        this.plays = null;
        this.playNumber = 0;
    }

    /**
     * A play of a cue of the show itself.
     *
     * @param first what the first play is
     */
    PlannedCue(Body first, FrameSpan frames, PlannedCanvas[] canvases, PlannedPlays plays, int playNumber) {
        this.body = first;
        this.frames = frames;
        this.shares = NO_SHARES;
        this.groups = NO_GROUPS;
        this.canvases = canvases;
        this.plays = plays;
        this.playNumber = playNumber;
    }

    /**
     * What a cue is, but for the groups in which it stands.
     *
     * @param paint what it paints and when, by value; asked when somebody wants to know
     * @param shares how much is seen of what it is played with, besides its own opacity
     */
    record Body(
            CuePlay play,
            Supplier<Fingerprint> paint,
            CueSpan span,
            NumberTrack opacity,
            PlannedFade fade,
            BlendMode blend,
            List<PlannedShare> shares,
            CanvasSet canvases) {
        Body {
            shares = List.copyOf(shares);
        }

        /** The same, mixed in another way, and less of it seen. */
        Body mixed(BlendMode word, List<PlannedShare> more) {
            if (word == blend && more.isEmpty()) {
                return this;
            }
            List<PlannedShare> all = new ArrayList<>(shares);
            all.addAll(more);
            return new Body(play, paint, span, opacity, fade, word, all, canvases);
        }
    }

    /** When a cue holds. */
    record CueSpan(FrameSpan frames, double lengthSeconds) {}

    /** The canvases of a cue, the members that they are laid over, and whether a pixel is in more than one of them. */
    record CanvasSet(List<PlannedCanvas> canvases, List<Member> members, boolean overlapping) {}

    /**
     * What decides the frames of this cue, by value: two cues with the same fingerprint, of one show or of two, give
     * the same light to the same pixels in the same frames, in every run of one version of the program, whatever files
     * they come from and wherever they stand in them. A cue that is written another way may have another fingerprint
     * though it looks the same, where one writes a default and the other does not, or names a part by another name.
     */
    public Fingerprint fingerprint() {
        return fingerprint.madeBy(
                () -> CueFingerprint.of(plays == null ? body : plays.body(playNumber), List.of(groups)));
    }

    /** The cue as written, by the clock of the show. */
    public Cue cue() {
        return plays == null ? body.play().cue() : plays.written(playNumber).cue();
    }

    /** The cues that play the scenes in which it stands, from the outside in; none if it stands in the show itself. */
    public List<SceneCue> within() {
        return body.play().within();
    }

    /** What it is seen on, in the order in which it is written. */
    public List<Member> members() {
        return body.canvases().members();
    }

    /** The first frame in which it is seen. */
    @Override
    public long firstFrame() {
        return frames.firstFrame();
    }

    /** The frame after the last in which it is seen. */
    @Override
    public long endFrameExclusive() {
        return frames.endFrameExclusive();
    }

    /** Its length in seconds. */
    public double lengthSeconds() {
        return body.span().lengthSeconds();
    }

    /**
     * How much of one of its canvases is seen: its opacity times its fade, 0 to 1, both by the clock of the canvas,
     * times what is seen of the scenes in which it stands, if these are no groups. Before the members of the canvas
     * begin opacity and fade are what they will be when they do.
     */
    public float opacityAt(PlannedCanvas canvas, long frame) {
        double seconds = Math.max(0, canvas.secondsAt(frame));
        // An easing may overshoot between two keys.
        double own = Math.min(1, Math.max(0, body.opacity().at(seconds, canvas.startSeconds())));
        double seen = own * body.fade().at(seconds, lengthSeconds());
        for (PlannedShare share : shares) {
            seen *= share.at(frame);
        }
        return (float) seen;
    }

    /** How it is mixed with the earlier cues of its layer, or of the innermost group in which it stands. */
    public BlendMode blend() {
        return body.blend();
    }

    /** Whether it is seen on any of these pixels of the stage in some frame. */
    public boolean isOnOneOf(BitSet stagePixels) {
        for (PlannedCanvas canvas : canvases) {
            if (canvas.runs().hasOneOf(stagePixels)) {
                return true;
            }
        }
        return false;
    }

    /** How many canvases it has. */
    public int canvasCount() {
        return canvases.length;
    }

    /** One of its canvases. */
    public PlannedCanvas canvas(int index) {
        return canvases[index];
    }

    /** Whether a pixel is in more than one of the canvases. */
    public boolean isOverlapping() {
        return body.canvases().overlapping();
    }

    /** In how many groups it stands. */
    public int groupCount() {
        return groups.length;
    }

    /** One of the groups in which it stands, the outermost first. Cues of a group follow each other in their layer. */
    public PlannedGroup group(int index) {
        return groups[index];
    }

    /** A play is made anew when it is asked for, so it is equal to any other that was made of its number. */
    @Override
    public boolean equals(Object other) {
        return other == this
                || plays != null
                        && other instanceof PlannedCue that
                        && plays == that.plays
                        && playNumber == that.playNumber;
    }

    @Override
    public int hashCode() {
        return plays == null ? System.identityHashCode(this) : 31 * plays.hashCode() + playNumber;
    }
}
