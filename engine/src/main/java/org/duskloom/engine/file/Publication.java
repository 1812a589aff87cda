package org.duskloom.engine.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Gives a list of finished files their names, one after the other. When one cannot have its name, those before it lose
 * theirs again, and what they replaced comes back. Everything that takes time is done before the first rename or after
 * the last.
 */
final class Publication {
    private final List<StagedFile> files;

    /**
     * One file that gets its name.
     *
     * @param replaces whether a file stands there
     * @param kept a second name for that file, if it needs one and the file system has them
     */
    private record Step(StagedFile file, Path target, boolean replaces, Optional<Path> kept) {}

    Publication(List<StagedFile> files) {
        this.files = List.copyOf(files);
    }

    void run() throws IOException {
        for (StagedFile file : files) {
            if (!file.isFinished()) {
                throw file.abandonedEarly();
            }
            file.destination().refuseIfTaken(file.ifExists());
        }
        List<Step> steps = files.stream().map(this::prepare).toList();
        try {
            renameAll(steps);
        } finally {
            steps.forEach(step -> step.kept().ifPresent(PartFiles::delete));
        }
        Set<Path> folders = new LinkedHashSet<>();
        steps.forEach(step -> folders.add(step.target().getParent()));
        folders.forEach(PartFiles::syncFolder);
    }

    private Step prepare(StagedFile file) {
        Path target = file.destination().path();
        boolean replaces = Files.exists(target, LinkOption.NOFOLLOW_LINKS);
        // A single file needs no way back: its rename is one step.
        boolean needsKeeping = replaces && files.size() > 1;
        return new Step(file, target, replaces, needsKeeping ? secondName(target) : Optional.empty());
    }

    private static Optional<Path> secondName(Path target) {
        try {
            return Optional.of(Files.createLink(PartFiles.fresh(target), target));
        } catch (IOException | UnsupportedOperationException noLinksHere) {
            return Optional.empty();
        }
    }

    private static void renameAll(List<Step> steps) throws IOException {
        List<Step> done = new ArrayList<>();
        for (Step step : steps) {
            try {
                Files.move(step.file().part(), step.target(), StandardCopyOption.ATOMIC_MOVE);
                done.add(step);
            } catch (IOException fault) {
                IOException told = OutputFault.of(
                        "cannot give the finished file its name", step.file().target(), fault);
                done.forEach(earlier -> undo(earlier, told));
                throw told;
            }
        }
    }

    private static void undo(Step step, IOException told) {
        try {
            if (step.kept().isPresent()) {
                Files.move(step.kept().get(), step.target(), StandardCopyOption.ATOMIC_MOVE);
            } else if (!step.replaces()) {
                Files.deleteIfExists(step.target());
            }
        } catch (IOException fault) {
            told.addSuppressed(fault);
        }
    }
}
