package org.duskloom.cli;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/**
 * One run of the program in this JVM.
 *
 * @param code the exit code
 * @param out what it wrote to the standard output, lines ended by line feeds
 * @param err the same for the standard error stream
 */
record Ran(int code, String out, String err) {
    /** A stream that fails as the system words it. */
    static OutputStream failing(String reason) {
        return new OutputStream() {
            @Override
            public void write(int value) throws IOException {
                throw new IOException(reason);
            }
        };
    }

    static Ran with(Object... arguments) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Ran ran = into(out, TerminalTraits.PLAIN, arguments);
        return new Ran(ran.code, text(out), ran.err);
    }

    static Ran into(OutputStream out, TerminalTraits traits, Object... arguments) {
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        String[] texts = new String[arguments.length];
        for (int i = 0; i < texts.length; i++) {
            texts[i] = arguments[i].toString();
        }
        PrintStream errStream = new PrintStream(err, true, StandardCharsets.UTF_8);
        int code = new Program(new Streams(out, StandardCharsets.UTF_8, errStream, traits)).run(texts);
        return new Ran(code, "", text(err));
    }

    /** The same with a path in the messages made short. */
    Ran without(Path folder) {
        return new Ran(code, out.replace(folder + "/", ""), err.replace(folder + "/", ""));
    }

    private static String text(ByteArrayOutputStream bytes) {
        return bytes.toString(StandardCharsets.UTF_8).replace(System.lineSeparator(), "\n");
    }
}
