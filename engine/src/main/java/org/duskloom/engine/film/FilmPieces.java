package org.duskloom.engine.film;

import java.io.IOException;
import java.util.Arrays;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import org.duskloom.engine.frame.EncodedBytes;
import org.duskloom.engine.frame.FrameBatch;
import org.duskloom.engine.frame.FrameList;
import org.duskloom.engine.frame.FrameReader;
import org.duskloom.engine.frame.FrameSource;
import org.duskloom.engine.frame.RunInfo;
import org.duskloom.engine.time.FrameSpan;

/**
 * All frames of a show, packed piece by piece when they are asked for, as {@link PieceEncoder} does. Pieces are counted
 * from 0 and follow each other. Safe for use by several threads.
 */
public final class FilmPieces {
    private static final int MOST_BYTES = 2 << 20;
    private static final int USUAL_FRAMES = 32;

    /** Of a show that is longer, pieces have more frames: a page knows all of them by name. */
    private static final int MANY_PIECES = 10_000;

    private final FrameSource source;
    private final int pieceFrames;
    private final Queue<FrameReader> idleReaders = new ConcurrentLinkedQueue<>();

    /** The frames of a source. */
    public FilmPieces(FrameSource source) {
        this.source = source;
        this.pieceFrames = pieceFrames(source.info());
    }

    /** Few enough to be unpacked between two frames that are shown. */
    private static int pieceFrames(RunInfo info) {
        long enough = Math.max(USUAL_FRAMES, (info.showFrames() + MANY_PIECES - 1) / MANY_PIECES);
        return (int) Math.max(1, Math.min(enough, MOST_BYTES / info.frameBytes()));
    }

    /** How many frames a piece has; the last one may have fewer. */
    public int pieceFrames() {
        return pieceFrames;
    }

    /** How many pieces there are. */
    public int count() {
        return Math.toIntExact((source.info().showFrames() + pieceFrames - 1) / pieceFrames);
    }

    /**
     * Renders and packs a piece.
     *
     * @throws IOException if a frame cannot be had
     * @throws IndexOutOfBoundsException if there is no such piece
     */
    public byte[] packed(int piece) throws IOException {
        if (piece < 0 || piece >= count()) {
            throw new IndexOutOfBoundsException("piece " + piece + " of " + count());
        }
        RunInfo info = source.info();
        long first = (long) piece * pieceFrames;
        FrameList frames = FrameList.of(new FrameSpan(first, Math.min(info.showFrames(), first + pieceFrames)));
        FrameReader idle = idleReaders.poll();
        FrameReader reader = idle == null ? source.reader() : idle;
        EncodedBytes packed = new EncodedBytes();
        new PieceEncoder(info.pixelCount()).encode(FrameBatch.of(frames, info.frameBytes(), reader), packed);
        // A reader that has failed is not asked again.
        idleReaders.add(reader);
        return Arrays.copyOf(packed.array(), packed.length());
    }
}
