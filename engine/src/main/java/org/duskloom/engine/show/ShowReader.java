package org.duskloom.engine.show;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.duskloom.engine.display.Display;
import org.duskloom.engine.display.DisplayReader;
import org.duskloom.engine.document.Node;
import org.duskloom.engine.document.SourceText;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.group.GroupReader;
import org.duskloom.engine.group.GroupTree;
import org.duskloom.engine.map.MapReader;
import org.duskloom.engine.plan.PlanCompiler;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.sound.LabelTrack;
import org.duskloom.engine.sound.SoundEndings;
import org.duskloom.engine.sound.SoundStream;
import org.duskloom.engine.text.Quoted;
import org.duskloom.engine.timeline.PixelSource;
import org.duskloom.engine.timeline.Timeline;
import org.duskloom.engine.timeline.TimelineReader;

/** Reads a timeline and the pixels that it names. */
public final class ShowReader {
    private ShowReader() {}

    /**
     * Reads a show.
     *
     * @param file the timeline
     * @param problems where errors and warnings of all files go
     * @return the show as far as it could be read, so that {@link PlanCompiler} can find what else is wrong; nothing if
     *     its pixels could not be read. Use it only if there are no errors.
     */
    public static Optional<Show> read(Path file, Problems problems) {
        return read(file, ShowFiles.beside(file), problems);
    }

    /**
     * The same, for who wants to know which files were looked for even if nothing comes of it.
     *
     * @param files those beside the timeline, of which none was read yet
     */
    public static Optional<Show> read(Path file, ShowFiles files, Problems problems) {
        return files.json(file, file.toString(), problems).flatMap(root -> read(root, file, files, problems));
    }

    /**
     * The same for a timeline whose JSON was read from these files already.
     *
     * @param file where the timeline is
     */
    public static Optional<Show> read(Node root, Path file, ShowFiles files, Problems problems) {
        Optional<Timeline> timeline = Optional.of(root)
                .filter(found -> DocumentKind.TIMELINE.accepts(found, file.toString(), files, problems))
                .flatMap(found -> TimelineReader.read(found, track -> labels(track, files, problems), problems));
        if (timeline.isEmpty()) {
            return Optional.empty();
        }
        timeline.get()
                .sound()
                .ifPresent(sound -> files.locate(sound.file(), problems)
                        .filter(path -> files.remember(sound.file(), path, problems))
                        .ifPresent(path ->
                                checkSound(path, files.shown(sound.file().value()), problems)));
        PixelSource source = timeline.get().pixels();
        return switch (source.kind()) {
            case DISPLAY ->
                namedDisplay(source, files, problems)
                        .map(display -> new Show(timeline.get(), display.groups(), Optional.of(display), files));
            case MAP ->
                mapGroups(source, files, problems)
                        .map(groups -> new Show(timeline.get(), groups, Optional.empty(), files));
        };
    }

    /**
     * Reads a display without a timeline.
     *
     * @param file the display
     * @param problems where errors and warnings of all files go
     * @return the display and the files it was read from, or nothing if an error was added
     */
    public static Optional<DisplayFile> readDisplay(Path file, Problems problems) {
        int errorsBefore = problems.errorCount();
        ShowFiles files = ShowFiles.beside(file);
        return files.json(file, file.toString(), problems)
                .flatMap(root -> readDisplay(root, file, files, problems))
                .filter(display -> problems.errorCount() == errorsBefore);
    }

    /**
     * The same for a display whose JSON was read from these files already.
     *
     * @param file where the display is
     * @return the display, or nothing if an error was added since its JSON was read
     */
    public static Optional<DisplayFile> readDisplay(Node root, Path file, ShowFiles files, Problems problems) {
        int errorsBefore = problems.errorCount();
        return display(root, file, file.toString(), files, problems)
                .filter(display -> problems.errorCount() == errorsBefore)
                .map(display -> new DisplayFile(display, files.inputs()));
    }

    /**
     * Reads a pixel map without a timeline.
     *
     * @param file the map
     * @param problems where errors and warnings go
     * @return the map without groups and the file it was read from, or nothing if an error was added
     */
    public static Optional<MapFile> readMap(Path file, Problems problems) {
        ShowFiles files = ShowFiles.beside(file);
        int errorsBefore = problems.errorCount();
        Optional<MapFile> map = files.text(file, file.toString(), problems)
                .flatMap(csv -> MapReader.read(csv, problems))
                .map(pixels -> new MapFile(GroupTree.of(pixels), files.inputs()));
        return problems.errorCount() > errorsBefore ? Optional.empty() : map;
    }

    /** Whether it can be heard is seen from its first bytes; what follows it reads it as a whole, later. */
    private static void checkSound(Path path, String shownName, Problems problems) {
        Optional<SoundStream> sound = SoundStream.open(path, shownName, problems);
        try {
            if (sound.isPresent()) {
                sound.get().close();
            }
        } catch (IOException e) {
            problems.error(Location.ofFile(shownName), "cannot be closed: " + e.getMessage());
        }
    }

    private static Optional<LabelTrack> labels(TextNode track, ShowFiles files, Problems problems) {
        if (SoundEndings.has(track.value())) {
            String bare = track.value().substring(0, track.value().lastIndexOf('.'));
            problems.error(
                    track.location(),
                    Quoted.of(track.value()) + " is a sound, and a label track is needed",
                    "this makes one of it: duskloom listen " + track.value() + " -o " + bare + ".txt");
            return Optional.empty();
        }
        return files.text(track, problems).flatMap(source -> LabelTrack.read(source, problems));
    }

    private static Optional<Display> namedDisplay(PixelSource source, ShowFiles files, Problems problems) {
        return files.locate(source.file(), problems)
                .flatMap(path -> display(path, files.shown(source.file().value()), files, problems));
    }

    private static Optional<Display> display(Path path, String shownName, ShowFiles files, Problems problems) {
        int errorsBefore = problems.errorCount();
        Optional<Display> display =
                files.json(path, shownName, problems).flatMap(root -> display(root, path, shownName, files, problems));
        return problems.errorCount() > errorsBefore ? Optional.empty() : display;
    }

    private static Optional<Display> display(
            Node root, Path path, String shownName, ShowFiles files, Problems problems) {
        ShowFiles named = files.namedIn(path, shownName);
        return DocumentKind.DISPLAY.accepts(root, shownName, named, problems)
                ? DisplayReader.read(root, named::text, problems)
                : Optional.empty();
    }

    /** Groups with errors are known by their names, so that the cues that name them are checked all the same. */
    private static Optional<GroupTree> mapGroups(PixelSource source, ShowFiles files, Problems problems) {
        Optional<SourceText> text = files.text(source.file(), problems);
        return text.flatMap(csv -> MapReader.read(csv, problems))
                .map(map -> source.groups()
                        .map(node -> GroupReader.read(node, map, problems))
                        .orElseGet(() -> GroupTree.of(map)));
    }
}
