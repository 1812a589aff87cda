package org.duskloom.effects.lettering;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.duskloom.effects.Canvases;
import org.duskloom.effects.Look;
import org.duskloom.effects.Painting;
import org.duskloom.engine.color.ColorMix;
import org.duskloom.engine.color.Palette;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.Doubt;
import org.duskloom.engine.effect.Setting;
import org.duskloom.engine.effect.SettingException;
import org.duskloom.engine.effect.Settings;
import org.duskloom.engine.problem.Problem;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * With the letters of {@code twig.bdf}: an H is four dots wide and five high; lines have two more rows under the base
 * line.
 */
class LetteringTest {
    @TempDir
    Path folder;

    private Path twig;

    @BeforeEach
    void writeTheFont() throws IOException {
        twig = Files.write(folder.resolve("twig.bdf"), BdfReaderTest.twig());
    }

    /** A capital as high as five of five rows: a dot for each light. */
    @Test
    void drawsALetterDotByDot() throws Exception {
        assertThat(drawing(text("H").flag("still").with("size", 1), 6, 5, 0)).isEqualTo("""
                .#..#.
                .#..#.
                .####.
                .#..#.
                .#..#.
                """);
    }

    /** Twelve rows and the usual size of 0.6: dots of 12 · 0.6 / 5 = 1.44 lights are made one light. */
    @Test
    void makesDotsWholeLights() throws Exception {
        assertThat(drawing(text("g").flag("still"), 5, 12, 0)).isEqualTo("""
                .....
                .....
                .....
                .....
                .....
                ..##.
                .#.#.
                ..##.
                ...#.
                .##..
                .....
                .....
                """);
    }

    @Test
    void makesDotsOfSeveralLights() throws Exception {
        assertThat(drawing(text("i").flag("still").with("size", 1), 4, 10, 0)).isEqualTo("""
                .##.
                .##.
                ....
                ....
                .##.
                .##.
                .##.
                .##.
                .##.
                .##.
                """);
    }

    /**
     * Smooth, a dot of 12 · 0.5 / 5 = 1.2 lights: the i is 1.2 lights wide in the middle of 5, so it covers the middle
     * column and a tenth of each beside it. From the top its dots lie at 3 to 4.2 and 5.4 to 9.
     */
    @Test
    void coversPartsOfLightsIfSmooth() throws Exception {
        float[] alpha = Painting.of(text("i").flag("still").flag("smooth").with("size", 0.5), grid(5, 12), 0)
                .alpha();
        float[] middle = {0, 0, 0, 1, 0.2f, 0.6f, 1, 1, 1, 0, 0, 0};
        for (int row = 0; row < 12; row++) {
            assertThat(alpha[row * 5 + 2]).isCloseTo(middle[row], within(1e-5f));
            assertThat(alpha[row * 5 + 1]).isCloseTo(middle[row] / 10, within(1e-5f));
            assertThat(alpha[row * 5 + 3]).isCloseTo(middle[row] / 10, within(1e-5f));
            assertThat(alpha[row * 5]).isZero();
        }
    }

    /**
     * The H, 4 lights wide, crosses 6 lights in a pass of 10 s: 10 lights, one each second. At 0 s and 10 s it is just
     * outside; its left edge is at 6 - t.
     */
    @Test
    void crossesLightByLight() throws Exception {
        Look look = text("H").with("size", 1).seconds("every", 10);

        assertThat(firstRow(look, 0)).isEqualTo("......");
        assertThat(firstRow(look, 1)).isEqualTo(".....#");
        assertThat(firstRow(look, 2)).isEqualTo("....#.");
        assertThat(firstRow(look, 4)).isEqualTo("..#..#");
        assertThat(firstRow(look, 6.4)).isEqualTo("#..#..");
        assertThat(firstRow(look, 6.6)).isEqualTo("..#...");
        assertThat(firstRow(look, 9)).isEqualTo("#.....");
        assertThat(firstRow(look, 9.9)).isEqualTo("......");
        assertThat(firstRow(look, 11)).isEqualTo(".....#");
    }

    /** Half way between two lights each shows half of the dot. */
    @Test
    void crossesSmoothly() throws Exception {
        Look look = text("H").with("size", 1).seconds("every", 10).flag("smooth");
        float[] alpha = Painting.of(look, grid(6, 5), 4.5).alpha();
        float[] expected = {0, 0.5f, 0.5f, 0, 0.5f, 0.5f};
        for (int column = 0; column < 6; column++) {
            assertThat(alpha[column]).isCloseTo(expected[column], within(1e-5f));
        }
    }

    @Test
    void crossesTheOtherWay() throws Exception {
        Look right = text("H").with("size", 1).seconds("every", 10).with("toward", 0);
        assertThat(firstRow(right, 1)).isEqualTo("#.....");
        assertThat(firstRow(right, 4)).isEqualTo("#..#..");

        Look reversed = text("H").with("size", 1).seconds("every", 10).flag("reverse");
        assertThat(firstRow(reversed, 1)).isEqualTo("#.....");
    }

