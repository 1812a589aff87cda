package org.duskloom.cli;

import java.util.List;
import java.util.Optional;
import java.util.function.LongFunction;
import java.util.function.LongToDoubleFunction;
import org.duskloom.engine.frame.PropSpan;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.preview.PreviewScene;

/** What pictures and manifests need of a pixel map. */
final class PixelViews {
    private PixelViews() {}

    /** What previews draw: the pixels as they hang, seen from the front. */
    static PreviewScene scene(
            String title, PixelMap map, LongToDoubleFunction secondsOfFrame, Optional<LongFunction<String>> captions) {
        double[] x = new double[map.pixelCount()];
        double[] y = new double[map.pixelCount()];
        for (int pixel = 0; pixel < x.length; pixel++) {
            x[pixel] = map.stage().x(pixel);
            y[pixel] = map.stage().y(pixel);
        }
        return new PreviewScene(title, x, y, propSpans(map), secondsOfFrame, captions);
    }

    /** Which pixels belong to which prop. */
    static List<PropSpan> propSpans(PixelMap map) {
        return map.props().stream()
                .map(prop -> new PropSpan(prop.name(), prop.firstPixel(), prop.pixelCount()))
                .toList();
    }
}
