package org.duskloom.engine.survey.fit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.IntFunction;
import org.duskloom.engine.display.Display;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.survey.Exchange;
import org.duskloom.engine.survey.Finding;
import org.duskloom.engine.survey.MeasuredProp;
import org.duskloom.engine.survey.Measurements;
import org.duskloom.engine.survey.Noise;
import org.duskloom.engine.survey.Overall;
import org.duskloom.engine.survey.PhotoAlignment;
import org.duskloom.engine.survey.SurveyResult;
import org.joml.Vector3d;
import org.joml.Vector3dc;

/**
 * Compares a display as described with where its pixels were measured: of every prop it tells whether it is moved,
 * turned, mirrored, of another size, wired in another order, exchanged with others, or moved together with others.
 */
public final class Survey {
    private final Display display;
    private final Measurements measurements;
    private final Optional<PhotoAlignment> photo;
    private final Optional<Overall> overall;
    private final double floor;
    private final Vector3dc origin;
    private final double diagonal;

    private Survey(
            Display display,
            Measurements measurements,
            Optional<PhotoAlignment> photo,
            Optional<Overall> overall,
            double floor) {
        this.display = display;
        this.floor = floor;
        this.measurements = measurements;
        this.photo = photo;
        this.overall = overall;
        Positions stage = display.map().stage();
        this.origin = new Vector3d(stage.x(0), stage.y(0), stage.z(0));
        this.diagonal = Extent.diagonal(stage);
    }

    /**
     * Compares.
     *
     * @param display what is described
     * @param measurements where pixels hang: stage coordinates, or places in a photo of the whole display: how that
     *     shows the stage is found first, from what most pixels agree with; what is then told rests on the depth that
     *     is described
     * @param tolerance how far off a good measurement may be, in the display's unit, above 0; worked out from the
     *     measurements if it is not given
     * @throws IllegalArgumentException if the tolerance is not above 0, a prop is measured that there is not, or too
     *     little was measured for a photo
     */
    public static SurveyResult compare(Display display, Measurements measurements, OptionalDouble tolerance) {
        if (tolerance.isPresent() && !(tolerance.getAsDouble() > 0 && Double.isFinite(tolerance.getAsDouble()))) {
            throw new IllegalArgumentException("a tolerance of " + tolerance.getAsDouble());
        }
        for (MeasuredProp measured : measurements.props()) {
            if (measured.propIndex() >= display.props().size()) {
                throw new IllegalArgumentException("prop " + measured.propIndex());
            }
        }
        if (measurements.isPhoto()) {
            LaidPhoto photo = LaidPhoto.of(measurements, display)
                    .orElseThrow(() -> new IllegalArgumentException("too few places to lay a photo on the stage"));
            PhotoAlignment described = photo.described();
            double floor = LaidPhoto.floor(measurements, display, described.unitsPerPictureUnit());
            Survey survey =
                    new Survey(display, photo.onStage(measurements), Optional.of(described), Optional.empty(), floor);
            return survey.result(
                    tolerance,
                    criterion -> new OtherDepths(
                            photo,
                            measurements,
                            display.map(),
                            measured -> new Study(survey.subject(measured), criterion)));
        }
        Optional<OverallSearch.Found> found = OverallSearch.of(display, measurements);
        Measurements corrected = found.map(OverallSearch.Found::corrected).orElse(measurements);
        return new Survey(display, corrected, Optional.empty(), found.map(OverallSearch.Found::overall), 0)
                .result(tolerance, criterion -> propIndex -> Map.of());
    }

    /** @param otherDepths studies of props at the depths of others, by the criterion that they are judged by */
    private SurveyResult result(
            OptionalDouble tolerance, Function<Criterion, IntFunction<Map<Integer, Study>>> otherDepths) {
        Map<Integer, Subject> subjects = subjects();
        Noise noise = tolerance.isPresent()
                ? NoiseEstimate.ofTolerance(tolerance.getAsDouble())
                : NoiseEstimate.estimate(
                        List.copyOf(subjects.values()),
                        diagonal,
                        display.units().millimetres(),
                        floor);
        Criterion criterion = new Criterion(noise.sigma(), subjects.size());
        Map<Integer, Study> studies = studies(subjects, criterion);
        Map<Integer, String> placeOf = new HashMap<>();
        List<Exchange> exchanges = Exchanges.settle(
                display.props(), studies, measurements.dimensions(), otherDepths.apply(criterion), placeOf);
        List<CommonMotions.Group> groups =
                CommonMotions.of(List.copyOf(studies.values()), measurements.dimensions(), criterion, origin);
        return new SurveyResult(
                display.units(),
                display.props().size(),
                measurements.dimensions(),
                photo,
                overall,
                measured(studies),
                noise,
                findings(studies, groups, placeOf),
                exchanges,
                groups.stream().map(CommonMotions.Group::described).toList());
    }

    /** The measurements, those of props of another depth than described laid there. */
    private Measurements measured(Map<Integer, Study> studies) {
        List<MeasuredProp> all = studies.values().stream()
                .map(study -> study.subject().everyOne())
                .toList();
        return new Measurements(all, measurements.dimensions());
    }

    /** Props are looked at side by side; none depends on another one here. */
    private Map<Integer, Subject> subjects() {
        List<Subject> subjects =
                measurements.props().parallelStream().map(this::subject).toList();
        Map<Integer, Subject> byProp = new TreeMap<>();
        for (int i = 0; i < subjects.size(); i++) {
            byProp.put(measurements.props().get(i).propIndex(), subjects.get(i));
        }
        return byProp;
    }

    private Subject subject(MeasuredProp measured) {
        double usual = NoiseEstimate.usual(diagonal, display.units().millimetres());
        Subject subject =
                new Subject(display.props().get(measured.propIndex()), measured, measurements.dimensions(), floor);
        subject.leaveOutSlips(NoiseEstimate.least(diagonal), NoiseEstimate.good(usual));
        return subject;
    }

    private static Map<Integer, Study> studies(Map<Integer, Subject> subjects, Criterion criterion) {
        List<Integer> props = List.copyOf(subjects.keySet());
        List<Study> studies = props.parallelStream()
                .map(prop -> new Study(subjects.get(prop), criterion))
                .toList();
        Map<Integer, Study> byProp = new TreeMap<>();
        for (int i = 0; i < props.size(); i++) {
            byProp.put(props.get(i), studies.get(i));
        }
        return byProp;
    }

    private static List<Finding> findings(
            Map<Integer, Study> studies, List<CommonMotions.Group> groups, Map<Integer, String> placeOf) {
        Map<Study, Integer> motionOf = new HashMap<>();
        for (int i = 0; i < groups.size(); i++) {
            for (Study study : groups.get(i).studies()) {
                motionOf.put(study, i);
            }
        }
        List<Finding> findings = new ArrayList<>();
        studies.forEach((prop, study) -> {
            FindingBuilder builder = new FindingBuilder(study, Optional.ofNullable(placeOf.get(prop)));
            Integer motion = motionOf.get(study);
            findings.add(
                    motion == null
                            ? builder.alone()
                            : builder.together(motion, groups.get(motion).motion()));
        });
        return findings;
    }
}
