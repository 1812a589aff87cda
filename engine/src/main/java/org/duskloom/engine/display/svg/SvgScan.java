package org.duskloom.engine.display.svg;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.duskloom.engine.problem.TextFormatException;
import org.duskloom.engine.text.Quoted;

/**
 * Reads the numbers of an attribute, which blanks or one comma part, or nothing where the next can only begin a new
 * one.
 */
final class SvgScan {
    private static final Pattern NUMBER = Pattern.compile("[-+]?(?:[0-9]+\\.?[0-9]*|\\.[0-9]+)(?:[eE][-+]?[0-9]+)?");

    private final String text;
    private final Matcher numbers;
    private int at;

    SvgScan(String text) {
        this.text = text;
        this.numbers = NUMBER.matcher(text);
        skipBlanks();
    }

    boolean isAtEnd() {
        return at >= text.length();
    }

    /** The next sign, which stays. */
    char next() {
        return text.charAt(at);
    }

    /** Takes the next sign. */
    char take() {
        char sign = text.charAt(at++);
        skipBlanks();
        return sign;
    }

    boolean isAtNumber() {
        return numbers.region(at, text.length()).lookingAt();
    }

    double number() throws TextFormatException {
        if (!isAtNumber()) {
            throw fault("a number is needed");
        }
        double value = Double.parseDouble(numbers.group());
        at = numbers.end();
        skipToNext();
        if (!Double.isFinite(value)) {
            throw fault("a number is too large");
        }
        return value;
    }

    /** A flag of an arc: 0 or 1, after which nothing need stand. */
    boolean flag() throws TextFormatException {
        if (isAtEnd() || next() != '0' && next() != '1') {
            throw fault("a flag is needed, 0 or 1");
        }
        boolean set = text.charAt(at++) == '1';
        skipToNext();
        return set;
    }

    /** All numbers up to the end. */
    List<Double> rest() throws TextFormatException {
        List<Double> all = new ArrayList<>();
        while (!isAtEnd()) {
            all.add(number());
        }
        return all;
    }

    TextFormatException fault(String what) {
        String here = text.substring(Math.min(at, text.length()), Math.min(text.length(), at + 20));
        return new TextFormatException(
                Quoted.of(shortened()) + " cannot be read",
                what + (here.isEmpty() ? " at its end" : " at " + Quoted.of(here)));
    }

    private String shortened() {
        return text.length() <= 40 ? text : text.substring(0, 40) + "...";
    }

    /**
     * Past what parts two numbers. The grammar has a comma only between them: none at the end of a list, and none
     * before a letter.
     */
    private void skipToNext() throws TextFormatException {
        skipBlanks();
        if (at < text.length() && text.charAt(at) == ',') {
            at++;
            skipBlanks();
            if (!isAtNumber()) {
                throw fault("a number is needed after the comma");
            }
        }
    }

    private void skipBlanks() {
        while (at < text.length() && " \t\r\n\f".indexOf(text.charAt(at)) >= 0) {
            at++;
        }
    }
}
