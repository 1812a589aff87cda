package org.duskloom.engine.preview;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.function.LongToDoubleFunction;
import org.duskloom.engine.output.PropSpan;

/**
 * What a picture needs to know of a display and its timeline, without their types.
 *
 * @param title stands over the picture
 * @param x stage coordinate to the audience's right of every pixel in wiring order, finite, in any unit
 * @param y stage coordinate up, in the same unit; as many
 * @param props whose pixels are whose, in wiring order
 * @param secondsOfFrame the instant of a frame, in seconds from the start of the timeline
 */
public record PreviewScene(
        String title, double[] x, double[] y, List<PropSpan> props, LongToDoubleFunction secondsOfFrame) {

    /**
     * Keeps the arrays, which must not be changed.
     *
     * @throws IllegalArgumentException if there is no pixel, or not as many x as y
     */
    public PreviewScene {
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(secondsOfFrame, "secondsOfFrame");
        props = List.copyOf(props);
        if (x.length == 0 || x.length != y.length) {
            throw new IllegalArgumentException(x.length + " x and " + y.length + " y");
        }
    }

    int pixelCount() {
        return x.length;
    }

    /** "854 pixels in 14 props". */
    String size() {
        String pixels = counted(pixelCount(), "pixel");
        return props.isEmpty() ? pixels : pixels + " in " + counted(props.size(), "prop");
    }

    static String counted(long count, String thing) {
        return String.format(Locale.ROOT, "%,d %s%s", count, thing, count == 1 ? "" : "s");
    }
}
