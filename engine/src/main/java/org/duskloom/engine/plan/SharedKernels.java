package org.duskloom.engine.plan;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntSupplier;
import org.duskloom.engine.digest.Fingerprint;
import org.duskloom.engine.digest.FingerprintWriter;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.Effect;
import org.duskloom.engine.effect.Kernel;
import org.duskloom.engine.effect.SettingException;
import org.duskloom.engine.effect.Settings;
import org.duskloom.engine.show.Show;
import org.duskloom.engine.time.FrameSpan;

/**
 * An effect with its settings, compiled for a geometry: one for all cues that have the three in common, by value,
 * wherever they are written. Effects that use chance are compiled once for every random key.
 */
final class SharedKernels {
    private final Show show;
    private final Key identity;
    private final Effect effect;
    private final Settings settings;
    private final CueGeometry geometry;
    private final KernelShelf shelf;
    private final List<BrushNumbers> brushes;
    private final Map<String, List<Prepared>> byRandomKey = new HashMap<>();

    /** What such cues have in common. A geometry is equal to itself only, since it is shared by value already. */
    record Key(CueGeometry geometry, Effect effect, Fingerprint settings) {}

    /**
     * What became of one canvas.
     *
     * @param kernel the compiled effect, or nothing
     * @param refusal why there is none
     * @param parts the pixels that were found for parts that settings name
     */
    record Prepared(Optional<Kernel> kernel, Optional<SettingException> refusal, Fingerprint parts) {
        /** Whether the same would come of everything that has the same {@link SharedKernels#name}. */
        boolean hangsOnItsNameAlone() {
            return kernel.isPresent() && parts.equals(RecordedParts.NONE);
        }
    }

    SharedKernels(Show show, Key identity, Settings settings, KernelShelf shelf) {
        this.show = show;
        this.identity = identity;
        this.effect = identity.effect();
        this.settings = settings;
        this.geometry = identity.geometry();
        this.shelf = shelf;
        brushes = geometry.areas().stream().map(area -> new BrushNumbers()).toList();
    }

    /** What those who share them have in common. */
    Key identity() {
        return identity;
    }

    /** The effect on each canvas, for a cue with this random key. */
    List<Prepared> prepared(String randomKey) {
        return byRandomKey.computeIfAbsent(effect.usesChance() ? randomKey : "", this::shelved);
    }

    /** Beats move with the music, whatever the settings say: what hears them is made anew, as is what is not kept. */
    private List<Prepared> shelved(String randomKey) {
        return settings.hearBeats() || !shelf.isUsed()
                ? prepare(randomKey)
                : shelf.get(name(randomKey), () -> prepare(randomKey));
    }

    /** By value, all that decides what is made; see {@link CueFingerprint}. */
    private Fingerprint name(String randomKey) {
        FingerprintWriter parts = new FingerprintWriter("kernels/1").text(effect.name());
        parts.part(identity.settings()).part(geometry.places()).part(geometry.order());
        if (effect.usesChance()) {
            parts.whole(show.timeline().seed()).text(randomKey).part(geometry.names());
        }
        return parts.finish();
    }

    /**
     * The number of a brush for a canvas.
     *
     * @param frames in which it is needed
     * @param fresh gives a number that no canvas has yet
     */
    int brush(int canvas, FrameSpan frames, IntSupplier fresh) {
        return brushes.get(canvas).take(frames, fresh);
    }

    private List<Prepared> prepare(String randomKey) {
        CanvasKeys keys = new CanvasKeys(show, randomKey);
        return geometry.areas().stream()
                .map(area -> prepare(
                        effect.usesChance()
                                ? keys.on(area.built(), area.names())
                                : area.built().canvas()))
                .toList();
    }

    private Prepared prepare(Canvas canvas) {
        RecordedParts parts = new RecordedParts(canvas.parts());
        try {
            Kernel kernel = effect.prepare(settings, canvas.withParts(parts));
            return new Prepared(Optional.of(kernel), Optional.empty(), parts.found());
        } catch (SettingException refusal) {
            return new Prepared(Optional.empty(), Optional.of(refusal), parts.found());
        }
    }
}
