package org.duskloom.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.duskloom.engine.file.StagedFile;
import picocli.CommandLine.Option;

/** Where a text goes that the program writes of itself. */
final class TextOutput {
    @Option(
            names = {"-o", "--output"},
            paramLabel = "FILE",
            description = "The file; without it, or with -, the text goes to standard output.")
    private Path output;

    @Option(names = "--force", description = "Replace the file that stands there, once the new one is complete.")
    private boolean force;

    TextOutput() {}

    /**
     * Writes the text.
     *
     * @param what it is, for who reads that it is there
     */
    void write(String text, String what, Streams streams) throws IOException {
        if (output == null || OutputNames.isStandardOutput(output)) {
            streams.print(text, StandardCharsets.UTF_8);
            return;
        }
        try (StagedFile file = StagedFile.open(output, OutputNames.ifExists(force))) {
            file.writeWhole(text);
        }
        streams.tell(output + ": " + what);
    }
}
