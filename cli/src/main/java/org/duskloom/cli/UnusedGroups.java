package org.duskloom.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.duskloom.engine.display.DisplayChecks;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.group.GroupTree;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.timeline.Cue;
import org.duskloom.engine.timeline.EvenPlays;
import org.duskloom.engine.timeline.LayerItem;
import org.duskloom.engine.timeline.PixelSource;
import org.duskloom.engine.timeline.SceneCue;
import org.duskloom.engine.timeline.Timeline;

/** Looks for groups that are defined, but that nothing is played on: mostly a cue that names another one. */
final class UnusedGroups {
    private UnusedGroups() {}

    /** Warns of groups beside a bare map, which are for one timeline only. */
    static void warn(LoadedShow loaded, Problems problems) {
        GroupTree groups = loaded.show().groups();
        DisplayChecks.warnOfUnusedGroups(groups, usedBy(loaded, groups), problems);
    }

    /** Warns of the groups of displays that no show among the files uses, where any is played on the display. */
    static void warn(List<CheckedFile> files, Problems problems) {
        for (CheckedFile file : files) {
            file.display().ifPresent(display -> warn(display, files, problems));
        }
    }

    private static void warn(LoadedDisplay display, List<CheckedFile> files, Problems problems) {
        List<LoadedShow> shows = files.stream()
                .flatMap(file -> file.show().stream())
                .filter(show -> isPlayedOn(show, display.file()))
                .toList();
        if (shows.isEmpty()) {
            return;
        }
        Set<String> used = new HashSet<>();
        shows.forEach(show -> used.addAll(usedBy(show, display.groups())));
        DisplayChecks.warnOfUnusedGroups(display.groups(), used, problems);
    }

    private static boolean isPlayedOn(LoadedShow loaded, Path display) {
        PixelSource source = loaded.show().timeline().pixels();
        return source.kind() == PixelSource.Kind.DISPLAY
                && loaded.show()
                        .files()
                        .locate(source.file(), new Problems())
                        .filter(path -> isSame(path, display))
                        .isPresent();
    }

    private static boolean isSame(Path one, Path other) {
        try {
            return Files.isSameFile(one, other);
        } catch (IOException e) {
            // Both were read a moment ago; one that has gone since is nothing to warn of.
            return false;
        }
    }

    private static Set<String> usedBy(LoadedShow loaded, GroupTree groups) {
        Set<String> used = new HashSet<>();
        Timeline timeline = loaded.show().timeline();
        Stream.concat(
                        timeline.layers().stream(),
                        timeline.scenes().all().stream().flatMap(scene -> scene.layers().stream()))
                .flatMap(layer -> layer.parts().stream())
                .flatMap(UnusedGroups::addresses)
                .forEach(addresses -> used.addAll(groups.groupsNamedBy(addresses)));
        return used;
    }

    private static Stream<List<TextNode>> addresses(LayerItem item) {
        if (item instanceof EvenPlays plays) {
            return addresses(plays.first());
        }
        return item instanceof Cue cue
                ? Stream.of(cue.on())
                : ((SceneCue) item).on().stream().map(SceneCue.Instead::addresses);
    }
}
