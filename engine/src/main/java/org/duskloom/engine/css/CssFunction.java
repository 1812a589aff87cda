package org.duskloom.engine.css;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.duskloom.engine.problem.TextFormatException;
import org.duskloom.engine.text.Quoted;

/**
 * One CSS function with plain values, such as {@code steps(4, jump-end)}.
 *
 * @param name the name in small letters
 * @param groups the values between the brackets, split at commas and then at white space; never empty, no group empty
 */
public record CssFunction(String name, List<List<CssValue>> groups) {
    private static final int LONGEST = 2000;
    private static final String SPACES = "[ \\t\\r\\n\\f]++";
    private static final String SPACE = "(?:" + SPACES + ")?";
    private static final Pattern OUTER_SPACE = Pattern.compile("\\A" + SPACES + "|" + SPACES + "\\z");
    private static final Pattern CALL = Pattern.compile("([A-Za-z][A-Za-z0-9-]*+)\\((.*)\\)", Pattern.DOTALL);
    private static final Pattern VALUE = Pattern.compile(SPACE
            + "(?:([+-]?(?:[0-9]++(?:\\.[0-9]++)?|\\.[0-9]++)(?:[eE][+-]?[0-9]++)?)(%|[A-Za-z]++)?"
            + "|([A-Za-z][A-Za-z0-9-]*+)(?!\\()|(/))" + SPACE);

    public CssFunction {
        groups = groups.stream().map(List::copyOf).toList();
    }

    /** Whether the text has an opening bracket, and so is meant as a function and not as a word. */
    public static boolean isMeantBy(String text) {
        return text.indexOf('(') >= 0;
    }

    /**
     * Reads one function that is the whole text.
     *
     * @throws TextFormatException if it is none, or holds something other than numbers, words, commas and slashes
     */
    public static CssFunction parse(String text) throws TextFormatException {
        if (text.length() > LONGEST) {
            throw new TextFormatException(Quoted.of(text) + " is too long", "at most " + LONGEST + " characters");
        }
        Matcher call = CALL.matcher(text.strip());
        if (!call.matches()) {
            throw new TextFormatException(
                    Quoted.of(text) + " is not a name with values in brackets", "write name(value, value)");
        }
        List<List<CssValue>> groups = new ArrayList<>();
        for (String group : call.group(2).split(",", -1)) {
            groups.add(values(group, text));
        }
        return new CssFunction(AsciiCase.lower(call.group(1)), groups);
    }

    private static List<CssValue> values(String group, String text) throws TextFormatException {
        List<CssValue> values = new ArrayList<>();
        Matcher matcher = VALUE.matcher(group);
        int from = 0;
        while (from < group.length() && matcher.region(from, group.length()).lookingAt()) {
            values.add(value(matcher, text));
            from = matcher.end();
        }
        // Other spaces, as a copied text may have them, are no white space in CSS.
        String rest = OUTER_SPACE.matcher(group.substring(from)).replaceAll("");
        if (!rest.isEmpty()) {
            throw new TextFormatException(
                    "cannot read " + Quoted.of(rest) + " in " + Quoted.of(text),
                    "write plain numbers such as 0.5, 50% or 90deg");
        }
        if (values.isEmpty()) {
            throw new TextFormatException("a value is missing in " + Quoted.of(text), "");
        }
        return values;
    }

    private static CssValue value(Matcher matcher, String text) throws TextFormatException {
        String written = matcher.group().strip();
        if (matcher.group(4) != null) {
            return new CssValue(CssValue.Kind.SLASH, 0, "", written);
        }
        if (matcher.group(3) != null) {
            return new CssValue(CssValue.Kind.WORD, 0, "", written);
        }
        double number = Double.parseDouble(matcher.group(1));
        if (!Double.isFinite(number)) {
            String message = "the number " + Quoted.of(written) + " in " + Quoted.of(text) + " is too large";
            throw new TextFormatException(message, "");
        }
        String unit = matcher.group(2);
        if (unit == null) {
            return new CssValue(CssValue.Kind.NUMBER, number, "", written);
        }
        boolean percent = unit.equals("%");
        CssValue.Kind kind = percent ? CssValue.Kind.PERCENTAGE : CssValue.Kind.DIMENSION;
        return new CssValue(kind, number, percent ? "" : AsciiCase.lower(unit), written);
    }
}
