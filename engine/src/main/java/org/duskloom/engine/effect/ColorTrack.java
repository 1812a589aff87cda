package org.duskloom.engine.effect;

import java.util.List;
import org.duskloom.engine.color.ColorMix;
import org.duskloom.engine.color.LinearColor;
import org.duskloom.engine.color.Palette;
import org.duskloom.engine.color.PaletteStop;
import org.duskloom.engine.color.PaletteStyle;
import org.duskloom.engine.time.Easing;

/** A colour over the time of a cue. Immutable. */
public final class ColorTrack {
    private final double[] seconds;
    private final LinearColor[] colors;
    private final Easing[] easings;
    /** The way from each key to the next. */
    private final Palette[] ways;

    private ColorTrack(double[] seconds, LinearColor[] colors, Easing[] easings, Palette[] ways) {
        this.seconds = seconds;
        this.colors = colors;
        this.easings = easings;
        this.ways = ways;
    }

    /** A colour that does not move. */
    public static ColorTrack constant(LinearColor color) {
        return new ColorTrack(new double[] {0}, new LinearColor[] {color}, new Easing[1], new Palette[1]);
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
        Palette[] ways = new Palette[keys.size()];
        for (int i = 1; i < ways.length; i++) {
            ways[i] = Palette.of(
                    List.of(
                            new PaletteStop(0, keys.get(i - 1).color()),
                            new PaletteStop(1, keys.get(i).color())),
                    new PaletteStyle(mix, false, false));
        }
        return new ColorTrack(
                keys.stream().mapToDouble(ColorKey::seconds).toArray(),
                keys.stream().map(ColorKey::color).toArray(LinearColor[]::new),
                keys.stream().map(ColorKey::easing).toArray(Easing[]::new),
                ways);
    }

    /** Whether there is only one colour. */
    public boolean isConstant() {
        for (LinearColor color : colors) {
            if (!color.equals(colors[0])) {
                return false;
            }
        }
        return true;
    }

    /** The colour at a time in seconds from the start of the cue. */
    public LinearColor at(double second) {
        int next = KeyTimes.firstAfter(seconds, second);
        if (next == 0) {
            return colors[0];
        }
        if (next == seconds.length) {
            return colors[next - 1];
        }
        return ways[next].at(easings[next].at(KeyTimes.share(seconds, next, second)));
    }
}
