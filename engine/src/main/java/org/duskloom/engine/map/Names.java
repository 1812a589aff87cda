package org.duskloom.engine.map;

import java.util.Locale;
import java.util.Optional;

/** What may be the name of a prop, a part or a group. */
public final class Names {
    /** The longest name, in UTF-16 units. */
    public static final int MAX_LENGTH = 200;

    /** Signs that mean something in addresses, in part cells or in times, so that no name may hold them. */
    private static final String RESERVED = "/*?;,#";

    private Names() {}

    /** What is wrong with the name, as the end of a sentence that begins with the name; empty if nothing is. */
    public static Optional<String> fault(String name) {
        if (name.isEmpty()) {
            return Optional.of("is empty");
        }
        if (name.length() > MAX_LENGTH) {
            return Optional.of("is longer than " + MAX_LENGTH + " characters");
        }
        if (name.charAt(0) == '@') {
            return Optional.of("begins with @, which is kept for marks");
        }
        if (isBlank(name.codePointAt(0)) || isBlank(name.codePointBefore(name.length()))) {
            return Optional.of("has blanks round it");
        }
        return name.codePoints()
                .filter(Names::isForbidden)
                .mapToObj(Names::forbidden)
                .findFirst();
    }

    private static boolean isBlank(int codePoint) {
        return Character.isWhitespace(codePoint) || Character.isSpaceChar(codePoint);
    }

    private static boolean isForbidden(int codePoint) {
        return RESERVED.indexOf(codePoint) >= 0 || isInvisible(codePoint);
    }

    /** Controls, line separators and marks without width, which nobody sees and nobody can type again. */
    private static boolean isInvisible(int codePoint) {
        int type = Character.getType(codePoint);
        boolean joiner = codePoint == 0x200C || codePoint == 0x200D;
        return type == Character.CONTROL
                || type == Character.FORMAT && !joiner
                || type == Character.SURROGATE
                || type == Character.LINE_SEPARATOR
                || type == Character.PARAGRAPH_SEPARATOR;
    }

    private static String forbidden(int codePoint) {
        return isInvisible(codePoint)
                ? String.format(Locale.ROOT, "holds the invisible character U+%04X", codePoint)
                : "holds " + Character.toString(codePoint) + ", which is not allowed in names";
    }
}
