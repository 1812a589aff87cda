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

    /** How far pixels are from each other of which a usual strip has rows, if a display has so many: 1 for all. */
    public static int pixelsPerRow(int pixelCount) {
        return ThinnedStrip.distance(pixelCount);
    }

    /** Those of some frames that are shown of a display. */
    public long[] columns(PreviewScene display, FrameList frames) {
        return ShownFrames.everyNth(frames, shown(display, frames).framesPerColumn());
    }

    /**
     * What is shown.
     *
     * @param scene all pixels of a display, or some
     * @param distance how far they are from each other
     * @param framesPerColumn how far the frames are from each other, counted in those that come
     */
    private record Shown(PreviewScene scene, int distance, long framesPerColumn) {}

    private Shown shown(PreviewScene display, FrameList frames) {
        int distance = ThinnedStrip.distance(display, pixelSize.isPresent());
        if (distance == 1) {
            return new Shown(display, 1, ShownFrames.framesPerColumn(display, frames, mostColumns));
        }
        PreviewScene some = ThinnedStrip.thinned(display, distance);
        int most = Math.min(mostColumns, ThinnedStrip.mostColumns(some));
        return new Shown(some, distance, ShownFrames.framesPerColumn(some, frames, most));
    }

    private FrameSink strip(StagedFile file, RunInfo run) throws OutputRefusedException {
        FrameList frames = run.frames();
        Shown shown = shown(PreviewScene.of(run), frames);
        long framesPerColumn = frames.step() * shown.framesPerColumn();
        TimeStrip strip =
                new TimeStrip(file, shown.scene(), frames.first(), frames.last() + 1, framesPerColumn, pixelSize);
        return shown.distance() == 1 ? strip : new ThinnedStrip(strip, shown.distance(), run.pixelCount());
    }
}
