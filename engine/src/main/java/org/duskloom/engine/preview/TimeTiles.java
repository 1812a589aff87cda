package org.duskloom.engine.preview;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.duskloom.engine.file.AbandonedException;
import org.duskloom.engine.file.StagedFolder;
import org.duskloom.engine.frame.DaemonThreads;
import org.duskloom.engine.frame.FrameBatch;
import org.duskloom.engine.frame.FrameList;
import org.duskloom.engine.frame.FrameSink;
import org.duskloom.engine.frame.FrameSource;
import org.duskloom.engine.frame.Progress;
import org.duskloom.engine.frame.RunInfo;
import org.duskloom.engine.frame.ThreadFault;

/**
 * A time strip of all pixels of a run, however many: cut into pictures of some thousand rows. Keeps nothing of the
 * frames that go by. When the run is over, {@link #draw} has its frames once more, some pixels at a time: to keep a
 * million pixels of a thousand frames would take three gigabytes, and to render them again is a small part of what it
 * takes to compress them.
 */
public final class TimeTiles implements FrameSink {
    /** All threads together hold so many bytes of the pictures, and no more. */
    private static final int BYTES_HELD = 48 << 20;

    /** With more threads, what each holds would be too little for it to be worth while. */
    private static final int MOST_THREADS = 16;

    private static final int SECONDS_TO_STOP = 10;

    private final StagedFolder folder;
    private final int bytesHeld;
    private final int mostRows;
    private RunInfo run;

    /** Pictures in a folder, which this finishes or abandons. */
    TimeTiles(StagedFolder folder) {
        this(folder, TileSpans.MOST_ROWS, BYTES_HELD);
    }

    TimeTiles(StagedFolder folder, int mostRows, int bytesHeld) {
        this.folder = folder;
        this.mostRows = mostRows;
        this.bytesHeld = bytesHeld;
    }

    @Override
    public void begin(RunInfo info) {
        run = info;
    }

    @Override
    public void take(FrameBatch frames) {
        // They are had once more when the run is over.
    }

    /**
     * Draws the pictures and finishes the folder. The run must have begun.
     *
     * @param source has the frames of the run
     * @param threads how many draw, at least 1
     * @param progress is told of the pixels that are drawn
     * @throws IOException if that fails; nobody writes to the folder then, and it is to be closed
     * @throws InterruptedException if the calling thread is interrupted; likewise
     */
    public void draw(FrameSource source, int threads, Progress progress) throws IOException, InterruptedException {
        Tiles tiles = tiles(PreviewScene.of(run));
        int team = Math.max(
                1, Math.min(Math.min(threads, MOST_THREADS), tiles.spans().size()));
        Drawn drawn = new Drawn(run.pixelCount(), progress);
        ExecutorService drawers = Executors.newFixedThreadPool(team, new DaemonThreads("tiles"));
        try {
            List<Future<Boolean>> shares = new ArrayList<>();
            for (int i = 0; i < team; i++) {
                shares.add(drawers.submit(
                        () -> drawAll(tiles, new BandedField(source, tiles.frames(), bytesHeld / team, drawn::rows))));
            }
            awaitAll(shares);
            folder.finish();
        } finally {
            drawers.shutdownNow();
            drawers.awaitTermination(SECONDS_TO_STOP, TimeUnit.SECONDS);
        }
    }

    /**
     * What all pictures have in common.
     *
     * @param scene the whole
     * @param layout of the whole, as if it were one picture
     * @param next the number of the next picture to be drawn
     */
    private record Tiles(
            PreviewScene scene,
            List<TileSpans.Span> spans,
            long[] frames,
            long framesPerColumn,
            TimeStripLayout layout,
            AtomicInteger next) {}

    private Tiles tiles(PreviewScene scene) {
        FrameList frames = run.frames();
        long distance = (frames.count() - 1) / ShownFrames.USUAL_COLUMNS + 1;
        long[] columns = ShownFrames.everyNth(frames, distance);
        TimeStripLayout layout = TimeStripLayout.chosen(scene, columns.length, OptionalInt.empty());
        long framesPerColumn = frames.step() * distance;
        return new Tiles(scene, TileSpans.of(scene, mostRows), columns, framesPerColumn, layout, new AtomicInteger());
    }

    /** Draws pictures until none is left. */
    private boolean drawAll(Tiles tiles, BandedField field) throws IOException {
        int number = tiles.next().getAndIncrement();
        while (number < tiles.spans().size()) {
            draw(tiles, tiles.spans().get(number), field);
            number = tiles.next().getAndIncrement();
        }
        return true;
    }

    private void draw(Tiles tiles, TileSpans.Span span, BandedField field) throws IOException {
        TimeStripLayout whole = tiles.layout();
        TimeStripLayout layout =
                new TimeStripLayout(whole.frames(), span.end() - span.first(), whole.cellSize(), whole.fieldLeft());
        String name = span.file(tiles.scene().pixelCount());
        new TimeStripDrawing(span.of(tiles.scene()), tiles.frames()[0], tiles.framesPerColumn(), layout)
                .write(folder.open(name), field.of(span.first(), span.end()));
    }

    /** When one fails the folder is abandoned, so the others fail too: not their reason counts, but that of the one. */
    private static void awaitAll(List<Future<Boolean>> shares) throws IOException, InterruptedException {
        Throwable reason = null;
        for (Future<Boolean> share : shares) {
            try {
                share.get();
            } catch (ExecutionException failed) {
                if (reason == null || reason instanceof AbandonedException) {
                    reason = failed.getCause();
                }
            }
        }
        if (reason instanceof RuntimeException fault) {
            throw new IllegalStateException("a picture could not be drawn", fault);
        }
        if (reason != null) {
            throw ThreadFault.of(reason);
        }
    }

    @Override
    public void close() {
        folder.close();
    }

    /** How many pixels are drawn. */
    private static final class Drawn {
        private final int total;
        private final Progress progress;
        private int done;

        Drawn(int total, Progress progress) {
            this.total = total;
            this.progress = progress;
        }

        synchronized void rows(int count) {
            done += count;
            progress.at(done, total);
        }
    }
}
