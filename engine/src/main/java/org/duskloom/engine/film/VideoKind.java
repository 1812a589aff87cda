package org.duskloom.engine.film;

import java.util.Optional;
import org.duskloom.engine.file.StagedFile;
import org.duskloom.engine.format.StreamKind;
import org.duskloom.engine.frame.FrameSink;
import org.duskloom.engine.frame.RunInfo;
import org.duskloom.engine.preview.PreviewScene;

/** {@code film.y4m}: every frame drawn, for programs that make video of it. */
public final class VideoKind implements StreamKind {
    private static final FilmSize USUAL = new FilmSize(1280, 720);

    private final Optional<FilmSize> size;

    /**
     * A kind of video.
     *
     * @param size of the pictures, even; when empty, the display fills one of at most 1280 by 720
     */
    public VideoKind(Optional<FilmSize> size) {
        this.size = size;
    }

    @Override
    public String word() {
        return "y4m";
    }

    @Override
    public String help() {
        return "the show as video that is not compressed";
    }

    @Override
    public String file() {
        return "film.y4m";
    }

    @Override
    public boolean holdsFrames() {
        return false;
    }

    /** How large the pictures of a run are. */
    public FilmSize size(RunInfo run) {
        return size.orElseGet(() -> FilmSize.fitting(PreviewScene.of(run), USUAL));
    }

    @Override
    public long bytes(RunInfo run) {
        return run.frames().count()
                * (VideoSink.FRAME_HEAD.length + 3L * size(run).dots());
    }

    @Override
    public FrameSink into(StagedFile file) {
        return new VideoSink(file, this::size);
    }
}
