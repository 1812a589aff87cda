package org.duskloom.engine.wire;

import java.util.Arrays;
import java.util.Optional;
import org.duskloom.engine.document.Fields;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.text.ShortestDecimal;

/** Reads the wires that current flows through: leads, and lines from pixel to pixel. */
final class WireReader {
    /** Wire is not pulled straight from place to place. */
    private static final double LONGER_THAN_STRAIGHT = 1.1;

    private final Positions stage;
    private final double metresPerUnit;
    private final Problems problems;

    /**
     * A reader.
     *
     * @param stage where pixels hang, by global index
     * @param metresPerUnit how many metres the unit of all lengths is
     */
    WireReader(Positions stage, double metresPerUnit, Problems problems) {
        this.stage = stage;
        this.metresPerUnit = metresPerUnit;
        this.problems = problems;
    }

    /** A lead; nothing if it is wrong. */
    Optional<Lead> lead(Fields fields) {
        Optional<Conductor> conductor = conductor(fields);
        Optional<Double> length = fields.given(PowerFields.LENGTH);
        return conductor.flatMap(wire -> length.map(units -> new Lead(wire, units * metresPerUnit)));
    }

    /**
     * The line of a port; nothing if it is wrong.
     *
     * @param pixels the global index of each pixel of the chain; {@link Link#DARK} for those without a place
     */
    Optional<PowerLine> line(Fields fields, int[] pixels) {
        Optional<Conductor> conductor = conductor(fields);
        Optional<Double> pitch = fields.given(PowerFields.PITCH);
        if (conductor.isEmpty() || fields.has(PowerFields.PITCH) && pitch.isEmpty()) {
            return Optional.empty();
        }
        if (pitch.isPresent()) {
            double[] metres = new double[pixels.length - 1];
            Arrays.fill(metres, pitch.get() * metresPerUnit);
            return Optional.of(new PowerLine(conductor.get(), metres, true));
        }
        if (pixels.length > 1
                && Arrays.stream(pixels).filter(pixel -> pixel != Link.DARK).count() < 2) {
            problems.error(
                    fields.location(),
                    fields.what() + " has no \"pitch\", and its chain no two pixels whose places are known",
                    "say with \"pitch\" how long the wire from pixel to pixel is");
            return Optional.empty();
        }
        return Optional.of(new PowerLine(conductor.get(), fromPlaces(pixels), false));
    }

    /** Reports what is wrong with a line whatever its pixels are. */
    void check(Fields fields) {
        conductor(fields);
        fields.given(PowerFields.PITCH);
    }

    private Optional<Conductor> conductor(Fields fields) {
        Optional<Conductor> byGauge = fields.given(PowerFields.AWG).map(awg -> Conductor.ofGauge(awg.intValue()));
        Optional<Conductor> byArea =
                fields.given(PowerFields.MM2).map(area -> new Conductor(ShortestDecimal.of(area) + " mm2", area));
        return byGauge.isPresent() ? byGauge : byArea;
    }

    /**
     * From place to place. Pixels without a place share the way between those beside them evenly; before the first and
     * after the last place the way is as long as it is between others in the mean.
     */
    private double[] fromPlaces(int[] pixels) {
        double[] metres = new double[pixels.length - 1];
        int last = -1;
        int first = -1;
        double all = 0;
        for (int i = 0; i < pixels.length; i++) {
            if (pixels[i] == Link.DARK) {
                continue;
            }
            if (last >= 0) {
                double way = LONGER_THAN_STRAIGHT * metresPerUnit * stage.distance(pixels[last], pixels[i]);
                Arrays.fill(metres, last, i, way / (i - last));
                all += way;
            } else {
                first = i;
            }
            last = i;
        }
        if (first < 0) {
            return metres;
        }
        double mean = last > first ? all / (last - first) : 0;
        Arrays.fill(metres, 0, first, mean);
        Arrays.fill(metres, last, metres.length, mean);
        return metres;
    }
}
