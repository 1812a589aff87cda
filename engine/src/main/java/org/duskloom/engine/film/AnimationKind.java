package org.duskloom.engine.film;

import java.util.Optional;
import org.duskloom.engine.file.StagedFile;
import org.duskloom.engine.format.StreamKind;
import org.duskloom.engine.frame.FrameSink;
import org.duskloom.engine.frame.RunInfo;
import org.duskloom.engine.preview.PreviewScene;

/** {@code film.png}: every frame drawn, as an animated PNG. */
public final class AnimationKind implements StreamKind {
    private static final int USUAL_WIDTH = 640;

    private static final int USUAL_HEIGHT = 480;

    /** Few pixels need no large picture, whose glow is what takes the bytes: so many dots along its longer side. */
    private static final int LEAST_DOTS = 120;

    private static final int DOTS_PER_ROOT_OF_PIXELS = 40;

    private final Optional<FilmSize> size;
    private final int plays;

    /**
     * A kind of animation.
     *
     * @param size of the pictures; when empty, the display fills one of at most 640 by 480, of few pixels a
     *     smaller one
     * @param plays how often it is played; 0 for ever again
     */
    public AnimationKind(Optional<FilmSize> size, int plays) {
        this.size = size;
        this.plays = plays;
    }

    @Override
    public String word() {
        return "apng";
    }

    @Override
    public String help() {
        return "the show as an animated picture";
    }

    @Override
    public String file() {
        return "film.png";
    }

    @Override
    public boolean holdsFrames() {
        return false;
    }

    @Override
    public FrameSink into(StagedFile file) {
        return new AnimationSink(file, this::size, plays);
    }

    /** How large the pictures of a run are. */
    public FilmSize size(RunInfo run) {
        return size.orElseGet(() -> {
            int enough = (int) (LEAST_DOTS + DOTS_PER_ROOT_OF_PIXELS * Math.sqrt(run.pixelCount()));
            FilmSize bound = new FilmSize(Math.min(USUAL_WIDTH, enough), Math.min(USUAL_HEIGHT, enough));
            return FilmSize.fitting(PreviewScene.of(run), bound);
        });
    }
}
