package org.duskloom.engine.document;

import java.util.Optional;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.text.Quoted;

/** Checks the field that says what kind of file this is, and of which version. */
public final class Format {
    private Format() {}

    /** Adds an error if the field {@code duskloom} is absent or says anything but the format. */
    public static void check(Fields fields, String format, Problems problems) {
        Optional<String> written = fields.text("duskloom");
        if (!fields.has("duskloom")) {
            problems.error(fields.location(), fields.what() + " lacks the field \"duskloom\"", "add " + line(format));
        } else if (written.isPresent() && !written.get().equals(format)) {
            problems.error(
                    fields.location("duskloom"),
                    "\"duskloom\" of " + fields.what() + " is " + Quoted.of(written.get()),
                    "this version reads " + line(format));
        }
    }

    private static String line(String format) {
        return "\"duskloom\": \"" + format + "\"";
    }
}
