package org.duskloom.engine.timeline;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.duskloom.engine.document.DeclaredField;
import org.duskloom.engine.document.Fields;
import org.duskloom.engine.document.Node;
import org.duskloom.engine.document.ObjectNode;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.time.ExactTime;
import org.duskloom.engine.time.Lapse;
import org.duskloom.engine.time.TimeText;

/**
 * Works out when the cues of some lists start and end, where they may count from each other: each after those that it
 * counts from. What counts from something that has no time, because that is wrong, has none either, and nothing is said
 * of it.
 */
final class CueInstants {
    private final CueContext context;
    private final InstantNames names;
    private final List<CueInstant> instants = new ArrayList<>();

    private CueInstants(List<List<OpenCue>> lists, Map<String, InstantNames.Marker> markers, CueContext context) {
        this.context = context;
        this.names = new InstantNames(lists, markers);
        for (List<OpenCue> list : lists) {
            for (int i = 0; i < list.size(); i++) {
                instants.add(new CueInstant(list.get(i), false));
                instants.add(new CueInstant(list.get(i), true));
                if (i > 0) {
                    list.get(i).follows(list.get(i - 1));
                }
            }
        }
    }

    /**
     * Gives the cues of the lists their times.
     *
     * @param lists whose cues follow each other
     * @param markers by name
     * @return what is named, as far as its time is known
     */
    static Map<String, ExactTime> workOut(
            List<List<OpenCue>> lists, Map<String, InstantNames.Marker> markers, CueContext context) {
        CueInstants all = new CueInstants(lists, markers, context);
        for (CueInstant instant : InstantOrder.firstKnownFirst(all.instants, all::references, context.problems())) {
            instant.cue().finds(() -> all.read(instant));
        }
        return all.names.clear();
    }

    private List<InstantOrder.Reference> references(CueInstant instant) {
        OpenCue cue = instant.cue();
        List<InstantOrder.Reference> references = new ArrayList<>();
        if (!instant.end()) {
            at(cue).ifPresent(at -> addTo(references, cue, at));
            return references;
        }
        references.add(new InstantOrder.Reference(new CueInstant(cue, false), at(cue).orElse(null)));
        until(cue).ifPresent(until -> addTo(references, cue, until));
        repeatUntil(cue).ifPresent(until -> addTo(references, cue, until));
        return references;
    }

    private void addTo(List<InstantOrder.Reference> references, OpenCue cue, TextNode written) {
        if (TimeText.isSigned(written.value())) {
            cue.before()
                    .ifPresent(before ->
                            references.add(new InstantOrder.Reference(new CueInstant(before, true), written)));
        }
        names.meaning(cue, written.value())
                .filter(InstantNames.Meaning::isClear)
                .ifPresent(meaning ->
                        meaning.cues().forEach(from -> references.add(new InstantOrder.Reference(from, written))));
    }

    private static Optional<TextNode> at(OpenCue cue) {
        return text(cue.fields().node(CueFields.AT));
    }

    private static Optional<TextNode> until(OpenCue cue) {
        return text(cue.fields().node(CueFields.UNTIL));
    }

    private static Optional<TextNode> repeatUntil(OpenCue cue) {
        return cue.fields()
                .node(CueFields.REPEAT)
                .flatMap(repeat -> repeat instanceof ObjectNode object
                        ? text(object.value(CueFields.REPEAT_UNTIL.name()))
                        : Optional.empty());
    }

    private static Optional<TextNode> text(Optional<Node> written) {
        return written.flatMap(node -> node instanceof TextNode text ? Optional.of(text) : Optional.empty());
    }

    private void read(CueInstant instant) {
        if (instant.end()) {
            readEnd(instant.cue());
        } else {
            start(instant.cue()).ifPresent(instant.cue()::startsAt);
        }
    }

    private Optional<ExactTime> start(OpenCue cue) {
        Fields fields = cue.fields();
        if (!fields.has(CueFields.AT)) {
            return Optional.of(ExactTime.ZERO);
        }
        if (at(cue).map(TextNode::value).filter(TimeText::isSigned).isPresent()) {
            Optional<OpenCue> previous = cue.before();
            return previous.isEmpty()
                    ? context.after(ExactTime.ZERO, "the first cue of a list counts from its start", fields)
                    : previous.get()
                            .end()
                            .flatMap(end -> context.after(end, "the cue before it ends at " + end, fields));
        }
        return knowing(cue, fields, CueFields.AT, at(cue)).flatMap(known -> known.instant(fields, CueFields.AT));
    }

    private void readEnd(OpenCue cue) {
        Fields fields = cue.fields();
        Optional<Lapse> length =
                knowing(cue, fields, CueFields.UNTIL, until(cue)).flatMap(known -> CueTimes.length(cue, known));
        length.ifPresent(cue::lasts);
        Optional<Node> repeatNode = fields.node(CueFields.REPEAT);
        Optional<Repeat> repeat = repeatNode.flatMap(node ->
                knowing(cue, fields, CueFields.REPEAT, repeatUntil(cue)).flatMap(known -> Repeat.read(node, known)));
        if (cue.start().isEmpty() || length.isEmpty() || repeat.isPresent() != repeatNode.isPresent()) {
            return;
        }
        ExactTime at = cue.start().get();
        Optional<Plays> plays = repeat.isEmpty()
                ? Optional.of(Plays.once(at, at.plus(context.times().lasting(length.get(), at))))
                : repeat.get().plays(at, length.get(), CueTimes.saysLength(fields), context);
        plays.ifPresent(cue::isPlayed);
    }

    /** What a time of a cue is read with; nothing if it counts from something that has no time. */
    private Optional<CueContext> knowing(OpenCue cue, Fields fields, DeclaredField<?> field, Optional<TextNode> time) {
        if (time.isEmpty() || !TimeText.namesMark(time.get().value())) {
            return Optional.of(context);
        }
        Optional<InstantNames.Meaning> meaning = names.meaning(cue, time.get().value());
        if (meaning.isEmpty()) {
            Map<String, ExactTime> known = new HashMap<>();
            names.labels().forEach(label -> known.put(label, ExactTime.ZERO));
            return Optional.of(context.withMarks(known));
        }
        if (!meaning.get().isClear()) {
            context.problems()
                    .error(
                            time.get().location(),
                            fields.label(field) + ": \"@" + meaning.get().label() + "\" may be "
                                    + String.join(" or ", meaning.get().places()),
                            "give each a name of its own");
            return Optional.empty();
        }
        return meaning.get()
                .time()
                .map(known -> context.withMarks(Map.of(meaning.get().label(), known)));
    }
}
