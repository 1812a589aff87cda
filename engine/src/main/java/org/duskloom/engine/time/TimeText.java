package org.duskloom.engine.time;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.duskloom.engine.problem.TextFormatException;
import org.duskloom.engine.text.Quoted;

/**
 * Reads a time as people write it. Every decimal is kept exact.
 *
 * <ul>
 *   <li>{@code 3s}, {@code 0.5s}, {@code 250ms}: seconds and milliseconds, with up to nine decimals;
 *   <li>{@code 1:02.5}, {@code 1:00:00}: minutes and seconds, or hours, minutes and seconds;
 *   <li>{@code 90f}: whole frames, where the context has a rate;
 *   <li>{@code 8b}, {@code 0.5b}: beats, and {@code 1 bar}, {@code 2 bars}, where the context knows where they lie. As
 *       an instant they count from the first beat, in a scene from its start; as a length from where it starts;
 *   <li>{@code @chorus}, {@code @chorus+2b}, {@code @chorus-250ms}: a mark, where the context has marks, and from there
 *       on or back by the times above. The longest name of a mark that fits is taken.
 * </ul>
 */
public final class TimeText {
    private static final int LONGEST = 200;
    private static final String ANY = "it must be 0s or later";
    private static final String ABOVE_ZERO = "it must be longer than 0s";
    private static final Pattern MUSIC = Pattern.compile("[0-9.](b| ?bars?)\\b");
    private static final Pattern OFFSET = Pattern.compile("([+-])([^+-]*)");

    private TimeText() {}

    /**
     * Reads a time that is not negative.
     *
     * @throws TextFormatException if it cannot be read or is negative
     */
    public static ExactTime parse(String text, TimeContext context) throws TextFormatException {
        ExactTime time = parseSigned(text, context);
        if (time.isNegative()) {
            throw negative(text, time, ANY);
        }
        return time;
    }

    /**
     * Reads a time above zero.
     *
     * @throws TextFormatException if it cannot be read or is zero or negative
     */
    public static ExactTime parseAboveZero(String text, TimeContext context) throws TextFormatException {
        ExactTime time = parseSigned(text, context);
        if (time.isNegative()) {
            throw negative(text, time, ABOVE_ZERO);
        }
        if (time.isZero()) {
            throw refuse(text, "is zero", ABOVE_ZERO);
        }
        return time;
    }

    /**
     * Reads a time that may be negative, such as {@code -250ms}.
     *
     * @throws TextFormatException if it cannot be read
     */
    public static ExactTime parseSigned(String text, TimeContext context) throws TextFormatException {
        return parseFrom(text, ExactTime.ZERO, context);
    }

    /**
     * Reads an instant; with a sign it counts from another one. It may be negative.
     *
     * @throws TextFormatException if it cannot be read
     */
    public static ExactTime parseFrom(String text, ExactTime from, TimeContext context) throws TextFormatException {
        return exactly(text, context, () -> read(text.strip(), from, context));
    }

    /**
     * Reads a length of time, which has no sign and counts from no mark.
     *
     * @throws TextFormatException if it cannot be read
     */
    public static Lapse parseLength(String text, TimeContext context) throws TextFormatException {
        return exactly(text, context, () -> length(text.strip(), "it must be 0s or longer", context));
    }

    /**
     * The same above zero.
     *
     * @throws TextFormatException if it cannot be read or is zero
     */
    public static Lapse parseLengthAboveZero(String text, TimeContext context) throws TextFormatException {
        Lapse lapse = exactly(text, context, () -> length(text.strip(), ABOVE_ZERO, context));
        if (lapse.isZero()) {
            throw refuse(text, "is zero", ABOVE_ZERO);
        }
        return lapse;
    }

    private static <T> T exactly(String text, TimeContext context, Reading<T> reading) throws TextFormatException {
        if (text.length() > LONGEST) {
            throw refuse(text, "is too long for a time", TimeTerm.usable(context));
        }
        try {
            return reading.value();
        } catch (ArithmeticException tooLarge) {
            throw refuse(text, "cannot be counted exactly: its fraction of a second is too long", "use fewer digits");
        }
    }

