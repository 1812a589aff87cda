package org.duskloom.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.StringJoiner;
import java.util.stream.Collectors;
import org.duskloom.engine.file.OutputRefusedException;
import org.duskloom.engine.file.StagedFile;
import org.duskloom.engine.format.Origin;
import org.duskloom.engine.show.InputFile;

/** What outputs need to know of the files that were read. */
final class InputNames {
    private InputNames() {}

    /**
     * Refuses an output that would replace a file that was read, under whatever name or link.
     *
     * @throws MisuseException if it would
     * @throws IOException if the files cannot be compared
     */
    static void refuseAsOutput(Path target, List<InputFile> inputs) throws IOException {
        refusePaths(target, inputs.stream().map(InputFile::path).toList());
    }

    /** The same for one file. */
    static void refuseAsOutput(Path target, Path input) throws IOException {
        refusePaths(target, List.of(input));
    }

    private static void refusePaths(Path target, List<Path> inputs) throws IOException {
        try {
            StagedFile.refuseInput(target, inputs);
        } catch (OutputRefusedException isInput) {
            throw new MisuseException(isInput.getMessage());
        }
    }

    /** What tells packets of these files from those of others: their checksums, a line for each. */
    static String identity(List<InputFile> inputs) {
        return inputs.stream().map(InputFile::sha256Hex).collect(Collectors.joining("\n"));
    }

    /** For a manifest: named as seen from the first file's folder, so that a manifest does not tell where that is. */
    static Origin origin(Path first, List<InputFile> inputs) throws IOException {
        Path home = first.toAbsolutePath().normalize().getParent();
        List<Origin.Input> named = inputs.stream()
                .map(input -> new Origin.Input(nameFrom(home, input.path()), input.sha256Hex()))
                .toList();
        return new Origin(Version.number(), named);
    }

    private static String nameFrom(Path home, Path input) {
        Path whole = input.toAbsolutePath().normalize();
        if (!whole.getRoot().equals(home.getRoot())) {
            return whole.toString();
        }
        StringJoiner name = new StringJoiner("/");
        home.relativize(whole).forEach(step -> name.add(step.toString()));
        return name.toString();
    }
}
