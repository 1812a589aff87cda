package org.duskloom.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Which moments a contact strip shows. */
enum PanelChoice {
    /** Moments all over the time. */
    TIME,
    /** One moment inside each cue. */
    CUE;

    /** What a shell completes. */
    static final class Words extends ArrayList<String> {
        private static final long serialVersionUID = 1L;

        Words() {
            super(List.of("time", "cue"));
        }
    }

    /** Reads {@code time} or {@code cue}. */
    static final class Converter implements ITypeConverter<PanelChoice> {
        Converter() {}

        @Override
        public PanelChoice convert(String word) {
            for (PanelChoice choice : values()) {
                if (choice.name().toLowerCase(Locale.ROOT).equals(word)) {
                    return choice;
                }
            }
            throw new TypeConversionException("'" + word + "' is neither time nor cue");
        }
    }
}
