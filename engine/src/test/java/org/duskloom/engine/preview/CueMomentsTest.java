package org.duskloom.engine.preview;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.duskloom.engine.frame.FrameList;
import org.duskloom.engine.time.FrameSpan;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CueMomentsTest {
    private static final FrameList ALL = FrameList.of(new FrameSpan(0, 1000));

    /** 1 + 0.618034 of the 98 frames between the first and the last is frame 61 (Euclid, Elements VI.30). */
    @Test
    void dividesACueByTheGoldenSection() {
        assertThat(CueMoments.of(List.of(cue(0, 100, "a")), ALL, 24)).containsExactly(new ShownMoment(61, "a"));
        assertThat(CueMoments.of(List.of(cue(300, 400, "a")), ALL, 24)).containsExactly(new ShownMoment(361, "a"));
    }

    @ParameterizedTest
    @ValueSource(ints = {3, 4, 5, 7, 40, 999})
    void neverShowsTheFirstOrTheLastFrame(int length) {
        List<ShownMoment> moments =
                CueMoments.of(List.of(cue(10, 10 + length, "a")), FrameList.of(new FrameSpan(0, 2000)), 24);
        assertThat(moments.get(0).frame()).isBetween(11L, 10L + length - 2);
    }

    /** The second point of the golden sequence is 0.236068. */
    @Test
    void cuesOfOneTimeHaveMomentsOfTheirOwn() {
        assertThat(CueMoments.of(List.of(cue(0, 100, "a"), cue(0, 100, "b")), ALL, 24))
                .containsExactly(new ShownMoment(24, "b"), new ShownMoment(61, "a"));
        assertThat(CueMoments.of(List.of(cue(5, 6, "a"), cue(5, 6, "b")), ALL, 24))
                .containsExactly(new ShownMoment(5, "a, b"));
    }

    @Test
    void staysInsideTheFramesThatCome() {
        List<CueMoments.Seen> cues = List.of(cue(0, 100, "before"), cue(90, 300, "across"), cue(200, 250, "after"));
        assertThat(CueMoments.of(cues, FrameList.of(new FrameSpan(100, 200)), 24))
                .containsExactly(new ShownMoment(161, "across"));
        assertThat(CueMoments.of(cues, FrameList.of(new FrameSpan(400, 500)), 24))
                .isEmpty();
    }

    @Test
    void leavesOutEvenlyWhatIsTooMuch() {
        List<CueMoments.Seen> cues = IntStream.range(0, 100)
                .mapToObj(i -> cue(10 * i, 10 * i + 10, "c" + i))
                .toList();
        assertThat(CueMoments.of(cues, ALL, 4))
                .extracting(ShownMoment::caption)
                .containsExactly("c0", "c25", "c50", "c75");
    }

    /** Covered from its middle on, and half as bright before a tenth of it: of 0.618 and 0.236 the second is seen. */
    @Test
    void avoidsMomentsInWhichACueIsCovered() {
        CueMoments.Seen covered =
                new CueMoments.Seen(new FrameSpan(0, 100), "a", frame -> frame < 50 ? frame < 10 ? 500 : 1000 : 3);
        assertThat(CueMoments.of(List.of(covered), ALL, 24)).containsExactly(new ShownMoment(24, "a"));
    }

    /** Half of the most that is seen of it is enough to stay with the golden section. */
    @Test
    void staysWithTheGoldenSectionWhereEnoughIsSeen() {
        CueMoments.Seen pulsing = new CueMoments.Seen(new FrameSpan(0, 100), "a", frame -> frame == 61 ? 50 : 100);
        assertThat(CueMoments.of(List.of(pulsing), ALL, 24)).containsExactly(new ShownMoment(61, "a"));
        CueMoments.Seen faint = new CueMoments.Seen(new FrameSpan(0, 100), "a", frame -> frame == 61 ? 49 : 100);
        assertThat(CueMoments.of(List.of(faint), ALL, 24)).containsExactly(new ShownMoment(24, "a"));
    }

    /** 15 times 0.618034 is 9.270510, so frame 27 is the 15th that is tried; eight are compared with each other. */
    @Test
    void looksOnWhereAllThatAreComparedAreDark() {
        CueMoments.Seen brief = new CueMoments.Seen(new FrameSpan(0, 100), "a", frame -> frame == 27 ? 9 : 0);
        assertThat(CueMoments.of(List.of(brief), ALL, 24)).containsExactly(new ShownMoment(27, "a"));
        assertThat(CueMoments.ofVisible(List.of(brief), ALL, 24)).containsExactly(new ShownMoment(27, "a"));
    }

    @Test
    void leavesOutWhatIsNotSeenAndShowsOthersInItsPlace() {
        List<CueMoments.Seen> cues = IntStream.range(0, 100)
                .mapToObj(i -> new CueMoments.Seen(
                        new FrameSpan(10 * i, 10 * i + 10), "c" + i, frame -> i % 25 == 0 ? 0 : i % 2 == 0 ? 5 : -1))
                .toList();
        assertThat(CueMoments.ofVisible(cues, ALL, 4))
                .extracting(ShownMoment::caption)
                .hasSize(4)
                .doesNotContain("c0", "c25", "c50", "c75");
        assertThat(CueMoments.ofVisible(List.of(cues.get(0), cues.get(1)), ALL, 4))
                .containsExactly(new ShownMoment(15, "c1"));
        assertThat(CueMoments.ofVisible(List.of(cues.get(0)), ALL, 4)).isEmpty();
    }

    private static CueMoments.Seen cue(long first, long end, String caption) {
        return new CueMoments.Seen(new FrameSpan(first, end), caption, frame -> 0);
    }
}
