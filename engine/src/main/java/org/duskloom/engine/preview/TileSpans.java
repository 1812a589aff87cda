package org.duskloom.engine.preview;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.duskloom.engine.frame.PropSpan;

/** Which pixels each picture of a time strip shows that is cut into several. */
final class TileSpans {
    /**
     * So many rows a picture has at most. With its head it stays within 16,384 dots, the largest side of what many
     * graphics cards, and so many programs that show pictures, take in one piece.
     */
    static final int MOST_ROWS = 16_000;

    /**
     * The pixels of one picture.
     *
     * @param first in wiring order, from 0
     * @param end the pixel after the last
     */
    record Span(int first, int end) {
        /** {@code 016000-031999.png}: in the order of the pixels when they are sorted as texts. */
        String file(int pixelCount) {
            int digits = Integer.toString(pixelCount - 1).length();
            return String.format(Locale.ROOT, "%0" + digits + "d-%0" + digits + "d.png", first, end - 1);
        }

        /** These pixels of a scene; the title says which they are unless they are all. */
        PreviewScene of(PreviewScene whole) {
            if (end - first == whole.pixelCount()) {
                return whole;
            }
            String told = String.format(Locale.ROOT, "pixels %,d to %,d", first, end - 1);
            List<PropSpan> props = whole.props().stream()
                    .filter(prop -> prop.firstPixel() < end && prop.firstPixel() + prop.pixelCount() > first)
                    .map(this::part)
                    .toList();
            return new PreviewScene(
                    whole.title().isEmpty() ? told : whole.title() + ", " + told,
                    Arrays.copyOfRange(whole.x(), first, end),
                    Arrays.copyOfRange(whole.y(), first, end),
                    props,
                    whole.secondsOfFrame(),
                    whole.captions());
        }

        private PropSpan part(PropSpan prop) {
            int from = Math.max(first, prop.firstPixel());
            int to = Math.min(end, prop.firstPixel() + prop.pixelCount());
            return new PropSpan(prop.name(), from - first, to - from);
        }
    }

    private TileSpans() {}

    /** As few as props allow, none of which is cut in two unless it has more rows than a picture. */
    static List<Span> of(PreviewScene scene, int mostRows) {
        List<Span> spans = new ArrayList<>();
        for (int first = 0; first < scene.pixelCount(); ) {
            int end = end(scene, first, mostRows);
            spans.add(new Span(first, end));
            first = end;
        }
        return spans;
    }

    private static int end(PreviewScene scene, int first, int mostRows) {
        if (scene.pixelCount() - first <= mostRows) {
            return scene.pixelCount();
        }
        int most = first + mostRows;
        return scene.props().stream()
                .mapToInt(PropSpan::firstPixel)
                .filter(begin -> begin > first && begin <= most)
                .max()
                .orElse(most);
    }
}
