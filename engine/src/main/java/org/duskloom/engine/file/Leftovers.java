package org.duskloom.engine.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;

/**
 * What runs have left in a folder that ended before they could tidy up. Where such a run was just giving names to its
 * files, what stood there before comes back, there and in other folders of the same group, the manifest last; the rest
 * is removed. What belongs to a run that may still be at work is left alone.
 */
final class Leftovers {
    private final FileCalls calls;
    private final Owner owner;
    private final Predicate<Owner> mayRun;

    /**
     * @param owner who takes the leftovers over
     * @param mayRun whether somebody may still be at work
     */
    Leftovers(FileCalls calls, Owner owner, Predicate<Owner> mayRun) {
        this.calls = calls;
        this.owner = owner;
        this.mayRun = mayRun;
    }

    /** Tidies a folder as far as that can be done: the next output does not depend on all of it. */
    void clear(Path folder) {
        Map<String, List<Workplace>> groups = new TreeMap<>();
        try {
            for (Path entry : calls.list(folder)) {
                if (Workplace.hasName(entry)) {
                    sort(entry, groups);
                } else if (Workplace.makerOf(entry).filter(mayRun.negate()).isPresent()) {
                    Trees.delete(entry, calls);
                }
            }
        } catch (IOException cannotLook) {
            return;
        }
        for (List<Workplace> here : groups.values()) {
            List<Workplace> group = whole(here);
            if (group.stream().anyMatch(place -> mayRun.test(place.owner()))) {
                continue;
            }
            try {
                clear(group);
            } catch (IOException stays) {
                // Its claim tells whoever comes to one of these places.
                group.forEach(this::leave);
            }
        }
    }

    private void sort(Path entry, Map<String, List<Workplace>> groups) throws IOException {
        Workplace place = Workplace.of(entry, calls).orElse(null);
        if (place == null) {
            removeEmpty(entry);
        } else if (!mayRun.test(place.owner())) {
            groups.computeIfAbsent(place.group().word(), word -> new ArrayList<>())
                    .add(place);
        }
    }

    /** With what the group has in other folders: it is complete there and here, or nowhere. */
    private List<Workplace> whole(List<Workplace> here) {
        Map<Path, Workplace> all = new TreeMap<>();
        for (Workplace place : here) {
            place.elsewhere().forEach(other -> all.put(other.folder(), other));
        }
        here.forEach(place -> all.put(place.folder(), place));
        return List.copyOf(all.values());
    }

    /** A folder with anything in it is somebody else's, and is not removed. */
    private void removeEmpty(Path entry) {
        try {
            if (Files.isDirectory(entry, LinkOption.NOFOLLOW_LINKS)) {
                calls.delete(entry);
            }
        } catch (IOException notEmpty) {
            return;
        }
    }

    private void leave(Workplace place) {
        if (place.owner().equals(owner)) {
            place.leave();
        }
    }

    private void clear(List<Workplace> group) throws IOException {
        for (Workplace place : group) {
            place.handTo(owner);
        }
        boolean complete = true;
        for (Workplace place : group) {
            complete &= !exists(place.fresh()) && !isAwayWithoutANewOne(place);
        }
        if (!complete) {
            for (Workplace place : group) {
                putBack(place, place.kept());
            }
            for (Workplace place : group) {
                putBack(place, place.taken());
            }
        }
        Workplace.releaseAll(group);
    }

    private boolean isAwayWithoutANewOne(Workplace place) throws IOException {
        if (exists(place.taken())) {
            for (Path taken : calls.list(place.taken())) {
                if (!exists(targetOf(place, taken))) {
                    return true;
                }
            }
        }
        return false;
    }

    private void putBack(Workplace place, Path from) throws IOException {
        if (exists(from)) {
            for (Path kept : calls.list(from)) {
                Path target = targetOf(place, kept);
                if (Files.isDirectory(target, LinkOption.NOFOLLOW_LINKS)) {
                    calls.rename(target, place.dropped());
                }
                calls.rename(kept, target);
            }
        }
    }

    private static Path targetOf(Workplace place, Path kept) {
        return place.folder().resolveSibling(kept.getFileName());
    }

    private static boolean exists(Path entry) {
        return Files.exists(entry, LinkOption.NOFOLLOW_LINKS);
    }
}
