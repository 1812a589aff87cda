package org.duskloom.engine.time;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.duskloom.engine.problem.TextFormatException;
import org.duskloom.engine.text.Quoted;

/**
 * One unsigned number with its unit, or one clock time.
 *
 * @param seconds how long it is; empty where beats or bars are counted
 * @param pulse what is counted; empty where it is no time of music
 * @param count how much of that
 */
record TimeTerm(Optional<ExactTime> seconds, Optional<Pulse> pulse, Ratio count) {
    private static final int MOST_DIGITS = 9;
    /** A unit before its number. */
    private static final Pattern TURNED =
            Pattern.compile("(ms|s|f|bars?|b) ?([0-9]+(?:\\.[0-9]+)?)", Pattern.CASE_INSENSITIVE);

    private static final Pattern MINUTES_AND_SECONDS =
            Pattern.compile("(?:m|min|mins) ?([0-9]{1,4})(\\.[0-9]{1,9})? ?s(?:ec)?");

    private static final String NO_BEATS =
            "say it in the timeline: \"beats\": {\"tempo\": 120}, or the name of a label track";
    private static final Pattern CLOCK =
            Pattern.compile("(?:([0-9]{1,6}):(?=[0-5][0-9]:))?([0-9]{1,6}):([0-5][0-9])(?:\\.([0-9]{1,9}))?");

    /**
     * Reads one.
     *
     * @param term the number with its unit
     * @param whole the text that the term stands in, for messages
     * @throws TextFormatException if it cannot be read
     * @throws ArithmeticException if it does not fit
     */
    static TimeTerm parse(String term, String whole, TimeContext context) throws TextFormatException {
        Reader reader = new Reader(whole, context);
        return term.indexOf(':') >= 0 ? seconds(reader.clock(term)) : reader.amount(term);
    }

    private static TimeTerm seconds(ExactTime time) {
        return new TimeTerm(Optional.of(time), Optional.empty(), Ratio.ZERO);
    }

    private static TimeTerm of(Pulse pulse, ExactTime number) {
        return new TimeTerm(Optional.empty(), Optional.of(pulse), Ratio.of(number.numerator(), number.denominator()));
    }

    /** The instant that it names by itself. */
    ExactTime place(TimeContext context) {
        return seconds.orElseGet(() -> context.place(pulse.orElseThrow(), count));
    }

    /** How long it is. */
    Lapse lapse(TimeContext context) {
        return seconds.map(Lapse::of)
                .orElseGet(() -> Lapse.of(context.beats().orElseThrow(), pulse.orElseThrow(), count));
    }

    /** The instant that is so much later, or earlier. */
    ExactTime movedFrom(ExactTime from, boolean back, TimeContext context) {
        return seconds.map(time -> back ? from.minus(time) : from.plus(time))
                .orElseGet(() -> context.moved(from, pulse.orElseThrow(), back ? count.negated() : count));
    }

    /** What can be written where these words have a meaning. */
    static String usable(TimeContext context) {
        return "write a number and a unit, such as \"3s\", \"250ms\""
                + (context.rate().isPresent() ? ", \"1:02.5\" or \"90f\"" : " or \"1:02.5\"");
    }

    /** Reads a term that stands in a text. */
    private record Reader(String whole, TimeContext context) {
        ExactTime clock(String term) throws TextFormatException {
            Matcher clock = CLOCK.matcher(term);
            if (!clock.matches()) {
                throw refuse(
                        "is no clock time",
                        "write minutes:seconds or hours:minutes:seconds, two digits after each colon and below 60,"
                                + " such as \"1:02.5\"");
            }
            long hours = clock.group(1) == null ? 0 : Long.parseLong(clock.group(1));
            long seconds = hours * 3600 + Long.parseLong(clock.group(2)) * 60 + Long.parseLong(clock.group(3));
            return decimal(Long.toString(seconds), clock.group(4) == null ? "" : clock.group(4));
        }

        TimeTerm amount(String term) throws TextFormatException {
            int dot = endOfDigits(term, 0);
            boolean hasDot = term.startsWith(".", dot);
            int end = hasDot ? endOfDigits(term, dot + 1) : dot;
            String whole = term.substring(0, dot);
            String decimals = hasDot ? term.substring(dot + 1, end) : "";
            if (decimals.isEmpty() && (hasDot || whole.isEmpty())) {
                Matcher turned = TURNED.matcher(term);
                throw refuse(
                        "has no readable number",
                        turned.matches()
                                ? "the number goes first: \"" + turned(turned.group(1), turned.group(2)) + "\""
                                : usable(context));
            }
            if (whole.length() > MOST_DIGITS || decimals.length() > MOST_DIGITS) {
                throw refuse("has too many digits", "at most nine before the dot and nine after it");
            }
            return inUnit(decimal(whole, decimals), term.substring(end), term);
        }

