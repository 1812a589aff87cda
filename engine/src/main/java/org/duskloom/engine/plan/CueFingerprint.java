package org.duskloom.engine.plan;

import java.math.BigInteger;
import java.util.List;
import java.util.function.Supplier;
import org.duskloom.engine.digest.Fingerprint;
import org.duskloom.engine.digest.FingerprintWriter;
import org.duskloom.engine.effect.Effect;
import org.duskloom.engine.time.Beats;
import org.duskloom.engine.time.Pulse;
import org.duskloom.engine.time.Ratio;
import org.duskloom.engine.timeline.Cue;
import org.duskloom.engine.timeline.Timeline;

/**
 * Puts together the fingerprint of a cue: all that decides its frames, by value, and nothing else. What an effect does
 * not look at is left out: the order of the pixels, and for effects without chance the seed and all names.
 */
final class CueFingerprint {
    private final FingerprintWriter parts = new FingerprintWriter("cue/1");

    private CueFingerprint() {}

    /**
     * What a cue paints and when, put together when it is asked for: most that is rendered asks for none. Where beats
     * are heard it is put together at once.
     *
     * @throws ArithmeticException if a beat under the cue cannot be counted exactly
     */
    static Supplier<Fingerprint> later(
            Timeline timeline, CuePlay play, PlannedCue.CueSpan span, CanvasCompiler canvases) {
        List<SharedKernels.Prepared> prepared = canvases.prepared(play.randomKey());
        if (canvases.heardBeats().isEmpty()) {
            return () -> print(timeline, play, span, canvases, prepared);
        }
        Fingerprint print = print(timeline, play, span, canvases, prepared);
        return () -> print;
    }

    private static Fingerprint print(
            Timeline timeline,
            CuePlay play,
            PlannedCue.CueSpan span,
            CanvasCompiler canvases,
            List<SharedKernels.Prepared> prepared) {
        CueFingerprint print = new CueFingerprint();
        print.parts.value(timeline.rate()).value(play.cue().at());
        print.parts.whole(span.frames().firstFrame()).whole(span.frames().endFrameExclusive());
        print.parts.number(span.lengthSeconds());
        print.addPaint(canvases, prepared);
        canvases.heardBeats().ifPresent(beats -> print.addBeats(beats, play.cue()));
        print.addChance(canvases, timeline.seed(), play);
        return print.parts.finish();
    }

    /** What a cue is, with how much of it is seen and how it is mixed. */
    static Fingerprint of(PlannedCue.Body body, List<PlannedGroup> groups) {
        PlannedFade fade = body.fade();
        FingerprintWriter parts =
                new FingerprintWriter("seen/1").part(body.paint().get()).value(body.opacity());
        parts.number(fade.inSeconds()).number(fade.outSeconds());
        if (fade.inSeconds() > 0 || fade.outSeconds() > 0) {
            parts.value(fade.easing());
        }
        parts.text(body.blend().word());
        if (!body.shares().isEmpty() || !groups.isEmpty()) {
            parts.list(body.shares(), FingerprintWriter::value).list(groups, FingerprintWriter::value);
        }
        return parts.finish();
    }

    private void addPaint(CanvasCompiler canvases, List<SharedKernels.Prepared> prepared) {
        Effect effect = canvases.effect();
        parts.text(effect.name()).part(canvases.settings());
        parts.part(canvases.geometry().places()).flag(effect.usesOrder());
        if (effect.usesOrder()) {
            parts.part(canvases.geometry().order());
        }
        parts.list(prepared, (list, canvas) -> list.part(canvas.parts()));
    }

    /** The beats under the cue, and where each is within its bar: from the last before it to the first after. */
    private void addBeats(FrameBeats all, Cue cue) {
        Beats beats = all.beats();
        BigInteger first = beats.placeOf(Pulse.BEAT, cue.at()).floor();
        BigInteger last = beats.placeOf(Pulse.BEAT, cue.seenUntil()).floor().add(BigInteger.ONE);
        for (long beat = first.longValueExact(); beat <= last.longValueExact(); beat++) {
            parts.value(beats.timeOf(Pulse.BEAT, Ratio.of(beat)));
            if (beats.hasBars()) {
                long bar = all.bar(beat);
                parts.whole(beat - all.beatOf(bar)).whole(all.beatOf(bar + 1) - all.beatOf(bar));
            }
        }
    }

    /** Random choices hang on the whole path of plays that leads to a cue, from the outside in. */
    private void addChance(CanvasCompiler canvases, long seed, CuePlay play) {
        parts.flag(canvases.effect().usesChance());
        if (canvases.effect().usesChance()) {
            parts.whole(seed).list(play.keys(), FingerprintWriter::text);
            parts.part(canvases.geometry().names());
        }
    }
}
