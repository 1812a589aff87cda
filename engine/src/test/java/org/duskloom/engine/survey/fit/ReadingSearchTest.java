package org.duskloom.engine.survey.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.duskloom.engine.display.Display;
import org.duskloom.engine.display.PlacedProp;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.survey.Dimensions;
import org.duskloom.engine.survey.MeasuredProp;
import org.duskloom.engine.survey.Wiring;
import org.duskloom.engine.survey.WiringKind;
import org.joml.Matrix3dc;
import org.joml.Vector3d;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * What the search finds from sums, against what each wiring and each turn leaves over when it is tried pixel by pixel.
 */
class ReadingSearchTest {
    private static final Display GARDEN = new Gardens()
            .prop("daisy", "daisy", 100, 200, "\"turn\": 20", "\"scale\": 1.2")
            .prop("mirrored", "daisy", -300, 50, "\"turn\": 200", "\"mirror\": \"x\"", "\"reverse\": true")
            .prop("tilted", "daisy", 0, 0, "\"turn\": 15", "\"tilt\": 30", "\"yaw\": -20")
            .display();

    @ParameterizedTest
    @EnumSource(Dimensions.class)
    void findsTheLeastOfEveryForm(Dimensions dimensions) {
        Random random = new Random(5);
        for (PlacedProp prop : GARDEN.props()) {
            Stance stance = new Stance(prop, prop.placement(), dimensions);
            MeasuredProp measured = randomMeasurement(random, dimensions);
            List<Wiring> wirings = Wirings.of(prop).subList(0, 30);
            Map<Form, Double> least = tried(stance, measured, wirings, dimensions);
            List<Candidate> found =
                    ReadingSearch.candidates(stance, measured, wirings, dimensions, Double.POSITIVE_INFINITY);
            assertThat(found).extracting(Candidate::form).containsExactlyInAnyOrderElementsOf(least.keySet());
            assertThat(found).anyMatch(candidate -> candidate.form().resized());
            for (Candidate candidate : found) {
                assertThat(candidate.squaredError())
                        .as(candidate.toString())
                        .isCloseTo(least.get(candidate.form()), within(1e-5));
                assertThat(misfit(candidate, measured))
                        .as(candidate.toString())
                        .isCloseTo(candidate.squaredError(), within(1e-5));
            }
        }
    }

    /** What the search gives up early is nothing that could have been chosen. */
    @ParameterizedTest
    @EnumSource(Dimensions.class)
    void losesNothingWithinTheSlack(Dimensions dimensions) {
        Random random = new Random(6);
        PlacedProp prop = GARDEN.props().get(0);
        Stance stance = new Stance(prop, prop.placement(), dimensions);
        for (int start : new int[] {0, 5, 30}) {
            MeasuredProp measured = shifted(prop, start, random, dimensions);
            List<Candidate> all =
                    ReadingSearch.candidates(stance, measured, Wirings.of(prop), dimensions, Double.POSITIVE_INFINITY);
            double slack = new Criterion(5, 1).slack();
            List<Candidate> few = ReadingSearch.candidates(stance, measured, Wirings.of(prop), dimensions, slack);
            double best =
                    all.stream().mapToDouble(Candidate::squaredError).min().orElseThrow();
            List<Candidate> near = all.stream()
                    .filter(candidate -> candidate.squaredError() <= best + slack)
                    .toList();
            assertThat(few.containsAll(near)).isTrue();
            assertThat(near)
                    .isNotEmpty()
                    .allMatch(candidate -> candidate.wiring().describedPixel(0) == start);
        }
    }

