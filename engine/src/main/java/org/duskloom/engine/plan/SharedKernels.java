package org.duskloom.engine.plan;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntSupplier;
import org.duskloom.engine.digest.Fingerprint;
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
    private final Effect effect;
    private final Settings settings;
    private final CueGeometry geometry;
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
    record Prepared(Optional<Kernel> kernel, Optional<SettingException> refusal, Fingerprint parts) {}

    SharedKernels(Show show, Effect effect, Settings settings, CueGeometry geometry) {
        this.show = show;
        this.effect = effect;
        this.settings = settings;
        this.geometry = geometry;
        brushes = geometry.areas().stream().map(area -> new BrushNumbers()).toList();
    }

    /** The effect on each canvas, for a cue with this random key. */
    List<Prepared> prepared(String randomKey) {
        return byRandomKey.computeIfAbsent(effect.usesChance() ? randomKey : "", this::prepare);
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
