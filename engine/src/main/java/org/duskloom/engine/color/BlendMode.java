package org.duskloom.engine.color;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * How a colour is laid over the colour below it: the separable blend modes of W3C Compositing and Blending Level 1,
 * each with the operator source-over, and {@code plus-lighter} of Level 2. All work on one channel of linear light at a
 * time.
 */
public enum BlendMode {
    /** The source alone. */
    NORMAL("normal") {
        @Override
        public float blend(float backdrop, float source) {
            return source;
        }
    },
    /** The product: as a filter over the backdrop. */
    MULTIPLY("multiply") {
        @Override
        public float blend(float backdrop, float source) {
            return backdrop * source;
        }
    },
    /** The product of what is missing to full light. */
    SCREEN("screen") {
        @Override
        public float blend(float backdrop, float source) {
            return backdrop + source - backdrop * source;
        }
    },
    /** Multiply where the backdrop is dark, screen where it is bright. */
    OVERLAY("overlay") {
        @Override
        public float blend(float backdrop, float source) {
            return HARD_LIGHT.blend(source, backdrop);
        }
    },
    /** The darker of the two. */
    DARKEN("darken") {
        @Override
        public float blend(float backdrop, float source) {
            return Math.min(backdrop, source);
        }
    },
    /** The brighter of the two. */
    LIGHTEN("lighten") {
        @Override
        public float blend(float backdrop, float source) {
            return Math.max(backdrop, source);
        }
    },
    /** Brightens the backdrop; black stays black, even under white. */
    COLOR_DODGE("color-dodge") {
        @Override
        public float blend(float backdrop, float source) {
            if (backdrop == 0) {
                return 0;
            }
            return source == 1 ? 1 : Math.min(1, backdrop / (1 - source));
        }
    },
    /** Darkens the backdrop; white stays white, even under black. */
    COLOR_BURN("color-burn") {
        @Override
        public float blend(float backdrop, float source) {
            if (backdrop == 1) {
                return 1;
            }
            return source == 0 ? 0 : 1 - Math.min(1, (1 - backdrop) / source);
        }
    },
    /** Multiply where the source is dark, screen where it is bright. */
    HARD_LIGHT("hard-light") {
        @Override
        public float blend(float backdrop, float source) {
            return source <= 0.5f ? MULTIPLY.blend(backdrop, 2 * source) : SCREEN.blend(backdrop, 2 * source - 1);
        }
    },
    /** A gentle hard-light. */
    SOFT_LIGHT("soft-light") {
        @Override
        public float blend(float backdrop, float source) {
            if (source <= 0.5f) {
                return backdrop - (1 - 2 * source) * backdrop * (1 - backdrop);
            }
            float bright =
                    backdrop <= 0.25f ? ((16 * backdrop - 12) * backdrop + 4) * backdrop : (float) Math.sqrt(backdrop);
            return backdrop + (2 * source - 1) * (bright - backdrop);
        }
    },
    /** The distance of the two. */
    DIFFERENCE("difference") {
        @Override
        public float blend(float backdrop, float source) {
            return Math.abs(backdrop - source);
        }
    },
    /** A gentle difference. */
    EXCLUSION("exclusion") {
        @Override
        public float blend(float backdrop, float source) {
            return backdrop + source - 2 * backdrop * source;
        }
    },
    /** The sum, as lights add, up to full light; its alphas add too. */
    PLUS_LIGHTER("plus-lighter") {
        @Override
        public float blend(float backdrop, float source) {
            return Math.min(1, backdrop + source);
        }

        @Override
        public float over(float backdrop, float backdropAlpha, float source, float sourceAlpha) {
            return Math.min(1, backdrop + source);
        }

        @Override
        public float alphaOver(float backdropAlpha, float sourceAlpha) {
            return Math.min(1, backdropAlpha + sourceAlpha);
        }
    };

    private final String word;

    BlendMode(String word) {
        this.word = word;
    }

    /** The word of the W3C modules, as it stands in a timeline. */
    public String word() {
        return word;
    }

    /** The mode of this word. */
    public static Optional<BlendMode> of(String word) {
        return Arrays.stream(values()).filter(mode -> mode.word.equals(word)).findFirst();
    }

    /** The words of all modes. */
    public static List<String> words() {
        return Arrays.stream(values()).map(BlendMode::word).toList();
    }

    /**
     * The blend function B of two opaque colours.
     *
     * @param backdrop linear light of one channel in [0, 1], not multiplied by alpha
     * @param source likewise
     * @return linear light in [0, 1], but for rounding
     */
    public abstract float blend(float backdrop, float source);

    /**
     * One channel of the source laid over the backdrop; all values are multiplied by their alphas. The formula is
     * {@code as (1 - ab) Cs + as ab B(Cb, Cs) + (1 - as) ab Cb} (Level 2, "Blending and compositing").
     *
     * @param backdrop 0 to {@code backdropAlpha}
     * @param source 0 to {@code sourceAlpha}
     * @return 0 to {@link #alphaOver}, but for rounding
     */
    public float over(float backdrop, float backdropAlpha, float source, float sourceAlpha) {
        if (this == NORMAL || backdropAlpha == 0) {
            return source + (1 - sourceAlpha) * backdrop;
        }
        if (sourceAlpha == 0) {
            return backdrop;
        }
        float blended = blend(Math.min(1, backdrop / backdropAlpha), Math.min(1, source / sourceAlpha));
        return (1 - backdropAlpha) * source + sourceAlpha * backdropAlpha * blended + (1 - sourceAlpha) * backdrop;
    }

    /** The alpha of the source laid over the backdrop. */
    public float alphaOver(float backdropAlpha, float sourceAlpha) {
        return sourceAlpha + (1 - sourceAlpha) * backdropAlpha;
    }
}
