package org.duskloom.cli;

import picocli.CommandLine;
import picocli.CommandLine.TypeConversionException;

/** Reads the numbers of options as people write them. */
final class TypedNumber {
    private static final String WHOLE = "-?[0-9]+";
    private static final String DECIMAL = "-?(?:[0-9]+(?:\\.[0-9]+)?|\\.[0-9]+)";

    private TypedNumber() {}

    /** Lets a command and those under it read numbers so. */
    static void in(CommandLine command) {
        command.registerConverter(int.class, TypedNumber::whole)
                .registerConverter(Integer.class, TypedNumber::whole)
                .registerConverter(double.class, TypedNumber::decimal)
                .registerConverter(Double.class, TypedNumber::decimal);
    }

    static int whole(String text) {
        if (!text.matches(WHOLE)) {
            throw new TypeConversionException("'" + text + "' is not a whole number");
        }
        try {
            return Integer.parseInt(text);
        } catch (NumberFormatException tooLarge) {
            throw new TypeConversionException("'" + text + "' is too large");
        }
    }

    static double decimal(String text) {
        if (text.matches(DECIMAL)) {
            double value = Double.parseDouble(text);
            if (Double.isInfinite(value)) {
                throw new TypeConversionException("'" + text + "' is too large");
            }
            return value;
        }
        String dotted = text.replace(',', '.');
        throw new TypeConversionException("'" + text + "' is not a number"
                + (dotted.matches(DECIMAL) ? "; the decimal sign is a dot: " + dotted : ", such as 0.5 or 20"));
    }
}
