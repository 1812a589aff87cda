package org.duskloom.engine.effect;

import java.util.List;
import org.duskloom.engine.color.ColorMix;
import org.duskloom.engine.color.LinearColor;
import org.duskloom.engine.digest.FingerprintWriter;
import org.duskloom.engine.digest.Fingerprinted;
import org.duskloom.engine.time.Easing;

/** A colour over the time of a cue. Immutable. */
public final class ColorTrack implements Fingerprinted {
    private final List<ColorKey> keys;
    private final ColorMix mix;
    private final ColorTracks only;
    private final boolean constant;

    private ColorTrack(List<ColorKey> keys, ColorMix mix) {
        this.keys = List.copyOf(keys);
        this.mix = mix;
        this.only = new ColorTracks(
                keys.stream().mapToDouble(ColorKey::seconds).toArray(),
                keys.stream().map(ColorKey::easing).toArray(Easing[]::new),
                keys.stream().map(key -> List.of(key.color())).toList(),
                mix);
        this.constant = keys.stream().map(ColorKey::color).distinct().count() == 1;
    }

    /** A colour that does not move. */
    public static ColorTrack constant(LinearColor color) {
        return keyed(List.of(new ColorKey(0, color, Easing.LINEAR)), ColorMix.LINEAR);
    }

    /**
     * A colour that moves from key to key. Before the first key it has the first colour, after the last the last.
     *
     * @param keys at least one, their times not falling
     * @param mix how the colours between are found
     */
    public static ColorTrack keyed(List<ColorKey> keys, ColorMix mix) {
        if (keys.isEmpty()) {
            throw new IllegalArgumentException("a track needs a key");
        }
        return new ColorTrack(keys, mix);
    }

    /** Whether there is only one colour. */
    public boolean isConstant() {
        return constant;
    }

    /** The colour at a time in seconds from the start of the cue. */
    public LinearColor at(double second) {
        float[] color = new float[ColorTracks.CHANNELS];
        fill(second, color);
        return new LinearColor(color[0], color[1], color[2], color[3]);
    }

    /**
     * Writes the colour at a time in seconds from the start of the cue. Allocates nothing.
     *
     * @param target receives red, green, blue and alpha, each in [0, 1], the light not multiplied by alpha
     */
    public void fill(double second, float[] target) {
        only.fill(second, target);
    }

    @Override
    public void addTo(FingerprintWriter parts) {
        KeyTimes.addKeys(parts, keys, ColorKey::color, ColorKey::seconds, ColorKey::easing, mix);
    }
}
