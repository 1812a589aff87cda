package org.duskloom.cli;

import java.util.Locale;
import org.duskloom.engine.file.OutputRefusedException;
import org.duskloom.engine.file.StagedFile;
import org.duskloom.engine.frame.FrameSink;
import org.duskloom.engine.preview.ContactStrip;
import org.duskloom.engine.preview.PreviewScene;
import org.duskloom.engine.preview.StripOptions;
import org.duskloom.engine.preview.TimeStrip;
import org.duskloom.engine.time.FrameSpan;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** The pictures that can be drawn of a part of a show. */
enum StripKind {
    /** Moments side by side. */
    CONTACT {
        @Override
        long[] frames(PreviewScene scene, FrameSpan span, Integer count) {
            return Moments.evenly(span, count == null ? Moments.USUAL_PANELS : count);
        }

        @Override
        FrameSink sink(StagedFile file, PreviewScene scene, long[] frames, StripOptions options)
                throws OutputRefusedException {
            return new ContactStrip(file, scene, frames, options);
        }
    },
    /** A row for each pixel. */
    TIME {
        @Override
        long[] frames(PreviewScene scene, FrameSpan span, Integer count) {
            int most = count == null ? Moments.USUAL_COLUMNS : count;
            return Moments.everyNth(span, Moments.framesPerColumn(scene, span, most));
        }

        @Override
        FrameSink sink(StagedFile file, PreviewScene scene, long[] frames, StripOptions options)
                throws OutputRefusedException {
            long distance = frames.length > 1 ? frames[1] - frames[0] : 1;
            long end = frames[frames.length - 1] + 1;
            return new TimeStrip(file, scene, frames[0], end, distance, options.pixelSize());
        }
    };

    /** The frames to render, rising; {@code count} may be null for as many as is usual. */
    abstract long[] frames(PreviewScene scene, FrameSpan span, Integer count);

    /**
     * Draws them.
     *
     * @throws OutputRefusedException if the picture would be too large
     */
    abstract FrameSink sink(StagedFile file, PreviewScene scene, long[] frames, StripOptions options)
            throws OutputRefusedException;

    /** Reads {@code contact} or {@code time}. */
    static final class Converter implements ITypeConverter<StripKind> {
        Converter() {}

        @Override
        public StripKind convert(String word) {
            for (StripKind kind : values()) {
                if (kind.name().toLowerCase(Locale.ROOT).equals(word)) {
                    return kind;
                }
            }
            throw new TypeConversionException("'" + word + "' is neither contact nor time");
        }
    }
}
