package org.duskloom.cli;

import java.util.List;
import org.duskloom.engine.format.OutputKind;
import org.duskloom.engine.problem.TextFormatException;
import picocli.CommandLine.Option;

/** {@code --as}: what the frames are written as. */
final class OutputWords {
    @Option(
            names = "--as",
            paramLabel = "WORDS",
            defaultValue = "rgb",
            completionCandidates = OutputKinds.Words.class,
            description = "What to write, words with commas between; rgb unless written.")
    private String words;

    OutputWords() {}

    /**
     * The kinds in the order of the words, of {@link OutputKinds#ALL}.
     *
     * @throws MisuseException if a word is no kind that holds frames, or stands twice
     */
    List<OutputKind> kinds() {
        try {
            return OutputKinds.ALL.parse(words);
        } catch (TextFormatException fault) {
            throw new MisuseException(
                    "--as: " + fault.getMessage() + (fault.hint().isEmpty() ? "" : "; " + fault.hint()));
        }
    }
}
