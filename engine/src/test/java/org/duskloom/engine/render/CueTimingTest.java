package org.duskloom.engine.render;

import static org.assertj.core.api.Assertions.assertThat;

import org.duskloom.engine.map.Maps;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.plan.Plan;
import org.duskloom.engine.plan.TestShow;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** When cues are seen, and how much of them. */
class CueTimingTest {
    private static final PixelMap THREE = Maps.map("prop,pixel,x,y\na,1,0,0\nb,1,1,0\nc,1,2,0\n");

    /** Seen from frame ceil(at * rate) on, up to, not including, ceil(end * rate), worked out on paper. */
    @ParameterizedTest
    @CsvSource({
        "40, 1s, 2s, 40, 80", "40, 1.001s, 1.999s, 41, 80", "60, 16.666667ms, 33.333333ms, 2, 2",
        "60, 16.666666ms, 33.333334ms, 1, 3", "30000/1001, 1.001s, 2.002s, 30, 60", "30000/1001, 1s, 2s, 30, 60",
        "30000/1001, 30f, 31f, 30, 31"
    })
    void isSeenFromItsStartUpToItsEnd(String rate, String at, String end, long first, long endExclusive) {
        Plan plan = new TestShow(THREE, """
                {"duskloom": "timeline/1", "map": "m.csv", "rate": "%s", "length": "3s", "layers": [{"cues": [
                 {"on": "a", "effect": "solid", "at": "%s", "until": "%s"}]}]}""".formatted(rate, at, end), null)
                .withPlainEffects()
                .plan();
        for (long frame = 0; frame < plan.frameCount(); frame++) {
            boolean seen = frame >= first && frame < endExclusive;
            assertThat(Frames.codes(Frames.frame(plan, frame), 0)[0])
                    .as("frame %s", frame)
                    .isEqualTo(seen ? 255 : 0);
        }
        assertThat(Frames.frame(plan, plan.frameCount())).containsOnly(0);
        assertThat(Frames.frame(plan, -1)).containsOnly(0);
    }

    /** Linear light comes and goes along the curve: values of W3C CSS Easing Functions Level 1 at 0.1 to 0.9. */
    @ParameterizedTest
    @CsvSource({
        "linear, 0.1, 0.5, 0.9",
        "ease, 0.094796, 0.802403, 0.994316",
        "ease-in, 0.017027, 0.315357, 0.839428",
        "ease-out, 0.160572, 0.684643, 0.982973",
        "ease-in-out, 0.019722, 0.5, 0.980278",
        "'steps(4, jump-start)', 0.25, 0.75, 1",
        "'cubic-bezier(0.5, 1, 0.5, 0)', 0.185378, 0.5, 0.814622"
    })
    void fadesAlongTheCurve(String easing, double early, double half, double late) {
        Plan plan = plan("{\"on\": \"a\", \"effect\": \"solid\", \"for\": \"3s\","
                + " \"fade\": {\"in\": \"1s\", \"out\": \"1s\", \"easing\": \"" + easing + "\"}}");
        assertThat(red(plan, 4)).isEqualTo(Frames.code(early));
        assertThat(red(plan, 20)).isEqualTo(Frames.code(half));
        assertThat(red(plan, 36)).isEqualTo(Frames.code(late));
        assertThat(red(plan, 60)).isEqualTo(255);
        assertThat(red(plan, 84)).isEqualTo(Frames.code(late));
        assertThat(red(plan, 100)).isEqualTo(Frames.code(half));
        assertThat(red(plan, 116)).isEqualTo(Frames.code(early));
    }

    @Test
    void movesOpacityFromKeyToKey() {
        Plan plan = plan("{\"on\": \"a\", \"effect\": \"solid\", \"at\": \"1s\","
                + " \"opacity\": {\"keys\": [[\"0s\", 0.2], [\"1s\", 1, \"ease-in\"], [\"3s\", 0.5]]}}");
        assertThat(red(plan, 40)).isEqualTo(Frames.code(0.2));
        assertThat(red(plan, 60)).isEqualTo(Frames.code(0.2 + 0.8 * 0.315357));
        assertThat(red(plan, 80)).isEqualTo(255);
        assertThat(red(plan, 120)).isEqualTo(Frames.code(0.75));
        assertThat(red(plan, 200)).isEqualTo(Frames.code(0.5));
    }

