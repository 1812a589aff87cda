package org.duskloom.engine.timeline;

import java.util.Map;
import java.util.Optional;
import org.duskloom.engine.document.DeclaredField;
import org.duskloom.engine.document.Field;
import org.duskloom.engine.document.Fields;
import org.duskloom.engine.document.Node;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.text.Quoted;
import org.duskloom.engine.time.ExactTime;
import org.duskloom.engine.time.Lapse;
import org.duskloom.engine.time.TimeContext;
import org.duskloom.engine.time.TimeText;

/**
 * What reading a cue needs to know of the timeline or scene that it stands in.
 *
 * @param whole what it stands in, for messages
 * @param times what the words in its times refer to
 * @param end the end of the whole
 * @param scenes what cues may play
 * @param problems where errors go
 */
record CueContext(String whole, TimeContext times, ExactTime end, SceneBook scenes, Problems problems) {
    /** This, with instants that have names. */
    CueContext withMarks(Map<String, ExactTime> instantByName) {
        return new CueContext(whole, times.withMarks(instantByName), end, scenes, problems);
    }

    /** This, where there are instants that cannot be read. */
    CueContext withFaultyMarks() {
        return new CueContext(whole, times.withFaultyMarks(), end, scenes, problems);
    }

    /** An instant, not beyond the end of the whole. */
    Optional<ExactTime> instant(Fields fields, DeclaredField<Node> field) {
        return fields.node(field)
                .filter(node -> hasNoSign(node, fields.label(field)))
                .flatMap(node -> Values.time(node, fields.label(field), times, problems))
                .filter(instant -> isWithin(fields.node(field).orElseThrow(), fields.label(field), instant));
    }

    /** A named instant. */
    Optional<ExactTime> marker(Field marker) {
        String what = "marker " + Quoted.of(marker.name());
        return Values.time(marker.value(), what, times, problems)
                .filter(instant -> isWithin(marker.value(), what, instant));
    }

    /**
     * A start that is written with a sign.
     *
     * @param from what it counts from
     * @param hint what that is, for messages
     */
    Optional<ExactTime> after(ExactTime from, String hint, Fields fields) {
        String what = fields.label(CueFields.AT);
        Optional<ExactTime> start = fields.node(CueFields.AT)
                .flatMap(node -> Values.timeFrom(node, what, from, times.withoutMarks(), problems));
        if (start.isPresent() && start.get().isNegative()) {
            problems.error(
                    fields.location(CueFields.AT),
                    what + " is " + start.get().negated() + " before " + whole + " starts",
                    hint);
            return Optional.empty();
        }
        return start.filter(instant -> isWithin(fields.node(CueFields.AT).orElseThrow(), what, instant));
    }

    /** A length of time above zero. */
    Optional<Lapse> length(Fields fields, DeclaredField<Node> field) {
        return fields.node(field)
                .flatMap(node -> Values.lengthAboveZero(node, fields.label(field), times.withoutMarks(), problems));
    }

    /** A length of time that may be zero. */
    Optional<Lapse> orZero(Fields fields, DeclaredField<Node> field) {
        return fields.node(field)
                .flatMap(node -> Values.length(node, fields.label(field), times.withoutMarks(), problems));
    }

    private boolean hasNoSign(Node node, String what) {
        if (!(node instanceof TextNode text) || !TimeText.isSigned(text.value())) {
            return true;
        }
        problems.error(
                node.location(),
                what + " is " + Quoted.of(text.value()) + ", but only \"at\" of a cue counts from the cue before",
                "leave the sign out; how long a cue lasts is written as \"for\"");
        return false;
    }

    private boolean isWithin(Node node, String what, ExactTime instant) {
        if (instant.compareTo(end) <= 0) {
            return true;
        }
        problems.error(node.location(), what + " is " + instant, whole + " ends at " + end);
        return false;
    }
}
