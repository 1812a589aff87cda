package org.duskloom.engine.survey;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.duskloom.engine.display.Units;

/**
 * A display as described, compared with the display as built.
 *
 * @param units what lengths are measured in
 * @param propCount how many props the display has
 * @param dimensions whether depth was measured
 * @param photo how the photo lies on the stage, if the measurements are from one
 * @param overall what is wrong with all measurements alike; the rest is told of the measurements as they would be
 *     without it
 * @param measured the measurements as they are judged: on the stage, without what is wrong with all of them
 * @param noise how well was measured
 * @param findings the props of which pixels were measured, in wiring order
 * @param exchanges props that changed places
 * @param motions props that moved together
 */
public record SurveyResult(
        Units units,
        int propCount,
        Dimensions dimensions,
        Optional<PhotoAlignment> photo,
        Optional<Overall> overall,
        Measurements measured,
        Noise noise,
        List<Finding> findings,
        List<Exchange> exchanges,
        List<CommonMotion> motions) {
    public SurveyResult {
        Objects.requireNonNull(units, "units");
        Objects.requireNonNull(dimensions, "dimensions");
        Objects.requireNonNull(photo, "photo");
        Objects.requireNonNull(overall, "overall");
        Objects.requireNonNull(measured, "measured");
        Objects.requireNonNull(noise, "noise");
        findings = List.copyOf(findings);
        exchanges = List.copyOf(exchanges);
        motions = List.copyOf(motions);
    }

    /** The findings with that verdict. */
    public List<Finding> findings(Verdict verdict) {
        return findings.stream().filter(finding -> finding.verdict() == verdict).toList();
    }
}
