package org.duskloom.engine.time;

import java.util.ArrayList;
import java.util.List;
import org.duskloom.engine.css.CssValue;
import org.duskloom.engine.problem.TextFormatException;
import org.duskloom.engine.text.Quoted;

/**
 * Makes the points of {@code linear(stop, ...)}: a stop is an output with no, one or two percentages of input, in front
 * of it or behind (W3C CSS Easing Functions Level 2, "create a linear easing function").
 */
final class LinearStopsText {
    private static final double LARGEST_OUTPUT = 1000;
    private static final String HINT =
            "write linear(0, 0.25 75%, 1): two stops or more, each a number with at most two percentages";

    private final String text;
    private final List<Double> inputs = new ArrayList<>();
    private final List<Double> outputs = new ArrayList<>();
    private double largestInput;

    LinearStopsText(String text) {
        this.text = text;
    }

    /** Inputs that fall are raised to the largest before them; missing ones are spread evenly. */
    List<LinearStops.Point> points(List<List<CssValue>> stops) throws TextFormatException {
        if (stops.size() < 2) {
            throw refuse("has a single stop");
        }
        for (int i = 0; i < stops.size(); i++) {
            addStop(stops.get(i), i == 0, i == stops.size() - 1);
        }
        fillGaps();
        List<LinearStops.Point> points = new ArrayList<>();
        for (int i = 0; i < inputs.size(); i++) {
            points.add(new LinearStops.Point(inputs.get(i), outputs.get(i)));
        }
        return points;
    }

    private void addStop(List<CssValue> stop, boolean first, boolean last) throws TextFormatException {
        double output = output(stop);
        List<CssValue> percentages = stop.stream()
                .filter(value -> value.is(CssValue.Kind.PERCENTAGE))
                .toList();
        if (percentages.isEmpty()) {
            addWithoutInput(output, first, last);
            return;
        }
        for (CssValue percentage : percentages) {
            double input = percentage.number() / 100;
            largestInput = inputs.isEmpty() ? input : Math.max(largestInput, input);
            add(largestInput, output);
        }
    }

    private void addWithoutInput(double output, boolean first, boolean last) {
        if (first) {
            largestInput = 0;
            add(0.0, output);
        } else {
            add(last ? Double.valueOf(Math.max(1, largestInput)) : null, output);
        }
    }

    private void add(Double input, double output) {
        inputs.add(input);
        outputs.add(output);
    }

    /** The one number of a stop, which must not stand between two percentages. */
    private double output(List<CssValue> stop) throws TextFormatException {
        int numberAt = -1;
        for (int i = 0; i < stop.size(); i++) {
            boolean number = stop.get(i).is(CssValue.Kind.NUMBER);
            if (number ? numberAt >= 0 : !stop.get(i).is(CssValue.Kind.PERCENTAGE)) {
                throw refuse("has " + stop.get(i).quoted() + " where it cannot stand");
            }
            numberAt = number ? i : numberAt;
        }
        boolean atAnEnd = numberAt == 0 || numberAt == stop.size() - 1;
        if (numberAt < 0 || stop.size() > 3 || !atAnEnd) {
            throw refuse("has a stop that cannot be read");
        }
        double output = stop.get(numberAt).number();
        if (Math.abs(output) > LARGEST_OUTPUT) {
            throw refuse("has the output " + stop.get(numberAt).text() + ", which is beyond -1000 or 1000");
        }
        return output;
    }

    private void fillGaps() {
        int known = 0;
        for (int i = 1; i < inputs.size(); i++) {
            if (inputs.get(i) == null) {
                continue;
            }
            double from = inputs.get(known);
            double step = (inputs.get(i) - from) / (i - known);
            for (int gap = known + 1; gap < i; gap++) {
                inputs.set(gap, from + step * (gap - known));
            }
            known = i;
        }
    }

    private TextFormatException refuse(String what) {
        return new TextFormatException("the easing " + Quoted.of(text) + " " + what, HINT);
    }
}
