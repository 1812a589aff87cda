package org.duskloom.engine.color;

import java.util.Arrays;
import java.util.Optional;

/**
 * The space in which two colours are mixed. Colours are multiplied by their alpha before and divided after, so that a
 * transparent colour does not stain the mix (W3C CSS Color Module Level 4, "Interpolating with Alpha"); hues are not.
 */
public enum ColorMix {
    /** Straight through OKLab: even steps to the eye. The default. */
    OKLAB("oklab"),
    /** Round the hues of OKLCh by the shorter way: stays colourful. A grey takes the hue of the other colour. */
    OKLCH("oklch"),
    /** Straight in linear light, as lights themselves mix. */
    LINEAR("linear");

    private final String word;

    ColorMix(String word) {
        this.word = word;
    }

    /** The word in a timeline. */
    public String word() {
        return word;
    }

    /** The one of this word. */
    public static Optional<ColorMix> of(String word) {
        return Arrays.stream(values()).filter(mix -> mix.word.equals(word)).findFirst();
    }

    /**
     * A mix of two colours. At 0 and at 1 it is exactly the one and the other. What sRGB cannot show is clipped in
     * linear light.
     *
     * @param share how much of {@code b}; outside [0, 1] the way from {@code a} to {@code b} is extended
     */
    public LinearColor mix(LinearColor a, LinearColor b, double share) {
        return new MixPath(this, a, b).at(share);
    }
}
