package org.duskloom.engine.plan;

import java.nio.file.Path;
import java.util.Optional;
import org.duskloom.engine.document.SourceText;
import org.duskloom.engine.group.GroupReader;
import org.duskloom.engine.group.GroupTree;
import org.duskloom.engine.map.MapReader;
import org.duskloom.engine.problem.Problems;
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
     * @return the show, or nothing if an error was added
     */
    public static Optional<Show> read(Path file, Problems problems) {
        ShowFiles files = ShowFiles.beside(file);
        Optional<Timeline> timeline =
                files.json(file, file.toString(), problems).flatMap(root -> TimelineReader.read(root, problems));
        if (timeline.isEmpty()) {
            return Optional.empty();
        }
        return groups(timeline.get().pixels(), files, problems).map(groups -> new Show(timeline.get(), groups, files));
    }

    private static Optional<GroupTree> groups(PixelSource source, ShowFiles files, Problems problems) {
        int errorsBefore = problems.errorCount();
        Optional<SourceText> text = files.text(source.file(), problems);
        Optional<GroupTree> groups = text.flatMap(csv -> MapReader.read(csv, problems))
                .map(map -> source.groups()
                        .map(node -> GroupReader.read(node, map, problems))
                        .orElseGet(() -> GroupTree.of(map)));
        return problems.errorCount() > errorsBefore ? Optional.empty() : groups;
    }
}
