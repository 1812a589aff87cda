package org.duskloom.engine.file;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.regex.Pattern;

/** One name that a group of outputs will give, to a file or to a folder of files, and how far that has come. */
final class StagedTarget implements Completion {
    private enum State {
        OPEN,
        FINISHED,
        PUBLISHED,
        ABANDONED
    }

    private final Wish wish;
    private final Destination destination;
    private final Optional<Workplace> workplace;
    private final OutputGroup group;
    private final AtomicReference<State> state = new AtomicReference<>(State.OPEN);
    private Closeable writer = () -> {};

    /**
     * What is asked for.
     *
     * @param asked the name as it was given
     * @param ifExists what to do about something that stands there
     * @param members the names that files in a folder may have; empty for a file
     * @param manifest whether it speaks of the others of its group
     */
    record Wish(Path asked, IfExists ifExists, Optional<Pattern> members, boolean manifest) {}

    /** @param workplace where it is made; empty if its bytes go straight through */
    StagedTarget(Wish wish, Destination destination, Optional<Workplace> workplace, OutputGroup group) {
        this.wish = wish;
        this.destination = destination;
        this.workplace = workplace;
        this.group = group;
    }

    @Override
    public Path asked() {
        return destination.asked();
    }

    Wish wish() {
        return wish;
    }

    Path path() {
        return destination.path();
    }

    boolean isFolder() {
        return wish.members().isPresent();
    }

    /** Only what is not written straight through has one. */
    Workplace workplace() {
        return workplace.orElseThrow();
    }

    boolean isStraight() {
        return destination.straight();
    }

    boolean isOpen() {
        return state.get() == State.OPEN;
    }

    @Override
    public boolean isAbandoned() {
        return state.get() == State.ABANDONED;
    }

    boolean isFinished() {
        return state.get() == State.FINISHED;
    }

    /** What must let go before the bytes can be removed. */
    synchronized void writtenBy(Closeable writer) {
        this.writer = writer;
    }

    @Override
    public void finished() throws IOException {
        if (isStraight()) {
            state.set(State.PUBLISHED);
        } else if (!state.compareAndSet(State.OPEN, State.FINISHED)) {
            throw abandonedEarly();
        } else {
            group.finished(this);
        }
    }

    void markPublished() {
        state.set(State.PUBLISHED);
    }

    /** Its workplace stays as it is: see {@link Publication}. */
    void markLeft() {
        state.set(State.PUBLISHED);
        workplace().leave();
        group.staging().forget(this);
    }

    /** Removes what was written, unless it is final. From any thread. */
    @Override
    public void abandon() {
        State before = state.getAndUpdate(now -> now == State.PUBLISHED ? now : State.ABANDONED);
        if (before == State.OPEN || before == State.FINISHED) {
            letGo();
            workplace.ifPresent(Workplace::release);
            group.staging().forget(this);
        }
    }

    /** Looks again, just before it takes its place: things may have changed while it was written. */
    void refuseIfTaken() throws IOException {
        destination.refuseIfTaken(wish);
    }

    private synchronized void letGo() {
        try {
            writer.close();
        } catch (IOException alreadyLost) {
            // It is being thrown away: there is nothing left to save.
            return;
        }
    }
}
