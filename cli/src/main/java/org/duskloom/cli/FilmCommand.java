package org.duskloom.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.duskloom.engine.file.OutputRefusedException;
import org.duskloom.engine.file.StagedFile;
import org.duskloom.engine.film.AnimationKind;
import org.duskloom.engine.film.FilmSize;
import org.duskloom.engine.film.PageEstimate;
import org.duskloom.engine.film.PageFacts;
import org.duskloom.engine.film.PageKind;
import org.duskloom.engine.film.PageSound;
import org.duskloom.engine.film.VideoKind;
import org.duskloom.engine.format.StreamKind;
import org.duskloom.engine.frame.FrameList;
import org.duskloom.engine.frame.FrameSink;
import org.duskloom.engine.frame.FrameSource;
import org.duskloom.engine.preview.ShownFrames;
import org.duskloom.engine.problem.TextFormatException;
import org.duskloom.engine.time.FrameRate;
import org.duskloom.engine.time.FrameSpan;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code duskloom film}. */
@Command(
        name = "film",
        sortOptions = false,
        sortSynopsis = false,
        header = "Make a film of a show, or of a part of it, to look at.",
        description = {
            "",
            "The ending of FILE says what is made:",
            "  .html     a page for a browser, which needs no network: play, step, loop,",
            "            turn it, and click on a pixel to see which one it is",
            "  .png      an animated picture, for a message or a page",
            "  .y4m      video that is not compressed, for a program that makes video files",
            ""
        },
        footer = {
            "",
            "Examples:",
            "  duskloom film garden/show.json -o show.html",
            "      The whole show; open the page in a browser.",
            "  duskloom film garden/show.json -o rim.png --on daisy-1/rim --from 4s --to 9s",
            "      Five seconds of one part, as large as the picture.",
            "  duskloom film garden/show.json -o - | ffmpeg -colorspace smpte170m -i -",
            "      -vf scale=out_color_matrix=bt709 -colorspace bt709 -pix_fmt yuv420p a.mp4",
            "      Video, by a program that reads it from a pipe."
        })
final class FilmCommand implements Callable<Integer> {
    private static final int MOST_PLAYS = 1_000_000;

    /** From so many bytes on it is said how there may be fewer; common practice, no source. */
    private static final long LARGE_ANIMATION_BYTES = 2_000_000;

    private final Streams streams;

    @Mixin
    private ShowOperand show;

    @Option(
            names = {"-o", "--output"},
            paramLabel = "FILE",
            required = true,
            description = "The film; - is standard output, and video.")
    private Path output;

    @Option(names = "--from", paramLabel = "T", description = "The first moment, such as 3s or 90f; usually the start.")
    private String from;

    @Option(names = "--to", paramLabel = "T", description = "Up to this moment, without it; usually the end.")
    private String to;

    @Mixin
    private PixelChoice pixels;

    @Option(
            names = "--size",
            paramLabel = "WxH",
            description = "Width and height in dots of a picture or a video; usually what the display fills of"
                    + " 640x480, of less where its pixels are few, or of 1280x720.")
    private String size;

    @Option(names = "--every", paramLabel = "N", description = "Only each Nth frame; usually every one.")
    private Integer every;

    @Option(
            names = "--plays",
            paramLabel = "N",
            description = "How often a picture is played; usually 0, for ever again.")
    private Integer plays;

    @Option(names = "--force", description = "Replace the film that stands there, once the new one is complete.")
    private boolean force;

    @Mixin
    private HelpOptions helpOptions;

    FilmCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public Integer call() throws IOException, InterruptedException {
        FilmKind kind = FilmKind.of(output);
        checkNumbers(kind);
        Optional<FilmSize> wanted = size(kind);
        Optional<LoadedShow> loaded = show.load(streams);
        if (loaded.isEmpty()) {
            return ExitCode.BAD_INPUT;
        }
        film(loaded.get(), kind, wanted);
        return ExitCode.DONE;
    }

    private void checkNumbers(FilmKind kind) {
        check("--every", every, 1, Integer.MAX_VALUE);
        check("--plays", plays, 0, MOST_PLAYS);
        if (plays != null && kind != FilmKind.ANIMATION) {
            throw new MisuseException("--plays is for an animated picture, whose name ends in .png");
        }
    }

