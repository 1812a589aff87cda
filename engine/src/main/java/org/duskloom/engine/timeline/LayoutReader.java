package org.duskloom.engine.timeline;

import java.util.Optional;
import org.duskloom.engine.document.Fields;
import org.duskloom.engine.document.Node;
import org.duskloom.engine.document.ObjectNode;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.time.Lapse;

/** Reads how the effect of a cue is laid over its members. */
final class LayoutReader {
    private final Fields fields;
    private final CueContext context;

    LayoutReader(Fields fields, CueContext context) {
        this.fields = fields;
        this.context = context;
    }

    Layout read() {
        Spread spread = fields.value(CueFields.SPREAD);
        Axes axes = fields.value(CueFields.AXES);
        Fit fit = fields.value(CueFields.FIT);
        PixelOrder order = fields.value(CueFields.ORDER);
        Optional<Stagger> stagger = stagger();
        boolean whole = !fields.has(CueFields.SPREAD) || saysWhole();
        if (whole && stagger.isPresent()) {
            context.problems()
                    .error(
                            fields.location(CueFields.STAGGER),
                            "\"stagger\" needs members with clocks of their own",
                            "add \"spread\": \"each\"");
        }
        if (whole && axes != Axes.STAGE) {
            context.problems()
                    .error(
                            fields.location(CueFields.AXES),
                            "\"axes\" is \"" + axes.word() + "\", but one canvas for all has the axes of the stage",
                            "add \"spread\": \"each\"");
        }
        return new Layout(spread, axes, fields.location(CueFields.AXES), fit, order, stagger);
    }

    /** Where the word is wrong, another one may have been meant. */
    private boolean saysWhole() {
        return fields.node(CueFields.SPREAD).orElse(null) instanceof TextNode text
                && text.value().equals(Spread.WHOLE.word());
    }

    /** How the starts are spread. */
    Optional<Stagger> stagger() {
        return fields.node(CueFields.STAGGER).flatMap(this::stagger);
    }

    private Optional<Stagger> stagger(Node node) {
        if (!(node instanceof ObjectNode)) {
            return context.orZero(fields, CueFields.STAGGER)
                    .map(time -> new Stagger(StaggerBy.MEMBERS, time, node.location()));
        }
        Fields written = Fields.of(node, CueFields.STAGGER_OBJECT, fields.label(CueFields.STAGGER), context.problems())
                .orElseThrow();
        StaggerBy by = written.value(CueFields.STAGGER_BY);
        Optional<Lapse> time = context.orZero(written, CueFields.STAGGER_TIME);
        return time.map(length -> new Stagger(by, length, node.location()));
    }
}
