package org.duskloom.engine.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.duskloom.engine.digest.Fingerprint;
import org.duskloom.engine.digest.FingerprintWriter;
import org.duskloom.engine.digest.Fingerprinted;
import org.duskloom.engine.document.Inputs;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.effect.Hits;
import org.duskloom.engine.effect.Period.Unit;
import org.duskloom.engine.map.Maps;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.time.Beats;
import org.duskloom.engine.time.ExactTime;
import org.duskloom.engine.time.FrameRate;
import org.duskloom.engine.time.Pulse;
import org.duskloom.engine.time.Tempo;
import org.duskloom.engine.timeline.Timeline;
import org.duskloom.engine.timeline.TimelineReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** At 120 beats a minute and 40 frames a second a beat has 20 frames, a bar of four 80; beat 0 is on frame 40. */
class MusicHitsTest {
    private static final FrameRate RATE = FrameRate.of(40);
    private static final FrameBeats MUSIC =
            new FrameBeats(Beats.steady(new Tempo(new ExactTime(1, 2)), ExactTime.ofSeconds(1), 4), RATE);
    private static final Hits BEATS = new PulseHits(MUSIC, Pulse.BEAT);
    private static final Hits BARS = new PulseHits(MUSIC, Pulse.BAR);

    private final Problems problems = new Problems();

    /** The beats go on before the first with numbers below 0. */
    @ParameterizedTest
    @CsvSource({
        "40, 0, 0",
        "50, 0, 0.5",
        "59, 0, 0.95",
        "60, 1, 0",
        "35, -1, 0.75",
        "20, -1, 0",
        "0, -2, 0",
        "1645, 80, 0.25"
    })
    void beatsFollowEachOtherForEver(long frame, long number, double share) {
        assertThat(BEATS.lastAt(frame)).isEqualTo(number);
        assertThat(BEATS.shareToNext(frame)).isCloseTo(share, within(1e-12));
        assertThat(BEATS.since(frame, Unit.BEATS)).isCloseTo(share, within(1e-12));
        assertThat(BEATS.since(frame, Unit.SECONDS)).isCloseTo(share / 2, within(1e-12));
        assertThat(BEATS.since(frame, Unit.BARS)).isCloseTo(share / 4, within(1e-12));
        assertThat(BEATS.isEndless() && BEATS.hearsBeats()).isTrue();
    }

    @ParameterizedTest
    @CsvSource({"40, 0, 0", "60, 0, 0.25", "100, 0, 0.75", "119, 0, 0.9875", "120, 1, 0", "0, -1, 0.5"})
    void barsHaveFourBeats(long frame, long number, double share) {
        assertThat(BARS.lastAt(frame)).isEqualTo(number);
        assertThat(BARS.shareToNext(frame)).isCloseTo(share, within(1e-12));
        assertThat(BARS.since(frame, Unit.BARS)).isCloseTo(share, within(1e-12));
        assertThat(BARS.since(frame, Unit.BEATS)).isCloseTo(4 * share, within(1e-12));
        assertThat(BARS.since(frame, Unit.SECONDS)).isCloseTo(2 * share, within(1e-12));
    }

    /** What is at the very instant is not before it. */
    @ParameterizedTest
    @CsvSource({"1, -1, -1", "1.001, 0, 0", "1.5, 0, 0", "1.501, 1, 0", "3, 3, 0", "3.001, 4, 1"})
    void whatWasBeforeAnInstant(double second, long beat, long bar) {
        assertThat(BEATS.lastBefore(second)).isEqualTo(beat);
        assertThat(BARS.lastBefore(second)).isEqualTo(bar);
    }

    /** 1 on every beat, and straight down to the next. */
    @ParameterizedTest
    @CsvSource({"1, 1", "1.25, 0.5", "1.4, 0.2", "1.5, 1", "0.75, 0.5", "0, 1"})
    void aCurveFallsFromBeatToBeat(double second, double level) {
        assertThat(new BeatCurve(MUSIC).at(second)).isCloseTo(level, within(1e-9));
        assertThat(new BeatCurve(MUSIC).hearsBeats()).isTrue();
    }

    private static Hits markers(double... seconds) {
        List<ExactTime> instants = Arrays.stream(seconds)
                .mapToObj(second -> ExactTime.ofMilliseconds(Math.round(1000 * second)))
                .toList();
        return new MarkerHits(instants, RATE, Optional.of(MUSIC));
    }

    /** Markers at 1, 2 and 4 s: before the first there is none, behind the last no next one. */
    @ParameterizedTest
    @CsvSource({
        "40, 0, 0, 0",
        "60, 0, 0.5, 0.5",
        "80, 1, 0, 0",
        "120, 1, 0.5, 1",
        "160, 2, 0, 0",
        "240, 2, 0, 2",
        "400000, 2, 0, 9996"
    })
    void markersComeAndGo(long frame, long number, double share, double since) {
        Hits hits = markers(1, 2, 4);
        assertThat(hits.lastAt(frame)).isEqualTo(number);
        assertThat(hits.shareToNext(frame)).isCloseTo(share, within(1e-12));
        assertThat(hits.since(frame, Unit.SECONDS)).isCloseTo(since, within(1e-9));
        assertThat(hits.since(frame, Unit.BEATS)).isCloseTo(2 * since, within(1e-9));
        assertThat(hits.since(frame, Unit.BARS)).isCloseTo(since / 2, within(1e-9));
    }