    /**
     * Of a thousand measured pixels only some are looked at first; what is left over counts all of them all the same.
     */
    @Test
    void countsAllPixelsOfALargeProp() {
        Display large = Built.display(
                "\"pond\": {\"build\": [{\"ring\": {\"count\": 1000, \"radius\": 3000}}]}",
                "{\"name\": \"pond\", \"shape\": \"pond\", \"at\": [0, 0]}");
        Built built = new Built(large).start("pond", 200).move("pond", 100, 0);
        MeasuredProp measured = built.flat(5, 1).props().get(0);
        PlacedProp prop = large.props().get(0);
        Stance stance = new Stance(prop, prop.placement(), Dimensions.FLAT);
        Candidate best = ReadingSearch.candidates(stance, measured, Wirings.of(prop), Dimensions.FLAT, 0).stream()
                .filter(candidate ->
                        candidate.form().equals(new Form(Move.FREE, Turn.STAYS, false, false, WiringKind.OTHER_START)))
                .findFirst()
                .orElseThrow();
        assertThat(best.wiring().start()).isBetween(199, 201);
        // 2000 coordinates with a variance of 25, within four standard deviations of 25 sqrt(4000).
        assertThat(best.squaredError()).isCloseTo(50_000, within(4 * 25 * Math.sqrt(4000)));
        assertThat(misfit(best, measured)).isCloseTo(best.squaredError(), within(1e-3));
    }

    private static MeasuredProp shifted(PlacedProp prop, int start, Random random, Dimensions dimensions) {
        Positions stage = prop.placement().stageFromOwn(prop.shape().pixels());
        double[][] places = new double[3][41];
        int[] pixels = new int[41];
        for (int i = 0; i < 41; i++) {
            int at = (i + start) % 41;
            pixels[i] = i;
            places[0][i] = stage.x(at);
            places[1][i] = stage.y(at);
            places[2][i] = stage.z(at);
        }
        Positions exact = new Positions(places[0], places[1], places[2]);
        return new MeasuredProp(0, pixels, Points.noisy(exact, 5, random, dimensions));
    }

    private static MeasuredProp randomMeasurement(Random random, Dimensions dimensions) {
        int[] pixels = {0, 3, 7, 11, 12, 20, 29, 36, 39, 40, 4, 5, 6};
        Arrays.sort(pixels);
        return new MeasuredProp(0, pixels, Points.random(random, pixels.length, 300, dimensions));
    }

    private static double misfit(Candidate candidate, MeasuredProp measured) {
        double typical = Misfits.of(candidate, measured).typical();
        return typical * typical * measured.count();
    }

    /** Every wiring, mirrored or not, by the general fit or point by point. */
    private static Map<Form, Double> tried(
            Stance stance, MeasuredProp measured, List<Wiring> wirings, Dimensions dimensions) {
        Map<Form, Double> least = new HashMap<>();
        for (Wiring wiring : wirings) {
            for (boolean mirrored : new boolean[] {false, true}) {
                Positions from = described(stance, measured, mirrored, wiring);
                Positions to = stance.seen(measured.places());
                for (Turn turn : Turn.values()) {
                    for (Move move : List.of(Move.STAYS, Move.FREE)) {
                        for (Sizing sizing : List.of(Sizing.KEPT, Sizing.WITHIN_REASON)) {
                            if (turn != Turn.ALL_WAYS || dimensions == Dimensions.DEEP) {
                                Form form = new Form(move, turn, mirrored, sizing != Sizing.KEPT, wiring.kind());
                                boolean halfIsNone = mirrored && stance.mirrorsInY();
                                double left = left(from, to, turn, move, sizing, halfIsNone);
                                if (left < Double.POSITIVE_INFINITY) {
                                    least.merge(form, left, Math::min);
                                }
                            }
                        }
                    }
                }
            }
        }
        return least;
    }

    private static Positions described(Stance stance, MeasuredProp measured, boolean mirrored, Wiring wiring) {
        Positions template = stance.template(mirrored);
        double[][] from = new double[3][measured.count()];
        for (int i = 0; i < measured.count(); i++) {
            int at = wiring.describedPixel(measured.pixel(i));
            from[0][i] = template.x(at);
            from[1][i] = template.y(at);
            from[2][i] = template.z(at);
        }
        return new Positions(from[0], from[1], from[2]);
    }

