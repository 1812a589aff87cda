package org.duskloom.engine.film;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.duskloom.engine.file.IfExists;
import org.duskloom.engine.file.StagedFile;
import org.duskloom.engine.format.StreamKind;
import org.duskloom.engine.frame.FrameList;
import org.duskloom.engine.frame.FramePixels;
import org.duskloom.engine.frame.FrameReader;
import org.duskloom.engine.frame.FrameRun;
import org.duskloom.engine.frame.FrameSink;
import org.duskloom.engine.frame.FrameSource;
import org.duskloom.engine.frame.Progress;
import org.duskloom.engine.frame.PropSpan;
import org.duskloom.engine.frame.RunInfo;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.time.FrameRate;

/** A small show of twelve pixels on a ring round one, whose colours are drawn by lot, some of them dark. */
final class Films {
    static final int PIXELS = 13;

    private Films() {}

    static FrameSource show(FrameRate rate, long frames) {
        double[] x = new double[PIXELS];
        double[] y = new double[PIXELS];
        for (int i = 1; i < PIXELS; i++) {
            x[i] = 100 * StrictMath.cos(i * Math.PI / 6);
            y[i] = 60 * StrictMath.sin(i * Math.PI / 6);
        }
        FramePixels pixels = new FramePixels(
                PIXELS,
                List.of(new PropSpan("pond", 0, 1), new PropSpan("arch", 1, PIXELS - 1)),
                Optional.of(new Positions(x, y, new double[PIXELS])));
        RunInfo info = RunInfo.ofWhole("Longest day", rate, frames, pixels);
        return new FrameSource() {
            @Override
            public RunInfo info() {
                return info;
            }

            @Override
            public FrameReader reader() {
                return Films::fill;
            }
        };
    }

    /** The same frame whoever asks. */
    static void fill(long frame, byte[] rgb, int offset) {
        Random random = new Random(frame / 2);
        for (int i = 0; i < 3 * PIXELS; i++) {
            rgb[offset + i] = (byte) (random.nextInt(4) == 0 ? 0 : random.nextInt(256));
        }
    }

    static byte[] frame(long frame) {
        byte[] rgb = new byte[3 * PIXELS];
        fill(frame, rgb, 0);
        return rgb;
    }

    /** Makes a film of some frames into a file of a folder. */
    static Path made(StreamKind kind, FrameSource source, FrameList frames, Path folder)
            throws IOException, InterruptedException {
        return made(kind, source, frames, 3, folder);
    }

    static Path made(StreamKind kind, FrameSource source, FrameList frames, int threads, Path folder)
            throws IOException, InterruptedException {
        Path target = folder.resolve(kind.file());
        Files.deleteIfExists(target);
        try (FrameSink sink = kind.into(StagedFile.open(target, IfExists.REFUSE))) {
            new FrameRun(source, frames, threads).into(sink, Progress.SILENT);
        }
        return target;
    }
}
