package org.duskloom.engine.frame;

import java.util.List;
import java.util.Optional;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.map.Positions;

/**
 * What the pixels of a frame are.
 *
 * @param count how many there are, at least one
 * @param props whose pixels are whose, in wiring order; empty where that is not known
 * @param places where each hangs on the stage; nothing where that is not known, as of frames read from a file
 */
public record FramePixels(int count, List<PropSpan> props, Optional<Positions> places) {

    /** @throws IllegalArgumentException if there is no pixel, or a prop has pixels that a frame has not */
    public FramePixels {
        props = List.copyOf(props);
        if (count < 1) {
            throw new IllegalArgumentException(count + " pixels");
        }
        for (PropSpan prop : props) {
            if (prop.pixelCount() > count - prop.firstPixel()) {
                throw new IllegalArgumentException(prop + " of " + count + " pixels");
            }
        }
    }

    /** Those of a map. */
    public static FramePixels of(PixelMap map) {
        List<PropSpan> props = map.props().stream()
                .map(prop -> new PropSpan(prop.name(), prop.firstPixel(), prop.pixelCount()))
                .toList();
        return new FramePixels(map.pixelCount(), props, Optional.of(map.stage()));
    }

    /** Pixels of which nothing is known but their number. */
    public static FramePixels unnamed(int count) {
        return new FramePixels(count, List.of(), Optional.empty());
    }
}
