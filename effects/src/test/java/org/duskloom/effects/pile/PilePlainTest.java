package org.duskloom.effects.pile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.function.IntToDoubleFunction;
import org.duskloom.effects.Canvases;
import org.duskloom.effects.Look;
import org.duskloom.effects.Painting;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.SettingException;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The whole of a pass against lights that are moved one after the other: each is let go when the one before has
 * arrived, and what of each step is covered by a light is measured. Nothing of it is in closed form.
 */
class PilePlainTest {
    private static final int STEPS = 10;
    private static final Canvas ROW = Canvases.of(Canvases.row(STEPS));

    /** How much of a step lies between two places along the order. */
    private static double covered(int step, int steps, double from, double to) {
        double start = Math.max(from, (double) step / steps);
        double end = Math.min(to, (step + 1.0) / steps);
        return Math.max(0, end - start) * steps;
    }

    /**
     * What is lit when so much of the filling is done, by running every light in turn.
     *
     * @param evenSpeed whether a light takes as long as its way is; else all take as long
     * @param share how much of each light counts
     */
    private static double[] lit(int steps, int lights, boolean evenSpeed, double done, IntToDoubleFunction share) {
        double all = 0;
        for (int light = 0; light < lights; light++) {
            all += evenSpeed ? 1 - (double) light / lights : 1;
        }
        double left = done * all;
        double[] lit = new double[steps];
        for (int light = 0; light < lights && left > 0; light++) {
            double takes = evenSpeed ? 1 - (double) light / lights : 1;
            double way = 1 - (double) light / lights;
            double low = 1 - way * Math.min(1, left / takes);
            for (int step = 0; step < steps; step++) {
                lit[step] += share.applyAsDouble(light) * covered(step, steps, low, low + 1.0 / lights);
            }
            left -= takes;
        }
        return lit;
    }

    @ParameterizedTest
    @CsvSource({
        "1, speed, 0",
        "1, time, 0.3",
        "3, speed, 0.25",
        "4, time, 0",
        "7, speed, 0.1",
        "10, time, 0.5",
        "23, speed, 0.2",
        "100, time, 0"
    })
    void isWhatLightsOneAfterTheOtherMake(int lights, String steady, double hold) throws SettingException {
        Look look = Look.of("pile")
                .seconds("every", 10)
                .with("lights", lights)
                .with("steady", steady)
                .with("hold", hold);
        for (int i = 0; i < 97; i++) {
            double passed = i / 97.0;
            double done = Math.min(1, passed / (1 - hold));
            float[] alpha = Painting.of(look, ROW, 10 * passed).alpha();
            double[] expected = lit(STEPS, lights, steady.equals("speed"), done, light -> 1);
            for (int step = 0; step < STEPS; step++) {
                assertThat((double) alpha[step])
                        .as("step %s after %s of a pass", step, passed)
                        .isCloseTo(expected[step], within(2e-5));
            }
        }
    }

    /** Never less is lit than before while a pile grows, and all of it is lit in the end, whatever the order is. */
    @ParameterizedTest
    @CsvSource({"start, 5", "end, 5", "start, 12", "end, 40"})
    void restingLightsStay(String ground, int lights) throws SettingException {
        Look look = Look.of("pile")
                .seconds("every", 10)
                .with("lights", lights)
                .with("hold", 0)
                .with("ground", ground)
                .with("then", "stay");
        int far = ground.equals("start") ? 0 : STEPS - 1;
        float before = 0;
        for (int i = 0; i <= 100; i++) {
            float[] alpha = Painting.of(look, ROW, i / 10.0).alpha();
            assertThat(alpha[far]).as("at the ground").isGreaterThanOrEqualTo(before);
            before = alpha[far];
        }
        assertThat(Painting.of(look, ROW, 10).alpha()).containsOnly(1);
    }

    /**
     * Each light in its own colour, light m of L having m / (L - 1) of blue, on members of unlike length: what lights
     * share of a step is the mean by their shares of it, however many there are.
     */
    @ParameterizedTest
    @CsvSource({"2, speed", "5, time", "12, speed", "40, time", "333, speed", "1000, time"})
    void lightsKeepTheirColours(int lights, String steady) throws SettingException {
        int[] lengths = {3, 10, 64, 1};
        Canvases members = new Canvases();
        Arrays.stream(lengths).forEach(length -> members.member("of-" + length, Canvases.row(length)));
        Look look = Look.of("pile").seconds("every", 10).with("lights", lights).with("steady", steady);
        look = look.with("hold", 0).with("along", "light").palette("red", "blue");
        for (double second = 0.37; second < 10; second += 1.1) {
            Painting painting = Painting.of(look, members.build(), second);
            int pixel = 0;
            for (int length : lengths) {
                boolean evenSpeed = steady.equals("speed");
                double[] all = lit(length, lights, evenSpeed, second / 10, light -> 1);
                double[] blue = lit(length, lights, evenSpeed, second / 10, light -> light / (lights - 1.0));
                for (int step = 0; step < length; step++, pixel++) {
                    assertThat((double) painting.alpha()[pixel]).isCloseTo(all[step], within(5e-5));
                    assertThat((double) painting.blue()[pixel]).isCloseTo(blue[step], within(5e-5));
                    assertThat((double) painting.red()[pixel]).isCloseTo(all[step] - blue[step], within(5e-5));
                }
            }
        }
    }

    /**
     * Through the ground is the way in seen in a mirror with time turned round, so the light that came first goes
     * first: with the colours turned round too, it is the same picture.
     */
    @ParameterizedTest
    @CsvSource({"4, speed", "7, time", "30, speed"})
    void leavesAsAMirrorOfTheWayIn(int lights, String steady) throws SettingException {
        Look in = Look.of("pile").seconds("every", 8).with("lights", lights).with("steady", steady);
        in = in.with("hold", 0).with("along", "light").palette("red", "blue");
        Look out = Look.of("pile").seconds("every", 8).with("lights", lights).with("steady", steady);
        out = out.with("hold", 0).with("along", "light").palette("blue", "red").with("then", "through");
        for (double second = 0.3; second < 8; second += 0.9) {
            float[] before = Painting.of(in, ROW, second).blue();
            float[] after = Painting.of(out, ROW, 16 - second).blue();
            for (int step = 0; step < STEPS; step++) {
                assertThat(after[STEPS - 1 - step]).as("at %s", second).isCloseTo(before[step], within(5e-5f));
            }
        }
    }
}
