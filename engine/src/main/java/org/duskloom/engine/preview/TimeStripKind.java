package org.duskloom.engine.preview;

import java.util.OptionalInt;
import org.duskloom.engine.file.OutputRefusedException;
import org.duskloom.engine.file.StagedFile;
import org.duskloom.engine.format.StreamKind;
import org.duskloom.engine.frame.FrameList;
import org.duskloom.engine.frame.FrameSink;
import org.duskloom.engine.frame.RunInfo;

/** {@code time.png}: a {@link TimeStrip} of a run; of every n-th pixel of displays with more than 65,535. */
public final class TimeStripKind implements StreamKind {
    private final OptionalInt pixelSize;
    private final int mostColumns;

    /**
     * A kind of strip.
     *
     * @param pixelSize width and height of a cell; when empty, a size that suits a screen, and
     *     fewer pixels where there are very many
     * @param mostColumns how many columns there are at most, fewer where there are many pixels
     */
    public TimeStripKind(OptionalInt pixelSize, int mostColumns) {
        this.pixelSize = pixelSize;
        this.mostColumns = mostColumns;
    }

    @Override
    public String word() {
        return "time";
    }

    @Override
    public String help() {
        return "a picture with a row for each pixel and a column for each frame";
    }

    @Override
    public String file() {
        return "time.png";
    }

    @Override
    public boolean holdsFrames() {
        return false;
    }

    @Override
    public FrameSink into(StagedFile file) {
        return new BegunLater(file, run -> strip(file, run));
    }

    /** Frames of a run are as far from each other as its first two. */
    private FrameSink strip(StagedFile file, RunInfo run) throws OutputRefusedException {
        FrameList frames = run.frames();
        PreviewScene all = PreviewScene.of(run);
        int distance = ThinnedStrip.distance(all, pixelSize.isPresent());
        PreviewScene scene = distance == 1 ? all : ThinnedStrip.thinned(all, distance);
        long apart = frames.count() > 1 ? frames.frame(1) - frames.frame(0) : 1;
        long framesPerColumn = apart * ShownFrames.framesPerColumn(scene, frames, mostColumns);
        TimeStrip strip = new TimeStrip(file, scene, frames.first(), frames.last() + 1, framesPerColumn, pixelSize);
        return distance == 1 ? strip : new ThinnedStrip(strip, distance, all.pixelCount());
    }
}
