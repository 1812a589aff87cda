package org.duskloom.engine.survey.fit;

import org.duskloom.engine.map.Positions;
import org.duskloom.engine.survey.Dimensions;
import org.duskloom.engine.survey.MeasuredProp;

/** How far measured pixels are from where a reading puts them. */
final class Misfits {
    private final double[] squares;

    /** Those of a reading that is fitted to these pixels. */
    static Misfits of(Candidate reading, MeasuredProp measured) {
        return new Misfits(reading, reading.similarity(measured), measured);
    }

    /** Those of a reading with the values given. */
    Misfits(Candidate reading, Similarity similarity, MeasuredProp measured) {
        Positions template =
                similarity.of(reading.stance().template(reading.form().mirrored()));
        Positions seen = reading.stance().seen(measured.places());
        squares = new double[measured.count()];
        for (int i = 0; i < squares.length; i++) {
            int at = reading.wiring().describedPixel(measured.pixel(i));
            double dx = template.x(at) - seen.x(i);
            double dy = template.y(at) - seen.y(i);
            double dz = template.z(at) - seen.z(i);
            squares[i] = dx * dx + dy * dy + dz * dz;
        }
    }

    /** Those of places that all pixels of the prop are put at. */
    Misfits(Positions places, MeasuredProp measured, Dimensions dimensions) {
        squares = new double[measured.count()];
        for (int i = 0; i < squares.length; i++) {
            int pixel = measured.pixel(i);
            double dx = places.x(pixel) - measured.places().x(i);
            double dy = places.y(pixel) - measured.places().y(i);
            double dz = dimensions == Dimensions.DEEP
                    ? places.z(pixel) - measured.places().z(i)
                    : 0;
            squares[i] = dx * dx + dy * dy + dz * dz;
        }
    }

    /** Index into the measured pixels of the one that is farthest off. */
    int worst() {
        int worst = 0;
        for (int i = 1; i < squares.length; i++) {
            worst = squares[i] > squares[worst] ? i : worst;
        }
        return worst;
    }

    double distance(int index) {
        return Math.sqrt(squares[index]);
    }

    /** The root of the mean of their squares. */
    double typical() {
        double sum = 0;
        for (double square : squares) {
            sum += square;
        }
        return Math.sqrt(sum / squares.length);
    }
}
