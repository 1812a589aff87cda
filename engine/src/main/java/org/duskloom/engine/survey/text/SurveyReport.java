package org.duskloom.engine.survey.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.duskloom.engine.survey.CommonMotion;
import org.duskloom.engine.survey.Dimensions;
import org.duskloom.engine.survey.Exchange;
import org.duskloom.engine.survey.Finding;
import org.duskloom.engine.survey.Muddle;
import org.duskloom.engine.survey.PhotoAlignment;
import org.duskloom.engine.survey.Reading;
import org.duskloom.engine.survey.Rival;
import org.duskloom.engine.survey.Shortage;
import org.duskloom.engine.survey.Slip;
import org.duskloom.engine.survey.SurveyResult;
import org.duskloom.engine.survey.Verdict;
import org.duskloom.engine.text.Counted;

/** Says in words what a survey found, and writes entries to paste into the display. */
public final class SurveyReport {
    /** A turn that has to be larger than that to show is not known well. */
    private static final double WELL_KNOWN_DEGREES = 10;

    /** Standard deviations that a turn has to have to show. */
    private static final double SHOWS = 4;

    private final SurveyResult result;
    private final Wording wording;
    private final List<String> lines = new ArrayList<>();

    private SurveyReport(SurveyResult result) {
        this.result = result;
        this.wording = new Wording(result.units());
    }

    /** The report: lines that end with LF. */
    public static String of(SurveyResult result) {
        SurveyReport report = new SurveyReport(result);
        report.head();
        result.overall().ifPresent(overall -> report.lines.addAll(OverallWording.lines(overall, result.units())));
        report.together();
        report.findings(Verdict.DIFFERENT, "differs", "differ");
        report.findings(Verdict.UNEXPLAINED, "differs in a way of its own", "differ in ways of their own");
        report.findings(Verdict.UNDETERMINED, "was not measured enough", "were not measured enough");
        report.asDescribed();
        report.entries();
        return String.join("\n", report.lines) + "\n";
    }

    private void head() {
        int pixels = result.findings().stream().mapToInt(SurveyReport::pixels).sum();
        lines.add("measured: " + Counted.of(pixels, "pixel") + " of "
                + result.findings().size() + " of " + Counted.of(result.propCount(), "prop")
                + (result.dimensions() == Dimensions.DEEP ? ", with depth" : ""));
        result.photo().ifPresent(photo -> photo(photo, pixels));
        String source = switch (result.noise().source()) {
            case MEASURED -> "worked out from the measurements";
            case FLOOR -> "as much as a pixel of the picture, or 3 mm; the places scatter by less";
            case TOLERANCE -> "a third of the tolerance";
            case ASSUMED -> "assumed, because too little was measured to tell";
            case IMPLAUSIBLE -> "assumed, because no reading comes near; --tolerance says it instead";
        };
        lines.add(
                "measuring error: about " + wording.length(result.noise().sigma()) + " in each coordinate, " + source);
    }

    private static int pixels(Finding finding) {
        int muddled = finding.muddles().stream()
                .mapToInt(muddle -> muddle.pixels().size())
                .sum();
        return finding.measuredPixels() + finding.slips().size() + muddled;
    }

    private void photo(PhotoAlignment photo, int pixels) {
        lines.add("from a photo: one unit of the picture is "
                + Wording.number(photo.unitsPerPictureUnit(), 4) + " "
                + result.units().word() + ", " + wording.askew(photo.turnDegrees()) + ", y counts "
                + (photo.countsDown() ? "down" : "up") + "; " + photo.agreeingPixels() + " of "
                + Counted.of(pixels, "pixel") + " agree with that");
        photo.camera().ifPresent(camera -> lines.addAll(new CameraWording(wording).lines(camera)));
        lines.add("a photo does not show whether the whole display is moved, turned or of another size");
        if (photo.isDoubtful(pixels)) {
            lines.add("that few pixels agree may mean that the picture is of another display, mirrored, or taken from"
                    + " behind: then nothing below is true");
        }
    }

