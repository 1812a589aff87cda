package org.duskloom.engine.output;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Gives a list of finished files their names, one after the other. When one cannot have its name, those before it lose
 * theirs again, and what they replaced comes back.
 */
final class Publication {
    private final List<StagedFile> files;
    private final Deque<Step> done = new ArrayDeque<>();

    /**
     * One file that has its name.
     *
     * @param wasThere whether it replaced a file
     * @param replaced where that file is kept meanwhile, if the file system lets us keep it
     */
    private record Step(Path target, boolean wasThere, Optional<Path> replaced) {}

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
        Set<Path> folders = new LinkedHashSet<>();
        for (StagedFile file : files) {
            rename(file);
            folders.add(file.destination().path().getParent());
        }
        folders.forEach(PartFiles::syncFolder);
        done.forEach(step -> step.replaced().ifPresent(PartFiles::delete));
    }

    private void rename(StagedFile file) throws IOException {
        Path target = file.destination().path();
        boolean wasThere = Files.exists(target, LinkOption.NOFOLLOW_LINKS);
        Optional<Path> replaced = wasThere ? keepReplaced(target) : Optional.empty();
        try {
            Files.move(file.part(), target, StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException fault) {
            replaced.ifPresent(PartFiles::delete);
            IOException told = OutputFault.of("cannot give the finished file its name", file.target(), fault);
            undo(told);
            throw told;
        }
        done.push(new Step(target, wasThere, replaced));
    }

    /** A second name for the file that is about to be replaced; a single file needs none, its rename is one step. */
    private Optional<Path> keepReplaced(Path target) {
        if (files.size() == 1) {
            return Optional.empty();
        }
        try {
            return Optional.of(Files.createLink(PartFiles.fresh(target), target));
        } catch (IOException | UnsupportedOperationException noLinksHere) {
            return Optional.empty();
        }
    }

    private void undo(IOException told) {
        for (Step step : done) {
            try {
                undo(step);
            } catch (IOException fault) {
                told.addSuppressed(fault);
            }
        }
        done.clear();
    }

    private static void undo(Step step) throws IOException {
        if (step.replaced().isPresent()) {
            Files.move(step.replaced().get(), step.target(), StandardCopyOption.ATOMIC_MOVE);
        } else if (!step.wasThere()) {
            Files.deleteIfExists(step.target());
        }
    }
}