        private static int endOfDigits(String text, int from) {
            int end = from;
            while (end < text.length() && text.charAt(end) >= '0' && text.charAt(end) <= '9') {
                end++;
            }
            return end;
        }

        private static String turned(String unit, String number) {
            String small = unit.toLowerCase(Locale.ROOT);
            return number + (!small.startsWith("bar") ? small : number.equals("1") ? " bar" : " bars");
        }

        private TimeTerm inUnit(ExactTime number, String unit, String term) throws TextFormatException {
            return switch (unit) {
                case "s" -> seconds(number);
                case "ms" -> seconds(number.times(1, 1000));
                case "f" -> seconds(frames(number));
                case "b" -> beats(number);
                case " bar", " bars", "bar", "bars" -> bars(number);
                case "" -> throw refuse("has no unit", "write \"" + term + "s\" for seconds or \"" + term + "ms\"");
                default ->
                    throw refuse(
                            "has the unknown unit " + Quoted.of(unit),
                            unitHint(term.substring(0, term.length() - unit.length()), unit));
            };
        }

        private ExactTime frames(ExactTime number) throws TextFormatException {
            if (context.rate().isEmpty()) {
                throw refuse("counts frames, but no frame rate is known here", usable(context));
            }
            if (number.denominator() != 1) {
                throw refuse("is not a whole number of frames", "write a whole number, or a time in \"s\" or \"ms\"");
            }
            return context.rate().get().timeOf(number.numerator());
        }

        private TimeTerm beats(ExactTime number) throws TextFormatException {
            if (context.beats().isEmpty()) {
                throw withoutBeats("counts beats, but it is not known where they lie");
            }
            return of(Pulse.BEAT, number);
        }

        private TimeTerm bars(ExactTime number) throws TextFormatException {
            if (context.beats().isEmpty()) {
                throw withoutBeats("counts bars, but it is not known where the beats lie");
            }
            if (!context.beats().get().hasBars()) {
                throw refuse(
                        "counts bars, but it is not known which beats start one",
                        "label the first beat of every bar \"bar\" instead of \"beat\"");
            }
            return of(Pulse.BAR, number);
        }

        private TextFormatException withoutBeats(String what) {
            TextFormatException fault = refuse(what, NO_BEATS);
            return context.beatsFaulty() ? fault.toldElsewhere() : fault;
        }

        private TextFormatException refuse(String what, String hint) {
            return new TextFormatException("the time " + Quoted.of(whole) + " " + what, hint);
        }

        /** @param number as it is written */
        private String unitHint(String number, String unit) {
            if (unit.startsWith(",")) {
                return "decimals follow a dot, as in \"1.5s\"";
            }
            String lower = unit.strip().toLowerCase(Locale.ROOT);
            if (lower.equals("beat") || lower.equals("beats")) {
                return "write beats as \"8b\"";
            }
            if (lower.equals("bar") || lower.equals("bars")) {
                return "units are in small letters, and bars are written as \"2 bars\"";
            }
            if (lower.matches("s|sec|secs|seconds?") && !unit.equals("S")) {
                return "write seconds as \"" + number + "s\"";
            }
            Matcher both = MINUTES_AND_SECONDS.matcher(lower);
            if (both.matches() && number.matches("[0-9]{1,5}")) {
                long all = 60 * Long.parseLong(number) + Long.parseLong(both.group(1));
                return "write minutes and seconds as \"" + all + (both.group(2) == null ? "" : both.group(2)) + "s\"";
            }
            if (unit.startsWith(" ") && lower.matches("ms|f|b")) {
                return "leave no space between the number and its unit: \"" + number + lower + "\"";
            }
            return switch (unit.toLowerCase(Locale.ROOT)) {
                case "m", "min", "h", " m", " min", " h" -> "write minutes and hours as \"2:30\" or \"1:00:00\"";
                case "b" -> context.beats().isPresent() ? inSmallLetters(unit) : units();
                case "s", "ms", "f" -> inSmallLetters(unit);
                default -> units();
            };
        }

        private static String inSmallLetters(String unit) {
            return "units are in small letters: \"" + unit.toLowerCase(Locale.ROOT) + "\"";
        }

        private String units() {
            return "units: s, ms" + (context.rate().isPresent() ? ", f (frames)" : "")
                    + (context.beats().isPresent() ? ", b (beats), bars" : "");
        }

        private static ExactTime decimal(String digits, String decimals) {
            long denominator = 1;
            for (int i = 0; i < decimals.length(); i++) {
                denominator *= 10;
            }
            return new ExactTime(Math.addExact(scaled(digits, denominator), scaled(decimals, 1)), denominator);
        }

        private static long scaled(String digits, long factor) {
            return digits.isEmpty() ? 0 : Math.multiplyExact(Long.parseLong(digits), factor);
        }
    }
}
