package org.duskloom.engine.survey;

import java.util.Objects;

/**
 * An order of the pixels, told by the one that is described: pixels outside a stretch are as described; pixel i of the
 * stretch, counted from 0, hangs where pixel start + i of it is described, or start - i where it runs backwards, round
 * the end.
 *
 * @param kind what differs
 * @param firstPixel the first pixel of the stretch, from 0
 * @param pixelCount how many it has
 * @param start where its first pixel hangs, counted within the stretch
 * @param isBackwards whether it runs against the order described
 */
public record Wiring(WiringKind kind, int firstPixel, int pixelCount, int start, boolean isBackwards) {
    /** The order that is described. */
    public static final Wiring AS_DESCRIBED = new Wiring(WiringKind.AS_DESCRIBED, 0, 0, 0, false);

    public Wiring {
        Objects.requireNonNull(kind, "kind");
    }

    /** Where a pixel hangs: the pixel that is described there; both from 0. */
    public int describedPixel(int pixel) {
        int within = pixel - firstPixel;
        if (within < 0 || within >= pixelCount) {
            return pixel;
        }
        int at = isBackwards ? start - within : start + within;
        if (at < 0) {
            at += pixelCount;
        }
        return firstPixel + (at < pixelCount ? at : at - pixelCount);
    }
}
