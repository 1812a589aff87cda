package org.duskloom.engine.preview;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.LongFunction;
import java.util.function.LongToDoubleFunction;
import java.util.stream.Stream;
import org.duskloom.engine.font.PixelFont;
import org.duskloom.engine.frame.PropSpan;
import org.duskloom.engine.frame.RunInfo;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.text.Counted;

/**
 * What a picture needs to know of a display and its timeline, without their types.
 *
 * @param title stands over the picture
 * @param x stage coordinate to the audience's right of every pixel in wiring order, finite, in any unit
 * @param y stage coordinate up, in the same unit; as many
 * @param props whose pixels are whose, in wiring order
 * @param secondsOfFrame the instant of a frame, in seconds from the start of the timeline
 * @param captions what stands beside the time of a frame, shortened where it does not fit; without them its number
 *     does, where it fits, as a time is written in frames where "frame" does not
 */
public record PreviewScene(
        String title,
        double[] x,
        double[] y,
        List<PropSpan> props,
        LongToDoubleFunction secondsOfFrame,
        Optional<LongFunction<String>> captions) {

    /**
     * Keeps the arrays, which must not be changed.
     *
     * @throws IllegalArgumentException if there is no pixel, or not as many x as y
     */
    public PreviewScene {
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(secondsOfFrame, "secondsOfFrame");
        Objects.requireNonNull(captions, "captions");
        props = List.copyOf(props);
        if (x.length == 0 || x.length != y.length) {
            throw new IllegalArgumentException(x.length + " x and " + y.length + " y");
        }
    }

    /** A scene whose frames are captioned with their numbers. */
    public PreviewScene(
            String title, double[] x, double[] y, List<PropSpan> props, LongToDoubleFunction secondsOfFrame) {
        this(title, x, y, props, secondsOfFrame, Optional.empty());
    }

    /**
     * The pixels of a run as they hang, seen from the front.
     *
     * @throws IllegalArgumentException if it is not known where they hang
     */
    static PreviewScene of(RunInfo run, LongToDoubleFunction secondsOfFrame, Optional<LongFunction<String>> captions) {
        Positions places = run.pixels()
                .places()
                .orElseThrow(() -> new IllegalArgumentException("it is not known where the pixels hang"));
        double[] x = new double[run.pixelCount()];
        double[] y = new double[run.pixelCount()];
        for (int pixel = 0; pixel < x.length; pixel++) {
            x[pixel] = places.x(pixel);
            y[pixel] = places.y(pixel);
        }
        return new PreviewScene(run.title(), x, y, run.pixels().props(), secondsOfFrame, captions);
    }

    /** The same, with the times of the frames and their numbers. */
    public static PreviewScene of(RunInfo run) {
        return of(run, run.rate()::secondsOf, Optional.empty());
    }

    /** What stands beside the time of a frame, within so many dots; may be empty. */
    String caption(long frame, int dots) {
        if (captions.isPresent()) {
            return PixelFont.standard().fitted(captions.get().apply(frame), dots);
        }
        return Stream.of("frame " + frame, frame + "f")
                .filter(number -> PixelFont.standard().width(number) <= dots)
                .findFirst()
                .orElse("");
    }

    /** How many pixels it has. */
    public int pixelCount() {
        return x.length;
    }

    /** "854 pixels in 14 props". */
    String size() {
        String pixels = Counted.grouped(pixelCount(), "pixel");
        return props.isEmpty() ? pixels : pixels + " in " + Counted.grouped(props.size(), "prop");
    }
}