    /** Reads a text that has been looked at already. */
    private interface Reading<T> {
        T value() throws TextFormatException;
    }

    /** Whether the text counts from something that stands before it: whether it has a sign in front. */
    public static boolean isSigned(String text) {
        String time = text.strip();
        return time.startsWith("+") || time.startsWith("-");
    }

    /** Whether the text counts from a mark. */
    public static boolean namesMark(String text) {
        return text.strip().startsWith("@");
    }

    /** The mark among these from which the text counts; nothing if it does not, or names another. */
    public static Optional<String> markIn(String text, Set<String> marks) {
        return namesMark(text) && text.length() <= LONGEST
                ? MarkName.leading(text.strip().substring(1), marks)
                : Optional.empty();
    }

    /** So many beats or bars. */
    public record Count(Pulse pulse, Ratio count) {}

    /** The beats or bars that a length counts; nothing if it counts neither, or cannot be read. */
    public static Optional<Count> musicIn(String length, TimeContext context) {
        String time = length.strip();
        try {
            TimeTerm term = TimeTerm.parse(isSigned(time) ? time.substring(1) : time, time, context);
            return term.pulse().map(pulse -> new Count(pulse, term.count()));
        } catch (TextFormatException | ArithmeticException unreadable) {
            return Optional.empty();
        }
    }

    /** Whether the text counts beats or bars. */
    public static boolean countsMusic(String text) {
        return MUSIC.matcher(text).find();
    }

    private static ExactTime read(String time, ExactTime from, TimeContext context) throws TextFormatException {
        if (namesMark(time)) {
            return fromMark(time, context);
        }
        if (isSigned(time)) {
            return TimeTerm.parse(time.substring(1), time, context).movedFrom(from, time.startsWith("-"), context);
        }
        return TimeTerm.parse(time, time, context).place(context);
    }

    private static Lapse length(String time, String allowed, TimeContext context) throws TextFormatException {
        if (namesMark(time)) {
            throw refuse(time, "starts from a cue or a marker, which cannot be used here", TimeTerm.usable(context));
        }
        String unsigned = isSigned(time) ? time.substring(1) : time;
        Lapse lapse = TimeTerm.parse(unsigned, time, context).lapse(context);
        if (time.startsWith("-") && !lapse.isZero()) {
            throw negative(time, lapse.from(ExactTime.ZERO).negated(), allowed);
        }
        return lapse;
    }

    private static ExactTime fromMark(String time, TimeContext context) throws TextFormatException {
        if (context.marks().isEmpty()) {
            throw refuse(time, "starts from a cue or a marker, which cannot be used here", TimeTerm.usable(context));
        }
        Map<String, ExactTime> marks = context.marks().get();
        Optional<String> name = MarkName.leading(time.substring(1), marks.keySet());
        if (name.isEmpty()) {
            TextFormatException fault =
                    refuse(time, "names no cue and no marker", MarkName.hint(time.substring(1), marks.keySet()));
            throw context.marksFaulty() ? fault.toldElsewhere() : fault;
        }
        return moved(marks.get(name.get()), time, 1 + name.get().length(), context);
    }

    private static ExactTime moved(ExactTime mark, String time, int offsetsFrom, TimeContext context)
            throws TextFormatException {
        ExactTime total = mark;
        Matcher offset = OFFSET.matcher(time).region(offsetsFrom, time.length());
        while (offset.lookingAt()) {
            boolean back = offset.group(1).equals("-");
            total = TimeTerm.parse(offset.group(2), time, context).movedFrom(total, back, context);
            offset.region(offset.end(), time.length());
        }
        return total;
    }

    private static TextFormatException negative(String text, ExactTime time, String allowed) {
        String message = "the time " + Quoted.of(text) + " is negative (" + time + ")";
        return new TextFormatException(message, allowed);
    }

    private static TextFormatException refuse(String time, String what, String hint) {
        return new TextFormatException("the time " + Quoted.of(time) + " " + what, hint);
    }
}
