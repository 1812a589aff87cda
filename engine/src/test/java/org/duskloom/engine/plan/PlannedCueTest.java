package org.duskloom.engine.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.BitSet;
import java.util.List;
import java.util.stream.IntStream;
import org.duskloom.engine.color.BlendMode;
import org.duskloom.engine.digest.Fingerprint;
import org.duskloom.engine.digest.FingerprintWriter;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.NumberTrack;
import org.duskloom.engine.group.Member;
import org.duskloom.engine.map.Maps;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.random.StableHash;
import org.duskloom.engine.time.Easing;
import org.duskloom.engine.time.FrameSpan;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a planned cue says of itself. */
class PlannedCueTest {
    private static final PixelMap MAP =
            Maps.map("prop,pixel,x,y,part\nfence,1,0,0,\npond,1,1,0,rim\npond,2,2,0,\ngate,1,3,0,\n");

    private static PlannedCue cue(String fields) {
        return TestShow.withCue(MAP, "{\"name\": \"glow\", \"effect\": \"solid\", " + fields + "}")
                .plan()
                .layers()
                .get(0)
                .cues()
                .get(0);
    }

    /** Of the stage, which has four. */
    private static int[] pixels(PlannedCue cue) {
        return IntStream.range(0, 4)
                .filter(pixel -> cue.isOnOneOf(BitSet.valueOf(new long[] {1L << pixel})))
                .toArray();
    }

    @Test
    void saysWhatItIsSeenOn() {
        PlannedCue cue = cue("\"on\": [\"gate\", \"pond\"]");
        assertThat(cue.cue().name()).isEqualTo("glow");
        assertThat(cue.members()).extracting(Member::name).containsExactly("gate", "pond");
        assertThat(pixels(cue)).containsExactly(1, 2, 3);
        assertThat(cue.canvas(0).pixelCount()).isEqualTo(3);
    }

    @Test
    void looksAtAllItsCanvases() {
        PlannedCue cue = cue("\"on\": [\"gate\", \"fence\"], \"spread\": \"each\", \"stagger\": \"1s\"");
        assertThat(cue.canvasCount()).isEqualTo(2);
        assertThat(pixels(cue)).containsExactly(0, 3);
    }

    /** A pixel of two members is lit by both, one over the other. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            ["pond", "pond/rim"] | true  | 2
            ["pond/rim", "pond"] | true  | 2
            ["pond", "gate"]     | false | 1
            """)
    void liesOverItselfWhereMembersShareAPixel(String on, boolean overlapping, int canvases) {
        PlannedCue cue = cue("\"on\": " + on + ", \"spread\": \"each\"");
        assertThat(cue.isOverlapping()).isEqualTo(overlapping);
        assertThat(cue.canvasCount()).isEqualTo(canvases);
    }

    /** Pixels draw by their number within their prop, which starts at 1, so that a prop may be wired elsewhere. */
    @Test
    void pixelsDrawByTheirNumberInTheirProp() {
        Probe probe = new Probe();
        TestShow.of(
                        MAP,
                        "\"seed\": 7, \"layers\": [{\"cues\": [{\"name\": \"glow\", \"on\": [\"pond\", \"gate\"],"
                                + " \"effect\": \"probe\"}]}]")
                .with(probe)
                .plan();
        Canvas canvas = probe.canvases.get(0);
        long pond = StableHash.propKey(7, "cue glow", "pond");
        long gate = StableHash.propKey(7, "cue glow", "gate");
        assertThat(canvas.pixelKey())
                .containsExactly(
                        StableHash.pixelKey(pond, 1), StableHash.pixelKey(pond, 2), StableHash.pixelKey(gate, 1));
    }

    /** The course of a fade matters as soon as the cue comes or goes, and not before. */
    @ParameterizedTest
    @CsvSource({"0, 0, true", "1, 0, false", "0, 1, false", "1, 1, false"})
    void isKnownByTheCourseOfItsFade(double in, double out, boolean same) throws Exception {
        Fingerprint straight = print(new PlannedFade(in, out, Easing.LINEAR));
        assertThat(straight.equals(print(new PlannedFade(in, out, Easing.parse("ease")))))
                .isEqualTo(same);
        assertThat(print(new PlannedFade(in, out + 2, Easing.LINEAR))).isNotEqualTo(straight);
        assertThat(print(new PlannedFade(in + 2, out, Easing.LINEAR))).isNotEqualTo(straight);
    }

    private static Fingerprint print(PlannedFade fade) {
        Fingerprint paint = new FingerprintWriter("test").finish();
        PlannedCue.CanvasSet nowhere = new PlannedCue.CanvasSet(List.of(), List.of(), false);
        PlannedCue.Body body = new PlannedCue.Body(
                null,
                () -> paint,
                new PlannedCue.CueSpan(new FrameSpan(0, 40), 1),
                NumberTrack.constant(1),
                fade,
                BlendMode.NORMAL,
                List.of(),
                nowhere);
        return new PlannedCue(body, List.of()).fingerprint();
    }
}