    private void together() {
        for (Exchange exchange : result.exchanges()) {
            lines.add("");
            lines.add("changed places: " + exchange(exchange.props()));
        }
        for (CommonMotion motion : result.motions()) {
            lines.add("");
            lines.add("moved together: " + String.join(", ", motion.props()));
            lines.add("  " + motion(motion));
            if (motion.props().size() == result.findings().size()
                    && motion.props().size() > 1) {
                lines.add("  that is everything: perhaps the measurements count from another zero point");
            }
        }
    }

    private static String exchange(List<String> props) {
        if (props.size() == 2) {
            return props.get(0) + " and " + props.get(1);
        }
        List<String> seats = new ArrayList<>();
        for (int i = 0; i < props.size(); i++) {
            seats.add(props.get(i) + " hangs where " + props.get((i + 1) % props.size()) + " should");
        }
        return String.join(", ", seats);
    }

    private String motion(CommonMotion motion) {
        CommonMotion.Point move = motion.move();
        if (!motion.isTurn()) {
            return "all of them " + wording.way(move.x(), move.y(), move.z());
        }
        CommonMotion.Point pivot = motion.pivot();
        CommonMotion.Point axis = motion.axis();
        boolean upright = result.dimensions() == Dimensions.FLAT;
        return "turned by " + wording.turn(motion.degrees()) + wording.give(wording.degrees(motion.errorDegrees()))
                + " about " + wording.place(pivot.x(), pivot.y(), pivot.z())
                + (upright
                        ? ""
                        : ", round the axis (" + Wording.number(axis.x(), 2) + ", " + Wording.number(axis.y(), 2) + ", "
                                + Wording.number(axis.z(), 2) + ")");
    }

    private void findings(Verdict verdict, String one, String several) {
        List<Finding> findings = result.findings(verdict);
        if (findings.isEmpty()) {
            return;
        }
        lines.add("");
        lines.add(Counted.of(findings.size(), "prop") + " " + (findings.size() == 1 ? one : several) + ":");
        findings.forEach(this::finding);
    }

    private void finding(Finding finding) {
        lines.add(finding.prop().prop().name() + ": "
                + switch (finding.verdict()) {
                    case AS_DESCRIBED, DIFFERENT ->
                        wording.changes(finding.reading().changes());
                    case UNEXPLAINED -> "bent, or wired in an order of its own" + nearest(finding.reading());
                    case UNDETERMINED -> "not where it is described, but not enough to tell how";
                });
        if (finding.measuredPixels() > 0) {
            lines.add("  " + Counted.of(finding.measuredPixels(), "pixel") + ", "
                    + wording.length(finding.misfitAsDescribed()) + " from where they are described"
                    + leftOver(finding));
        }
        finding.placeOf().ifPresent(other -> lines.add("  that is where \"" + other + "\" is described"));
        finding.rivals().forEach(this::rival);
        finding.shortage().ifPresent(shortage -> lines.add("  " + shortage(shortage)));
        leftOut(finding, "");
    }

    private String nearest(Reading reading) {
        return reading.changes().isEmpty() ? "" : "; nearest to: " + wording.changes(reading.changes());
    }

    private String leftOver(Finding finding) {
        Reading reading = finding.reading();
        boolean unknown =
                finding.verdict() == Verdict.UNEXPLAINED && reading.changes().isEmpty();
        if (finding.verdict() == Verdict.UNDETERMINED || unknown) {
            return "";
        }
        String most = wording.length(reading.largestMisfit());
        boolean nothing = most.equals(wording.length(0));
        return "; left over: " + wording.length(reading.typicalMisfit())
                + (nothing ? "" : ", at most " + most + " at pixel " + (reading.farthestPixel() + 1));
    }

    private void rival(Rival rival) {
        lines.add("  or just as well: " + wording.changes(rival.reading().changes()));
        lines.add("    "
                + rival.test()
                        .map(this::test)
                        .orElseGet(() -> "no pixel tells them apart: " + sameness(rival.mostApart())));
    }

