package org.duskloom.cli;

import java.util.List;
import java.util.stream.Collectors;
import org.duskloom.engine.document.CsvStyle;
import org.duskloom.engine.format.OutputKind;
import org.duskloom.engine.problem.TextFormatException;
import picocli.CommandLine.Mixin;
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

    @Mixin
    private TableOptions tables;

    OutputWords() {}

    /**
     * The kinds in the order of the words, of {@link OutputKinds#ALL}.
     *
     * @throws MisuseException if a word is no kind that holds frames, or stands twice, or if none writes a table though
     *     its style is given
     */
    List<OutputKind> kinds() {
        try {
            List<OutputKind> kinds = OutputKinds.ALL.parse(words);
            requireTable(kinds);
            return kinds;
        } catch (TextFormatException fault) {
            throw new MisuseException(
                    "--as: " + fault.getMessage() + (fault.hint().isEmpty() ? "" : "; " + fault.hint()));
        }
    }

    /** How tables among the files are written. */
    CsvStyle style() {
        return tables.style();
    }

    private void requireTable(List<OutputKind> asked) {
        if (tables.areGiven() && asked.stream().noneMatch(OutputWords::hasTable)) {
            String words = OutputKinds.ALL.kinds().stream()
                    .filter(OutputWords::hasTable)
                    .map(OutputKind::word)
                    .collect(Collectors.joining(" or "));
            throw new MisuseException(
                    "--semicolons says how tables are written, and --as asks for none; one comes with " + words);
        }
    }

    private static boolean hasTable(OutputKind kind) {
        return kind.files().stream().anyMatch(file -> file.endsWith(".csv"));
    }
}
