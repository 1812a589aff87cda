package org.duskloom.engine.file;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The folder {@code .NAME.part} beside an output, where that is made. It belongs to one owner at a time: the file
 * {@code GROUP@OWNER} in it says which group of outputs it is part of, and who sees to it. Besides, it holds
 *
 * <ul>
 *   <li>{@code new}, the output until it has its name, a file or a folder;
 *   <li>{@code kept/NAME}, what the new one replaces, until the whole group is complete;
 *   <li>{@code taken/NAME}, the same for a manifest, which is away while the others change;
 *   <li>{@code folders}, in which other folders the group has outputs, if it has: it is put in order as a whole.
 * </ul>
 *
 * <p>It is made under a name of its own and then renamed, which the system refuses while a folder with something in it
 * stands there: so of two runs one has it. Whoever takes one over renames the file that names the owner, which only one
 * can.
 */
final class Workplace {
    private static final String SUFFIX = ".part";
    private static final String PREPARED = ".part-";

    /** File systems take 255 bytes; the longest character has four, and the rest of the name needs some. */
    private static final int NAME_CHARACTERS = 50;

    /** No path has it. */
    private static final String BETWEEN_PATHS = "\0";

    private final Path folder;
    private final Owner group;
    private final FileCalls calls;
    private Owner owner;

    private Workplace(Path folder, Owner group, Owner owner, FileCalls calls) {
        this.folder = folder;
        this.group = group;
        this.owner = owner;
        this.calls = calls;
    }

    /**
     * Takes the place beside a target.
     *
     * @throws IOException if somebody else has it, or if it cannot be made
     */
    static Workplace take(Path target, Owner owner, FileCalls calls) throws IOException {
        Workplace prepared = new Workplace(target.resolveSibling(PREPARED + owner.word()), owner, owner, calls);
        try {
            calls.makeFolder(prepared.folder);
            calls.create(prepared.claim()).close();
            Path folder = target.resolveSibling(nameFor(target));
            calls.rename(prepared.folder, folder);
            return new Workplace(folder, owner, owner, calls);
        } catch (IOException fault) {
            prepared.release();
            throw fault;
        }
    }

    /** Finds the one beside a target, if somebody has it. */
    static Optional<Workplace> beside(Path target, FileCalls calls) {
        return of(target.resolveSibling(nameFor(target)), calls);
    }

    /** The one that stands in a folder under such a name, if it is one and has an owner. */
    static Optional<Workplace> of(Path entry, FileCalls calls) {
        try {
            return at(entry, calls);
        } catch (IOException notOurs) {
            return Optional.empty();
        }
    }

    /** Whether a file has the name of a workplace that is in use. */
    static boolean hasName(Path entry) {
        String name = entry.getFileName().toString();
        return name.startsWith(".") && name.endsWith(SUFFIX) && name.length() > SUFFIX.length() + 1;
    }

    /** Who was making a workplace that had not got its name yet. */
    static Optional<Owner> makerOf(Path entry) {
        String name = entry.getFileName().toString();
        return name.startsWith(PREPARED) ? Owner.parse(name.substring(PREPARED.length())) : Optional.empty();
    }

    Path folder() {
        return folder;
    }

    Owner group() {
        return group;
    }

    Owner owner() {
        return owner;
    }

    /** Where the new output is until it has its name. */
    Path fresh() {
        return folder.resolve("new");
    }

    Path kept() {
        return folder.resolve("kept");
    }

    Path taken() {
        return folder.resolve("taken");
    }

    /** For what is to be thrown away. */
    Path dropped() {
        return folder.resolve("dropped");
    }

    /**
     * Writes down where else the group has outputs, before the first of them changes.
     *
     * @param folders absolute, those of all outputs of the group
     */
    void noteFolders(Set<Path> folders) throws IOException {
        Path own = folder.getParent();
        String others = folders.stream()
                .filter(other -> !other.equals(own))
                .map(Path::toString)
                .collect(Collectors.joining(BETWEEN_PATHS));
        if (!others.isEmpty()) {
            try (FileChannel channel = calls.create(notedFolders())) {
                calls.write(channel, StandardCharsets.UTF_8.encode(others));
            }
            calls.sync(notedFolders());
        }
    }

    /** All workplaces of its group that stand in the folders that were noted; what cannot be found is left out. */
    List<Workplace> elsewhere() {
        List<Workplace> found = new ArrayList<>();
        for (String other : noted()) {
            try {
                for (Path entry : calls.list(Path.of(other))) {
                    Optional<Workplace> place = hasName(entry) ? of(entry, calls) : Optional.empty();
                    place.filter(sibling -> sibling.group.equals(group)).ifPresent(found::add);
                }
            } catch (IOException | InvalidPathException gone) {
                continue;
            }
        }
        return found;
    }

    private List<String> noted() {
        try {
            return List.of(Files.readString(notedFolders()).split(BETWEEN_PATHS));
        } catch (IOException none) {
            return List.of();
        }
    }

    private Path notedFolders() {
        return folder.resolve("folders");
    }

    /** Hands it over. Only one of those who try succeeds. */
    void handTo(Owner next) throws IOException {
        calls.rename(claim(), folder.resolve(claimName(group, next)));
        owner = next;
    }

    /** Gives it up and leaves what it holds, for the next run to see to. */
    void leave() {
        try {
            handTo(owner.nobody());
        } catch (IOException stillOurs) {
            // The end of this process gives it up as well.
            return;
        }
    }

    /**
     * Removes it with all that it holds, whose it is last. What cannot be removed is left: the fault that made us give
     * up is told already, and a later run removes it.
     */
    void release() {
        boolean empty = Trees.delete(dropped(), calls)
                & Trees.delete(fresh(), calls)
                & Trees.delete(taken(), calls)
                & Trees.delete(kept(), calls)
                & Trees.delete(notedFolders(), calls);
        if (!empty || !Trees.delete(claim(), calls)) {
            leave();
            return;
        }
        try {
            // Only if it is empty: without a claim it may be another's by now.
            calls.delete(folder);
        } catch (IOException leftBehind) {
            return;
        }
    }

    /**
     * Removes those of a group that is complete. First of all the manifests that were taken away: what is left by a run
     * that ends in the midst of this must not look like a group that can be put back.
     */
    static void releaseAll(List<Workplace> group) {
        for (Workplace place : group) {
            Trees.delete(place.taken(), place.calls);
        }
        group.forEach(Workplace::release);
    }

    private Path claim() {
        return folder.resolve(claimName(group, owner));
    }

    private static String claimName(Owner group, Owner owner) {
        return group.word() + "@" + owner.word();
    }

    private static Optional<Workplace> at(Path folder, FileCalls calls) throws IOException {
        for (Path entry : calls.list(folder)) {
            String[] words = entry.getFileName().toString().split("@", 2);
            Optional<Owner> group = Owner.parse(words[0]);
            Optional<Owner> owner = words.length == 2 ? Owner.parse(words[1]) : Optional.empty();
            if (group.isPresent() && owner.isPresent()) {
                return Optional.of(new Workplace(folder, group.get(), owner.get(), calls));
            }
        }
        return Optional.empty();
    }

    private static String nameFor(Path target) {
        String name = target.getFileName().toString();
        int characters = name.codePointCount(0, name.length());
        if (characters <= NAME_CHARACTERS) {
            return "." + name + SUFFIX;
        }
        int end = name.offsetByCodePoints(0, NAME_CHARACTERS);
        return "." + name.substring(0, end) + "-" + Integer.toHexString(name.hashCode()) + SUFFIX;
    }
}
