package org.duskloom.engine.plan;

import java.util.List;
import org.duskloom.engine.digest.Fingerprint;
import org.duskloom.engine.digest.FingerprintWriter;
import org.duskloom.engine.effect.Effect;
import org.duskloom.engine.effect.NumberTrack;
import org.duskloom.engine.timeline.Cue;
import org.duskloom.engine.timeline.Timeline;

/**
 * Puts together the fingerprint of a cue: all that decides its frames, by value, and nothing else. What an effect does not look
 * at is left out: the order of the pixels, and for effects without chance the seed and all names.
 */
final class CueFingerprint {
    private final FingerprintWriter parts = new FingerprintWriter("cue/1");

    private CueFingerprint() {}

    static Fingerprint of(Timeline timeline, Cue cue, PlannedCue.CueSpan span, CanvasCompiler canvases) {
        CueFingerprint print = new CueFingerprint();
        print.parts.value(timeline.rate()).value(cue.at());
        print.parts.whole(span.frames().firstFrame()).whole(span.frames().endFrameExclusive());
        print.parts.number(span.lengthSeconds());
        print.addPaint(canvases, cue);
        print.addChance(canvases, timeline.seed(), cue);
        return print.parts.finish();
    }

    /** What a cue is, with how much of it is seen and how it is mixed. */
    static Fingerprint of(Fingerprint cue, NumberTrack opacity, PlannedFade fade, String blend) {
        FingerprintWriter parts = new FingerprintWriter("seen/1").part(cue).value(opacity);
        parts.number(fade.inSeconds()).number(fade.outSeconds());
        if (fade.inSeconds() > 0 || fade.outSeconds() > 0) {
            parts.value(fade.easing());
        }
        return parts.text(blend).finish();
    }

    private void addPaint(CanvasCompiler canvases, Cue cue) {
        Effect effect = canvases.effect();
        parts.text(effect.name()).part(canvases.settings());
        parts.part(canvases.geometry().places()).flag(effect.usesOrder());
        if (effect.usesOrder()) {
            parts.part(canvases.geometry().order());
        }
        parts.list(canvases.prepared(cue), (list, canvas) -> list.part(canvas.parts()));
    }

    /** Random choices hang on the whole path of plays that leads to a cue, from the outside in. */
    private void addChance(CanvasCompiler canvases, long seed, Cue cue) {
        parts.flag(canvases.effect().usesChance());
        if (canvases.effect().usesChance()) {
            parts.whole(seed).list(List.of(cue.randomKey()), FingerprintWriter::text);
            parts.part(canvases.geometry().names());
        }
    }
}