    @Test
    void beforeTheFirstMarkerNothingHasHit() {
        Hits hits = markers(1, 2);
        assertThat(hits.lastAt(39)).isEqualTo(Hits.NEVER);
        assertThat(hits.since(39, Unit.SECONDS)).isZero();
        assertThat(hits.shareToNext(39)).isZero();
        assertThat(hits.lastBefore(1)).isEqualTo(Hits.NEVER);
        assertThat(hits.lastBefore(1.01)).isZero();
        assertThat(hits.lastBefore(99)).isEqualTo(1);
        assertThat(hits.isEndless()).isFalse();
        assertThat(hits.hearsBeats()).as("a marker has a time of its own").isFalse();
    }

    private static Fingerprint print(Fingerprinted value) {
        return new FingerprintWriter("test").value(value).finish();
    }

    @Test
    void whatHitsIsKnownByWhen() {
        assertThat(print(markers(1, 2))).isEqualTo(print(markers(1, 2))).isNotEqualTo(print(markers(1, 2.001)));
        assertThat(print(markers(1))).isNotEqualTo(print(markers(1, 2)));
        assertThat(print(BEATS)).isNotEqualTo(print(BARS));
        FrameBeats faster =
                new FrameBeats(Beats.steady(new Tempo(new ExactTime(1, 3)), ExactTime.ofSeconds(1), 4), RATE);
        assertThat(print(new BeatCurve(MUSIC))).isNotEqualTo(print(new BeatCurve(faster)));
    }

    private Optional<Hits> read(String name, Optional<FrameBeats> beats) {
        String json =
                "{\"duskloom\": \"timeline/1\", \"map\": \"map.csv\", \"length\": \"9s\", \"rate\": 40, \"layers\": [],"
                        + " \"markers\": {\"bell\": \"1s\", \"bell-2\": \"3s\", \"verse\": \"2s\", \"verse.end\": \"5s\"}}";
        Timeline timeline = TimelineReader.read(Inputs.json(json), problems).orElseThrow();
        TextNode written = new TextNode(new Location("show.json", 3, 7), name);
        return new HitsReader(timeline, beats, problems).read(written, "\"on\"");
    }

    /** A pattern means all markers of that form, but their ends only if it says so. */
    @ParameterizedTest
    @CsvSource({"bell, 1", "bell*, 2", "*, 3", "verse, 1", "*.end, 1", "verse.end, 1"})
    void markersAreNamed(String name, int count) {
        Hits hits = read(name, Optional.empty()).orElseThrow();
        assertThat(hits.lastAt(8 * 40)).isEqualTo(count - 1);
        assertThat(problems.errorCount()).isZero();
    }

    /** Two markers at one instant hit once. */
    @Test
    void markersAreInOrderOfTime() {
        Hits hits = read("*", Optional.empty()).orElseThrow();
        assertThat(List.of(hits.lastAt(40), hits.lastAt(80), hits.lastAt(120))).containsExactly(0L, 1L, 2L);
        assertThat(hits.shareToNext(60)).isEqualTo(0.5);
    }

    @Test
    void beatsAndBarsAreWords() {
        assertThat(read("beat", Optional.of(MUSIC))).contains(BEATS);
        assertThat(read("bar", Optional.of(MUSIC))).contains(BARS);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            bel   | "on" is "bel", and there is no marker of that name; did you mean "bell"?
            beat  | "on" is "beat", but it is not known where the beats lie
            bar   | "on" is "bar", but it is not known where the beats lie
            drum* | "on" is "drum*", and there is no marker of that name; allowed: bar, beat, bell, bell-2, verse, verse.end
            """)
    void whatThereIsNotIsTold(String name, String message) {
        assertThat(read(name, Optional.empty())).isEmpty();
        assertThat(Inputs.shown(problems)).singleElement().asString().startsWith("show.json:3:7: error: " + message);
    }

    @Test
    void barsMustBeKnown() {
        FrameBeats noBars =
                new FrameBeats(Beats.at(List.of(ExactTime.ofSeconds(1), ExactTime.ofSeconds(2)), List.of()), RATE);
        assertThat(read("bar", Optional.of(noBars))).isEmpty();
        assertThat(Inputs.shown(problems)).singleElement().asString().contains("it is not known which beats start one");
    }

    private static List<String> following(String fields, String value) {
        return TestShow.of(
                        Maps.map("prop,pixel,x,y\na,1,0,0\n"),
                        fields
                                + "\"layers\": [{\"cues\": [\n{\"on\": \"a\", \"effect\": \"probe\", \"with\": {\"size\": "
                                + value + "}}]}]")
                .with(new Probe())
                .problems();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            {"follow": "beat", "from": 0.1, "to": 1}                     | is "beat", but the timeline has no "beats"
            {"follow": "low", "from": 0.1, "to": 1}                      | is "low", but the timeline has no "sound"
            {"follow": "loww", "from": 0.1, "to": 1}                     | did you mean "low"?
            {"follow": "beat", "from": 0.1}                              | lacks the field "to"
            {"follow": "beat", "from": 0.1, "to": 7}                     | 7
            """)
    void whatCannotBeFollowedIsTold(String value, String message) {
        assertThat(following("", value)).anySatisfy(line -> assertThat(line).contains(message));
    }

    /** A beat has no level to be smoothed; each field that says so is told. */
    @Test
    void aBeatIsNotSmoothed() {
        String beats = "\"beats\": {\"tempo\": 120}, ";
        assertThat(following(beats, "{\"follow\": \"beat\", \"from\": 0.1, \"to\": 1}"))
                .isEmpty();
        assertThat(following(
                        beats, "{\"follow\": \"beat\", \"from\": 0.1, \"to\": 1, \"attack\": \"1s\", \"floor\": 0.1}"))
                .hasSize(2)
                .allSatisfy(line -> assertThat(line).contains("which has no level to smooth"));
    }
}
