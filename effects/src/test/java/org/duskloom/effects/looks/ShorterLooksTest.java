package org.duskloom.effects.looks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.duskloom.effects.looks.FourteenDaisies.PIXELS;
import static org.duskloom.effects.looks.FourteenDaisies.PROPS;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Looks that take a cue for every part, or for every row, are the same frames in one cue of less than a third of the
 * length.
 */
class ShorterLooksTest {
    @TempDir
    private Path folder;

    @Test
    void petalsLightOneAfterTheOtherOnAllDaisiesTogether() throws IOException {
        assertSameButShorter(
                cues(
                        6,
                        petal -> String.format(
                                Locale.ROOT,
                                "{\"at\": \"%dms\", \"on\": \"daisy-*/petals/%d\", \"spread\": \"each\", \"effect\": \"chase\","
                                        + " \"with\": {\"tail\": 0.4, \"palette\": \"gold\"}}",
                                300 * petal,
                                petal + 1)),
                "{\"on\": \"daisy-*/petals/*\", \"spread\": \"each\", \"stagger\": {\"by\": \"part\", \"time\": \"300ms\"},"
                        + " \"effect\": \"chase\", \"with\": {\"tail\": 0.4, \"palette\": \"gold\"}}");
    }

    @Test
    void garlandsHangUnderEachOther() throws IOException {
        assertSameButShorter(
                cues(
                        5,
                        row ->
                                "{\"on\": \"daisies\", \"effect\": \"festoon\", \"with\": {\"palette\": [\"gold\", \"navy\"],"
                                        + " \"swags\": 7, \"sag\": 0.02, \"thickness\": 0.05, \"height\": "
                                        + (1 - row * 0.25) + "}}"),
                "{\"on\": \"daisies\", \"effect\": \"festoon\", \"with\": {\"palette\": [\"gold\", \"navy\"], \"swags\": 7,"
                        + " \"sag\": 0.02, \"thickness\": 0.05, \"height\": 1, \"rows\": 5}}");
    }

    private static String cues(int count, IntFunction<String> cue) {
        return IntStream.range(0, count).mapToObj(cue).collect(Collectors.joining(",\n"));
    }

    private void assertSameButShorter(String oneByOne, String together) throws IOException {
        FourteenDaisies before = FourteenDaisies.under(oneByOne, folder);
        FourteenDaisies after = FourteenDaisies.under(together, folder);
        int lit = 0;
        for (double seconds = 0; seconds < 10; seconds += 0.07) {
            before.at(seconds);
            after.at(seconds);
            for (int prop = 0; prop < PROPS; prop++) {
                for (int pixel = 0; pixel < PIXELS; pixel++) {
                    assertThat(after.color(prop, pixel)).isEqualTo(before.color(prop, pixel));
                    lit += after.color(prop, pixel) == 0 ? 0 : 1;
                }
            }
        }
        assertThat(lit).isGreaterThan(10_000);
        assertThat(together.length()).isLessThan(oneByOne.length() / 3);
    }
}
