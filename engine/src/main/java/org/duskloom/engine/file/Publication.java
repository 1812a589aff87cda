package org.duskloom.engine.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Gives the outputs of a group, which are on the disk, their names. What they replace is kept until all have theirs:
 *
 * <ol>
 *   <li>where the group has outputs in several folders, that is noted beside each;
 *   <li>files that will be replaced get a second name;
 *   <li>the old manifest is taken away;
 *   <li>the new outputs get their names, one after the other; a folder that is replaced makes room first;
 *   <li>the new manifest gets its name. With that the group is complete.
 * </ol>
 *
 * <p>When a step fails, those before it are taken back in turn, so that the old manifest comes back after all that it
 * speaks of. When that fails too, it does not come back, and what was kept stays where it is.
 */
final class Publication {
    private final List<StagedTarget> targets;
    private final FileCalls calls;
    private final Deque<Undo> undos = new ArrayDeque<>();

    /** The way back from one step. */
    private record Undo(StagedTarget target, Path from, Path to) {}

    Publication(List<StagedTarget> targets, FileCalls calls) {
        this.targets = List.copyOf(targets);
        this.calls = calls;
    }

    /** @throws IOException if one cannot have its name; then none has */
    void run() throws IOException {
        for (StagedTarget target : targets) {
            if (!target.isFinished()) {
                throw target.abandonedEarly();
            }
            target.refuseIfTaken();
        }
        noteFolders();
        StagedTarget current = targets.isEmpty() ? null : targets.get(0);
        try {
            Optional<StagedTarget> manifest = manifest();
            List<StagedTarget> others = new ArrayList<>(targets);
            manifest.ifPresent(others::remove);
            for (StagedTarget target : others) {
                current = target;
                keep(target);
            }
            if (manifest.isPresent()) {
                current = manifest.get();
                takeAway(current);
            }
            for (StagedTarget target : others) {
                current = target;
                place(target);
            }
            syncFolders(others);
            if (manifest.isPresent()) {
                current = manifest.get();
                place(current);
                syncFolders(List.of(current));
            }
        } catch (IOException fault) {
            throw takeBack(OutputFault.of("cannot give the finished file its name", current.asked(), fault));
        }
    }

    private void noteFolders() throws IOException {
        Set<Path> folders = folders(targets);
        for (StagedTarget target : targets) {
            try {
                target.workplace().noteFolders(folders);
            } catch (IOException fault) {
                throw OutputFault.of("cannot write", target.asked(), fault);
            }
        }
    }

    /** A manifest that stands alone has nothing to speak of. */
    private Optional<StagedTarget> manifest() {
        return targets.stream()
                .filter(target -> targets.size() > 1 && target.wish().manifest())
                .findFirst();
    }

    /** A single file needs no way back: its rename is one step. */
    private void keep(StagedTarget target) throws IOException {
        if (!exists(target.path())) {
            return;
        }
        takeOverPermissions(target);
        if (targets.size() > 1 && !target.isFolder()) {
            Path kept = second(target, target.workplace().kept());
            try {
                calls.link(kept, target.path());
            } catch (IOException | UnsupportedOperationException noLinksHere) {
                // It is moved aside in its turn.
                return;
            }
        }
    }

    private void takeAway(StagedTarget manifest) throws IOException {
        if (exists(manifest.path())) {
            takeOverPermissions(manifest);
            move(
                    manifest,
                    manifest.path(),
                    second(manifest, manifest.workplace().taken()));
            syncFolders(List.of(manifest));
        }
    }

    private void place(StagedTarget target) throws IOException {
        Path kept = target.workplace().kept().resolve(target.path().getFileName());
        boolean replaces = exists(target.path());
        if (replaces && !exists(kept) && (target.isFolder() || targets.size() > 1)) {
            move(target, target.path(), second(target, target.workplace().kept()));
            replaces = false;
        }
        if (replaces && exists(kept)) {
            calls.rename(target.workplace().fresh(), target.path());
            undos.push(new Undo(target, kept, target.path()));
        } else {
            move(target, target.workplace().fresh(), target.path());
        }
    }

    private void move(StagedTarget target, Path from, Path to) throws IOException {
        calls.rename(from, to);
        undos.push(new Undo(target, to, from));
    }

    /** Where a target has its second name: its own name, in a folder of the workplace. */
    private Path second(StagedTarget target, Path folder) throws IOException {
        if (!exists(folder)) {
            calls.makeFolder(folder);
        }
        return folder.resolve(target.path().getFileName());
    }

    private void takeOverPermissions(StagedTarget target) {
        try {
            calls.copyPermissions(target.path(), target.workplace().fresh());
        } catch (IOException | UnsupportedOperationException notHere) {
            // Not every file system has them.
            return;
        }
    }

    private IOException takeBack(IOException told) {
        List<Undo> left = new ArrayList<>();
        for (Undo undo : undos) {
            boolean restoresManifest = undo.target().wish().manifest()
                    && undo.to().equals(undo.target().path());
            if (restoresManifest && !left.isEmpty()) {
                left.add(undo);
                continue;
            }
            try {
                calls.rename(undo.from(), undo.to());
            } catch (IOException fault) {
                told.addSuppressed(fault);
                left.add(undo);
            }
        }
        return left.isEmpty() ? told : withLeft(told, left);
    }

    /** Nothing of the group is removed: what is left tells the next run what to put back. */
    private IOException withLeft(IOException told, List<Undo> left) {
        StringBuilder message = new StringBuilder(told.getMessage());
        message.append("; and what stood there before could not all be put back:");
        String separator = " ";
        for (Undo undo : left) {
            if (undo.to().equals(undo.target().path())) {
                message.append(separator)
                        .append(undo.target().asked())
                        .append(" is kept as ")
                        .append(undo.from());
            } else {
                message.append(separator).append(undo.target().asked()).append(" is the new one");
            }
            separator = ", ";
        }
        message.append("; the next run that writes here tries again");
        targets.forEach(StagedTarget::markLeft);
        return new IOException(message.toString(), told);
    }

    private void syncFolders(List<StagedTarget> those) {
        folders(those).forEach(new DiskSync(calls)::syncFolder);
    }

    private static Set<Path> folders(List<StagedTarget> those) {
        Set<Path> folders = new LinkedHashSet<>();
        those.forEach(target -> folders.add(target.path().getParent()));
        return folders;
    }

    private static boolean exists(Path path) {
        return Files.exists(path, LinkOption.NOFOLLOW_LINKS);
    }
}
