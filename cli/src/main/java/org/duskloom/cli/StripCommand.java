package org.duskloom.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import org.duskloom.engine.file.OutputRefusedException;
import org.duskloom.engine.file.StagedFile;
import org.duskloom.engine.format.StreamKind;
import org.duskloom.engine.frame.FrameList;
import org.duskloom.engine.frame.FrameSink;
import org.duskloom.engine.frame.FrameSource;
import org.duskloom.engine.frame.RunInfo;
import org.duskloom.engine.preview.ContactStripKind;
import org.duskloom.engine.preview.PreviewScene;
import org.duskloom.engine.preview.ShownFrames;
import org.duskloom.engine.preview.ShownMoment;
import org.duskloom.engine.preview.StripOptions;
import org.duskloom.engine.problem.TextFormatException;
import org.duskloom.engine.time.FrameSpan;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code duskloom strip}. */
@Command(
        name = "strip",
        sortOptions = false,
        sortSynopsis = false,
        header = "Draw a show, or a part of it, into one picture.",
        description = {
            "",
            "A contact strip shows moments side by side, every pixel as a glowing dot where it hangs: at about even"
                    + " distances, each picked out of a few so that it looks other than those before it. A time strip has"
                    + " a row for each pixel in wiring order and a column for each frame; of more than 65,535 pixels a row"
                    + " for every n-th, unless --pixel-size is given. Only frames that may be shown are rendered.",
            ""
        },
        footer = {
            "",
            "Examples:",
            "  duskloom strip garden/show.json -o strip.png",
            "      Moments from the whole show.",
            "  duskloom strip garden/show.json -o cue.png --from 4s --to 9s --force",
            "      Moments from the cue that is being worked on, again after a change.",
            "  duskloom strip garden/show.json -o cues.png --by cue --on daisies",
            "      A moment inside each cue, with its name; the daisies alone.",
            "  duskloom strip garden/show.json -o one.png --from 90f --count 1 --names",
            "      Frame 90 with the names of the props.",
            "  duskloom strip garden/show.json -o time.png --kind time --from 4s --to 9s",
            "      Every frame of five seconds."
        })
final class StripCommand implements Callable<Integer> {
    private static final int MOST_MOMENTS = 100_000;
    private final Streams streams;

    @Mixin
    private ShowOperand show;

    @Option(
            names = {"-o", "--output"},
            paramLabel = "FILE.png",
            required = true,
            description = "The picture; - is standard output.")
    private Path output;

    @Mixin
    private PixelChoice pixels = new PixelChoice();

    @Option(names = "--cue", paramLabel = "NAME", description = "The time of this cue, instead of --from and --to.")
    private String cue;

    @Option(names = "--from", paramLabel = "T", description = "The first moment, such as 3s or 90f; usually the start.")
    private String from;

    @Option(names = "--to", paramLabel = "T", description = "Up to this moment, without it; usually the end.")
    private String to;

    @Option(
            names = "--by",
            paramLabel = "time|cue",
            defaultValue = "time",
            converter = PanelChoice.Converter.class,
            completionCandidates = PanelChoice.Words.class,
            description =
                    "A contact strip has moments all over the time, which is usual, or one inside each cue, with its name;"
                            + " with --on of those cues that are seen there.")
    private PanelChoice by;

    @Option(
            names = "--count",
            paramLabel = "N",
            description = "At most so many moments: usually 24 panels or 4800 columns.")
    private Integer count;

    @Option(names = "--columns", paramLabel = "N", description = "Panels side by side in a contact strip.")
    private Integer columns;

    @Option(
            names = "--pixel-size",
            paramLabel = "N",
            description = "Size of a pixel in dots of the picture, 1 to 100; usually so that it suits a screen.")
    private Integer pixelSize;

    @Option(
            names = "--kind",
            paramLabel = "contact|time",
            defaultValue = "contact",
            converter = StripKind.Converter.class,
            completionCandidates = StripKind.Words.class,
            description = "A contact strip, which is usual, or a time strip.")
    private StripKind kind;

    @Option(names = "--names", description = "Name the props in a contact strip; a time strip names them anyway.")
    private boolean names;

    @Option(names = "--force", description = "Replace the picture that stands there, once the new one is complete.")
    private boolean force;

    @Mixin
    private HelpOptions helpOptions;

    StripCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public Integer call() throws IOException, InterruptedException {
        check("--count", count, MOST_MOMENTS);
        check("--columns", columns, MOST_MOMENTS);
        check("--pixel-size", pixelSize, StripOptions.LARGEST_PIXEL);
        if (columns != null && kind == StripKind.TIME) {
            throw new MisuseException("--columns is for contact strips; a time strip has a column for each frame");
        }
        if (by == PanelChoice.CUE && kind == StripKind.TIME) {
            throw new MisuseException("--by cue is for contact strips; a time strip shows all cues after each other");
        }
        if (cue != null && (from != null || to != null)) {
            throw new MisuseException("--cue is a time already; leave out --from and --to");
        }
        requirePicture();
        Optional<LoadedShow> loaded = show.load(streams);
        if (loaded.isEmpty()) {
            return ExitCode.BAD_INPUT;
        }
        draw(loaded.get(), span(loaded.get()));
        return ExitCode.DONE;
    }

    /** Only a device or a pipe may have any name. */
    private void requirePicture() {
        String name = output.toString();
        boolean special = Files.exists(output) && !Files.isRegularFile(output) && !Files.isDirectory(output);
        if (!OutputNames.isStandardOutput(output)
                && !special
                && !name.toLowerCase(Locale.ROOT).endsWith(".png")) {
            throw new MisuseException("-o " + name + ": the picture is a PNG; give it a name that ends in .png");
        }
    }

    private void draw(LoadedShow loaded, FrameSpan span) throws IOException, InterruptedException {
        FrameSource source = pixels.of(loaded.frames(), loaded.show().groups());
        StripOptions options = new StripOptions(optional(columns), OptionalInt.empty(), optional(pixelSize), names);
        if (by == PanelChoice.CUE) {
            List<ShownMoment> cues = cueMoments(loaded, span);
            long[] frames = cues.stream().mapToLong(ShownMoment::frame).toArray();
            draw(ContactStripKind.of(options, cues), source, frames, frames.length, loaded);
        } else {
            RunInfo run = source.info();
            long[][] shown = kind.frames(options, PreviewScene.of(run), FrameList.of(span), run.rate(), count);
            long[] frames = Arrays.stream(shown).flatMapToLong(Arrays::stream).toArray();
            draw(kind.picture(options, shown), source, frames, shown.length, loaded);
        }
    }

    /** @param shown how many of the frames the picture shows */
    private void draw(StreamKind pictureKind, FrameSource source, long[] frames, int shown, LoadedShow loaded)
            throws IOException, InterruptedException {
        long start = System.nanoTime();
        Rendering rendering = new Rendering(source, FrameList.of(frames));
        StagedFile file = file(loaded);
        try (FrameSink picture = pictureKind.into(file)) {
            rendering.into(List.of(picture), streams);
        } catch (OutputRefusedException refused) {
            if (refused.isReplaceable()) {
                throw refused;
            }
            // A picture that would be too large is a matter of the options.
            throw new MisuseException(refused.getMessage());
        }
        streams.tell(rendering.summary(output, shown, System.nanoTime() - start));
    }

    private List<ShownMoment> cueMoments(LoadedShow loaded, FrameSpan span) {
        BitSet seen = new BitSet();
        Arrays.stream(pixels.pixels(loaded.show().groups())).forEach(seen::set);
        List<ShownMoment> moments =
                loaded.cues().moments(FrameList.of(span), seen, count == null ? ShownFrames.USUAL_PANELS : count);
        if (moments.isEmpty()) {
            String what = seen.cardinality() < loaded.plan().pixelCount() ? "seen on what --on names" : "played";
            throw new MisuseException("--by cue: no cue is " + what + " in this time");
        }
        return moments;
    }

    private StagedFile file(LoadedShow loaded) throws IOException {
        if (OutputNames.isStandardOutput(output)) {
            return StagedFile.standardOutput();
        }
        loaded.refuseAsOutput(output);
        return StagedFile.open(output, OutputNames.ifExists(force));
    }

    private FrameSpan span(LoadedShow loaded) {
        if (cue != null) {
            return loaded.cues().span(cue);
        }
        try {
            return TimeWindow.frames(loaded.show().timeline(), from, to);
        } catch (TextFormatException fault) {
            throw new MisuseException(fault.getMessage() + (fault.hint().isEmpty() ? "" : "; " + fault.hint()));
        }
    }

    private void check(String option, Integer value, int most) {
        if (value != null && (value < 1 || value > most)) {
            throw new MisuseException(option + " is " + value + "; allowed: 1 to " + most);
        }
    }

    private static OptionalInt optional(Integer value) {
        return value == null ? OptionalInt.empty() : OptionalInt.of(value);
    }
}