    private String sameness(double mostApart) {
        String apart = wording.length(mostApart);
        return apart.equals(wording.length(0))
                ? "both put all pixels at the same places"
                : "they put none farther apart than " + apart + ", which errors hide";
    }

    private String test(Rival.Test test) {
        return "measure pixel " + (test.pixel() + 1) + " to tell: it would be at "
                + wording.place(test.rivalX(), test.rivalY(), test.rivalZ()) + " instead of "
                + wording.place(test.preferredX(), test.preferredY(), test.preferredZ());
    }

    private static String shortage(Shortage shortage) {
        String pixel = "pixel " + (shortage.pixelToMeasure() + 1);
        return switch (shortage.kind()) {
            case ONE_PLACE ->
                "measured at one place only, which tells no turn, no mirror image and no wiring: measure " + pixel
                        + " and one more as well";
            case ON_A_LINE ->
                "measured along one line only, which does not tell a mirror image: measure " + pixel + " as well";
            case IN_A_PLANE ->
                "measured in one plane only, which does not tell a mirror image: measure " + pixel + " as well";
            case TOO_FEW -> "too few pixels: measure " + pixel + " as well, and some more";
        };
    }

    private void leftOut(Finding finding, String name) {
        finding.muddles().forEach(muddle -> lines.add("  " + name + muddle(muddle)));
        finding.slips().forEach(slip -> slip(slip, name));
    }

    private String muddle(Muddle muddle) {
        List<String> numbers =
                muddle.pixels().stream().map(pixel -> String.valueOf(pixel + 1)).toList();
        int last = numbers.size() - 1;
        String pixels = "pixels " + String.join(", ", numbers.subList(0, last)) + " and " + numbers.get(last);
        if (muddle instanceof Muddle.OnePlace one) {
            return pixels + " were left out: all were measured at " + wording.place(one.x(), one.y(), one.z())
                    + ", but are described up to " + wording.length(one.extent()) + " apart";
        }
        return pixels + " were left out: their readings seem to be exchanged";
    }

    private void slip(Slip slip, String name) {
        lines.add("  " + name + "pixel " + (slip.pixel() + 1) + " was left out: it was measured "
                + wording.length(slip.distance()) + " from where the others put it");
    }

    private void asDescribed() {
        List<Finding> findings = result.findings(Verdict.AS_DESCRIBED);
        if (findings.isEmpty()) {
            return;
        }
        lines.add("");
        lines.add(Counted.of(findings.size(), "prop") + " as described: "
                + findings.stream().map(finding -> finding.prop().prop().name()).collect(Collectors.joining(", ")));
        for (Finding finding : findings) {
            String name = finding.prop().prop().name() + ": ";
            finding.shortage().ifPresent(shortage -> lines.add("  " + name + shortage(shortage)));
            weakness(finding).ifPresent(weakness -> lines.add("  " + name + weakness));
            leftOut(finding, name);
        }
    }

    private Optional<String> weakness(Finding finding) {
        return finding.estimate()
                .filter(estimate -> finding.shortage().isEmpty())
                .map(estimate -> SHOWS * estimate.errorDegrees())
                .filter(degrees -> degrees > WELL_KNOWN_DEGREES)
                .map(degrees -> "with " + Counted.of(finding.measuredPixels(), "measured pixel")
                        + " a turn of less than " + wording.degrees(Math.min(180, degrees)) + " does not show");
    }

    private void entries() {
        List<Finding> differing = result.findings(Verdict.DIFFERENT);
        if (differing.isEmpty() || result.overall().isPresent()) {
            return;
        }
        lines.add("");
        lines.add("to paste into \"props\":");
        for (Finding finding : differing) {
            Reading reading = finding.reading();
            lines.add(
                    reading.isWritable()
                            ? PropEntry.of(finding.prop(), reading, result.units()) + ","
                            : "// " + finding.prop().prop().name()
                                    + ": no entry can say that order of pixels; rewire it, or give it a shape of its own");
        }
    }
}
