package org.duskloom.engine.effect;

import java.util.List;
import java.util.function.Function;
import org.duskloom.engine.color.ColorMix;
import org.duskloom.engine.color.LinearColor;
import org.duskloom.engine.color.Palette;
import org.duskloom.engine.digest.FingerprintWriter;
import org.duskloom.engine.digest.Fingerprinted;
import org.duskloom.engine.time.Easing;

/**
 * A palette over the time of a cue. Between two keys every place goes from the colour that the one palette has there to
 * the colour that the other has there, whatever their stops: {@code mix(before(s), after(s), eased share)}. Immutable.
 */
public final class PaletteTrack implements Fingerprinted {
    private final List<PaletteKey> keys;
    private final ColorMix mix;

    private PaletteTrack(List<PaletteKey> keys, ColorMix mix) {
        this.keys = List.copyOf(keys);
        this.mix = mix;
    }

    /** A palette that does not move. */
    public static PaletteTrack constant(Palette palette) {
        return new PaletteTrack(List.of(new PaletteKey(0, palette, Easing.LINEAR)), ColorMix.OKLAB);
    }

    /**
     * A palette that moves from key to key. Before the first key it is the first palette, after the last the last.
     *
     * @param keys at least one, their times not falling
     * @param mix how the colours between are found
     */
    public static PaletteTrack keyed(List<PaletteKey> keys, ColorMix mix) {
        if (keys.isEmpty()) {
            throw new IllegalArgumentException("a track needs a key");
        }
        return new PaletteTrack(keys, mix);
    }

    /** Whether there is only one palette. */
    public boolean isConstant() {
        Palette first = first();
        return keys.stream()
                .allMatch(key -> key.palette().stops().equals(first.stops())
                        && key.palette().style().equals(first.style()));
    }

    /** The palette of the first key. */
    public Palette first() {
        return keys.get(0).palette();
    }

    /** The palettes of all keys, in their order. */
    public List<Palette> palettes() {
        return keys.stream().map(PaletteKey::palette).toList();
    }

    /** How the colours between two keys are found. */
    public ColorMix mix() {
        return mix;
    }

    /**
     * Colours of the palette, which move as it does.
     *
     * @param pick takes from a palette as many colours as from any other
     */
    public ColorTracks picked(Function<Palette, List<LinearColor>> pick) {
        return new ColorTracks(
                keys.stream().mapToDouble(PaletteKey::seconds).toArray(),
                keys.stream().map(PaletteKey::easing).toArray(Easing[]::new),
                keys.stream().map(key -> pick.apply(key.palette())).toList(),
                mix);
    }

    @Override
    public void addTo(FingerprintWriter parts) {
        KeyTimes.addKeys(parts, keys, PaletteKey::palette, PaletteKey::seconds, PaletteKey::easing, mix);
    }
}
