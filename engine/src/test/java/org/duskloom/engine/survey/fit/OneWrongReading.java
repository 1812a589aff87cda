package org.duskloom.engine.survey.fit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.IntStream;
import org.duskloom.engine.display.Display;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.survey.Dimensions;
import org.duskloom.engine.survey.MeasuredProp;
import org.duskloom.engine.survey.Measurements;
import org.duskloom.engine.survey.Slip;
import org.duskloom.engine.survey.SurveyResult;

/**
 * A display of which eight pixels of every prop were measured with an error of 5 mm, and one reading of one prop was
 * then written down wrongly. Everything is drawn from a seed.
 */
final class OneWrongReading {
    private static final int READINGS = 8;
    private static final double SIGMA = 5;

    /** A slip that moves a pixel less than this is hardly more than a measuring error. */
    static final double LEAST_SLIP = 60;

    private static final List<String> SHAPES =
            List.of("bloom", "daisy", "trellis", "fence", "arch", "gate", "heart", "bough");

    /** How it was written down wrongly. */
    enum Slip {
        /** Two digits that stand side by side change places. */
        DIGITS_EXCHANGED,
        /** One digit is another one. */
        WRONG_DIGIT,
        /** The sign was lost, or is one too many. */
        SIGN,
        /** The value of the row below. */
        NEIGHBOUR,
        /** Both values of the row below. */
        ROW_BELOW,
        /** The decimal point is one place too far to the right or to the left. */
        DECIMAL
    }

    /** Blocks of shapes, in millimetres; what is not here stands in {@link Gardens}. */
    private static final String OTHERS = """
            "bloom": {"build": [
              {"points": [[0, 0]]},
              {"ring": {"count": 12, "radius": 80, "start": 90, "direction": "clockwise"}},
              {"ring": {"count": 24, "radius": 160, "start": 90, "direction": "clockwise"}},
              {"spokes": {"count": 8, "pixels": 3, "from": 200, "to": 290, "start": 90, "direction": "clockwise"}}]},
            "trellis": {"build": [
              {"grid": {"rows": 12, "columns": 8, "spacing": [150, 150], "corner": "bottom-left", "path": "serpentine"}}]},
            "fence": {"build": [{"line": {"from": [-2700, 0], "to": [2700, 0], "count": 75}}]},
            "arch": {"build": [{"arc": {"count": 40, "radius": 1200, "from": 180, "to": 0}}]},
            "gate": {"build": [{"polyline": {"points": [[0, 0], [0, 1800], [900, 2100], [900, 0]], "count": 50}}]},
            "heart": {"build": [
              {"ring": {"count": 48, "radius": 700, "start": 90, "direction": "clockwise"}},
              {"ring": {"count": 14, "radius": 300, "start": 90, "direction": "clockwise"}}]},
            "bough": {"build": [
              {"points": [[0, 0], [70, 40], [150, 55], [240, 120], [330, 130], [400, 210], [520, 205], [600, 290],
                [650, 400], [760, 430], [850, 520], [980, 530]]}]}""";

    private final Random random;
    private final Display display;
    private final Built built;
    private final String prop;
    private final boolean isMoved;
    private final Slip slip;
    private final int pixel;
    private final Measurements measurements;

