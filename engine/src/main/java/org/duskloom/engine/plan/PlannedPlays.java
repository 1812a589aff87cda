package org.duskloom.engine.plan;

import java.util.List;
import java.util.Optional;
import org.duskloom.engine.digest.Fingerprint;
import org.duskloom.engine.effect.Kernel;
import org.duskloom.engine.effect.MusicClock;
import org.duskloom.engine.time.EvenInstants;
import org.duskloom.engine.time.ExactTime;
import org.duskloom.engine.time.FrameRate;
import org.duskloom.engine.time.FrameSpan;
import org.duskloom.engine.timeline.EvenPlays;

/**
 * All plays of a cue that differ in nothing but their starts: they paint the same pixels by the same kernels, each by
 * clocks of its own. Which of them are seen in a frame follows from their numbers; one is made when somebody asks for
 * it. Immutable.
 */
public final class PlannedPlays implements PlannedItem {
    private final EvenPlays plays;
    private final EvenInstants ends;
    private final FrameRate rate;
    private final long cutFrame;
    private final int mostAtOnce;
    private final PlannedCue.Body first;
    private final List<EvenCanvas> canvases;
    private final Optional<FrameBeats> beats;
    private final PrintMaker prints;

    /** Puts together what a play paints and when, by value. */
    interface PrintMaker {
        Fingerprint of(CuePlay play, PlannedCue.CueSpan span);
    }

    /**
     * A canvas of every play.
     *
     * @param starts when its members begin, in each play
     * @param brushes the numbers of its brushes: as many as there are plays at once
     */
    record EvenCanvas(Kernel kernel, PixelRuns runs, EvenInstants starts, int[] brushes) {}

    /**
     * The plays of a cue.
     *
     * @param ends when they would end if they were not cut
     * @param first what the first of them is
     * @param beats of the music
     */
    PlannedPlays(
            EvenPlays plays,
            EvenInstants ends,
            FrameRate rate,
            PlannedCue.Body first,
            List<EvenCanvas> canvases,
            Optional<FrameBeats> beats,
            PrintMaker prints) {
        this.plays = plays;
        this.ends = ends;
        this.rate = rate;
        this.cutFrame = rate.firstFrameAtOrAfter(plays.cut());
        this.mostAtOnce = mostAtOnce(plays);
        this.first = first;
        this.canvases = List.copyOf(canvases);
        this.beats = beats;
        this.prints = prints;
    }

    /** How many plays may be seen at once. */
    static int mostAtOnce(EvenPlays plays) {
        ExactTime length = plays.first().length();
        ExactTime every = plays.starts().every();
        int most = 1;
        for (ExactTime reach = every; most < plays.count() && reach.compareTo(length) < 0; reach = reach.plus(every)) {
            most++;
        }
        return most;
    }

    /** Numbers the brushes of a canvas: the first play shares one with that which starts when it has ended. */
    static int[] brushes(EvenPlays plays, EvenInstants ends, FrameRate rate, BrushTaker brushes) {
        int[] taken = new int[mostAtOnce(plays)];
        for (int i = 0; i < taken.length; i++) {
            int last = i + (plays.count() - 1 - i) / taken.length * taken.length;
            long from = plays.starts().firstFrame(rate, i);
            taken[i] = brushes.take(new FrameSpan(from, Math.max(from, ends.firstFrame(rate, last))));
        }
        return taken;
    }

    /** Gives the number of a brush that nobody else has in some frames. */
    interface BrushTaker {
        int take(FrameSpan frames);
    }

    /** How often the cue is played. */
    public int count() {
        return plays.count();
    }

    /** How many of its plays may be seen at once: of two that are so many apart one ends before the other begins. */
    public int mostAtOnce() {
        return mostAtOnce;
    }

    /** How many plays have begun in a frame; the numbers of the others follow. */
    public int begunBy(long frame) {
        return plays.starts().begunBy(rate, frame);
    }

    /** How many plays have ended in a frame, or before it. */
    public int endedBy(long frame) {
        return frame >= cutFrame ? plays.count() : ends.begunBy(rate, frame);
    }

    @Override
    public long firstFrame() {
        return firstFrame(0);
    }

    @Override
    public long endFrameExclusive() {
        return endFrameExclusive(plays.count() - 1);
    }

    /** The first frame in which a play is seen, if it is seen at all. */
    long firstFrame(int number) {
        return plays.starts().firstFrame(rate, number);
    }

    /** The frame after the last in which a play is seen. */
    long endFrameExclusive(int number) {
        return Math.min(cutFrame, ends.firstFrame(rate, number));
    }

    /** One of its plays, counted from 0; equal to any other that was made of the same number. */
    public PlannedCue play(int number) {
        PlannedCanvas[] own = new PlannedCanvas[canvases.size()];
        for (int i = 0; i < own.length; i++) {
            EvenCanvas canvas = canvases.get(i);
            ExactTime start = canvas.starts.at(number);
            own[i] = new PlannedCanvas(
                    canvas.kernel,
                    canvas.runs,
                    new FrameClock(rate, start),
                    beats.isPresent() ? beats.get().from(start) : MusicClock.NONE,
                    canvas.starts.firstFrame(rate, number),
                    canvas.brushes[number % mostAtOnce]);
        }
        return new PlannedCue(first, frames(number), own, this, number);
    }

    private FrameSpan frames(int number) {
        return new FrameSpan(firstFrame(number), endFrameExclusive(number));
    }

    /** A play as a cue that stands alone. */
    CuePlay written(int number) {
        return CuePlay.ofShow(plays.play(number));
    }

    /** What a play is, written out. */
    PlannedCue.Body body(int number) {
        CuePlay play = written(number);
        PlannedCue.CueSpan span =
                new PlannedCue.CueSpan(frames(number), first.span().lengthSeconds());
        Fingerprint print = prints.of(play, span);
        return new PlannedCue.Body(
                play,
                () -> print,
                span,
                first.opacity(),
                first.fade(),
                first.blend(),
                first.shares(),
                first.canvases());
    }
}
