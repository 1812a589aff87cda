package org.duskloom.engine.film;

import java.util.OptionalInt;
import org.duskloom.engine.frame.EncodedBytes;
import org.duskloom.engine.frame.FrameBatch;
import org.duskloom.engine.frame.FrameEncoder;
import org.duskloom.engine.preview.PreviewScene;
import org.duskloom.engine.preview.Raster;
import org.duskloom.engine.preview.SceneDrawing;

/** Draws frames on the thread that rendered them: red, green and blue of each dot, row after row. */
final class DrawnFrames implements FrameEncoder {
    private final SceneDrawing drawing;
    private final Raster picture;
    private final int bytes;

    DrawnFrames(PreviewScene scene, FilmSize size) {
        this.drawing = new SceneDrawing(scene, size.width(), size.height(), OptionalInt.empty());
        this.picture = new Raster(size.width(), size.height(), 0);
        this.bytes = 3 * size.dots();
    }

    @Override
    public void encode(FrameBatch frames, EncodedBytes into) {
        for (int i = 0; i < frames.count(); i++) {
            int at = into.reserve(bytes);
            drawing.draw(frames.rgb(), frames.offset(i), picture);
            picture.copyTo(into.array(), at);
        }
    }
}