    OneWrongReading(long seed) {
        this.random = new Random(seed);
        List<String> props = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            props.add(String.format(
                    Locale.ROOT,
                    "{\"name\": \"prop-%d\", \"shape\": \"%s\", \"at\": [%d, %d], \"turn\": %d}",
                    i + 1,
                    SHAPES.get(random.nextInt(SHAPES.size())),
                    1800 * i - 4500 + random.nextInt(400),
                    600 + random.nextInt(2400),
                    15 * random.nextInt(24)));
        }
        this.display = Built.display(Gardens.DAISY + ",\n" + OTHERS, String.join(",\n", props));
        this.built = new Built(display);
        for (int i = 1; i <= 6; i++) {
            int count = display.map().props().get(i - 1).pixelCount();
            built.measure("prop-" + i, eightOf(count));
        }
        this.prop = "prop-" + (1 + random.nextInt(6));
        this.isMoved = random.nextInt(3) == 0;
        if (isMoved) {
            built.move(prop, 100 + random.nextInt(300), random.nextInt(200) - 100);
            if (random.nextBoolean()) {
                Positions stage = display.map().stage();
                int first = display.map().props().get(propIndex()).firstPixel();
                built.turn(prop, 6 + random.nextInt(20), stage.x(first), stage.y(first));
            }
        }
        Measurements good = built.flat(SIGMA, random.nextLong());
        this.slip = Slip.values()[random.nextInt(Slip.values().length)];
        MeasuredProp right = good.props().get(propIndex());
        MeasuredProp wrong = null;
        int which = 0;
        for (int draw = 0; wrong == null; draw++) {
            which = random.nextInt(READINGS);
            Slip drawn = draw < 50 ? slip : Slip.values()[random.nextInt(Slip.values().length)];
            wrong = wrong(right, which, drawn);
        }
        this.pixel = right.pixel(which);
        List<MeasuredProp> all = new ArrayList<>(good.props());
        all.set(propIndex(), wrong);
        this.measurements = new Measurements(all, Dimensions.FLAT);
    }

    private int propIndex() {
        return display.map().propIndex(prop).orElseThrow();
    }

    /** As people choose them: spread over the wire, by and large. */
    private int[] eightOf(int count) {
        int[] pixels = new int[READINGS];
        for (int i = 0; i < READINGS; i++) {
            int from = i * count / READINGS;
            int to = (i + 1) * count / READINGS;
            pixels[i] = 1 + from + random.nextInt(to - from);
        }
        return pixels;
    }

    /** The readings with a slip in one; nothing if this slip would not show there. */
    private MeasuredProp wrong(MeasuredProp right, int which, Slip how) {
        double[][] at = new double[3][READINGS];
        for (int i = 0; i < READINGS; i++) {
            at[0][i] = Math.rint(right.places().x(i));
            at[1][i] = Math.rint(right.places().y(i));
        }
        int below = (which + 1) % READINGS;
        int axis = random.nextInt(2);
        double before = at[axis][which];
        switch (how) {
            case ROW_BELOW -> {
                at[0][which] = at[0][below];
                at[1][which] = at[1][below] + 1;
            }
            case NEIGHBOUR -> at[axis][which] = at[axis][below];
            case SIGN -> at[axis][which] = -before;
            case DECIMAL -> at[axis][which] = random.nextBoolean() ? 10 * before : Math.rint(before / 10);
            case DIGITS_EXCHANGED -> at[axis][which] = exchanged((int) before);
            case WRONG_DIGIT -> at[axis][which] = wrongDigit((int) before);
        }
        double dx = at[0][which] - right.places().x(which);
        double dy = at[1][which] - right.places().y(which);
        boolean shows = Math.sqrt(dx * dx + dy * dy) >= LEAST_SLIP;
        return shows ? right.at(new Positions(at[0], at[1], at[2])) : null;
    }

    private int exchanged(int value) {
        char[] digits = String.valueOf(Math.abs(value)).toCharArray();
        if (digits.length < 2) {
            return value;
        }
        int at = random.nextInt(digits.length - 1);
        char kept = digits[at];
        digits[at] = digits[at + 1];
        digits[at + 1] = kept;
        return Integer.signum(value) * Integer.parseInt(new String(digits));
    }

    private int wrongDigit(int value) {
        char[] digits = String.valueOf(Math.abs(value)).toCharArray();
        digits[random.nextInt(digits.length)] = (char) ('0' + random.nextInt(10));
        return Integer.signum(value) * Integer.parseInt(new String(digits));
    }

    SurveyResult survey() {
        return Survey.compare(display, measurements, OptionalDouble.empty());
    }

    Display display() {
        return display;
    }

    Measurements measurements() {
        return measurements;
    }

    String prop() {
        return prop;
    }

    boolean isMoved() {
        return isMoved;
    }

    int pixel() {
        return pixel;
    }

    /** How far the wrong reading is from where the pixel hangs. */
    double distance() {
        double[] hangs = built.place(prop, pixel);
        MeasuredProp wrong = measurements.props().get(propIndex());
        int index = IntStream.range(0, READINGS)
                .filter(i -> wrong.pixel(i) == pixel)
                .findFirst()
                .orElseThrow();
        double dx = wrong.places().x(index) - hangs[0];
        double dy = wrong.places().y(index) - hangs[1];
        return Math.sqrt(dx * dx + dy * dy);
    }

    @Override
    public String toString() {
        return slip + " of pixel " + (pixel + 1) + " of " + prop + ", "
                + display.props().get(propIndex()).shape().name() + (isMoved ? ", moved" : "") + ", by "
                + Math.rint(distance()) + " among "
                + Arrays.toString(IntStream.range(0, READINGS)
                        .map(i -> measurements.props().get(propIndex()).pixel(i) + 1)
                        .toArray());
    }
}