    private static double left(Positions from, Positions to, Turn turn, Move move, Sizing sizing, boolean halfIsNone) {
        double least = Double.POSITIVE_INFINITY;
        double[] quarters = turn == Turn.STAYS
                ? halfIsNone ? new double[] {0, 180} : new double[] {0}
                : halfIsNone ? new double[] {90, 270} : new double[] {90, 180, 270};
        if (turn == Turn.ALL_WAYS) {
            return leftOfAllWays(from, to, move, sizing);
        }
        // Any angle: the best of very many, each about its own best scale and place.
        double[] angles = turn == Turn.FREE ? fine(from, to, move) : quarters;
        for (double angle : angles) {
            Matrix3dc rotation = Rotations.aboutZ(Math.cos(Math.toRadians(angle)), Math.sin(Math.toRadians(angle)));
            least = Math.min(least, leftOf(new Similarity(rotation, 1, new Vector3d()).of(from), to, move, sizing));
        }
        return least;
    }

    /** The angle that a bisection of the derivative finds, independent of any closed form. */
    private static double[] fine(Positions from, Positions to, Move move) {
        double best = 0;
        double least = Double.POSITIVE_INFINITY;
        for (double step = 30; step > 1e-9; step /= 3) {
            double centre = best;
            for (int i = -6; i <= 6; i++) {
                double angle = centre + i * step;
                Matrix3dc rotation = Rotations.aboutZ(Math.cos(Math.toRadians(angle)), Math.sin(Math.toRadians(angle)));
                double left = leftOf(new Similarity(rotation, 1, new Vector3d()).of(from), to, move, Sizing.KEPT);
                if (left < least) {
                    least = left;
                    best = angle;
                }
            }
        }
        return new double[] {best};
    }

    /** Points with their images in the origin have it as their mean: a fit that may move does not move them. */
    private static double leftOfAllWays(Positions from, Positions to, Move move, Sizing sizing) {
        Positions a = move == Move.FREE ? centred(from) : doubled(from);
        Positions b = move == Move.FREE ? centred(to) : doubled(to);
        Similarity fit = SimilarityFit.of(a, b, Dimensions.DEEP, Handedness.PROPER, Sizing.KEPT)
                .similarity();
        return leftOf(fit.of(a), b, Move.STAYS, sizing) / (move == Move.FREE ? 1 : 2);
    }

    private static Positions doubled(Positions points) {
        int count = points.size();
        double[][] both = new double[3][2 * count];
        for (int i = 0; i < 2 * count; i++) {
            double sign = i < count ? 1 : -1;
            both[0][i] = sign * points.x(i % count);
            both[1][i] = sign * points.y(i % count);
            both[2][i] = sign * points.z(i % count);
        }
        return new Positions(both[0], both[1], both[2]);
    }

    /** Regression through the origin, or through the means. */
    private static double leftOf(Positions from, Positions to, Move move, Sizing sizing) {
        Positions a = move == Move.FREE ? centred(from) : from;
        Positions b = move == Move.FREE ? centred(to) : to;
        double ab = 0;
        double aa = 0;
        for (int i = 0; i < a.size(); i++) {
            ab += a.x(i) * b.x(i) + a.y(i) * b.y(i) + a.z(i) * b.z(i);
            aa += a.x(i) * a.x(i) + a.y(i) * a.y(i) + a.z(i) * a.z(i);
        }
        if (sizing == Sizing.WITHIN_REASON && !(ab / aa >= 0.25 && ab / aa <= 4)) {
            return Double.POSITIVE_INFINITY;
        }
        double scale = sizing == Sizing.KEPT ? 1 : ab / aa;
        return Points.squaredDistances(new Similarity(Rotations.IDENTITY, scale, new Vector3d()).of(a), b);
    }

    private static Positions centred(Positions points) {
        double[] mean = new double[3];
        for (int i = 0; i < points.size(); i++) {
            mean[0] -= points.x(i) / points.size();
            mean[1] -= points.y(i) / points.size();
            mean[2] -= points.z(i) / points.size();
        }
        return new Similarity(Rotations.IDENTITY, 1, new Vector3d(mean)).of(points);
    }
}
