package org.duskloom.engine.timeline;

import java.util.Optional;
import org.duskloom.engine.color.CssColor;
import org.duskloom.engine.color.LinearColor;
import org.duskloom.engine.document.Node;
import org.duskloom.engine.document.NumberNode;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.problem.TextFormatException;
import org.duskloom.engine.time.Easing;
import org.duskloom.engine.time.ExactTime;
import org.duskloom.engine.time.TimeContext;
import org.duskloom.engine.time.TimeText;

/** Reads the short texts of a timeline at their place: times, colours and easings. */
public final class Values {
    private Values() {}

    /** A time that is not negative. */
    public static Optional<ExactTime> time(Node node, String what, TimeContext context, Problems problems) {
        if (node instanceof NumberNode number) {
            problems.error(
                    node.location(),
                    what + " must be a time, not the number " + number.written(),
                    "write it with a unit, such as \"" + number.written() + "s\"");
            return Optional.empty();
        }
        return parse(node, what, "a time, such as \"3s\"", problems, text -> TimeText.parse(text, context));
    }

    /** A colour. */
    public static Optional<LinearColor> color(Node node, String what, Problems problems) {
        return parse(node, what, "a colour, such as \"#ff9e5e\"", problems, CssColor::parse);
    }

    /** An easing. */
    public static Optional<Easing> easing(Node node, String what, Problems problems) {
        return parse(node, what, "an easing, such as \"ease-in-out\"", problems, Easing::parse);
    }

    private static <T> Optional<T> parse(Node node, String what, String expected, Problems problems, Parser<T> parser) {
        if (!(node instanceof TextNode text)) {
            problems.error(node.location(), what + " is " + node.kind(), "it must be " + expected);
            return Optional.empty();
        }
        try {
            return Optional.of(parser.parse(text.value()));
        } catch (TextFormatException e) {
            problems.error(node.location(), what + ": " + e.getMessage(), e.hint());
            return Optional.empty();
        }
    }

    /** Reads one kind of short text. */
    private interface Parser<T> {
        T parse(String text) throws TextFormatException;
    }
}
