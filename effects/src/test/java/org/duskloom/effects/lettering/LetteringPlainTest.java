package org.duskloom.effects.lettering;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import org.duskloom.effects.Canvases;
import org.duskloom.effects.Look;
import org.duskloom.effects.Painting;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.SettingException;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What is true of any line of text on any lights: how much light it gives, and where the middle of it is. An H of
 * {@code twig.bdf} has 12 dots, is 4 of 5 dots wide and is the same turned by half a turn.
 */
class LetteringPlainTest {
    private static final int DOTS = 12;

    /** 61 by 41 lights in the middle of cells of 1/30: a field of 61/30 by 41/30. */
    private static final int COLUMNS = 61;

    private static final int ROWS = 41;
    private static final double CELL = 1 / 30.0;
    private static final double[][] PLACES = Canvases.grid(COLUMNS, ROWS);
    private static final Canvas CANVAS = Canvases.of(PLACES);

    @TempDir
    Path folder;

    private Path twig;

    @BeforeEach
    void writeTheFont() throws IOException {
        twig = Files.write(folder.resolve("twig.bdf"), BdfReaderTest.twig());
    }

    private Look text(String text) {
        return Look.of("lettering").with("text", text).with("font", Optional.of(twig));
    }

    private static double sum(float[] alpha) {
        double sum = 0;
        for (float level : alpha) {
            sum += level;
        }
        return sum;
    }

    /** The middle of the light: right of and above the middle of the canvas. */
    private static double[] middle(float[] alpha) {
        double x = 0;
        double y = 0;
        for (int i = 0; i < alpha.length; i++) {
            x += alpha[i] * PLACES[i][0];
            y += alpha[i] * PLACES[i][1];
        }
        return new double[] {x / sum(alpha), y / sum(alpha)};
    }

    /**
     * Each light shows how much of its cell is covered, so the sum is the area of the letter: dots of size / 5 of the
     * height of the canvas, whatever the turn and wherever between the lights they lie.
     */
    @ParameterizedTest
    @CsvSource({"0.5, 0, 0", "0.61, 0, 0.013", "0.4, 30, 0.1", "0.7, 45, -0.05", "0.33, 77, 0", "0.5, -120, 0.2"})
    void givesAsMuchLightAsItsDotsAreLarge(double size, double turn, double up) throws SettingException {
        Look look = text("H").flag("still").flag("smooth");
        float[] alpha = Painting.of(look.with("size", size).with("turn", turn).with("up", up), CANVAS, 0)
                .alpha();
        double dot = size * ROWS * CELL / 5;
        assertThat(sum(alpha) * CELL * CELL).isCloseTo(DOTS * dot * dot, within(0.01 * DOTS * dot * dot));
        assertThat(middle(alpha)[0]).isCloseTo(0, within(CELL / 4));
        assertThat(middle(alpha)[1]).isCloseTo(up * ROWS * CELL, within(CELL / 4));
    }

    /**
     * In one pass of 10 s its middle goes from just outside to just outside: straight, half the way at half of the
     * time, and as far from the middle as half of the canvas and half of the H are, as seen along the way.
     */
    @ParameterizedTest
    @CsvSource({
        "0, 0, false",
        "180, 0, false",
        "90, 0, true",
        "30, 0, false",
        "250, 0, true",
        "0, 90, false",
        "45, 30, false"
    })
    void movesEvenly(double toward, double turn, boolean reverse) throws SettingException {
        Look look = text("H").flag("smooth").seconds("every", 10).with("size", 0.4);
        look = look.with("toward", toward).with("turn", turn);
        look = reverse ? look.flag("reverse") : look;
        double dot = 0.4 * ROWS * CELL / 5;
        double wayX = Math.cos(Math.toRadians(toward));
        double wayY = Math.sin(Math.toRadians(toward));
        double across = Math.abs(Math.cos(Math.toRadians(toward - turn)));
        double upward = Math.abs(Math.sin(Math.toRadians(toward - turn)));
        // The whole line has seven rows, of which two are under the H.
        double out =
                (Math.abs(wayX) * COLUMNS * CELL + Math.abs(wayY) * ROWS * CELL + across * 4 * dot + upward * 9 * dot)
                        / 2;
        for (double second : new double[] {3.5, 4.2, 5, 5.3, 6.5}) {
            double[] middle = middle(Painting.of(look, CANVAS, second).alpha());
            double gone = (second / 5 - 1) * (reverse ? -1 : 1) * out;
            assertThat(middle[0]).as("at %s", second).isCloseTo(gone * wayX, within(CELL / 3));
            assertThat(middle[1]).as("at %s", second).isCloseTo(gone * wayY, within(CELL / 3));
        }
    }

    /** Unless it shall be smooth each light is on or off, wherever the line lies: dots are whole lights. */
    @ParameterizedTest
    @CsvSource({"0.6, 0, 0, 180", "0.37, 90, 0.123, 90", "1.4, 180, -0.2, 33", "0.2, 270, 0.31, 300"})
    void lightsWholeLights(double size, double turn, double up, double toward) throws SettingException {
        Look look = text("Hig").with("size", size).with("turn", turn).with("up", up);
        look = look.with("toward", toward).seconds("every", 10);
        for (double second = 0; second < 10; second += 0.77) {
            for (float level : Painting.of(look, CANVAS, second).alpha()) {
                assertThat(Math.min(level, 1 - level)).isBetween(-1e-6f, 1e-4f);
            }
        }
        double side = Math.max(1, Math.rint(size * ROWS / 5));
        if (size < 0.5) {
            float[] still =
                    Painting.of(look.with("up", 0).with("text", "H"), CANVAS, 5).alpha();
            assertThat(sum(still)).isCloseTo(DOTS * side * side, within(1e-3));
        }
    }

    /** Each prop shows the line to itself, by its own lights, as if it were alone; other wiring changes nothing. */
    @Test
    void standsOnEachPropByItself() throws SettingException {
        double[][] large = Canvases.grid(31, 9);
        double[][] small = Canvases.moved(Canvases.grid(12, 7), 0.2, 0, 0, 0.2);
        double[][] otherwise = new double[large.length][];
        for (int i = 0; i < large.length; i++) {
            otherwise[i] = large[large.length - 1 - i];
        }
        Canvas both =
                new Canvases().member("large", otherwise).member("small", small).build();
        Look look = text("Hi g").with("size", 0.7).palette("red", "blue");
        for (double second : new double[] {2.5, 4, 5.1}) {
            float[] blue = Painting.of(look, both, second).blue();
            float[] alone = Painting.of(look, Canvases.of(large), second).blue();
            for (int i = 0; i < large.length; i++) {
                assertThat(blue[large.length - 1 - i]).isEqualTo(alone[i]);
            }
            assertThat(Arrays.copyOfRange(blue, large.length, blue.length))
                    .containsExactly(
                            Painting.of(look, Canvases.of(small), second).blue());
            assertThat(sum(alone)).isPositive();
        }
    }
}
