package org.duskloom.engine.sound;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.duskloom.engine.document.SourceText;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.text.Quoted;
import org.duskloom.engine.time.ExactTime;

/** Reads the lines of a label track. */
final class LabelLines {
    private static final Pattern LINE_END = Pattern.compile("\r\n|\r|\n");
    /** Some editors write the decimal sign of the country. */
    private static final Pattern SECONDS = Pattern.compile("([0-9]{1,6})(?:[.,]([0-9]{1,40}))?");

    private static final int DECIMALS_KEPT = 9;
    private static final long NANOSECONDS = 1_000_000_000L;
    private static final String LINE = "write start, tab, end, tab, text: seconds with a dot, such as 12.5";

    private final SourceText source;
    private final Problems problems;
    private final List<TrackLabel> labels = new ArrayList<>();

    LabelLines(SourceText source, Problems problems) {
        this.source = source;
        this.problems = problems;
    }

    Optional<LabelTrack> read() {
        int errorsBefore = problems.errorCount();
        String text = source.text();
        var ends = LINE_END.matcher(text);
        int from = 0;
        while (from < text.length()) {
            boolean ended = ends.find(from);
            int to = ended ? ends.start() : text.length();
            line(text.substring(from, to), from);
            from = ended ? ends.end() : text.length();
        }
        return problems.errorCount() > errorsBefore ? Optional.empty() : Optional.of(new LabelTrack(labels));
    }

    private void line(String line, int offset) {
        if (line.isBlank() || line.startsWith("\\")) {
            return;
        }
        String[] cells = line.split("\t", 3);
        if (cells.length < 2) {
            error(offset, "this is no label: there is no tab in " + Quoted.of(line), LINE);
            return;
        }
        Optional<ExactTime> start = seconds(cells[0], offset, "start");
        int endOffset = offset + cells[0].length() + 1;
        Optional<ExactTime> end = seconds(cells[1], endOffset, "end");
        if (start.isEmpty() || end.isEmpty()) {
            return;
        }
        if (end.get().compareTo(start.get()) < 0) {
            error(endOffset, "the label ends at " + end.get() + ", before its start at " + start.get(), "");
        } else {
            add(start.get(), end.get(), cells.length < 3 ? "" : cells[2].strip(), offset);
        }
    }

    private void add(ExactTime start, ExactTime end, String text, int offset) {
        if (!labels.isEmpty()) {
            TrackLabel before = labels.get(labels.size() - 1);
            if (start.compareTo(before.start()) < 0) {
                error(
                        offset,
                        "the label at " + start + " stands after the one at " + before.start(),
                        "sort the lines by their start");
            }
        }
        labels.add(new TrackLabel(start, end, text, source.locationAt(offset)));
    }

    private Optional<ExactTime> seconds(String cell, int offset, String which) {
        String written = cell.strip();
        if (SECONDS.matcher(written).matches()) {
            BigDecimal value = new BigDecimal(written.replace(',', '.')).setScale(DECIMALS_KEPT, RoundingMode.HALF_UP);
            return Optional.of(new ExactTime(value.unscaledValue().longValueExact(), NANOSECONDS));
        }
        boolean negative =
                written.startsWith("-") && SECONDS.matcher(written.substring(1)).matches();
        error(
                offset,
                "the " + which + " of the label is " + Quoted.of(written),
                negative ? "a label cannot be before the start of the sound" : LINE);
        return Optional.empty();
    }

    private void error(int offset, String message, String hint) {
        problems.error(source.locationAt(offset), message, hint);
    }
}
