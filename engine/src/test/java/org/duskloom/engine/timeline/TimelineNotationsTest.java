package org.duskloom.engine.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.function.LongFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** One and the same show, written in other words: what is played, and when, is the same. */
class TimelineNotationsTest {
    /** How an instant is written; times are whole frames of 1/40 s. */
    private enum Notation {
        FRAMES(frame -> frame + "f"),
        MILLISECONDS(frame -> 25 * frame + "ms"),
        SECONDS(frame -> String.format(Locale.ROOT, "%d.%03ds", frame / 40, frame % 40 * 25)),
        CLOCK(frame -> String.format(Locale.ROOT, "%d:%02d.%03d", frame / 2400, frame / 40 % 60, frame % 40 * 25));

        private final LongFunction<String> written;

        Notation(LongFunction<String> written) {
            this.written = written;
        }

        String of(long frame) {
            return written.apply(frame);
        }
    }

    /** A cue of random times. */
    private record Span(long at, long end, long in, long out) {
        static Span random(Random random) {
            long at = random.nextLong(300);
            long length = 1 + random.nextLong(99);
            long in = random.nextLong(length + 1);
            return new Span(at, at + length, in, random.nextLong(length - in + 1));
        }

        String cue(Notation notation, String at, String end) {
            return "{\"effect\": \"wash\", \"on\": \"pond\", \"at\": \"" + at + "\", " + end + ", \"fade\": {\"in\": \""
                    + notation.of(in) + "\", \"out\": \"" + notation.of(out) + "\"}}";
        }

        String absolute(Notation notation) {
            return cue(notation, notation.of(at), "\"until\": \"" + notation.of(end) + "\"");
        }

        String byLength(Notation notation) {
            return cue(notation, notation.of(at), "\"for\": \"" + notation.of(end - at) + "\"");
        }

        /** Counted from the end of the cue before. */
        String following(Notation notation, long before) {
            String sign = at < before ? "-" : "+";
            return cue(
                    notation, sign + notation.of(Math.abs(at - before)), "\"for\": \"" + notation.of(end - at) + "\"");
        }
    }

    private static List<Span> spans(long seed) {
        Random random = new Random(seed);
        List<Span> spans = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            spans.add(Span.random(random));
        }
        return spans;
    }

    private static List<String> played(List<String> cues) {
        return Timelines.sound(Timelines.withCue(String.join(",\n", cues))).layers().get(0).cues().stream()
                .map(cue -> cue.at() + " " + cue.end() + " " + cue.seenUntil() + " " + cue.fade())
                .toList();
    }

    private static List<String> plain(List<Span> spans) {
        return played(spans.stream().map(span -> span.absolute(Notation.FRAMES)).toList());
    }

    @ParameterizedTest
    @EnumSource
    void timesMayBeWrittenInAnyUnit(Notation notation) {
        for (int seed = 0; seed < 8; seed++) {
            List<Span> spans = spans(seed);
            assertThat(played(
                            spans.stream().map(span -> span.absolute(notation)).toList()))
                    .isEqualTo(plain(spans));
            assertThat(played(
                            spans.stream().map(span -> span.byLength(notation)).toList()))
                    .isEqualTo(plain(spans));
        }
    }

    @ParameterizedTest
    @EnumSource
    void cuesMayFollowTheOneBefore(Notation notation) {
        for (int seed = 0; seed < 8; seed++) {
            List<Span> spans = spans(seed);
            List<String> cues = new ArrayList<>();
            long before = 0;
            for (Span span : spans) {
                cues.add(cues.isEmpty() ? span.absolute(notation) : span.following(notation, before));
                before = span.end();
            }
            assertThat(played(cues)).isEqualTo(plain(spans));
        }
    }

    /** A cue that is repeated is so many cues, each with its own fade. */
    @Test
    void repeatsMayBeWrittenOut() {
        Random random = new Random(9);
        for (int run = 0; run < 40; run++) {
            Span span = new Span(random.nextLong(40), 0, 0, 0);
            long length = 1 + random.nextLong(30);
            long every = length + random.nextLong(20);
            int count = 1 + random.nextInt(6);
            List<Span> plays = new ArrayList<>();
            for (int play = 0; play < count; play++) {
                long at = span.at() + play * every;
                plays.add(new Span(at, at + length, length / 3, length / 2));
            }
            String repeated = plays.get(0).byLength(Notation.FRAMES);
            String written = repeated.substring(0, repeated.length() - 1) + ", \"repeat\": {\"count\": " + count
                    + ", \"every\": \"" + every + "f\"}}";
            assertThat(played(List.of(written))).isEqualTo(plain(plays));
        }
    }

    /** Names of cues stand for where these begin and end, wherever the cues are written. */
    @Test
    void namesStandForInstants() {
        for (int seed = 0; seed < 8; seed++) {
            List<Span> spans = spans(seed);
            List<String> cues = new ArrayList<>();
            for (int i = 0; i < spans.size(); i++) {
                Span span = spans.get(i);
                Span other = spans.get((i + 5) % spans.size());
                boolean isAnchor = i < 5;
                long from = span.at() - other.end();
                String at = isAnchor
                        ? Notation.FRAMES.of(span.at())
                        : "@cue" + (i + 5) % spans.size() + ".end" + (from < 0 ? "-" : "+") + Math.abs(from) + "f";
                String cue = span.cue(Notation.FRAMES, at, "\"for\": \"" + (span.end() - span.at()) + "f\"");
                cues.add("{\"name\": \"cue" + i + "\", " + cue.substring(1));
            }
            assertThat(played(cues)).isEqualTo(plain(spans));
        }
    }
}
