package org.duskloom.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.duskloom.engine.file.OutputRefusedException;
import org.duskloom.engine.file.StagedFile;
import org.duskloom.engine.format.OutputFolder;
import org.duskloom.engine.format.OutputKind;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.shard.Join;
import org.duskloom.engine.shard.Shard;
import org.duskloom.engine.shard.Shards;
import org.duskloom.engine.text.Counted;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code duskloom join}. */
@Command(
        name = "join",
        sortOptions = false,
        sortSynopsis = false,
        header = "Put a show together that was rendered in shards.",
        description = {
            "",
            "Takes the folders that 'render --shard' or 'render --frames' wrote, in any order, and writes the same files"
                    + " as one run would have, byte for byte: those of rgb, npy, singles, ports and packets. Each shard is"
                    + " compared with its checksum. Shards of another show or of another version are refused; where frames"
                    + " are missing, the command that makes them is told.",
            "",
            "ports and packets are joined as they are, without the show, and the checksum is one of the frames: so the"
                    + " shards need rgb, npy or singles beside them. Pictures are not joined: 'duskloom strip' draws them.",
            ""
        },
        footer = {
            "",
            "Examples:",
            "  duskloom render garden/show.json -o out/1 --shard 1/2",
            "  duskloom render garden/show.json -o out/2 --shard 2/2",
            "  duskloom join out/1 out/2 -o out/whole",
            "      Two halves; another machine may render one of them."
        })
final class JoinCommand implements Callable<Integer> {
    private final Streams streams;

    @Parameters(paramLabel = "SHARD", arity = "1..*", description = "The folders of the shards.")
    private List<Path> folders;

    @Option(
            names = {"-o", "--output"},
            paramLabel = "DIR",
            required = true,
            description = "The folder for the whole; made if it is missing.")
    private Path output;

    @Option(names = "--force", description = "Replace files that stand there, once the new ones are complete.")
    private boolean force;

    @Mixin
    private HelpOptions helpOptions;

    JoinCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public Integer call() throws IOException {
        OutputNames.requireFolder("-o", output);
        Problems problems = new Problems();
        Optional<Shards> shards = shards(problems);
        boolean done = shards.isPresent() && join(shards.get(), problems);
        ProblemPrinter.print(problems, streams);
        return done ? ExitCode.DONE : ExitCode.BAD_INPUT;
    }

    private Optional<Shards> shards(Problems problems) {
        List<Shard> read = new ArrayList<>();
        for (Path folder : folders) {
            Shard.in(folder, problems).ifPresent(read::add);
        }
        return problems.hasErrors() ? Optional.empty() : Shards.of(read, OutputKinds.ALL, problems);
    }

    private boolean join(Shards shards, Problems problems) throws IOException {
        long start = System.nanoTime();
        List<Path> inputs = shards.shards().stream()
                .flatMap(shard -> shard.inputs().stream())
                .toList();
        OutputFolder folder = new OutputFolder(output, OutputNames.ifExists(force), target -> refuse(target, inputs));
        try (Join join = new Join(shards, OutputKinds.ALL, folder, problems)) {
            Room.require(output, shards.bytes());
            if (!ProgressBar.during(streams, join::run)) {
                return false;
            }
        }
        streams.tell(output + ": " + Counted.of(shards.shards().size(), "shard") + ", "
                + Counted.of(shards.frameCount(), "frame") + ", " + Words.duration((System.nanoTime() - start) / 1e9));
        tellOfPictures(shards);
        return true;
    }

    private static void refuse(Path target, List<Path> inputs) throws IOException {
        try {
            StagedFile.refuseInput(target, inputs);
        } catch (OutputRefusedException isInput) {
            throw new MisuseException(isInput.getMessage());
        }
    }

    /** A strip of a shard shows that shard; a new one is drawn quickly. */
    private void tellOfPictures(Shards shards) {
        for (OutputKind kind : OutputKinds.ALL.kinds()) {
            for (String name : kind.holdsFrames() ? List.<String>of() : kind.files()) {
                if (shards.shards().stream()
                        .anyMatch(shard -> Files.exists(shard.folder().resolve(name)))) {
                    streams.tell(name + notJoined(name));
                }
            }
        }
    }

    private static String notJoined(String name) {
        return name.endsWith("/")
                ? " has pictures of one shard, which are not joined; 'duskloom render --tiles' draws the whole"
                : " is a picture of one shard, and is not joined; 'duskloom strip' draws the whole";
    }
}
