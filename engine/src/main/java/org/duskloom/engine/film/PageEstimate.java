package org.duskloom.engine.film;

import java.io.IOException;
import org.duskloom.engine.file.OutputRefusedException;
import org.duskloom.engine.frame.EncodedBytes;
import org.duskloom.engine.frame.FrameBatch;
import org.duskloom.engine.frame.FrameList;
import org.duskloom.engine.frame.FrameReader;
import org.duskloom.engine.frame.FrameSource;
import org.duskloom.engine.frame.RunInfo;
import org.duskloom.engine.text.ShortestDecimal;

/**
 * How large a page will be, from some pieces of its film. What is far too large is found out before it is written; what
 * is a little too large shows then.
 */
public final class PageEstimate {
    private static final int SAMPLES = 16;
    private static final int SAMPLE_FRAMES = 32;
    private static final int SAMPLE_BYTES = 2 << 20;

    /** Pieces that were not looked at may compress better by so much. */
    private static final double DOUBT = 1.1;

    private final RunInfo run;
    private final PageKind kind;

    private PageEstimate(RunInfo run, PageKind kind) {
        this.run = run;
        this.kind = kind;
    }

    /**
     * Refuses a film that no page can hold. One that surely fits is not looked at.
     *
     * @throws OutputRefusedException if it is too large: says how much of it fits
     * @throws IOException if a frame cannot be had
     */
    public static void requireFits(FrameSource source, FrameList frames, PageKind kind) throws IOException {
        new PageEstimate(source.info().only(frames), kind).requireFits(source);
    }

    private void requireFits(FrameSource source) throws IOException {
        long frames = run.frames().count();
        long room = kind.mostBytes() - soundBytes();
        if (room < 0) {
            throw new OutputRefusedException("a page holds at most " + kind.mostBytes() / 1_000_000
                    + " MB, and the sound alone takes more; take a part with --from and --to");
        }
        double bytesPerFrame = PageSink.bytesInPage(run.frameBytes());
        if (bytesPerFrame * frames <= room) {
            return;
        }
        bytesPerFrame = sampledBytesPerFrame(source);
        if (bytesPerFrame * frames > DOUBT * room) {
            throw refusal(run, kind.mostBytes(), (long) (room / bytesPerFrame));
        }
    }

    private long soundBytes() {
        return kind.sound()
                .map(sound -> PageSink.bytesInPage(sound.bytes().length))
                .orElse(0L);
    }

    private double sampledBytesPerFrame(FrameSource source) throws IOException {
        long frames = run.frames().count();
        int together = Math.max(1, Math.min(SAMPLE_FRAMES, SAMPLE_BYTES / run.frameBytes()));
        long bytes = 0;
        long looked = 0;
        try (FrameReader reader = source.reader()) {
            for (int i = 0; i < SAMPLES; i++) {
                long first = frames / SAMPLES * i;
                int count = (int) Math.min(together, frames - first);
                EncodedBytes packed = new EncodedBytes();
                new PieceEncoder(run.pixelCount())
                        .encode(FrameBatch.of(list(first, count), run.frameBytes(), reader), packed);
                bytes += PageSink.bytesInPage(packed.length());
                looked += count;
            }
        }
        return (double) bytes / looked;
    }

    private FrameList list(long firstPlace, int count) {
        long[] some = new long[count];
        for (int i = 0; i < count; i++) {
            some[i] = run.frames().frame(firstPlace + i);
        }
        return FrameList.of(some);
    }

    /**
     * What is said of a film that does not fit. A tenth is left for frames that compress less well than those that were
     * looked at.
     *
     * @param fitting how many frames seem to fit
     */
    static OutputRefusedException refusal(RunInfo run, long mostBytes, long fitting) {
        long frames = Math.max(0, Math.min(run.frames().count() - 1, fitting * 9 / 10));
        double seconds =
                run.rate().secondsOf(run.frames().frame(frames) - run.frames().first());
        long steps = 2 * FrameStep.frames(run.frames());
        return new OutputRefusedException("a page holds at most " + mostBytes / 1_000_000
                + " MB, and this film would take more: about " + ShortestDecimal.of(Math.floor(seconds))
                + " s of it fit; take a part with --from and --to, fewer pixels with --on, or --every " + steps);
    }
}