    /**
     * Upward: the whole line of 7 rows, with the middle of its capitals 2.5 rows from its top, passes 5 rows; out is
     * where the lower part, 4.5 rows, has left: 2.5 + 4.5 = 7 rows to either side, 14 in the pass of 14 s.
     */
    @Test
    void crossesUpward() throws Exception {
        Look look = text("g").with("size", 1).seconds("every", 14).with("toward", 90);

        assertThat(drawing(look, 3, 5, 0)).isEqualTo("...\n".repeat(5));
        assertThat(drawing(look, 3, 5, 5)).isEqualTo("...\n...\n...\n...\n.##\n");
        assertThat(drawing(look, 3, 5, 9)).isEqualTo(".##\n#.#\n.##\n..#\n##.\n");
        assertThat(drawing(look, 3, 5, 13)).isEqualTo("##.\n...\n...\n...\n...\n");
    }

    /** Turned by a quarter the text runs upward: the H lies on its side. */
    @Test
    void turns() throws Exception {
        assertThat(drawing(text("H").flag("still").with("size", 0.5).with("turn", 90), 7, 10, 0)
                        .strip())
                .contains("#####")
                .isEqualTo("""
                        .......
                        .......
                        .......
                        .#####.
                        ...#...
                        ...#...
                        .#####.
                        .......
                        .......
                        .......
                        """.strip());
    }

    /**
     * Ten rows: the middle of the H 1.5 rows above the middle, at 3.5 from the top, so it begins one row from the top.
     */
    @Test
    void standsWhereItIsPut() throws Exception {
        assertThat(drawing(text("H").flag("still").with("size", 0.5).with("up", 0.15), 4, 10, 0))
                .startsWith("....\n#..#\n#..#\n####\n#..#\n#..#\n....");
    }

    /** Along the text from red to blue: of four columns the first has 7/8 of red. */
    @Test
    void colorsTheText() throws Exception {
        Painting painting = Painting.of(text("H").flag("still").with("size", 1).palette("red", "blue"), grid(4, 5), 0);

        assertThat(painting.red()[0]).isCloseTo(0.875f, within(1e-5f));
        assertThat(painting.blue()[0]).isCloseTo(0.125f, within(1e-5f));
        assertThat(painting.blue()[3]).isCloseTo(0.875f, within(1e-5f));
        assertThat(painting.alpha()[1]).isZero();
    }

    @Test
    void outlinesTheText() throws Exception {
        Look look = text("i")
                .flag("still")
                .with("size", 1)
                .palette("white")
                .with("thickness", 1)
                .with("outline", Look.evenly(ColorMix.LINEAR, "blue"));
        Painting painting = Painting.of(look, grid(5, 5), 0);

        assertThat(painting.alpha()).startsWith(0, 1, 1, 1, 0);
        assertThat(painting.red()).startsWith(0, 0, 1, 0, 0, 0, 0, 0, 0, 0);
        assertThat(painting.blue()).startsWith(0, 1, 1, 1, 0, 0, 1, 1, 1, 0);
    }

    /** Marks written as characters of their own make the same letter. */
    @Test
    void composesMarks() throws Exception {
        Canvas canvas = grid(20, 12);
        Painting composed = Painting.of(Look.of("lettering").with("text", "é").flag("still"), canvas, 0);
        Painting apart =
                Painting.of(Look.of("lettering").with("text", "e\u0301").flag("still"), canvas, 0);

        assertThat(apart.isSame(composed)).isTrue();
        assertThat(composed.alpha()).contains(1f);
    }

    @ParameterizedTest
    @CsvSource({"'', no text", "'a\tb', control character"})
    void refusesTexts(String text, String message) {
        assertThatThrownBy(() -> text(text).on(grid(2, 2))).isInstanceOfSatisfying(SettingException.class, e -> {
            assertThat(e.setting()).isEqualTo("text");
            assertThat(e).hasMessageContaining(message);
            assertThat(e.hint()).isNotEmpty();
        });
    }

    @Test
    void refusesWhatHasNoUse() {
        assertRefused(text("H").flag("still").seconds("every", 1), "every", "still");
        assertRefused(text("H").with("outline", Look.evenly(ColorMix.LINEAR, "blue")), "outline", "thickness");
    }

    /**
     * As long as palettes have one colour, it does not matter where in a cell it is taken: both ways give the same
     * light.
     */
    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void movesItsColours(boolean still) throws SettingException {
        Palette gold = Look.evenly(ColorMix.LINEAR, "gold");
        Palette navy = Look.evenly(ColorMix.LINEAR, "rgb(0 0 128 / 0.5)");
        Look steady = text("HIH").with("thickness", 1).with("palette", gold).with("outline", navy);
        Look moving = text("HIH").movingPalettes(gold, navy, gold);
        if (still) {
            steady.flag("still");
            moving.flag("still");
        }
        Canvas canvas = grid(31, 9);
        Painting wanted = Painting.of(steady, canvas, 0);
        Painting atFirstKey = Painting.of(moving.with("outline", navy), canvas, 0);
        for (int i = 0; i < canvas.pixelCount(); i++) {
            assertThat(atFirstKey.red()[i]).isCloseTo(wanted.red()[i], within(1e-5f));
            assertThat(atFirstKey.blue()[i]).isCloseTo(wanted.blue()[i], within(1e-5f));
            assertThat(atFirstKey.alpha()[i]).isCloseTo(wanted.alpha()[i], within(1e-5f));
        }
        assertThat(Painting.of(moving, canvas, 1).isSame(atFirstKey)).isFalse();
    }

