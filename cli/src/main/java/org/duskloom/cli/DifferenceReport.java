package org.duskloom.cli;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.duskloom.engine.compare.Comparison;
import org.duskloom.engine.compare.Differences;
import org.duskloom.engine.compare.PropDifference;
import org.duskloom.engine.document.JsonText;
import org.duskloom.engine.frame.RunInfo;
import org.duskloom.engine.preview.TimeLabel;
import org.duskloom.engine.text.Counted;
import org.duskloom.engine.text.Quoted;
import org.duskloom.engine.time.FrameSpan;

/**
 * In what two renderings differ, in words and as JSON.
 *
 * @param first what the first is called
 * @param second what the second is called
 * @param run the first rendering
 * @param comparison what was compared
 * @param found the differences
 */
record DifferenceReport(String first, String second, RunInfo run, Comparison comparison, Differences found) {
    private static final int WIDTH = 120;
    private static final int SPANS_TOLD = 6;

    boolean isSame() {
        return comparison.contrasts().isEmpty() && found.frames() == 0;
    }

    /** For people, each line ended. */
    String text() {
        StringBuilder text = new StringBuilder();
        String both = Quoted.plain(first) + " and " + Quoted.plain(second);
        if (isSame()) {
            line(
                    text,
                    both + " are the same: " + Counted.of(comparison.frames().count(), "frame") + ", "
                            + Counted.of(comparison.pixelCount(), "pixel"));
            return text.toString();
        }
        line(text, both + " differ");
        for (Comparison.Contrast contrast : comparison.contrasts()) {
            line(text, Quoted.plain(contrast.what()) + ": " + contrast.first() + ", and " + contrast.second());
        }
        if (comparison.frames().isEmpty()) {
            line(text, "no frames were compared: " + reason());
        } else if (found.frames() == 0) {
            line(text, "the frames that were compared are the same: " + comparison.frames());
        } else {
            appendFrames(text);
        }
        return text.toString();
    }

    private String reason() {
        boolean ofRate = comparison.contrasts().stream()
                .anyMatch(contrast -> contrast.what().equals("rate"));
        if (ofRate) {
            return "at another rate the same number is another time";
        }
        return comparison.props().isEmpty() ? "there is no prop that both have" : "there is no frame that both have";
    }

    private void appendFrames(StringBuilder text) {
        line(text, found.frames() + " of " + Counted.of(comparison.frames().count(), "frame") + " differ: " + spans());
        found.worst().ifPresent(prop -> {
            PropDifference.Largest most = prop.largest();
            line(
                    text,
                    "the most: " + most.codes() + " of 255, " + moment(most.frame()) + ", " + Quoted.plain(prop.name())
                            + " pixel " + most.pixel() + ": " + color(most.first()) + " and "
                            + color(most.second()));
        });
        text.append(System.lineSeparator());
        TextTable table = new TextTable(WIDTH, 0);
        table.row("prop", "frames", "pixels", "from", "to", "at most");
        for (PropDifference prop : found.props()) {
            table.row(
                    Quoted.plain(prop.name()),
                    Long.toString(prop.frames()),
                    Integer.toString(prop.pixels()),
                    moment(prop.firstFrame()),
                    moment(prop.lastFrame()),
                    Integer.toString(prop.largest().codes()));
        }
        text.append(table.text());
    }

    private String spans() {
        List<FrameSpan> spans = found.spans();
        String told = spans.stream()
                .limit(SPANS_TOLD)
                .map(span -> span + " (" + time(span.firstFrame())
                        + (span.count() == 1 ? ")" : " to " + time(span.endFrameExclusive() - 1) + ")"))
                .collect(Collectors.joining(", "));
        return spans.size() > SPANS_TOLD || found.hasMoreSpans()
                ? told + " and " + (found.hasMoreSpans() ? "many" : spans.size() - SPANS_TOLD) + " more"
                : told;
    }

    private String moment(long frame) {
        return "frame " + frame + " (" + time(frame) + ")";
    }

    private String time(long frame) {
        return TimeLabel.of(run.rate().secondsOf(frame));
    }

    private static String color(int rgb) {
        return String.format(Locale.ROOT, "#%06x", rgb);
    }

    private static void line(StringBuilder text, String line) {
        text.append(line).append(System.lineSeparator());
    }

    /** For programs. */
    String json() {
        JsonText text = new JsonText();
        text.field("first", first);
        text.field("second", second);
        text.field("same", new JsonText.Inline(Boolean.toString(isSame())));
        text.field(
                "contrasts",
                comparison.contrasts().stream()
                        .map(contrast -> JsonText.object(
                                "what", contrast.what(), "first", contrast.first(), "second", contrast.second()))
                        .toList());
        text.field(
                "rate",
                JsonText.object("num", run.rate().numerator(), "den", run.rate().denominator()));
        text.field("compared", span(comparison.frames()));
        text.field("frames", found.frames());
        text.field("spans", found.spans().stream().map(DifferenceReport::span).toList());
        text.field("moreSpans", new JsonText.Inline(Boolean.toString(found.hasMoreSpans())));
        Optional<PropDifference> worst = found.worst();
        text.field("largest", worst.map(prop -> prop.largest().codes()).orElse(0));
        text.field("props", found.props().stream().map(DifferenceReport::prop).toList());
        return text.end();
    }

    private static JsonText.Inline span(FrameSpan span) {
        return JsonText.object("firstFrame", span.firstFrame(), "frames", span.count());
    }

    private static JsonText.Inline prop(PropDifference prop) {
        PropDifference.Largest largest = prop.largest();
        return JsonText.object(
                "name",
                prop.name(),
                "frames",
                prop.frames(),
                "pixels",
                prop.pixels(),
                "firstFrame",
                prop.firstFrame(),
                "lastFrame",
                prop.lastFrame(),
                "largest",
                JsonText.object(
                        "codes",
                        largest.codes(),
                        "frame",
                        largest.frame(),
                        "pixel",
                        largest.pixel(),
                        "first",
                        color(largest.first()),
                        "second",
                        color(largest.second())));
    }
}
