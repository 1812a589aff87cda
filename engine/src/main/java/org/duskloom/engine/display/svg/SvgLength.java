package org.duskloom.engine.display.svg;

import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.stream.XMLStreamReader;
import org.duskloom.engine.problem.TextFormatException;
import org.duskloom.engine.text.Quoted;

/**
 * Lengths as SVG writes them: {@code 12}, {@code 30mm}. Units are those of CSS Values and Units Level 3, section 5.2.
 */
final class SvgLength {
    /** 96 px are an inch. */
    static final double MM_PER_PX = 25.4 / 96;

    private static final Map<String, Double> MM_PER_UNIT = Map.of(
            "", MM_PER_PX, "px", MM_PER_PX, "mm", 1.0, "cm", 10.0, "q", 0.25, "in", 25.4, "pt", 25.4 / 72, "pc",
            25.4 / 6);
    private static final Pattern LENGTH =
            Pattern.compile("\\s*+([-+]?(?:[0-9]++\\.?[0-9]*+|\\.[0-9]++)(?:[eE][-+]?[0-9]++)?+)([a-zA-Z%]*+)\\s*+");

    private SvgLength() {}

    /** A length in millimetres, where a bare number is px. */
    static double millimetres(String text) throws TextFormatException {
        Matcher parts = LENGTH.matcher(text);
        Double unit = parts.matches() ? MM_PER_UNIT.get(parts.group(2).toLowerCase(Locale.ROOT)) : null;
        double value = unit == null ? Double.NaN : Double.parseDouble(parts.group(1)) * unit;
        if (!Double.isFinite(value)) {
            throw new TextFormatException(
                    Quoted.of(text) + " is no length", "allowed: a number, or one with mm, cm, in, pt, pc, q or px");
        }
        return value;
    }

    /** A length in user units: a bare number is one. */
    static double userUnits(String text) throws TextFormatException {
        return millimetres(text) / MM_PER_PX;
    }

    /** An attribute in user units; 0 where it is not written. */
    static double attribute(XMLStreamReader xml, String name) throws TextFormatException {
        String text = xml.getAttributeValue(null, name);
        return text == null ? 0 : userUnits(text);
    }
}
