package org.duskloom.engine.file;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Predicate;
import java.util.function.Supplier;

/**
 * The outputs in the making of one process. Safe for use by several threads: stopping and publishing exclude each
 * other, so a group is published whole or not at all.
 */
final class Staging {
    static final Staging OF_PROCESS = new Staging(new SystemCalls(), Owner::current, Owner::mayRun);

    /** Whoever stands in the way may be gone before one can see who it was. */
    private static final int TRIES = 20;

    private final FileCalls calls;
    /** Asked when something is staged: finding out takes a hundredth of a second, which others can do without. */
    private final Supplier<Owner> process;

    private final Predicate<Owner> mayRun;
    private final AtomicLong groups = new AtomicLong();
    private final Map<Path, StagedTarget> open = new LinkedHashMap<>();
    private final CreatedFolders folders;
    private boolean stopping;

    /**
     * @param process who this is
     * @param mayRun whether somebody may still be at work
     */
    Staging(FileCalls calls, Owner process, Predicate<Owner> mayRun) {
        this(calls, () -> process, mayRun);
    }

    private Staging(FileCalls calls, Supplier<Owner> process, Predicate<Owner> mayRun) {
        this.calls = calls;
        this.process = process;
        this.mayRun = mayRun;
        this.folders = new CreatedFolders(calls);
    }

    FileCalls calls() {
        return calls;
    }

    Owner nextOwner() {
        return process.get().withNumber(groups.getAndIncrement());
    }

    synchronized int abandonAll() {
        List<StagedTarget> all = List.copyOf(open.values());
        all.forEach(StagedTarget::abandon);
        folders.removeEmpty();
        return all.size();
    }

    synchronized void stop() {
        stopping = true;
        abandonAll();
    }

    /** Begins an output of a group. A straight one is known to nobody but the group. */
    synchronized StagedTarget begin(StagedTarget.Wish wish, OutputGroup group) throws IOException {
        if (stopping) {
            throw new IOException("the run is being stopped");
        }
        if (wish.asked().toString().isEmpty()) {
            throw new OutputRefusedException("an output has no name");
        }
        try {
            group.tidy(wish.asked().toAbsolutePath().getParent());
            Destination destination = Destination.resolve(wish, folders);
            if (destination.straight()) {
                return new StagedTarget(wish, destination, Optional.empty(), group);
            }
            return beginAside(wish, destination, group);
        } catch (IOException fault) {
            folders.removeEmpty();
            throw OutputFault.of("cannot write", wish.asked(), fault);
        }
    }

    /** Gives finished outputs their names, all of them or none. */
    void publish(List<StagedTarget> targets) throws IOException {
        try {
            // This may take long, and a stop from outside must not wait for it.
            new DiskSync(calls).bringToDisk(targets);
            synchronized (this) {
                publishNow(targets);
            }
        } catch (IOException fault) {
            targets.forEach(StagedTarget::abandon);
            throw fault;
        }
    }

    synchronized void forget(StagedTarget target) {
        open.remove(target.path(), target);
        folders.removeEmpty();
    }

    Leftovers leftovers(Owner owner) {
        return new Leftovers(calls, owner, mayRun);
    }

    private void publishNow(List<StagedTarget> targets) throws IOException {
        new Publication(targets, calls).run();
        for (StagedTarget target : targets) {
            target.markPublished();
            open.remove(target.path(), target);
            folders.keep(target.path().getParent());
        }
        Workplace.releaseAll(targets.stream().map(StagedTarget::workplace).toList());
    }

    private StagedTarget beginAside(StagedTarget.Wish wish, Destination destination, OutputGroup group)
            throws IOException {
        Path path = destination.path();
        if (open.containsKey(path)) {
            throw twice(wish.asked());
        }
        group.tidy(path.getParent());
        Workplace place = take(path, wish.asked(), group.owner());
        StagedTarget target = new StagedTarget(wish, destination, Optional.of(place), group);
        open.put(path, target);
        return target;
    }

    /** Others may be about the same place: whoever has it is told, and what a dead run left is cleared away. */
    private Workplace take(Path path, Path asked, Owner owner) throws IOException {
        for (int tries = 1; true; tries++) {
            try {
                return Workplace.take(path, owner, calls);
            } catch (IOException fault) {
                if (tries == TRIES) {
                    throw fault;
                }
            }
            Optional<Workplace> other = Workplace.beside(path, calls);
            if (other.isPresent() && mayRun.test(other.get().owner())) {
                throw inUse(asked, other.get());
            }
            leftovers(owner).clear(path.getParent());
        }
    }

    private OutputRefusedException inUse(Path asked, Workplace place) {
        Owner other = place.owner();
        if (other.isOfProcessOf(process.get())) {
            return twice(asked);
        }
        if (other.isOnHostOf(process.get())) {
            return new OutputRefusedException(
                    asked + " is in use by process " + other.process() + "; wait for its end, or write somewhere else");
        }
        return new OutputRefusedException(asked + " is in use by process " + other.process() + " on " + other.host()
                + "; if that has ended, remove " + place.folder());
    }

    private static OutputRefusedException twice(Path asked) {
        return new OutputRefusedException(asked + " is the name of two outputs; give each a name of its own");
    }
}
