package org.duskloom.engine.meter.light;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The worst second and how many pixels are over at the same time: props of two and three pixels, 20 frames a
 * second.
 */
class FlashTallyTest {
    private static final SignalLayout LAYOUT = SignalLayout.of(Flickers.props(2, 3));
    private static final int SECOND = 20;
    private static final int WHOLE = 2;

    private final FlashTally tally = new FlashTally(LAYOUT, SECOND, FlashField.UNKNOWN);
    private int place;

    /** The second that ends with frame 30 begins with frame 11. */
    @Test
    void tellsTheWorstSecondOfEachPropAndOfAll() {
        tally.add(1, 25, 4);
        tally.add(3, 30, 5);
        tally.add(1, 40, 4);
        assertThat(count(0).most()).isEqualTo(4);
        assertThat(count(0).firstFrame()).isEqualTo(6);
        assertThat(count(1).most()).isEqualTo(5);
        assertThat(count(WHOLE).most()).isEqualTo(5);
        assertThat(count(WHOLE).firstFrame()).isEqualTo(11);
        assertThat(count(WHOLE).place()).isEqualTo(new FlashPlace(OptionalInt.of(1), OptionalInt.of(1)));
        assertThat(count(WHOLE).pixelsOver()).isZero();
    }

    /**
     * A pixel with a seventh change at frame 10 is over until frame 29; another one from then on is with it or
     * not.
     */
    @ParameterizedTest
    @CsvSource({"10, 2", "29, 2", "30, 1", "70, 1"})
    void countsPixelsWhoseBadSecondsOverlap(int later, int together) {
        playTo(10);
        tally.add(0, 10, 7);
        playTo(later);
        tally.add(4, later, 7);
        playTo(later + 1);
        assertThat(count(WHOLE).pixelsOver()).isEqualTo(together);
        assertThat(count(0).pixelsOver()).isEqualTo(1);
        assertThat(count(1).pixelsOver()).isEqualTo(1);
    }

    /** Six are allowed. */
    @Test
    void countsNoPixelWithSixChanges() {
        tally.add(0, 0, 6);
        playTo(5);
        assertThat(count(WHOLE).pixelsOver()).isZero();
        assertThat(count(WHOLE).passesEverywhere()).isTrue();
    }

    /** A prop that flashes as a whole does so with all of its pixels, the whole with those of all props. */
    @Test
    void countsAllPixelsOfAMean() {
        tally.add(LAYOUT.ofProp(1), 0, 7);
        playTo(1);
        assertThat(count(WHOLE).pixelsOver()).isEqualTo(3);
        assertThat(count(0).pixelsOver()).isZero();
        tally.add(LAYOUT.ofWhole(), 1, 7);
        playTo(2);
        assertThat(count(WHOLE).pixelsOver()).isEqualTo(5);
        assertThat(count(0).pixelsOver()).isEqualTo(2);
    }

    /** Where the show starts over, more may be found; what it has when it is played once stays known. */
    @Test
    void tellsWhatTheJointAdds() {
        tally.add(0, 30, 5);
        tally.beginJoint();
        tally.add(0, 105, 8);
        FlashCount whole = tally.count(FlashRule.GENERAL, WHOLE, 100, 0);
        assertThat(whole.most()).isEqualTo(8);
        assertThat(whole.mostOnce()).isEqualTo(5);
        assertThat(whole.overJoint()).isTrue();
        assertThat(whole.firstFrame()).isEqualTo(86);
    }

    /** Ends all frames before this one. */
    private void playTo(int next) {
        while (place < next) {
            tally.endFrame(place++);
        }
    }

    private FlashCount count(int group) {
        return tally.count(FlashRule.GENERAL, group, 1000, 0);
    }
}
