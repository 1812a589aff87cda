package org.duskloom.engine.sound;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import org.duskloom.engine.document.SourceText;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.time.ExactTime;

/**
 * Labels by time, as editors of sounds keep them (common practice, no standard): a line for each, {@code start TAB end
 * TAB text}, in seconds with a decimal point; an instant ends where it starts. Decimals are exact.
 *
 * @param labels by their starts, which do not fall
 */
public record LabelTrack(List<TrackLabel> labels) {
    private static final int DECIMALS_WRITTEN = 6;

    public LabelTrack {
        labels = List.copyOf(labels);
    }

    /**
     * Reads a track. Lines that are blank or start with a backslash, which carry further data of an editor, are passed
     * over.
     *
     * @param problems where an error goes for each line that is no label, or starts before the line above it
     * @return nothing if an error was added
     */
    public static Optional<LabelTrack> read(SourceText source, Problems problems) {
        return new LabelLines(source, problems).read();
    }

    /** The track as it stands in a file: microseconds, the nearest; what would break a line of the texts is a space. */
    public String text() {
        StringBuilder text = new StringBuilder();
        for (TrackLabel label : labels) {
            text.append(decimal(label.start())).append('\t').append(decimal(label.end()));
            text.append('\t').append(label.text().replaceAll("\\p{Cntrl}", " ")).append('\n');
        }
        return text.toString();
    }

    private static String decimal(ExactTime time) {
        BigDecimal scaled = new BigDecimal(BigInteger.valueOf(time.numerator()));
        return scaled.divide(BigDecimal.valueOf(time.denominator()), DECIMALS_WRITTEN, RoundingMode.HALF_UP)
                .toPlainString();
    }
}
