package org.duskloom.engine.document;

import java.nio.charset.StandardCharsets;
import java.util.HexFormat;
import java.util.List;
import org.duskloom.engine.problem.Problem;
import org.duskloom.engine.problem.Problems;

/** Short ways to read inputs in tests. */
public final class Inputs {
    private Inputs() {}

    /** A source of that text, which must be sound as text. */
    public static SourceText source(String name, String text) {
        Problems problems = new Problems();
        return SourceText.of(text.getBytes(StandardCharsets.UTF_8), name, problems)
                .orElseThrow(() -> new AssertionError(shown(problems)));
    }

    /** The value of that JSON text, which must be sound. */
    public static Node json(String text) {
        Problems problems = new Problems();
        Node node = JsonReader.read(source("in.json", text), problems)
                .orElseThrow(() -> new AssertionError(shown(problems)));
        if (problems.hasErrors()) {
            throw new AssertionError(shown(problems));
        }
        return node;
    }

    /** The problems as lines. */
    public static List<String> shown(Problems problems) {
        return problems.inFileOrder().stream().map(Problem::toString).toList();
    }

    /** Bytes written as hexadecimal digits. */
    public static byte[] hex(String digits) {
        return HexFormat.of().parseHex(digits.replace(" ", ""));
    }
}
