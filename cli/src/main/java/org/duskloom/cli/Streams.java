package org.duskloom.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.Charset;
import org.duskloom.engine.text.Quoted;

/** Where the program writes: results to the standard output, everything for people to the standard error stream. */
final class Streams {
    private final OutputStream out;
    private final Charset outCharset;
    private final PrintStream err;
    private final TerminalTraits traits;

    Streams(OutputStream out, Charset outCharset, PrintStream err, TerminalTraits traits) {
        this.out = out;
        this.outCharset = outCharset;
        this.err = err;
        this.traits = traits;
    }

    /** Those of the process. Not {@link System#out}: it swallows the fault when a disk is full or a reader gone. */
    static Streams ofProcess() {
        Charset charset = Charset.forName(System.getProperty(
                "stdout.encoding",
                System.getProperty("native.encoding", Charset.defaultCharset().name())));
        return new Streams(new FileOutputStream(FileDescriptor.out), charset, System.err, TerminalTraits.ofProcess());
    }

    /** What the two streams lead to. */
    TerminalTraits traits() {
        return traits;
    }

    /**
     * Writes text to the standard output.
     *
     * @throws OutputLostException if it does not arrive
     */
    void print(String text) throws OutputLostException {
        print(text, outCharset);
    }

    /**
     * Writes text for machines to the standard output, in a charset that does not hang on the locale.
     *
     * @throws OutputLostException if it does not arrive
     */
    void print(String text, Charset charset) throws OutputLostException {
        if (text.isEmpty()) {
            return;
        }
        try {
            out.write(text.getBytes(charset));
            out.flush();
        } catch (IOException fault) {
            throw new OutputLostException(fault);
        }
    }

    /** Writes a line for people. What cannot be seen is escaped: names of files may hold anything. */
    void tell(String line) {
        tellPainted(Quoted.plain(line));
    }

    /** Writes lines for people in which only the program's own colours are left to be hidden. */
    void tellPainted(String lines) {
        err.println(lines);
    }

    /** For what is more than a line: progress, stack traces. */
    PrintStream err() {
        return err;
    }
}
