package org.duskloom.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.duskloom.engine.find.FindRun;
import org.duskloom.engine.format.FrameOutputs;
import org.duskloom.engine.format.Origin;
import org.duskloom.engine.format.OutputFolder;
import org.duskloom.engine.format.OutputKind;
import org.duskloom.engine.frame.FramePixels;
import org.duskloom.engine.group.GroupTree;
import org.duskloom.engine.problem.NearestName;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.proof.Proof;
import org.duskloom.engine.proof.ProofFrames;
import org.duskloom.engine.proof.ProofStep;
import org.duskloom.engine.proof.StepsKind;
import org.duskloom.engine.text.Counted;
import org.duskloom.engine.text.Quoted;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code duskloom proof}. */
@Command(
        name = "proof",
        sortOptions = false,
        sortSynopsis = false,
        header = "Render a test show that proves wiring and orientation on site.",
        description = {
            "",
            "Plays first pixels, a running index, the stage's up against each shape's own up, every prop, part and"
                    + " group in turn, and red, green, blue and white for the order of the colours. Writes frames.rgb and frames.json, strip.png with every step and its caption,"
                    + " and steps.txt, which says what to see and when; with --as also, or instead of frames.rgb, what"
                    + " 'duskloom render' can write. 'duskloom send' plays a folder with packets.",
            ""
        },
        footer = {
            "",
            "Examples:",
            "  duskloom proof garden/display.json -o proof",
            "      Play proof/frames.rgb on site at 20 frames a second, steps.txt in hand.",
            "  duskloom proof garden/display.json -o proof --as ports,packets",
            "      For 'duskloom send proof', which plays it on the ports of the display.",
            "  duskloom proof garden/display.json -o held --step \"colour red\" --only fence",
            "      The fence in red, for as long as it is played.",
            "  duskloom proof garden/display.json -o find --find",
            "      What to film, so that 'duskloom locate' finds where every pixel hangs.",
            "  duskloom proof --pixels 300 -o find --find --hold 5s",
            "      The same for a line of 300 pixels, slowly enough for photos."
        })
final class ProofCommand implements Callable<Integer> {
    private final Streams streams;

    @Parameters(arity = "0..1", paramLabel = "DISPLAY.json", description = "The display; or a pixel map, MAP.csv.")
    private Path display;

    @Option(
            names = {"-o", "--output"},
            paramLabel = "DIR",
            required = true,
            description = "The folder for the files; made if it is missing.")
    private Path output;

    @Mixin
    private OutputWords words;

    @Option(
            names = "--step",
            paramLabel = "NAME",
            description = "Only the step of that name, such as \"stage up\", to hold it: play it in a loop.")
    private String step;

    @Option(
            names = "--only",
            paramLabel = "ADDRESS",
            description = "Only this prop, part or group is lit; may be given several times.")
    private List<String> only = List.of();

    @Mixin
    private FindOptions find;

    @Option(
            names = "--pixels",
            paramLabel = "N",
            description = "With --find, in place of a display: so many pixels on one line, whose places are not known"
                    + " yet.")
    private Integer pixels;

    @Option(names = "--force", description = "Replace files that stand there, once the new ones are complete.")
    private boolean force;

    @Mixin
    private HelpOptions helpOptions;

    ProofCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public Integer call() throws IOException, InterruptedException {
        OutputNames.requireFolder("-o", output);
        requireOneSource();
        find.requireFindForAll();
        List<OutputKind> asked = words.kinds();
        if (pixels != null) {
            return ofBarePixels(asked);
        }
        Problems problems = new Problems();
        Optional<LoadedPixels> read = LoadedPixels.load(display, problems);
        read.ifPresent(loaded -> loaded.wired(Proof.RATE).look(asked, problems));
        ProblemPrinter.print(problems, streams);
        if (read.isEmpty() || problems.hasErrors()) {
            return ExitCode.BAD_INPUT;
        }
        return of(read.get(), asked);
    }

    private int of(LoadedPixels loaded, List<OutputKind> asked) throws IOException, InterruptedException {
        FramePixels shown = FramePixels.of(loaded.map());
        String name = display.getFileName().toString();
        StepsKind steps = new StepsKind();
        ProofFrames frames;
        if (find.isAsked()) {
            FindRun run = find.run(shown.count());
            steps = new StepsKind(run);
            frames = new ProofFrames(chosen(find.proof(run)), "Numbers of " + name, shown);
        } else {
            frames = new ProofFrames(chosen(proved(loaded.groups())), "Proof of " + name, shown);
        }
        List<OutputKind> kinds = new ArrayList<>(OutputKinds.of(loaded, frames.info(), asked, words.style()));
        kinds.add(steps);
        kinds.add(OutputKinds.ALL.kind("strip"));
        OutputFolder folder = new OutputFolder(output, OutputNames.ifExists(force), loaded::refuseAsOutput);
        return render(frames, kinds, folder, loaded.origin());
    }

    private void requireOneSource() {
        if (display == null && pixels == null) {
            throw new MisuseException("the display is missing: name DISPLAY.json or MAP.csv"
                    + (find.isAsked() ? ", or say how many pixels there are with --pixels" : ""));
        }
        if (pixels != null && display != null) {
            throw new MisuseException("--pixels takes the place of a display; leave out one of them");
        }
        if (pixels != null && !find.isAsked()) {
            throw new MisuseException("--pixels is for --find");
        }
        FindOptions.checkPixels(pixels);
        if (find.isAsked() && !only.isEmpty()) {
            throw new MisuseException("--only cannot be used with --find: every pixel needs its own number");
        }
    }

    /** Without places there is no picture, and without a display there are no ports. */
    private int ofBarePixels(List<OutputKind> asked) throws IOException, InterruptedException {
        asked.stream().filter(OutputKind::needsPorts).findFirst().ifPresent(kind -> {
            throw new MisuseException("--as " + kind.word() + " needs a display with \"ports\", and --pixels has none");
        });
        FindRun run = find.run(pixels);
        ProofFrames frames = new ProofFrames(
                chosen(find.proof(run)), "Numbers of " + Counted.of(pixels, "pixel"), FramePixels.unnamed(pixels));
        List<OutputKind> kinds = new ArrayList<>(asked);
        kinds.add(new StepsKind(run));
        OutputFolder folder = new OutputFolder(output, OutputNames.ifExists(force), target -> {});
        return render(frames, kinds, folder, new Origin(Version.number(), List.of()));
    }

    private Proof proved(GroupTree groups) {
        Proof all = Proof.of(groups);
        return only.isEmpty() ? all : all.only(TypedAddresses.pixels("--only", only, groups));
    }

    private Proof chosen(Proof all) {
        if (step == null) {
            return all;
        }
        List<String> names = all.steps().stream().map(ProofStep::caption).toList();
        return all.step(step).orElseThrow(() -> {
            String hint = NearestName.hint(step, names);
            return new MisuseException(
                    "--step: there is no step " + Quoted.of(step) + (hint.isEmpty() ? "" : "; " + hint));
        });
    }

    private int render(ProofFrames source, List<OutputKind> kinds, OutputFolder folder, Origin origin)
            throws IOException, InterruptedException {
        Rendering rendering = new Rendering(source, source.info().frames());
        try (FrameOutputs outputs = new FrameOutputs(folder, kinds, rendering.info(), origin)) {
            rendering.into(outputs.sinks(), streams);
            outputs.publish();
        }
        streams.tell(output + ": " + Counted.of(source.info().steps().size(), "step") + ", "
                + Counted.of(source.info().frames().count(), "frame"));
        return ExitCode.DONE;
    }
}
