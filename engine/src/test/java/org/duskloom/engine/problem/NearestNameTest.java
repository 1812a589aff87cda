package org.duskloom.engine.problem;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearestNameTest {
    private static final List<String> PROPS = List.of("daisy", "fence", "trellis", "pond");

    /**
     * Worked by hand: kitten, sitten, sittin, sitting; Saturday and Sunday differ by two letters taken out and one
     * replaced. A swap of neighbours is one step, but between the two nothing can be put: ca to abc takes three, not
     * two.
     */
    @ParameterizedTest
    @CsvSource({
        "kitten, sitting, 3",
        "saturday, sunday, 3",
        "fence, fence, 0",
        "fence, fecne, 1",
        "fence, fenc, 1",
        "fence, fennce, 1",
        "fence, fende, 1",
        "ca, abc, 3",
        "'', pond, 4",
        "'', '', 0"
    })
    void countsSteps(String a, String b, int steps) {
        assertThat(NearestName.distance(a, b)).isEqualTo(steps);
        assertThat(NearestName.distance(b, a)).isEqualTo(steps);
    }

    /** A third of the letters may be wrong: one of five, two of seven, none more. */
    @ParameterizedTest
    @CsvSource({"diasy, daisy", "DAISY, daisy", "fense, fence", "trelis, trellis", "terllsi, trellis", "pon, pond"})
    void findsASlip(String wrong, String meant) {
        assertThat(NearestName.of(wrong, PROPS)).contains(meant);
        assertThat(NearestName.hint(wrong, PROPS)).isEqualTo("did you mean \"" + meant + "\"?");
    }

    @ParameterizedTest
    @CsvSource({"dusky", "hedge", "x", "''"})
    void namesAllWhereNothingIsNear(String wrong) {
        assertThat(NearestName.of(wrong, PROPS)).isEmpty();
        assertThat(NearestName.hint(wrong, PROPS)).isEqualTo("allowed: daisy, fence, trellis, pond");
    }

    /** Of names equally near the first is named, and a nearer one before both. */
    @Test
    void namesTheNearest() {
        assertThat(NearestName.of("pod", List.of("pad", "pond"))).contains("pad");
        assertThat(NearestName.of("ponds", List.of("pounds", "ponds"))).contains("ponds");
    }

    /** Two steps apart, but one slip for whoever writes it; a prop that is two steps away is not meant. */
    @ParameterizedTest
    @CsvSource({"lilys, lilies", "daisys, daisies", "DAISYS, daisies"})
    void knowsHowPluralsAreMissed(String wrong, String meant) {
        assertThat(NearestName.of(wrong, List.of("daisy-1", "lily-1", "lilies", "daisies")))
                .contains(meant);
    }

    /** Forty names are a list that is read; forty-one are not. */
    @Test
    void saysNothingWhereThereIsTooMuchToSay() {
        List<String> forty = IntStream.range(0, 40).mapToObj(i -> "flower-" + i).toList();
        List<String> more = IntStream.range(0, 41).mapToObj(i -> "flower-" + i).toList();
        assertThat(NearestName.hint("sky", forty))
                .startsWith("allowed: flower-0, ")
                .endsWith("flower-39");
        assertThat(NearestName.hint("sky", more)).isEmpty();
        assertThat(NearestName.hint("sky", List.of())).isEmpty();
    }

    /** What is far too long is no slip, and is not compared; a name beyond reach does not overflow. */
    @Test
    void doesNotCompareWhatIsTooLong() {
        String long80 = String.join("", Collections.nCopies(80, "a"));
        assertThat(NearestName.of(long80, List.of(long80.substring(1)))).isPresent();
        assertThat(NearestName.of(long80 + "a", List.of(long80))).isEmpty();
        assertThat(NearestName.of("a", List.of(long80 + long80))).isEmpty();
    }
}
