package org.duskloom.engine.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.BitSet;
import java.util.List;
import org.duskloom.engine.color.BlendMode;
import org.duskloom.engine.effect.NumberTrack;
import org.duskloom.engine.time.ExactTime;
import org.duskloom.engine.time.FrameRate;
import org.duskloom.engine.time.FrameSpan;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which cues of a scene are kept together: those that meet, if something acts on the whole. */
class LayerDraftTest {
    private static final List<PlannedShare> HALF = List.of(new PlannedShare(
            NumberTrack.constant(0.5), PlannedFade.NONE, new FrameClock(FrameRate.of(40), ExactTime.ZERO), 1));

    private static CueDraft cue(long from, long to, int pixel, BlendMode blend, boolean overlapping) {
        BitSet pixels = new BitSet();
        pixels.set(pixel);
        return new CueDraft(
                new PlannedCue.Body(
                        null,
                        null,
                        new PlannedCue.CueSpan(new FrameSpan(from, to), 1),
                        NumberTrack.constant(1),
                        PlannedFade.NONE,
                        blend,
                        List.of(),
                        new PlannedCue.CanvasSet(List.of(), List.of(), overlapping)),
                pixels);
    }

    private static CueDraft cue(long from, long to) {
        return cue(from, to, 0, BlendMode.NORMAL, false);
    }

    private static LayerDraft draft(CueDraft... cues) {
        LayerDraft draft = new LayerDraft();
        for (CueDraft cue : cues) {
            draft.add(cue);
        }
        return draft;
    }

    private static List<Integer> groups(LayerDraft draft) {
        return draft.planned().stream().map(PlannedCue::groupCount).toList();
    }

    /** Half of it over half of itself is more than half. */
    @ParameterizedTest
    @CsvSource({"true, 1", "false, 0"})
    void aCueIsAGroupWhereItLiesOverItself(boolean overlapping, int groups) {
        LayerDraft layer = new LayerDraft();
        layer.add(draft(cue(0, 40, 0, BlendMode.NORMAL, overlapping)), BlendMode.NORMAL, false, HALF);
        assertThat(groups(layer)).containsExactly(groups);
    }

    /** The first and the last meet, whatever stands between them. */
    @Test
    void cuesMayStandInAnyOrderOfTime() {
        LayerDraft layer = new LayerDraft();
        layer.add(draft(cue(80, 120), cue(160, 200), cue(100, 140)), BlendMode.NORMAL, false, HALF);
        assertThat(groups(layer)).containsExactly(1, 1, 1);
        LayerDraft apart = new LayerDraft();
        apart.add(draft(cue(80, 120), cue(160, 200), cue(120, 160)), BlendMode.NORMAL, false, HALF);
        assertThat(groups(apart)).containsExactly(0, 0, 0);
    }

    /**
     * Nothing acts on the whole, but its second cue is mixed with what is under it: that is the first alone, whether
     * the whole is a group or meets nothing. A cue from 0 to 1 s lies under it.
     */
    @ParameterizedTest
    @CsvSource({"40, 0, 0", "0, 1, 0", "20, 1, 0", "39, 0, 1", "0, 0, 1"})
    void aWholeThatMeetsNothingIsTakenApart(long from, int pixel, int groups) {
        LayerDraft layer = draft(cue(0, 40));
        layer.add(
                draft(
                        cue(from, from + 40, pixel, BlendMode.NORMAL, false),
                        cue(from, from + 40, pixel, BlendMode.SCREEN, false)),
                BlendMode.NORMAL,
                false,
                List.of());
        assertThat(groups(layer)).containsExactly(0, groups, groups);
        assertThat(layer.planned())
                .extracting(PlannedCue::blend)
                .containsExactly(BlendMode.NORMAL, BlendMode.NORMAL, BlendMode.SCREEN);
    }
}
