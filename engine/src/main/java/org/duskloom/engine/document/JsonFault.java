package org.duskloom.engine.document;

import java.util.regex.Pattern;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.text.Quoted;

/**
 * Says in words for people what is wrong where the text is not JSON: what was found, what should stand there, and where
 * the bracket opens that is not closed.
 *
 * @param parserMessage what the parser said; only fragments of it are looked at, and it is shown where none is known
 * @param offset where it was noticed
 * @param tokenOffset where the value or name starts that was being read
 * @param openBracket where the innermost open bracket stands, or -1
 */
record JsonFault(String parserMessage, int offset, int tokenOffset, int openBracket) {
    private static final String REMARKS = "remarks begin with // here, or stand between /* and */";
    private static final Pattern HASH_LINES = Pattern.compile("(?:#[^\n]*+\n\\s*+)++\\{");
    /** A number, and behind it what is no part of one. */
    private static final Pattern WITH_UNIT =
            Pattern.compile("-?[0-9]++(?:\\.[0-9]++)?+(?:[%°]|[a-zA-Zµ]{2,5}+|[a-zA-Zµ&&[^eE]])");

    private static final String CURLY_QUOTES = "“”„‟«»‘’‚";

    void report(SourceText source, Problems problems) {
        String text = source.text();
        if (parserMessage.contains("exceeds the maximum")) {
            problems.error(source.locationAt(offset), limitMessage(), limitHint());
        } else if (isOtherText(text)) {
            problems.error(
                    source.locationAt(start(text)),
                    "this is no JSON",
                    (beginsWithRemarks(text) ? REMARKS + "; " : "") + "a timeline or a display starts with {");
        } else if (offset >= text.length()) {
            reportEnd(source, problems);
        } else if (says("Illegal unquoted character")) {
            reportUnclosedText(source, problems);
        } else {
            int place = says("umeric value") ? wordStart(text) : offset;
            place -= says("character escape") && place > 0 && text.charAt(place - 1) == '\\' ? 1 : 0;
            problems.error(source.locationAt(place), message(text), hint(text, source));
        }
    }

    /** JSON that is a lone text or number is no document either. */
    private boolean isOtherText(String text) {
        return openBracket < 0 && start(text) < text.length() && "{[/".indexOf(text.charAt(start(text))) < 0;
    }

    /** Lines that begin with #, and then a document: not a table, which may have such lines too. */
    private static boolean beginsWithRemarks(String text) {
        return HASH_LINES.matcher(text).region(start(text), text.length()).lookingAt();
    }

    private static int start(String text) {
        int start = 0;
        while (start < text.length() && Character.isWhitespace(text.charAt(start))) {
            start++;
        }
        return start;
    }

    private boolean says(String fragment) {
        return parserMessage.contains(fragment);
    }

    private String limitMessage() {
        if (says("depth")) {
            return "lists and objects are nested deeper than " + JsonReader.MAX_DEPTH;
        }
        if (says("oken count")) {
            return "the file holds more than " + JsonReader.MAX_TOKENS + " values";
        }
        return says("Number") ? "the number has more than 100 digits" : "the text is too long";
    }

    private String limitHint() {
        if (says("depth")) {
            return "a bracket is probably missing or typed too often before this place";
        }
        if (says("oken count")) {
            return "long tables of pixels go into a CSV file";
        }
        return says("Number") ? "" : "a closing quote is probably missing";
    }

    private void reportEnd(SourceText source, Problems problems) {
        if (says("in a comment")) {
            int open = source.text().lastIndexOf("/*");
            problems.error(source.locationAt(open), "the comment that opens here is not closed", "close it with */");
        } else if (says("quote") || says("escape") || says("property name")) {
            int open = says("in property name")
                    ? opening(source.text(), source.text().length())
                    : tokenOffset;
            problems.error(
                    source.locationAt(open),
                    "the text that opens here has no closing quote",
                    "the file ends at " + place(source.end()));
        } else if (openBracket < 0) {
            problems.error(source.end(), "the file ends in the middle of a value");
        } else {
            problems.error(
                    source.end(),
                    "the file ends, but the " + bracket(source) + " is still open",
                    "add the missing " + closing(source.text()));
        }
    }

