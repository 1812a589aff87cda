package org.duskloom.engine.plan;

import java.util.List;
import org.duskloom.engine.digest.Fingerprint;
import org.duskloom.engine.digest.FingerprintWriter;
import org.duskloom.engine.effect.Effect;
import org.duskloom.engine.timeline.Timeline;

/**
 * Puts together the fingerprint of a cue: all that decides its frames, by value, and nothing else. What an effect does
 * not look at is left out: the order of the pixels, and for effects without chance the seed and all names.
 */
final class CueFingerprint {
    private final FingerprintWriter parts = new FingerprintWriter("cue/1");

    private CueFingerprint() {}

    static Fingerprint of(Timeline timeline, CuePlay play, PlannedCue.CueSpan span, CanvasCompiler canvases) {
        CueFingerprint print = new CueFingerprint();
        print.parts.value(timeline.rate()).value(play.cue().at());
        print.parts.whole(span.frames().firstFrame()).whole(span.frames().endFrameExclusive());
        print.parts.number(span.lengthSeconds());
        print.addPaint(canvases, play);
        print.addChance(canvases, timeline.seed(), play);
        return print.parts.finish();
    }

    /** What a cue is, with how much of it is seen and how it is mixed. */
    static Fingerprint of(PlannedCue.Body body, List<PlannedGroup> groups) {
        PlannedFade fade = body.fade();
        FingerprintWriter parts =
                new FingerprintWriter("seen/1").part(body.paint()).value(body.opacity());
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

    private void addPaint(CanvasCompiler canvases, CuePlay play) {
        Effect effect = canvases.effect();
        parts.text(effect.name()).part(canvases.settings());
        parts.part(canvases.geometry().places()).flag(effect.usesOrder());
        if (effect.usesOrder()) {
            parts.part(canvases.geometry().order());
        }
        parts.list(canvases.prepared(play.randomKey()), (list, canvas) -> list.part(canvas.parts()));
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
