package org.duskloom.cli;

import picocli.CommandLine;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads the numbers of options as people write them. */
final class TypedNumber {
    private static final String WHOLE = "-?[0-9]+";
    private static final String DECIMAL = "-?(?:[0-9]+(?:\\.[0-9]+)?|\\.[0-9]+)";

    private TypedNumber() {}

    /** Lets a command and those under it read numbers so. */
    static void in(CommandLine command) {
        command.registerConverter(int.class, new Whole())
                .registerConverter(Integer.class, new Whole())
                .registerConverter(double.class, new Decimal())
                .registerConverter(Double.class, new Decimal());
    }

    // Classes: Java 17 crashes while it archives a lambda whose interface is of class files as old as those of picocli.

    private static final class Whole implements ITypeConverter<Integer> {
        @Override
        public Integer convert(String text) {
            return whole(text);
        }
    }

    private static final class Decimal implements ITypeConverter<Double> {
        @Override
        public Double convert(String text) {
            return decimal(text);
        }
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
