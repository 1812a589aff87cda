package org.duskloom.engine.document;

import java.math.BigDecimal;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.text.ShortestDecimal;

/**
 * A JSON number.
 *
 * @param location where it starts
 * @param value the nearest double; finite, but NaN where the reader refused the number, in which case the error is
 *     already reported
 * @param written the number as it stands in the file
 */
public record NumberNode(Location location, double value, String written) implements Node {
    /**
     * This number so many times, on top of another one. Its value is what doubles make of that, which may lie beside
     * what is worked out on paper: 0.98 and 7 times -0.14 make -1.1e-16. What is written is the number on paper.
     */
    public NumberNode added(double start, int times) {
        double sum = start + times * value;
        double paper = Double.isFinite(start) && Double.isFinite(value)
                ? decimal(start)
                        .add(decimal(onPaper()).multiply(BigDecimal.valueOf(times)))
                        .doubleValue()
                : sum;
        return new NumberNode(
                location, sum, Double.isFinite(paper) ? ShortestDecimal.of(paper) : String.valueOf(paper));
    }

    /** The nearest double of what is written. */
    double onPaper() {
        return Double.parseDouble(written);
    }

    /** By way of the double: what is written may have an exponent that makes sums of a billion digits. */
    private static BigDecimal decimal(double value) {
        return new BigDecimal(ShortestDecimal.of(value));
    }

    @Override
    public String kind() {
        return "a number";
    }
}
