package org.duskloom.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.duskloom.engine.file.StagedFile;
import org.duskloom.engine.format.FrameOutputs;
import org.duskloom.engine.format.OutputFolder;
import org.duskloom.engine.format.OutputKind;
import org.duskloom.engine.format.StreamKind;
import org.duskloom.engine.frame.FrameList;
import org.duskloom.engine.frame.FrameSink;
import org.duskloom.engine.frame.FrameSource;
import org.duskloom.engine.frame.RunInfo;
import org.duskloom.engine.preview.TimeStripKind;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.text.Counted;
import org.duskloom.engine.time.FrameSpan;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code duskloom render}. */
@Command(
        name = "render",
        sortOptions = false,
        sortSynopsis = false,
        header = "Render a show into files of frames.",
        description = {
            "",
            "Writes frames.json, which says how many frames there are and what they were made from, and beside it what"
                    + " --as asks for, all in one go:",
            "  rgb       frames.rgb: frame after frame, pixel after pixel in wiring order,",
            "            a byte each of red, green and blue",
            "  npy       frames.npy: an array for NumPy, of the shape (frames, pixels, 3)",
            "  singles   frames/: a file for each frame, 00000000.rgb and so on, each like a",
            "            piece of frames.rgb",
            "  ports     ports/, patch.csv: the bytes that each port sends, NAME.bin, and",
            "            which pixel lies where",
            "  packets   packets.pcap: the whole show as E1.31 packets, for players of",
            "            captures",
            "The same show gives the same bytes, however it is cut into --frames and on any number of --threads.",
            ""
        },
        footer = {
            "",
            "Examples:",
            "  duskloom render garden/show.json -o out",
            "      The whole show.",
            "  duskloom render garden/show.json -o out --strip --force",
            "      Again after a change, with pictures to look at.",
            "  duskloom render garden/show.json -o out/2 --frames 960..1920",
            "      The second half of 1920 frames; another machine may do the first.",
            "  duskloom render garden/show.json -o out/2 --shard 2/2",
            "      The same; 'duskloom join' puts shards together.",
            "  duskloom render garden/show.json -o out --as rgb,npy",
            "      For a player, and for NumPy.",
            "  duskloom render garden/show.json -o - > frames.rgb",
            "      For a pipe: frames.rgb alone."
        })
final class RenderCommand implements Callable<Integer> {
    private static final int MOST_THREADS = 256;
    private final Streams streams;

    @Mixin
    private ShowOperand show;

    @Option(
            names = {"-o", "--output"},
            paramLabel = "DIR",
            required = true,
            description =
                    "The folder for the files; made if it is missing. - writes rgb, npy or packets alone, to standard output.")
    private Path output;

    @Mixin
    private OutputWords words;

    @Option(
            names = "--frames",
            paramLabel = "A..B",
            converter = FrameRange.class,
            description = "Only the frames from A up to but not including B.")
    private FrameSpan frames;

    @Option(
            names = "--shard",
            paramLabel = "I/N",
            converter = ShardNumber.Converter.class,
            description =
                    "Only the I-th of N pieces, which are as long as each other; 'duskloom join' makes a whole of them.")
    private ShardNumber shard;

    @Option(
            names = "--threads",
            paramLabel = "N",
            description = "Render on so many threads; usually one for each processor.")
    private Integer threads;

    @Option(
            names = "--strip",
            description =
                    "Write two pictures too: strip.png, a moment inside each cue, and time.png, a row for each pixel.")
    private boolean strip;

    @Option(
            names = "--tiles",
            description =
                    "Write time/ too: time.png cut into pictures of up to 16,000 rows, so that no pixel need be left"
                            + " out however many there are.")
    private boolean tiles;

    @Option(names = "--force", description = "Replace files that stand there, once the new ones are complete.")
    private boolean force;

    @Mixin
    private HelpOptions helpOptions;

    RenderCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public Integer call() throws IOException, InterruptedException {
        int usedThreads = threads();
        List<OutputKind> kinds = kinds();
        if (shard != null && frames != null) {
            throw new MisuseException("--shard and --frames both say which frames; give one of them");
        }
        if ((strip || tiles) && OutputNames.isStandardOutput(output)) {
            throw new MisuseException(
                    (strip ? "--strip" : "--tiles") + " needs a folder, and -o is the standard output");
        }
        requireFolder(kinds);
        Optional<LoadedShow> loaded = show.load(streams);
        if (loaded.isEmpty()) {
            return ExitCode.BAD_INPUT;
        }
        if (lacksPorts(loaded.get(), kinds)) {
            return ExitCode.BAD_INPUT;
        }
        kinds = OutputKinds.of(loaded.get(), kinds, words.style());
        FrameSource source = loaded.get().frames();
        FrameSpan span = span(source.info().showFrames());
        Rendering rendering = new Rendering(source, FrameList.of(span), usedThreads);
        if (OutputNames.isStandardOutput(output)) {
            pour(loaded.get(), streamKind(kinds), rendering);
        } else {
            render(loaded.get(), kinds, rendering);
        }
        return ExitCode.DONE;
    }

