package org.duskloom.engine.timeline;

import java.util.Optional;
import org.duskloom.engine.document.Fields;
import org.duskloom.engine.document.Node;
import org.duskloom.engine.document.ObjectNode;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.time.ExactTime;

/** Reads how the effect of a cue is laid over its members. */
final class LayoutReader {
    private final Fields fields;
    private final CueContext context;

    LayoutReader(Fields fields, CueContext context) {
        this.fields = fields;
        this.context = context;
    }

    Layout read() {
        Spread spread = word("spread", Spread.class, Spread.WHOLE);
        Axes axes = word("axes", Axes.class, Axes.STAGE);
        Fit fit = word("fit", Fit.class, Fit.CONTAIN);
        PixelOrder order = word("order", PixelOrder.class, PixelOrder.WIRING);
        Optional<Stagger> stagger = fields.node("stagger").flatMap(this::stagger);
        boolean whole = !fields.has("spread") || saysWhole();
        if (whole && stagger.isPresent()) {
            context.problems()
                    .error(
                            fields.location("stagger"),
                            "\"stagger\" needs members with clocks of their own",
                            "add \"spread\": \"each\"");
        }
        if (whole && axes == Axes.OWN) {
            context.problems()
                    .error(
                            fields.location("axes"),
                            "\"axes\" is \"own\", but one canvas for all has the axes of the stage",
                            "add \"spread\": \"each\"");
        }
        return new Layout(spread, axes, fit, order, stagger);
    }

    /** Where the word is wrong, another one may have been meant. */
    private boolean saysWhole() {
        return fields.node("spread").orElse(null) instanceof TextNode text
                && text.value().equals(Spread.WHOLE.word());
    }

    private Optional<Stagger> stagger(Node node) {
        if (!(node instanceof ObjectNode)) {
            return context.orZero(fields, "stagger").map(time -> new Stagger(StaggerBy.MEMBERS, time, node.location()));
        }
        Fields written = fields.fields("stagger").orElseThrow();
        StaggerBy by = written.choice("by", Word.allOf(StaggerBy.class))
                .map(word -> Word.find(StaggerBy.class, word))
                .orElse(StaggerBy.MEMBERS);
        written.require("time");
        Optional<ExactTime> time = context.orZero(written, "time");
        written.finish();
        return time.map(length -> new Stagger(by, length, node.location()));
    }

    private <E extends Enum<E> & Word> E word(String name, Class<E> choice, E standard) {
        return fields.choice(name, Word.allOf(choice))
                .map(word -> Word.find(choice, word))
                .orElse(standard);
    }
}