    private void reportUnclosedText(SourceText source, Problems problems) {
        char found = source.text().charAt(offset);
        if (found == '\n' || found == '\r') {
            problems.error(
                    source.locationAt(opening(source.text(), offset)),
                    "the line ends inside the text that opens here",
                    "a closing quote is missing");
        } else {
            problems.error(
                    source.locationAt(offset),
                    "control character " + Quoted.ofPoint(found) + " in a text",
                    "remove it, or write it as an escape such as \\t");
        }
    }

    /** Where a text opens that goes on there: the quotes in it have a backslash before them, its first has none. */
    private static int opening(String text, int there) {
        int quote = text.lastIndexOf('"', there);
        while (quote > 0 && text.charAt(quote - 1) == '\\') {
            quote = text.lastIndexOf('"', quote - 1);
        }
        return Math.max(quote, 0);
    }

    private String message(String text) {
        String found = "found " + found(text);
        if (says("Illegal character")) {
            return found + " between the values, which is a control character";
        }
        if (says("close marker")) {
            return openBracket < 0 ? found + ", but no bracket is open" : found + " where " + ending(text);
        }
        if (says("expecting comma")) {
            return found + " where a comma or " + ending(text);
        }
        if (says("expecting a colon")) {
            return found + " where a colon should stand";
        }
        if (says("to start property name") || says("unquoted property name")) {
            return found + " where a field name in double quotes should stand";
        }
        if (says("Unrecognized token")) {
            return Quoted.of(word(text)) + " is not a value";
        }
        if (says("urrogate")) {
            return "an escape before this place is half a character";
        }
        if (says("escape")) {
            return "this is not an escape that JSON knows";
        }
        if (says("umeric value")) {
            return Quoted.of(word(text)) + " is not a number as JSON writes it";
        }
        return says("value") ? found + " where a value should stand" : "this is not JSON: " + firstSentence();
    }

    private String hint(String text, SourceText source) {
        if (CURLY_QUOTES.indexOf(text.charAt(offset)) >= 0 || text.charAt(offset) == '\'') {
            return "names and texts stand in straight double quotes: \"";
        }
        if (text.charAt(offset) == '#') {
            return REMARKS;
        }
        if (says("Illegal character")) {
            return "remove it; is this a text file?";
        }
        String word = word(text) + ("%°".indexOf(text.charAt(offset)) < 0 ? "" : text.charAt(offset));
        if ((says("expecting comma") || says("umeric value"))
                && WITH_UNIT.matcher(word).matches()) {
            return "a number with its unit stands in double quotes: " + Quoted.of(word);
        }
        if (says("Unrecognized token")) {
            return "a text stands in double quotes; true, false and null in small letters";
        }
        if (says("umeric value") || text.charAt(offset) == '.' && says("value")) {
            return "write 0.5, 5 or -5, not .5, 5., +5 or 05";
        }
        if (says("urrogate")) {
            return "write the character itself";
        }
        if (says("hex-digit")) {
            return "four hexadecimal digits follow \\u";
        }
        if (says("escape")) {
            return "write \\\\ for a backslash, / in paths";
        }
        if (says("start property name") && Character.isDigit(text.charAt(offset))) {
            return "the decimal sign is a dot: 1.5, not 1,5";
        }
        return openBracket < 0 ? "" : "the " + bracket(source) + " is still open";
    }

    private String found(String text) {
        return Quoted.ofPoint(text.codePointAt(offset));
    }

    private String ending(String text) {
        return (openBracket < 0 ? "the end" : closing(text)) + " should stand";
    }

    private String bracket(SourceText source) {
        return source.text().charAt(openBracket) + " of " + place(source.locationAt(openBracket));
    }

    private String closing(String text) {
        return text.charAt(openBracket) == '{' ? "}" : "]";
    }

    /** The run of letters, digits and signs round the offset. */
    private String word(String text) {
        int end = offset;
        while (end < text.length() && isWordPart(text.charAt(end))) {
            end++;
        }
        return text.substring(wordStart(text), end);
    }

    private int wordStart(String text) {
        int start = offset;
        while (start > 0 && isWordPart(text.charAt(start - 1))) {
            start--;
        }
        return start;
    }

    private static boolean isWordPart(char c) {
        return Character.isLetterOrDigit(c) || c == '+' || c == '-' || c == '.' || c == '_';
    }

    private String firstSentence() {
        int colon = parserMessage.indexOf(" (");
        return colon > 0 ? parserMessage.substring(0, colon) : parserMessage;
    }

    private static String place(Location location) {
        return "line " + location.line() + ", column " + location.column();
    }
}
