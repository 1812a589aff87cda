package org.duskloom.engine.survey.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.duskloom.engine.survey.Change;
import org.duskloom.engine.survey.Finding;
import org.duskloom.engine.survey.Reading;
import org.duskloom.engine.survey.Rival;
import org.duskloom.engine.survey.Verdict;
import org.duskloom.engine.survey.Wiring;
import org.duskloom.engine.survey.WiringKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Readings that fit equally well are both told, with the measurement that would decide. */
class SurveyRivalTest {
    /** A ring of 12 turned by 30 degrees is the ring whose wiring starts one pixel further. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 5, 11})
    void aTurnedRingIsARingWithAnotherStart(int steps) {
        Built built = new Gardens().prop("ring", "ring", 0, 0).built().turn("ring", -30 * steps, 0, 0);
        Finding ring = Built.finding(built.survey(2, 1), "ring");
        assertThat(turn(ring.reading())).isCloseTo(Rotations.normalized(-30.0 * steps), within(2.0));
        Rival rival = ring.rivals().get(0);
        Wiring wiring = ((Change.Rewired) rival.reading().changes().get(0)).wiring();
        assertThat(wiring.kind()).isEqualTo(WiringKind.OTHER_START);
        assertThat(wiring.describedPixel(0)).isEqualTo(steps);
        assertThat(rival.test()).isEmpty();
    }

    /** Turned by half a step it is no other start. */
    @Test
    void aRingTurnedByHalfAStepIsOnlyTurned() {
        Built built = new Gardens().prop("ring", "ring", 0, 0).built().turn("ring", 15, 0, 0);
        Finding ring = Built.finding(built.survey(2, 1), "ring");
        assertThat(turn(ring.reading())).isCloseTo(15, within(2.0));
        assertThat(ring.rivals()).isEmpty();
    }

    /** A ring wired the other way round from the same first pixel is the mirror image of the ring. */
    @Test
    void aRingWiredTheOtherWayIsAMirrorImage() {
        Built built = new Gardens().prop("ring", "ring", 0, 0).built().rewire("ring", i -> (12 - i) % 12);
        Finding ring = Built.finding(built.survey(2, 1), "ring");
        assertThat(ring.reading().changes()).hasSize(1).first().isInstanceOf(Change.Mirrored.class);
        assertThat(ring.rivals().get(0).reading().changes())
                .singleElement()
                .satisfies(change ->
                        assertThat(((Change.Rewired) change).wiring().kind()).isEqualTo(WiringKind.OTHER_WAY));
        assertThat(ring.rivals().get(0).test()).isEmpty();
    }

    /** A straight post that is fed from the top is a post that stands on its head. */
    @Test
    void aPostFromTheOtherEndIsUpsideDown() {
        Built built = new Gardens().prop("post", "post", 0, 0).built().reverse("post");
        Finding post = Built.finding(built.survey(2, 1), "post");
        assertThat(post.reading().wiring().kind()).isEqualTo(WiringKind.FROM_OTHER_END);
        assertThat(post.rivals()).hasSize(1).allMatch(rival -> rival.test().isEmpty());
        assertThat(post.rivals())
                .anySatisfy(rival -> assertThat(turn(rival.reading())).isEqualTo(180));
    }

    /**
     * Of the daisy only the outer ring was measured, which does not know whether the daisy is mirrored or the ring is
     * wired the other way round. The stem leans to the right: its last pixel, 30 mm off the middle, tells.
     */
    @Test
    void saysWhichPixelTells() {
        Built built = new Gardens().prop("daisy", "daisy", 0, 0).built().mirrorX("daisy", 0);
        built.measure("daisy", 13, 15, 17, 19, 22, 25, 28, 30, 33, 36);
        Finding daisy = Built.finding(built.survey(2, 1), "daisy");
        assertThat(daisy.verdict()).isEqualTo(Verdict.DIFFERENT);
        assertThat(daisy.reading().changes()).singleElement().isInstanceOf(Change.Mirrored.class);
        List<Rival.Test> tests =
                daisy.rivals().stream().flatMap(rival -> rival.test().stream()).toList();
        assertThat(tests).isNotEmpty();
        // The inner ring stays where it is described, or it is mirrored too: most of all its pixels 4 and 10.
        assertThat(tests.get(0).pixel() + 1).isIn(4, 10);
        assertThat(tests.get(0).distance()).isCloseTo(180, within(1.0));
        // Mirrored, pixel 4 would be on the left.
        boolean right = tests.get(0).pixel() + 1 == 4;
        assertThat(tests.get(0).preferredX()).isCloseTo(right ? -90 : 90, within(1.0));
        assertThat(tests.get(0).rivalX()).isCloseTo(right ? 90 : -90, within(1.0));
    }

    /** Measured as well, that pixel decides. */
    @Test
    void theTellingPixelDecides() {
        Built built = new Gardens().prop("daisy", "daisy", 0, 0).built().mirrorX("daisy", 0);
        built.measure("daisy", 4, 10, 13, 15, 17, 19, 22, 25, 28, 30, 33, 36, 41);
        Finding daisy = Built.finding(built.survey(2, 1), "daisy");
        assertThat(daisy.reading().changes()).singleElement().isInstanceOf(Change.Mirrored.class);
        assertThat(daisy.rivals()).isEmpty();
    }

    /**
     * What fits as described needs no other reading, though a ring turned by 30 degrees and wired back fits as well.
     */
    @Test
    void asDescribedHasNoRivals() {
        Finding ring =
                Built.finding(new Gardens().prop("ring", "ring", 0, 0).built().survey(2, 1), "ring");
        assertThat(ring.verdict()).isEqualTo(Verdict.AS_DESCRIBED);
        assertThat(ring.rivals()).isEmpty();
    }

    private static double turn(Reading reading) {
        return reading.changes().stream()
                .filter(Change.Turned.class::isInstance)
                .mapToDouble(change -> ((Change.Turned) change).degrees())
                .findFirst()
                .orElseThrow();
    }
}
