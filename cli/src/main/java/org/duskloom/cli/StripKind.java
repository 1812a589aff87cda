package org.duskloom.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.duskloom.engine.format.StreamKind;
import org.duskloom.engine.frame.FrameList;
import org.duskloom.engine.preview.ContactStripKind;
import org.duskloom.engine.preview.PreviewScene;
import org.duskloom.engine.preview.ShownFrames;
import org.duskloom.engine.preview.StripOptions;
import org.duskloom.engine.preview.TimeStripKind;
import org.duskloom.engine.time.FrameRate;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** The pictures that can be drawn of a part of a show. */
enum StripKind {
    /** Moments side by side. */
    CONTACT {
        @Override
        long[][] frames(StripOptions options, PreviewScene scene, FrameList span, FrameRate rate, Integer count) {
            return ShownFrames.evenly(span, rate, count == null ? ShownFrames.USUAL_PANELS : count, scene.pixelCount());
        }

        @Override
        StreamKind picture(StripOptions options, long[][] frames) {
            return ContactStripKind.of(options, frames);
        }
    },
    /** A row for each pixel. */
    TIME {
        @Override
        long[][] frames(StripOptions options, PreviewScene scene, FrameList span, FrameRate rate, Integer count) {
            int most = count == null ? ShownFrames.USUAL_COLUMNS : count;
            return ShownFrames.eachAlone(new TimeStripKind(options.pixelSize(), most).columns(scene, span));
        }

        @Override
        StreamKind picture(StripOptions options, long[][] frames) {
            return new TimeStripKind(options.pixelSize(), frames.length);
        }
    };

    /**
     * For each panel or column the frames to render, rising, of which it shows one; {@code count} may be null for as
     * many as is usual.
     */
    abstract long[][] frames(StripOptions options, PreviewScene scene, FrameList span, FrameRate rate, Integer count);

    /** The picture of them. */
    abstract StreamKind picture(StripOptions options, long[][] frames);

    /** What a shell completes. */
    static final class Words extends ArrayList<String> {
        private static final long serialVersionUID = 1L;

        Words() {
            super(List.of("contact", "time"));
        }
    }

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
