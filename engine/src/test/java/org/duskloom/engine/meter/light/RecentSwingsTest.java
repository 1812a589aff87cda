package org.duskloom.engine.meter.light;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** How many changes lie within a second: against a list of all of them. */
class RecentSwingsTest {
    /**
     * Of frames 0 and 20 at 20 frames a second the first is no part any more of the second that ends with the
     * other.
     */
    @Test
    void secondsAreHalfOpen() {
        RecentSwings recent = new RecentSwings(1, 20);
        assertThat(recent.add(0, 0)).isEqualTo(1);
        assertThat(recent.add(0, 19)).isEqualTo(2);
        assertThat(recent.add(0, 20)).isEqualTo(2);
        assertThat(recent.add(0, 39)).isEqualTo(2);
        assertThat(recent.add(0, 1000)).isEqualTo(1);
    }

    /**
     * A flash three times a second is six changes in any second (WCAG 2.2 allows three flashes), however long.
     */
    @Test
    void countsThreeFlashesASecondAsSix() {
        RecentSwings recent = new RecentSwings(1, 60);
        for (int place = 0; place < 3000; place += 10) {
            assertThat(recent.add(0, place)).isLessThanOrEqualTo(6);
        }
        assertThat(recent.add(0, 3000)).isEqualTo(6);
    }

    /** Signals do not count for each other; around the 64 bits of a word, and far beyond. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 25, 63, 64, 65, 127, 128, 129, 240})
    void countsAsAListWould(int framesOfSecond) {
        RecentSwings recent = new RecentSwings(3, framesOfSecond);
        SplittableRandom random = new SplittableRandom(framesOfSecond);
        List<List<Integer>> all = List.of(new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
        int place = 0;
        for (int i = 0; i < 2000; i++) {
            place += random.nextInt(40) == 0 ? random.nextInt(1, 300) : random.nextInt(1, 4);
            int signal = random.nextInt(3);
            int from = place - framesOfSecond;
            all.get(signal).add(place);
            long within = all.get(signal).stream().filter(each -> each > from).count();
            assertThat(recent.add(signal, place)).isEqualTo((int) within);
        }
    }
}
