package org.duskloom.engine.timeline;

import java.util.Optional;
import org.duskloom.engine.color.CssColor;
import org.duskloom.engine.color.LinearColor;
import org.duskloom.engine.document.Node;
import org.duskloom.engine.document.NumberNode;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.document.ValueKind;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.problem.TextFormatException;
import org.duskloom.engine.text.Quoted;
import org.duskloom.engine.time.Easing;
import org.duskloom.engine.time.ExactTime;
import org.duskloom.engine.time.Lapse;
import org.duskloom.engine.time.TimeContext;
import org.duskloom.engine.time.TimeText;

/** Reads the short texts of a timeline at their place: times, colours and easings. */
public final class Values {
    /** A time, whatever it counts from. */
    public static final ValueKind.Own TIME = ValueKind.Own.of("time", new ValueKind.Text("time"));

    /** A colour of CSS. */
    public static final ValueKind.Own COLOR = ValueKind.Own.of("colour", new ValueKind.Text("colour"));

    /** An easing of CSS. */
    public static final ValueKind.Own EASING = ValueKind.Own.of("easing", new ValueKind.Text("easing"));

    private static final double SURELY_MILLISECONDS = 100;
    private static final double SURELY_SECONDS = 10;

    private Values() {}

    /** An instant that is not negative. */
    public static Optional<ExactTime> time(Node node, String what, TimeContext context, Problems problems) {
        return hasPlus(node, what, problems)
                ? Optional.empty()
                : time(node, what, problems, text -> TimeText.parse(text, context));
    }

    /** An instant above zero. */
    static Optional<ExactTime> timeAboveZero(Node node, String what, TimeContext context, Problems problems) {
        return hasPlus(node, what, problems)
                ? Optional.empty()
                : time(node, what, problems, text -> TimeText.parseAboveZero(text, context));
    }

    /** An instant, which may be negative; with a sign it counts from another one. */
    static Optional<ExactTime> timeFrom(
            Node node, String what, ExactTime from, TimeContext context, Problems problems) {
        return time(node, what, problems, text -> TimeText.parseFrom(text, from, context));
    }

    /** A length of time. */
    public static Optional<Lapse> length(Node node, String what, TimeContext context, Problems problems) {
        return hasPlus(node, what, problems)
                ? Optional.empty()
                : time(node, what, problems, text -> TimeText.parseLength(text, context));
    }

    /** A length of time above zero. */
    public static Optional<Lapse> lengthAboveZero(Node node, String what, TimeContext context, Problems problems) {
        return hasPlus(node, what, problems)
                ? Optional.empty()
                : time(node, what, problems, text -> TimeText.parseLengthAboveZero(text, context));
    }

    private static <T> Optional<T> time(Node node, String what, Problems problems, Parser<T> parser) {
        if (node instanceof NumberNode number) {
            problems.error(
                    node.location(),
                    what + " must be a time, not the number " + number.written(),
                    "write it with a unit, such as " + withUnit(number));
            return Optional.empty();
        }
        return parse(node, what, "a time, such as \"3s\"", problems, parser);
    }

    /** Who writes a plus means that the time counts from something, as it does in {@code at}; that is an error. */
    private static boolean hasPlus(Node node, String what, Problems problems) {
        if (!(node instanceof TextNode text) || !text.value().strip().startsWith("+")) {
            return false;
        }
        problems.error(
                node.location(),
                what + " is " + Quoted.of(text.value()) + ", but only \"at\" of a cue counts from the cue before",
                "leave the sign out");
        return true;
    }

    /** What was probably meant: hundreds count milliseconds, what is under ten counts seconds. */
    private static String withUnit(NumberNode number) {
        String seconds = "\"" + number.written() + "s\"";
        String milliseconds = "\"" + number.written() + "ms\"";
        if (number.value() >= SURELY_MILLISECONDS) {
            return milliseconds;
        }
        return number.value() < SURELY_SECONDS || number.value() != Math.rint(number.value())
                ? seconds
                : seconds + " or " + milliseconds;
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
            if (e.isToldElsewhere()) {
                return Optional.empty();
            }
            problems.error(node.location(), what + ": " + e.getMessage(), e.hint());
            return Optional.empty();
        }
    }

    /** Reads one kind of short text. */
    private interface Parser<T> {
        T parse(String text) throws TextFormatException;
    }
}
