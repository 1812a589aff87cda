package org.duskloom.cli;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.regex.Pattern;
import org.duskloom.engine.document.SourceText;
import org.duskloom.engine.file.IfExists;
import org.duskloom.engine.file.OutputGroup;
import org.duskloom.engine.file.OutputRefusedException;
import org.duskloom.engine.file.StagedFile;
import org.duskloom.engine.map.MapReader;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.problem.Problems;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code duskloom new}. */
@Command(
        name = "new",
        sortOptions = false,
        sortSynopsis = false,
        header = "Write a small display and a show of your own to start from.",
        description = {
            "",
            "Makes display.json, which says what hangs where, and show.json, which says what is played on it, with remarks"
                    + " in them that say what can be changed. Where a table of pixels is there already, a pixel map as CSV,"
                    + " --map makes a show on it: what its names tell belongs together becomes a group.",
            "",
            "Files that stand there already are never replaced.",
            ""
        },
        footer = {
            "",
            "Examples:",
            "  duskloom new evening",
            "  duskloom new evening --map pixels.csv",
            "      The table is copied to evening/map.csv, unless it lies in that folder."
        })
final class NewCommand implements Callable<Integer> {
    private static final String SHOW = "show.json";
    private static final String DISPLAY = "display.json";
    private static final String MAP = "map.csv";
    private static final Pattern PLAIN_WORD = Pattern.compile("[\\p{L}\\p{N}._/\\\\:+,@%=-]+");

    private final Streams streams;

    @Parameters(paramLabel = "DIR", description = "The folder for the files; made if it is missing.")
    private Path folder;

    @Option(names = "--map", paramLabel = "MAP.csv", description = "Start from this table of pixels.")
    private Path map;

    @Mixin
    private HelpOptions helpOptions;

    NewCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public Integer call() throws IOException {
        OutputNames.requireFolder("DIR", folder);
        Map<String, byte[]> files = new LinkedHashMap<>();
        if (map == null) {
            files.put(DISPLAY, bytes(StartFiles.display()));
            files.put(SHOW, bytes(StartFiles.show(title())));
        } else if (!startFromMap(files)) {
            return ExitCode.BAD_INPUT;
        }
        write(files);
        files.keySet().forEach(name -> streams.tell(folder.resolve(name).toString()));
        tellWhatIsNext();
        return ExitCode.DONE;
    }

    private void tellWhatIsNext() {
        // As it was called: who types cli/duskloom shall not be told to type something else.
        String program = forShell(System.getProperty("duskloom.command", "duskloom"));
        String show = forShell(folder.resolve(SHOW).toString());
        streams.tell("next:");
        streams.tell("  " + program + " watch " + show);
        streams.tell("      See it in a browser while you change it.");
        streams.tell("  " + program + " check " + show);
        streams.tell("      Whatever is wrong with it, with its line.");
        streams.tell("  " + program + " film " + show + " -o "
                + forShell(folder.resolve("show.html").toString()));
        streams.tell("      A page to keep.");
    }

    /** A word as it is typed: in quotes where a shell would take it apart. */
    private static String forShell(String word) {
        if (PLAIN_WORD.matcher(word).matches()) {
            return word;
        }
        return File.separatorChar == '\\' ? '"' + word + '"' : "'" + word.replace("'", "'\\''") + "'";
    }

    /** Lists what is wrong with the map; false if it cannot be used. */
    private boolean startFromMap(Map<String, byte[]> files) throws IOException {
        Problems problems = new Problems();
        Optional<PixelMap> pixels =
                SourceText.read(map, map.toString(), problems).flatMap(text -> MapReader.read(text, problems));
        ProblemPrinter.print(problems, streams);
        if (pixels.isEmpty() || problems.hasErrors()) {
            return false;
        }
        boolean liesThere = Files.isDirectory(folder) && Files.isSameFile(folder, parent(map));
        if (!liesThere) {
            files.put(MAP, Files.readAllBytes(map));
        }
        String name = liesThere ? map.getFileName().toString() : MAP;
        files.put(SHOW, bytes(StartFiles.show(title(), name, pixels.get())));
        return true;
    }

    private static Path parent(Path file) {
        return file.toAbsolutePath().normalize().getParent();
    }

    /** What the folder is called. */
    private String title() {
        Path name = folder.toAbsolutePath().normalize().getFileName();
        return name == null ? "First evening" : name.toString();
    }

    private void write(Map<String, byte[]> files) throws IOException {
        try (OutputGroup group = new OutputGroup(IfExists.REFUSE)) {
            for (Map.Entry<String, byte[]> each : files.entrySet()) {
                try (StagedFile file = group.open(folder.resolve(each.getKey()))) {
                    file.writeWhole(each.getValue());
                }
            }
            group.publish();
        } catch (OutputRefusedException refused) {
            String hint = refused.isReplaceable() ? ", and nothing is replaced; name another folder" : "";
            throw new IOException(refused.getMessage() + hint, refused);
        }
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
