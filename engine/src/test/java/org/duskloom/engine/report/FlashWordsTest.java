package org.duskloom.engine.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.duskloom.engine.meter.light.FlashCount;
import org.duskloom.engine.meter.light.FlashFigures;
import org.duskloom.engine.meter.light.FlashPlace;
import org.duskloom.engine.meter.light.FlashRule;
import org.duskloom.engine.meter.light.PropUse;
import org.duskloom.engine.meter.light.UseFigures;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What is said of flashes. By the thresholds of WCAG 2.2 (success criterion 2.3.1) three flashes, which are six
 * changes of light, are allowed within a second; whatever is found, nobody is promised anything.
 */
class FlashWordsTest {
    private static final FlashPlace WHOLE = new FlashPlace(OptionalInt.empty(), OptionalInt.empty());
    private static final FlashPlace POST = new FlashPlace(OptionalInt.of(1), OptionalInt.empty());
    private static final FlashPlace SECOND_OF_POST = new FlashPlace(OptionalInt.of(1), OptionalInt.of(1));

    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource({
        "6, 6, 0, 0, 0, Nothing flashes more than three times within a second.",
        "7, 0, 0, 0, 0, It flashes too often.",
        "0, 7, 0, 0, 0, It flashes too often.",
        "7, 0, 12.5, 0.8, 0, 'Seen from 12.5 m and farther it stays within the limit of WCAG 2.2, by the small area'",
        "0, 9, 12.5, 0, 1, 'Seen from 12.5 m and farther it stays within the limit of WCAG 2.2, by the small area'",
        "7, 0, 12.5, 1.2, 0, It flashes too often.",
        "6, 2, 12.5, 0, 0, Nothing flashes more than three times within a second."
    })
    void givesAVerdictWithoutAPromise(
            int light, int red, double metres, double lightShare, double redShare, String words) {
        String verdict = FlashWords.verdict(figures(metres, light, red, lightShare, redShare));
        assertThat(verdict).startsWith(words).containsPattern("no guarantee");
    }

    @Test
    void saysByWhichMeasure() {
        assertThat(FlashWords.measure(figures(0, 0, 0, 0, 0)))
                .contains("six changes in any second pass, seven do not")
                .contains("a single pixel that flashes too often is too much");
        assertThat(FlashWords.measure(figures(10, 8, 9, 0.25, 0.5)))
                .contains("Seen from 10.0 m")
                .contains("fills at most 50 % of the area that is allowed within a field of ten degrees");
    }

    /** Pixels count from 1, as everywhere. */
    @Test
    void saysWhere() {
        LightReport light = seen(count(7, POST, false), List.of());
        assertThat(FlashWords.where(WHOLE, light)).isEqualTo("the whole display");
        assertThat(FlashWords.where(POST, light)).isEqualTo("post as a whole");
        assertThat(FlashWords.where(SECOND_OF_POST, light)).isEqualTo("pixel 2 of post");
    }

    /** Frame 30 of 20 a second is 1.5 s. */
    @Test
    void saysWhenAndInWhichCues() throws IOException {
        assertThat(worst(count(8, SECOND_OF_POST, false), List.of("flood", "glow")))
                .isEqualTo("The worst second begins at 1.5 s: 8 changes of light on pixel 2 of post;"
                        + " cues there: flood, glow.");
        assertThat(worst(count(7, WHOLE, true), List.of()))
                .isEqualTo("The worst second begins at 1.5 s: 7 changes of light on the whole display, as the show"
                        + " starts over at once when it ends.");
    }

    @Test
    void oneChangeIsOne() throws IOException {
        assertThat(worst(count(1, POST, false), List.of()))
                .isEqualTo("The worst second begins at 1.5 s: 1 change of light on post as a whole.");
    }

    @Test
    void namesSixCuesAtTheMost() throws IOException {
        List<String> seven = names(7);
        assertThat(worst(count(8, POST, false), seven.subList(0, 6))).endsWith("cue-5, cue-6.");
        assertThat(worst(count(8, POST, false), seven)).endsWith("cue-5, cue-6 and 1 more.");
    }

    /** Eight changes are 8/6 of what is allowed: 1.33..., rounded up so that it is enough. */
    @Test
    void saysWhatToSlowDown() {
        SlowDown every = new SlowDown("glow", Optional.of("every"), "150ms", "200ms");
        SlowDown passes = new SlowDown("run", Optional.of("passes"), "8", "6");
        SlowDown repeat = new SlowDown("flood", Optional.of("repeat"), "0.2s", "0.267s");
        SlowDown unknown = new SlowDown("star", Optional.empty(), "", "");
        SlowDown formula = new SlowDown("fern", Optional.of("every"), "a + b", "");
        assertThat(advice(8, every, passes, repeat, unknown, formula))
                .containsExactly(
                        "To have no more than six changes, what flashes there is to be 1.34 times as slow, or softer.",
                        "In glow: \"every\" is 150ms; at least 200ms if that is what flashes.",
                        "In run: \"passes\" is 8; at most 6 if that is what flashes.",
                        "In flood: its plays start every 0.2s; at least 0.267s (\"every\" of its \"repeat\", or a"
                                + " longer \"for\") if that is what flashes.");
        assertThat(advice(9)).singleElement().asString().contains(" 1.50 times as slow");
        assertThat(advice(6)).isEmpty();
    }

    private static List<String> advice(int most, SlowDown... slowDowns) {
        return FlashWords.advice(
                new WorstSecond(count(most, POST, false), List.of(), Arrays.asList(slowDowns), List.of()));
    }

    private String worst(FlashCount count, List<String> cues) throws IOException {
        LightReport light = seen(count, cues);
        return FlashWords.worst(Reported.of(folder, "").report().with(light), light);
    }

    private static LightReport seen(FlashCount count, List<String> cues) {
        FlashFigures flashes = new FlashFigures(OptionalDouble.empty(), count, count, List.of());
        WorstSecond worst = new WorstSecond(count, cues, List.of(), List.of());
        List<PropUse> props = List.of(use("fence", 4), use("post", 2));
        return new LightReport(flashes, worst, new UseFigures(props, List.of()), List.of(), List.of());
    }

    private static PropUse use(String prop, int pixels) {
        return new PropUse(prop, pixels, 0, 1, new int[0], new float[1]);
    }

    private static List<String> names(int count) {
        return IntStream.rangeClosed(1, count).mapToObj(i -> "cue-" + i).toList();
    }

    /** @param metres from how far it is seen; 0 where nobody says */
    private static FlashFigures figures(double metres, int light, int red, double lightShare, double redShare) {
        return new FlashFigures(
                metres > 0 ? OptionalDouble.of(metres) : OptionalDouble.empty(),
                new FlashCount(FlashRule.GENERAL, light, WHOLE, 0, false, light, 1, lightShare),
                new FlashCount(FlashRule.RED, red, WHOLE, 0, false, red, 1, redShare),
                List.of());
    }

    private static FlashCount count(int most, FlashPlace place, boolean overJoint) {
        return new FlashCount(FlashRule.GENERAL, most, place, 30, overJoint, most, 1, 0);
    }
}