    private void requireFolder(List<OutputKind> kinds) {
        if (!OutputNames.isStandardOutput(output)) {
            boolean single = kinds.size() == 1 && kinds.get(0) instanceof StreamKind;
            OutputNames.requireNoFile(
                    "-o", output, single ? "; for " + kinds.get(0).word() + " alone: -o - > " + output : "");
        }
    }

    private boolean lacksPorts(LoadedShow loaded, List<OutputKind> kinds) {
        Problems problems = new Problems();
        loaded.wired().look(kinds, problems);
        ProblemPrinter.print(problems, streams);
        return problems.hasErrors();
    }

    private void pour(LoadedShow loaded, StreamKind kind, Rendering rendering)
            throws IOException, InterruptedException {
        try (FrameSink sink = kind.into(StagedFile.standardOutput())) {
            measured(loaded, rendering, List.of(sink)).forEach(streams::tell);
        }
    }

    private void render(LoadedShow loaded, List<OutputKind> kinds, Rendering rendering)
            throws IOException, InterruptedException {
        long start = System.nanoTime();
        OutputFolder folder = new OutputFolder(output, OutputNames.ifExists(force), loaded::refuseAsOutput);
        List<String> figures;
        try (FrameOutputs outputs = new FrameOutputs(folder, kinds, rendering.info(), loaded.origin())) {
            Room.require(folder, kinds, rendering.info());
            figures = measured(loaded, rendering, outputs.sinks());
            rendering.drawTiles(outputs.sinks(), streams);
            outputs.publish();
        }
        streams.tell(rendering.summary(output, System.nanoTime() - start));
        tellOfOlder(folder, kinds);
        tellOfPixelsLeftOut(folder, rendering.info());
        figures.forEach(streams::tell);
    }

    /** Hands the frames to sinks and to meters; gives what these have to say. */
    private List<String> measured(LoadedShow loaded, Rendering rendering, List<FrameSink> sinks)
            throws IOException, InterruptedException {
        ShowMeters meters = ShowMeters.usual(loaded);
        List<FrameSink> all = new ArrayList<>(sinks);
        all.addAll(meters.sinks(rendering.info()));
        rendering.into(all, streams);
        return BriefReport.lines(meters.report(rendering.info(), false), meters.flashes(rendering.info()));
    }

    private List<OutputKind> kinds() {
        List<OutputKind> kinds = new ArrayList<>(words.kinds());
        if (OutputNames.isStandardOutput(output)) {
            streamKind(kinds);
        }
        if (strip) {
            kinds.add(OutputKinds.ALL.kind("strip"));
            kinds.add(OutputKinds.ALL.kind("time"));
        }
        if (tiles) {
            kinds.add(OutputKinds.ALL.kind("tiles"));
        }
        return kinds;
    }

    /** The one thing that goes into a pipe. */
    private static StreamKind streamKind(List<OutputKind> kinds) {
        if (kinds.size() == 1 && kinds.get(0) instanceof StreamKind stream) {
            return stream;
        }
        String streams = OutputKinds.ALL.kinds().stream()
                .filter(kind -> kind.holdsFrames() && kind instanceof StreamKind)
                .map(OutputKind::word)
                .collect(Collectors.joining(" or "));
        throw new MisuseException("-o - is the standard output, which takes one of " + streams + "; for "
                + kinds.stream().map(OutputKind::word).collect(Collectors.joining(",")) + " name a folder");
    }

    private void tellOfOlder(OutputFolder folder, List<OutputKind> written) {
        for (OutputKind kind : OutputKinds.ALL.kinds()) {
            boolean isNew = written.stream().anyMatch(now -> now.word().equals(kind.word()));
            for (String name : isNew ? List.<String>of() : kind.files()) {
                Path older = folder.path(name);
                if (Files.exists(older)) {
                    streams.tell(older + " is of an earlier rendering; " + remedy(kind));
                }
            }
        }
    }

    private static String remedy(OutputKind kind) {
        if (kind.holdsFrames()) {
            return "--as " + kind.word() + " writes it anew";
        }
        return (kind.word().equals("tiles") ? "--tiles" : "--strip") + " draws it anew";
    }

    private void tellOfPixelsLeftOut(OutputFolder folder, RunInfo run) {
        int distance = TimeStripKind.pixelsPerRow(run.pixelCount());
        if (strip && !tiles && distance > 1) {
            streams.tell(folder.path("time.png") + " shows one pixel in " + distance
                    + "; --tiles draws all of them, into several pictures");
        }
    }

    private int threads() {
        if (threads != null && (threads < 1 || threads > MOST_THREADS)) {
            throw new MisuseException("--threads is " + threads + "; allowed: 1 to " + MOST_THREADS);
        }
        return threads == null ? Rendering.usualThreads() : threads;
    }

    private FrameSpan span(long frameCount) {
        if (shard != null) {
            return shard.frames(frameCount);
        }
        FrameSpan whole = new FrameSpan(0, frameCount);
        if (frames != null && frames.endFrameExclusive() > frameCount) {
            throw new MisuseException("--frames " + frames + " goes beyond the show; allowed: 0.." + frameCount
                    + " or a part of it, as it has " + Counted.of(frameCount, "frame"));
        }
        return frames == null ? whole : frames;
    }
}
