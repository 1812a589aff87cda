package org.duskloom.engine.survey.fit;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.IntUnaryOperator;
import java.util.stream.IntStream;
import org.duskloom.engine.display.Display;
import org.duskloom.engine.display.DisplayReader;
import org.duskloom.engine.display.ShapeFiles;
import org.duskloom.engine.document.Inputs;
import org.duskloom.engine.document.JsonReader;
import org.duskloom.engine.document.SourceText;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.map.Prop;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.survey.Dimensions;
import org.duskloom.engine.survey.Finding;
import org.duskloom.engine.survey.MeasuredProp;
import org.duskloom.engine.survey.Measurements;
import org.duskloom.engine.survey.SurveyResult;

/**
 * A display as somebody hung it: begins as described, then hands move, turn and rewire it. Works on the places of the
 * pixels alone, with the JDK's own sines, so that it shares nothing with what is tested.
 */
public final class Built {
    private final Display display;
    private final Map<String, double[][]> places = new LinkedHashMap<>();
    private final Map<String, int[]> measured = new LinkedHashMap<>();

    public Built(Display display) {
        this.display = display;
        for (Prop prop : display.map().props()) {
            double[][] at = new double[prop.pixelCount()][];
            for (int i = 0; i < at.length; i++) {
                Positions stage = display.map().stage();
                int pixel = prop.firstPixel() + i;
                at[i] = new double[] {stage.x(pixel), stage.y(pixel), stage.z(pixel)};
            }
            places.put(prop.name(), at);
            measured.put(prop.name(), IntStream.range(0, at.length).toArray());
        }
    }

    public static Display display(String shapes, String props) {
        return displayIn("mm", shapes, props);
    }

    public static Display displayIn(String units, String shapes, String props) {
        String json = "{\"duskloom\": \"display/1\", \"units\": \"" + units + "\", \"shapes\": {" + shapes
                + "}, \"props\": [" + props + "]}";
        Problems problems = new Problems();
        ShapeFiles none = (written, reported) -> Optional.empty();
        return SourceText.of(json.getBytes(StandardCharsets.UTF_8), "garden.json", problems)
                .flatMap(source -> JsonReader.read(source, problems))
                .flatMap(root -> DisplayReader.read(root, none, problems))
                .orElseThrow(() -> new AssertionError(Inputs.shown(problems)));
    }

    public Display display() {
        return display;
    }

    public Built move(String name, double dx, double dy) {
        return move(name, dx, dy, 0);
    }

    public Built move(String name, double dx, double dy, double dz) {
        for (double[] place : places.get(name)) {
            place[0] += dx;
            place[1] += dy;
            place[2] += dz;
        }
        return this;
    }

    /** Counter-clockwise as the audience sees it. */
    public Built turn(String name, double degrees, double aboutX, double aboutY) {
        double cosine = Math.cos(Math.toRadians(degrees));
        double sine = Math.sin(Math.toRadians(degrees));
        for (double[] place : places.get(name)) {
            double x = place[0] - aboutX;
            double y = place[1] - aboutY;
            place[0] = aboutX + cosine * x - sine * y;
            place[1] = aboutY + sine * x + cosine * y;
        }
        return this;
    }

    /** What is on top comes toward the audience. */
    public Built tilt(String name, double degrees, double aboutY, double aboutZ) {
        double cosine = Math.cos(Math.toRadians(degrees));
        double sine = Math.sin(Math.toRadians(degrees));
        for (double[] place : places.get(name)) {
            double y = place[1] - aboutY;
            double z = place[2] - aboutZ;
            place[1] = aboutY + cosine * y - sine * z;
            place[2] = aboutZ + sine * y + cosine * z;
        }
        return this;
    }

    public Built mirrorX(String name, double aboutX) {
        for (double[] place : places.get(name)) {
            place[0] = 2 * aboutX - place[0];
        }
        return this;
    }

    public Built mirrorY(String name, double aboutY) {
        for (double[] place : places.get(name)) {
            place[1] = 2 * aboutY - place[1];
        }
        return this;
    }

    public Built resize(String name, double factor, double aboutX, double aboutY) {
        for (double[] place : places.get(name)) {
            place[0] = aboutX + factor * (place[0] - aboutX);
            place[1] = aboutY + factor * (place[1] - aboutY);
        }
        return this;
    }

    /** Pixel i now hangs where pixel described(i) did. */
    public Built rewire(String name, IntUnaryOperator described) {
        double[][] before = places.get(name);
        double[][] after = new double[before.length][];
        for (int i = 0; i < after.length; i++) {
            after[i] = before[described.applyAsInt(i)].clone();
        }
        places.put(name, after);
        return this;
    }

    public Built reverse(String name) {
        int last = places.get(name).length - 1;
        return rewire(name, i -> last - i);
    }

    public Built start(String name, int first) {
        int count = places.get(name).length;
        return rewire(name, i -> (i + first) % count);
    }

    /** Two props of one shape change their places. */
    public Built swap(String a, String b) {
        double[][] kept = places.get(a);
        places.put(a, places.get(b));
        places.put(b, kept);
        return this;
    }

    public Built shift(String name, int pixel, double dx, double dy) {
        places.get(name)[pixel - 1][0] += dx;
        places.get(name)[pixel - 1][1] += dy;
        return this;
    }

    /** Where a pixel hangs, counted from 0: x, y and z. */
    public double[] place(String name, int pixel) {
        return places.get(name)[pixel].clone();
    }

    /** Only these pixels are measured, counted from 1; none if none are given. */
    public Built measure(String name, int... pixels) {
        measured.put(name, IntStream.of(pixels).map(pixel -> pixel - 1).toArray());
        return this;
    }

    public Measurements flat(double sigma, long seed) {
        return measurements(sigma, seed, Dimensions.FLAT);
    }

    public Measurements deep(double sigma, long seed) {
        return measurements(sigma, seed, Dimensions.DEEP);
    }

    private Measurements measurements(double sigma, long seed, Dimensions dimensions) {
        Random random = new Random(seed);
        List<MeasuredProp> props = new ArrayList<>();
        places.forEach((name, at) -> {
            int[] pixels = measured.get(name);
            double[][] read = new double[3][pixels.length];
            for (int i = 0; i < pixels.length; i++) {
                for (int axis = 0; axis < dimensions.count(); axis++) {
                    read[axis][i] = at[pixels[i]][axis] + sigma * random.nextGaussian();
                }
            }
            if (pixels.length > 0) {
                props.add(new MeasuredProp(
                        display.map().propIndex(name).orElseThrow(), pixels, new Positions(read[0], read[1], read[2])));
            }
        });
        return new Measurements(props, dimensions);
    }

    public SurveyResult survey(double sigma, long seed) {
        return Survey.compare(display, flat(sigma, seed), OptionalDouble.empty());
    }

    public SurveyResult surveyInSpace(double sigma, long seed) {
        return Survey.compare(display, deep(sigma, seed), OptionalDouble.empty());
    }

    public static Finding finding(SurveyResult result, String name) {
        return result.findings().stream()
                .filter(finding -> finding.prop().prop().name().equals(name))
                .findFirst()
                .orElseThrow();
    }
}