    /**
     * The palette runs along the text: the left stem of a wide H has the colour of its left end, the right one that of
     * its right.
     */
    @Test
    void movesAPaletteAlongTheText() throws SettingException {
        Palette fromRed = Look.evenly(ColorMix.LINEAR, "red", "blue");
        Palette fromBlue = Look.evenly(ColorMix.LINEAR, "blue", "red");
        Look look = text("H")
                .flag("still")
                .with("size", 1)
                .movingPalettes(fromRed, fromBlue, fromRed)
                .without("outline")
                .without("thickness");
        Canvas canvas = grid(4, 5);
        Painting start = Painting.of(look, canvas, 0);
        Painting end = Painting.of(look, canvas, 1);
        int left = 0;
        int right = 3;
        assertThat(start.red()[left]).isGreaterThan(start.blue()[left]);
        assertThat(start.red()[right]).isLessThan(start.blue()[right]);
        assertThat(end.red()[left]).isLessThan(end.blue()[left]);
        assertThat(end.red()[right]).isGreaterThan(end.blue()[right]);
    }

    @Test
    void refusesALineOfTooManyDots() throws IOException {
        String large = Files.readString(twig)
                .replace("FONTBOUNDINGBOX 5 7 0 -2", "FONTBOUNDINGBOX 200 250 0 0")
                .replace("DWIDTH 5 0", "DWIDTH 200 0");
        Files.writeString(twig, large);
        assertRefused(text("H".repeat(400)), "text", "dots, too many");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            Good evening | ''
            Qué? Ä ß     | ''
            日本 😀 日   | the font has no "日", "本", "😀"; a box stands for each
            日月火水      | the font has no "日", "月", "火" and 1 more; a box stands for each
            """)
    void namesTheLettersThatTheFontLacks(String text, String message) throws SettingException {
        Settings settings = Settings.of(Map.of(setting("text"), text));
        assertThat(new Lettering().doubts(settings))
                .extracting(Doubt::message)
                .isEqualTo(message.isEmpty() ? List.of() : List.of(message));
    }

    private static Setting<?> setting(String name) {
        return new Lettering()
                .settings().stream()
                        .filter(setting -> setting.name().equals(name))
                        .findFirst()
                        .orElseThrow();
    }

    @Test
    void passesOnTheFaultsOfAFont() throws IOException {
        Files.writeString(twig, Files.readString(twig).replace("F0", "ZZ").replace("CAP_HEIGHT 5", "CAP_HEIGHT x"));
        assertThatThrownBy(() -> text("H").on(grid(2, 2))).isInstanceOfSatisfying(SettingException.class, e -> {
            assertThat(e.setting()).isEqualTo("font");
            assertThat(e.inFile())
                    .extracting(Problem::toString)
                    .containsExactly(
                            "twig.bdf:9: error: CAP_HEIGHT has \"x\"; it needs a number of dots",
                            "twig.bdf:27: error: a row of 4 dots has \"ZZ\"; it needs 2 hexadecimal digits");
        });
    }

    private static void assertRefused(Look look, String setting, String message) {
        assertThatThrownBy(() -> look.on(grid(4, 4))).isInstanceOfSatisfying(SettingException.class, e -> {
            assertThat(e.setting()).isEqualTo(setting);
            assertThat(e).hasMessageContaining(message);
        });
    }

    private Look text(String text) {
        return Look.of("lettering").with("text", text).with("font", Optional.of(twig));
    }

    private static Canvas grid(int columns, int rows) {
        return Canvases.of(Canvases.grid(columns, rows));
    }

    private static String firstRow(Look look, double second) throws SettingException {
        return drawing(look, 6, 5, second).lines().findFirst().orElseThrow();
    }

    /** Lights that are on, and lights that are off; others fail. */
    private static String drawing(Look look, int columns, int rows, double second) throws SettingException {
        float[] alpha = Painting.of(look, grid(columns, rows), second).alpha();
        StringBuilder drawing = new StringBuilder();
        for (int i = 0; i < alpha.length; i++) {
            assertThat(Math.min(alpha[i], 1 - alpha[i])).as("light " + i).isBetween(0f, 1e-4f);
            drawing.append(alpha[i] > 0.5f ? '#' : '.').append(i % columns == columns - 1 ? "\n" : "");
        }
        return drawing.toString();
    }
}
