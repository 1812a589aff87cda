package org.duskloom.engine.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Random;
import java.util.stream.IntStream;
import org.duskloom.engine.problem.TextFormatException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Instants by number, against adding one step after the other. */
class EvenInstantsTest {
    /** Frames before, between and after the instants, by the definition: those whose first frame is not later. */
    @ParameterizedTest
    @ValueSource(strings = {"1", "7", "40", "1000", "30000/1001", "24000/1001"})
    void areThoseThatAddingGives(String written) throws TextFormatException {
        FrameRate rate = FrameRate.parse(written);
        Random random = new Random(written.hashCode());
        for (int i = 0; i < 200; i++) {
            ExactTime first = new ExactTime(random.nextInt(3000), 1 + random.nextInt(1200));
            ExactTime every = new ExactTime(1 + random.nextInt(900), 1 + random.nextInt(1200));
            int count = 1 + random.nextInt(20);
            EvenInstants instants = EvenInstants.of(first, every, count).orElseThrow();
            ExactTime next = first;
            for (int number = 0; number < count; number++) {
                assertThat(instants.at(number)).isEqualTo(next);
                assertThat(instants.firstFrame(rate, number)).isEqualTo(rate.firstFrameAtOrAfter(next));
                next = next.plus(every);
            }
            long frame = rate.firstFrameAtOrAfter(instants.at(random.nextInt(count))) - 1 + random.nextInt(3);
            assertThat(instants.begunBy(rate, frame)).isEqualTo((int) IntStream.range(0, count)
                    .filter(number -> instants.firstFrame(rate, number) <= frame)
                    .count());
        }
    }

    @Test
    void movesThemAll() {
        EvenInstants instants =
                EvenInstants.of(ExactTime.ZERO, new ExactTime(1, 3), 4).orElseThrow();
        EvenInstants later = instants.later(new ExactTime(1, 8)).orElseThrow();
        assertThat(later.every()).isEqualTo(new ExactTime(1, 3));
        assertThat(IntStream.range(0, 4).mapToObj(later::at))
                .containsExactly(
                        new ExactTime(3, 24), new ExactTime(11, 24), new ExactTime(19, 24), new ExactTime(27, 24));
    }

    /** An hour in parts of a 298,262nd of a second is more than 2^30 of them, in parts of a 298,000th it is less. */
    @ParameterizedTest
    @CsvSource({"0, 298000, true", "0, 298262, false", "3000, 298000, true", "3000, 298262, false"})
    void areNoneWhereTheirPartsAreTooMany(long firstSeconds, long parts, boolean fits) {
        ExactTime first = ExactTime.ofSeconds(firstSeconds);
        assertThat(EvenInstants.of(first, new ExactTime(parts + 1, parts), 3600 - (int) firstSeconds)
                        .isPresent())
                .isEqualTo(fits);
    }

    @Test
    void timeRunsForwardsFromZero() {
        ExactTime second = ExactTime.ofSeconds(1);
        assertThat(EvenInstants.of(second.negated(), second, 3)).isEmpty();
        assertThat(EvenInstants.of(second, second.negated(), 1)).isEmpty();
        assertThat(EvenInstants.of(second, ExactTime.ZERO, 3)).isEmpty();
        assertThat(EvenInstants.of(ExactTime.ZERO, second, 3)).isPresent();
    }

    @Test
    void hugePartsAreNoInstants() {
        assertThat(EvenInstants.of(ExactTime.ZERO, ExactTime.ofSeconds(1L << 40), 1))
                .isEmpty();
        ExactTime tiny = new ExactTime(1, 1L << 40);
        assertThat(EvenInstants.of(tiny, ExactTime.ofSeconds(1), 2)).isEmpty();
        assertThat(EvenInstants.of(ExactTime.ZERO, tiny, 2)).isEmpty();
        assertThat(EvenInstants.of(new ExactTime(1, 40_009), new ExactTime(1, 40_013), 2))
                .isEmpty();
        assertThatThrownBy(() -> new EvenInstants(0, 1 << 29, 1, 4)).isInstanceOf(ArithmeticException.class);
        assertThatThrownBy(() -> new EvenInstants(0, 0, 1, 4)).isInstanceOf(IllegalArgumentException.class);
    }
}