    private void film(LoadedShow loaded, FilmKind kind, Optional<FilmSize> wanted)
            throws IOException, InterruptedException {
        int[] seen = pixels.pixels(loaded.show().groups());
        FrameSpan span = span(loaded);
        Optional<PageSound> sound = kind == FilmKind.PAGE ? sound(loaded, span) : Optional.empty();
        try {
            make(loaded, frames(span), stream(kind, wanted, new PageFacts(loaded.show(), seen), sound));
        } catch (OutputRefusedException refused) {
            if (refused.isReplaceable()) {
                throw refused;
            }
            // A film that cannot be made so is a matter of the options.
            throw new MisuseException(refused.getMessage());
        }
    }

    private void make(LoadedShow loaded, FrameList frames, StreamKind kind) throws IOException, InterruptedException {
        long start = System.nanoTime();
        FrameSource source = pixels.of(loaded.frames(), loaded.show().groups());
        Rendering rendering = new Rendering(source, frames);
        StagedFile file = file(loaded);
        try (FrameSink film = kind.into(file)) {
            Room.require(output, kind.bytes(rendering.info()));
            if (kind instanceof PageKind page) {
                PageEstimate.requireFits(source, frames, page);
            }
            rendering.into(List.of(film), streams);
        }
        streams.tell(rendering.summary(output, System.nanoTime() - start) + ", " + Words.bytes(file.bytesTaken()));
        if (kind instanceof AnimationKind animation && file.bytesTaken() > LARGE_ANIMATION_BYTES) {
            streams.tell(smaller(animation.size(rendering.info())));
        }
    }

    /** What takes about half of the bytes, by dots or by frames. */
    private String smaller(FilmSize now) {
        String half = now.width() < 3 || now.height() < 3
                ? ""
                : "--size " + new FilmSize(now.width() * 7 / 10, now.height() * 7 / 10) + " or ";
        return "smaller by half: " + half + "--every " + 2 * (every == null ? 1 : every)
                + "; smaller yet as video, which film --help tells of";
    }

    private StreamKind stream(FilmKind kind, Optional<FilmSize> wanted, PageFacts facts, Optional<PageSound> sound) {
        return switch (kind) {
            case ANIMATION -> new AnimationKind(wanted, plays == null ? 0 : plays);
            case VIDEO -> new VideoKind(wanted);
            case PAGE -> new PageKind(PlayerPage.text(), facts, sound, PageKind.MOST_BYTES);
        };
    }

    private Optional<FilmSize> size(FilmKind kind) {
        if (size == null) {
            return Optional.empty();
        }
        if (kind == FilmKind.PAGE) {
            throw new MisuseException("--size is for a picture or a video; a page fills the window it is shown in");
        }
        try {
            FilmSize parsed = FilmSize.parse(size);
            if (kind == FilmKind.VIDEO && !parsed.isEven()) {
                throw new MisuseException("--size " + size + ": most video needs an even width and an even height");
            }
            return Optional.of(parsed);
        } catch (TextFormatException fault) {
            throw misuse("--size: ", fault);
        }
    }

    private StagedFile file(LoadedShow loaded) throws IOException {
        if (OutputNames.isStandardOutput(output)) {
            return StagedFile.standardOutput();
        }
        loaded.refuseAsOutput(output);
        return StagedFile.open(output, OutputNames.ifExists(force));
    }

    private static Optional<PageSound> sound(LoadedShow loaded, FrameSpan span) throws IOException {
        FrameRate rate = loaded.plan().rate();
        return loaded.sound(rate.secondsOf(span.firstFrame()), rate.secondsOf(span.endFrameExclusive()));
    }

    private FrameSpan span(LoadedShow loaded) {
        try {
            return TimeWindow.frames(loaded.show().timeline(), from, to);
        } catch (TextFormatException fault) {
            throw misuse("", fault);
        }
    }

    private FrameList frames(FrameSpan span) {
        FrameList all = FrameList.of(span);
        return every == null || every == 1 ? all : FrameList.of(ShownFrames.everyNth(all, every));
    }

    private static MisuseException misuse(String what, TextFormatException fault) {
        return new MisuseException(what + fault.getMessage() + (fault.hint().isEmpty() ? "" : "; " + fault.hint()));
    }

    private static void check(String option, Integer value, int least, int most) {
        if (value != null && (value < least || value > most)) {
            throw new MisuseException(option + " is " + value + "; allowed: " + least
                    + (most == Integer.MAX_VALUE ? " or more" : " to " + most));
        }
    }
}
