package org.duskloom.cli;

import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeSet;
import org.duskloom.engine.display.Display;
import org.duskloom.engine.display.DisplayChecks;
import org.duskloom.engine.document.Node;
import org.duskloom.engine.plan.KernelShelf;
import org.duskloom.engine.plan.PlannedCue;
import org.duskloom.engine.plan.PlannedLayer;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.show.DisplayFile;
import org.duskloom.engine.show.DocumentKind;
import org.duskloom.engine.show.Show;
import org.duskloom.engine.show.ShowFiles;
import org.duskloom.engine.show.ShowReader;
import org.duskloom.engine.text.Quoted;
import org.duskloom.engine.time.Beats;
import org.duskloom.engine.time.ExactTime;
import org.duskloom.engine.timeline.Timeline;
import org.duskloom.engine.wire.PortChecks;

/**
 * A file that was looked through for problems: a timeline or a display, as its field {@code duskloom} says.
 *
 * @param path as the user named it
 * @param summary what is in it, a line for each kind of thing
 * @param show the show, if it is one
 * @param display the display, if it is one
 */
record CheckedFile(Path path, String summary, Optional<LoadedShow> show, Optional<LoadedDisplay> display) {
    /**
     * Reads a file and all that it names.
     *
     * @param problems where everything goes that is wrong, or mostly is a slip
     * @return nothing if an error was added
     */
    static Optional<CheckedFile> read(Path file, Problems problems) {
        // What is written there is let go before it is compiled: of a long show that is much.
        Written written = written(file, problems);
        Optional<CheckedFile> show = written.show()
                .flatMap(read -> LoadedShow.compile(file, read, KernelShelf.unused(), problems))
                .map(loaded -> ofShow(loaded, problems));
        return show.or(() -> written.display().map(read -> ofDisplay(file, read, problems)));
    }

    /** What was read, as far as it could be. */
    private record Written(Optional<Show> show, Optional<DisplayFile> display) {
        static final Written NOTHING = new Written(Optional.empty(), Optional.empty());
    }

    private static Written written(Path file, Problems problems) {
        int errorsBefore = problems.errorCount();
        ShowFiles files = ShowFiles.beside(file);
        Optional<Node> root = files.json(file, file.toString(), problems);
        if (root.isEmpty()) {
            return Written.NOTHING;
        }
        DocumentKind kind = DocumentKind.of(root.get()).orElse(null);
        if (kind == DocumentKind.TIMELINE) {
            return new Written(ShowReader.read(root.get(), file, files, problems), Optional.empty());
        }
        if (kind == DocumentKind.DISPLAY) {
            Optional<DisplayFile> display = ShowReader.readDisplay(root.get(), file, files, problems);
            return new Written(Optional.empty(), display.filter(read -> problems.errorCount() == errorsBefore));
        }
        reportOther(root.get(), problems);
        return Written.NOTHING;
    }

    private static void reportOther(Node root, Problems problems) {
        String said = DocumentKind.format(root)
                .filter(format -> !format.value().isEmpty())
                .map(format -> ": \"duskloom\" is " + Quoted.of(format.value()))
                .orElse("");
        problems.error(
                root.location(),
                "neither a timeline nor a display" + said,
                "\"duskloom\" says \"timeline/1\" or \"display/1\"");
    }

    private static CheckedFile ofShow(LoadedShow show, Problems problems) {
        warn(show, problems);
        return new CheckedFile(show.file(), summary(show), Optional.of(show), Optional.empty());
    }

    /** Which pixels are in no group matters little to a show: its cues say what they light. */
    private static void warn(LoadedShow loaded, Problems problems) {
        Optional<Display> display = loaded.show().display();
        if (display.isPresent()) {
            DisplayChecks.warnOfBuild(display.get(), problems);
            DisplayChecks.warnOfLengths(display.get(), loaded.wired().file(), problems);
            PortChecks.warnOfLongLines(display.get().ports(), loaded.plan().rate(), problems);
        } else {
            DisplayChecks.warnOfPlainMap(loaded.show().groups(), problems);
            UnusedGroups.warn(loaded, problems);
        }
    }

    private static CheckedFile ofDisplay(Path file, DisplayFile read, Problems problems) {
        DisplayChecks.warn(read.display(), problems);
        DisplayChecks.warnOfLengths(read.display(), Location.ofFile(file.toString()), problems);
        LoadedDisplay display = new LoadedDisplay(file, read.display(), read.inputs());
        return new CheckedFile(file, summary(display.display()), Optional.empty(), Optional.of(display));
    }

    private static String summary(LoadedShow loaded) {
        Timeline timeline = loaded.show().timeline();
        List<PlannedCue> cues = loaded.plan().layers().stream()
                .map(PlannedLayer::cues)
                .flatMap(List::stream)
                .toList();
        Collection<String> effects = new TreeSet<>();
        cues.forEach(cue -> effects.add(cue.cue().effect().value()));
        StringBuilder text = new StringBuilder();
        line(text, "title", loaded.title());
        line(text, "pixels", loaded.plan().pixelCount());
        line(text, "props", loaded.show().map().props().size());
        line(text, "groups", loaded.show().groups().groupNames().size());
        loaded.show().display().ifPresent(display -> line(text, "extent", StageExtent.of(display)));
        loaded.show().display().ifPresent(display -> linePorts(text, display));
        line(text, "frames", loaded.plan().frameCount());
        line(text, "length", timeline.length());
        line(text, "rate", loaded.plan().rate());
        timeline.sound()
                .ifPresent(
                        sound -> line(text, "sound", Quoted.plain(sound.file().value())));
        timeline.times().beats().ifPresent(beats -> line(text, "beats", shown(beats)));
        if (!timeline.markers().isEmpty()) {
            line(text, "markers", timeline.markers().size());
        }
        line(text, "layers", timeline.layers().size());
        if (!timeline.scenes().all().isEmpty()) {
            line(text, "scenes", timeline.scenes().all().size());
        }
        line(text, "cues", cues.size());
        line(text, "effects", effects.isEmpty() ? "none" : String.join(", ", effects));
        line(text, "flashing", "not looked for here: 'duskloom report' does");
        return text.toString();
    }

    private static String shown(Beats beats) {
        List<ExactTime> known = beats.known();
        double seconds = known.get(known.size() - 1).minus(known.get(0)).seconds() / (known.size() - 1);
        String tempo = String.format(Locale.ROOT, "%.1f", 60 / seconds).replace(".0", "") + " a minute";
        return beats.isEven() ? tempo : known.size() + ", " + tempo + " on average";
    }

    private static String summary(Display display) {
        StringBuilder text = new StringBuilder();
        String units = display.units().word();
        line(text, "units", display.unitsWritten() ? units : "none written, taken for " + units);
        line(text, "extent", StageExtent.of(display));
        line(text, "shapes", display.shapes().size());
        line(text, "props", display.props().size());
        line(text, "pixels", display.map().pixelCount());
        line(text, "groups", display.groups().groupNames().size());
        linePorts(text, display);
        return text.toString();
    }

    private static void linePorts(StringBuilder text, Display display) {
        if (!display.ports().isEmpty()) {
            line(text, "ports", display.ports().ports().size());
        }
        if (!display.ports().supplies().isEmpty()) {
            line(text, "supplies", display.ports().supplies().size());
        }
    }

    private static void line(StringBuilder text, String name, Object value) {
        text.append(name)
                .append(" ".repeat(9 - name.length()))
                .append(Quoted.plain(value.toString()))
                .append(System.lineSeparator());
    }
}