    /** The clock of a cue starts with it: red is the fraction of the second, green the share of the cue. */
    @Test
    void runsTheClockFromTheStartOfTheCue() {
        Plan plan = plan("{\"on\": \"a\", \"effect\": \"clock\", \"at\": \"2s\", \"for\": \"4s\"}");
        assertThat(Frames.codes(Frames.frame(plan, 80), 0)).isEqualTo(Frames.codesOf(0, 0, 1));
        assertThat(Frames.codes(Frames.frame(plan, 130), 0)).isEqualTo(Frames.codesOf(0.25, 0.3125, 1));
    }

    @Test
    void keepsLateMembersDarkUntilTheyStart() {
        Plan plan = plan("{\"on\": [\"c\", \"a\", \"b\"], \"effect\": \"clock\", \"for\": \"4s\", \"spread\": \"each\","
                + " \"stagger\": \"500ms\"}");
        byte[] early = Frames.frame(plan, 30);
        assertThat(Frames.codes(early, 2)).isEqualTo(Frames.codesOf(0.75, 0.1875, 1));
        assertThat(Frames.codes(early, 0)).isEqualTo(Frames.codesOf(0.25, 0.0625, 1));
        assertThat(Frames.codes(early, 1)).containsOnly(0);
        // All end with the cue.
        assertThat(Frames.frame(plan, 160)).containsOnly(0);
    }

    /**
     * Members begin 500 ms apart; each comes and goes, and has its keys, by its own clock. The cue ends for all after 4
     * s: of the going of member k, which takes a second, k half seconds are cut.
     */
    @Test
    void fadesLateMembersByTheirOwnClocks() {
        Plan plan = plan("{\"on\": [\"a\", \"b\", \"c\"], \"effect\": \"solid\", \"for\": \"4s\", \"spread\": \"each\","
                + " \"stagger\": \"500ms\", \"fade\": {\"in\": \"1s\", \"out\": \"1s\"}}");
        for (int member = 0; member < 3; member++) {
            for (int frame = 0; frame < 160; frame++) {
                double seconds = frame / 40.0 - member * 0.5;
                double share = Math.max(0, Math.min(1, Math.min(seconds, 4 - seconds)));
                assertThat(Frames.codes(Frames.frame(plan, frame), member)[0])
                        .as("member %s, frame %s", member, frame)
                        .isEqualTo(Frames.code(share));
            }
        }
        assertThat(Frames.codes(Frames.frame(plan, 159), 2)[0]).isEqualTo(255);
        assertThat(Frames.frame(plan, 160)).containsOnly(0);
    }

    @Test
    void movesTheOpacityOfLateMembersByTheirOwnClocks() {
        Plan plan = plan("{\"on\": [\"a\", \"b\"], \"effect\": \"solid\", \"spread\": \"each\", \"stagger\": \"1s\","
                + " \"opacity\": {\"keys\": [[\"0s\", 0.2], [\"2s\", 1]]}}");
        byte[] frame = Frames.frame(plan, 60);
        assertThat(Frames.codes(frame, 0)[0]).isEqualTo(Frames.code(0.8));
        assertThat(Frames.codes(frame, 1)[0]).isEqualTo(Frames.code(0.4));
        assertThat(Frames.codes(Frames.frame(plan, 40), 1)[0]).isEqualTo(Frames.code(0.2));
        assertThat(Frames.codes(Frames.frame(plan, 39), 1)[0]).isZero();
    }

    @Test
    void playsRepeatsWithTheirOwnClocks() {
        Plan plan = plan("{\"on\": \"a\", \"effect\": \"clock\", \"for\": \"500ms\","
                + " \"repeat\": {\"count\": 3, \"every\": \"1500ms\"}}");
        for (int play = 0; play < 3; play++) {
            assertThat(Frames.codes(Frames.frame(plan, 60 * play + 10), 0)).isEqualTo(Frames.codesOf(0.25, 0.5, 1));
            assertThat(Frames.codes(Frames.frame(plan, 60 * play + 20), 0)).containsOnly(0);
        }
        assertThat(Frames.codes(Frames.frame(plan, 190), 0)).containsOnly(0);
    }

    private static int red(Plan plan, long frame) {
        return Frames.codes(Frames.frame(plan, frame), 0)[0];
    }

    private static Plan plan(String cue) {
        return TestShow.of(THREE, "\"layers\": [{\"cues\": [" + cue + "]}]").plan();
    }
}
