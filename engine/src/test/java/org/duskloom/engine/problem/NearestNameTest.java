package org.duskloom.engine.problem;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NearestNameTest {
    /** All words of up to three letters of two, so that equal letters meet in every way. */
    private static final List<String> WORDS =
            List.of("", "a", "b", "aa", "ab", "ba", "bb", "aaa", "aab", "aba", "abb", "baa", "bab", "bba", "bbb");

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

    /** One letter put in, left out or written for another, or two that changed places, anywhere: one step each. */
    @ParameterizedTest
    @ValueSource(strings = {"fence", "aab", "lily-pad", "abcabc"})
    void everySlipIsOneStepWhereverItHappens(String name) {
        Set<String> slips = new HashSet<>();
        for (int at = 0; at <= name.length(); at++) {
            String before = name.substring(0, at);
            String after = name.substring(at);
            slips.add(before + 'q' + after);
            if (!after.isEmpty()) {
                slips.add(before + after.substring(1));
                slips.add(before + 'q' + after.substring(1));
            }
            if (after.length() > 1) {
                slips.add(before + after.charAt(1) + after.charAt(0) + after.substring(2));
            }
        }
        slips.remove(name);
        assertThat(slips)
                .hasSizeGreaterThan(2 * name.length())
                .allSatisfy(slip -> assertThat(NearestName.distance(slip, name)).isOne());
    }

    /** What stands alike before and behind two words changes nothing, nor does reading both from the end. */
    @Test
    void stepsAreThoseOfThePartsThatDiffer() {
        for (String a : WORDS) {
            for (String b : WORDS) {
                int steps = NearestName.distance(a, b);
                assertThat(steps)
                        .as("%s and %s", a, b)
                        .isBetween(Math.abs(a.length() - b.length()), Math.max(a.length(), b.length()))
                        .isEqualTo(NearestName.distance(b, a))
                        .isEqualTo(NearestName.distance("xyz" + a + "x", "xyz" + b + "x"))
                        .isEqualTo(NearestName.distance(reversed(a), reversed(b)));
                assertThat(steps == 0).isEqualTo(a.equals(b));
            }
        }
    }

    private static String reversed(String word) {
        return new StringBuilder(word).reverse().toString();
    }

    /** Props "a" and "b" are two props: of a short name nothing but the case is guessed. */
    @Test
    void doesNotGuessShortNamesThatPeopleChoose() {
        assertThat(NearestName.hintOfFree("c", List.of("a", "b"))).isEqualTo("allowed: a, b");
        assertThat(NearestName.hintOfFree("c1", List.of("a1", "b1"))).isEqualTo("allowed: a1, b1");
        assertThat(NearestName.hintOfFree("c1", List.of("a1", "C1"))).isEqualTo("did you mean \"C1\"?");
        assertThat(NearestName.hintOfFree("ca1", List.of("ca2", "b"))).isEqualTo("did you mean \"ca2\"?");
        assertThat(NearestName.hintOfFree("c", List.of())).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"40, 'x39'", "41, 'x39 and 1 more'", "200, 'x39 and 160 more'"})
    void listsFortyOfThemAndCountsTheRest(int count, String end) {
        List<String> names = IntStream.range(0, count).mapToObj(i -> "x" + i).toList();
        assertThat(NearestName.hintOfFree("y", names))
                .startsWith("allowed: x0, x1, ")
                .endsWith(", " + end);
    }
}
