package org.duskloom.engine.film;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.function.Function;
import org.duskloom.engine.file.StagedFile;
import org.duskloom.engine.frame.EncodedBytes;
import org.duskloom.engine.frame.EncodingSink;
import org.duskloom.engine.frame.FrameBatch;
import org.duskloom.engine.frame.FrameEncoder;
import org.duskloom.engine.frame.RunInfo;
import org.duskloom.engine.preview.PreviewScene;
import org.duskloom.engine.time.ExactTime;

/**
 * Writes YUV4MPEG2 (yuv4mpeg(5) of mjpegtools): a line with size and rate, then for each frame a line and three planes,
 * none of them subsampled. The colours are those of {@link StudioColor}; no tag says so, as not all readers know it.
 */
final class VideoSink implements EncodingSink {
    /** Stands before each frame. */
    static final byte[] FRAME_HEAD = "FRAME\n".getBytes(StandardCharsets.US_ASCII);

    private final StagedFile file;
    private final Function<RunInfo, FilmSize> sizeOf;
    private PreviewScene scene;
    private FilmSize size;

    VideoSink(StagedFile file, Function<RunInfo, FilmSize> sizeOf) {
        this.file = file;
        this.sizeOf = sizeOf;
    }

    @Override
    public void begin(RunInfo run) throws IOException {
        scene = PreviewScene.of(run);
        size = sizeOf.apply(run);
        ExactTime step = FrameStep.time(run);
        byte[] head = ("YUV4MPEG2 W" + size.width() + " H" + size.height() + " F" + step.denominator() + ":"
                        + step.numerator() + " Ip A1:1 C444\n")
                .getBytes(StandardCharsets.US_ASCII);
        file.write(head, 0, head.length);
    }

    @Override
    public long bytesPerFrame() {
        return FRAME_HEAD.length + 3L * size.dots();
    }

    @Override
    public FrameEncoder encoder() {
        DrawnFrames drawn = new DrawnFrames(scene, size);
        EncodedBytes rgb = new EncodedBytes();
        return (frames, into) -> {
            rgb.clear();
            drawn.encode(frames, rgb);
            for (int i = 0; i < frames.count(); i++) {
                into.put(FRAME_HEAD, 0, FRAME_HEAD.length);
                int at = into.reserve(3 * size.dots());
                StudioColor.planes(rgb.array(), 3 * size.dots() * i, into.array(), at, size.dots());
            }
        };
    }

    @Override
    public void take(FrameBatch frames, EncodedBytes encoded) throws IOException {
        file.write(encoded.array(), 0, encoded.length());
    }

    @Override
    public void finish() throws IOException {
        file.finish();
    }

    @Override
    public void close() {
        file.close();
    }
}
