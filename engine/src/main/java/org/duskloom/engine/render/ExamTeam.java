package org.duskloom.engine.render;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import org.duskloom.engine.frame.DaemonThreads;
import org.duskloom.engine.frame.Progress;
import org.duskloom.engine.frame.ThreadFault;

/**
 * Looks at the cues of a show on several threads, with the same result as one after the other. What hangs on their
 * order is which pixels are lit already and how much work is allowed. So one cue is looked at alone as long as it may
 * light something that is dark so far. Cues behind it that may not are looked at together, each as if none of the
 * others took any work; afterwards that is added up in their order, and from the first on for which it was too much,
 * cues are looked at once more, one by one.
 */
final class ExamTeam implements AutoCloseable {
    /** So many cues at least are looked at together, and so many at most; at first few, as it may be in vain. */
    private static final int FEWEST = 64;

    private static final int FIRST = 256;
    private static final int MOST = 4096;

    /** So many cues a thread takes at once. */
    private static final int HANDFUL = 16;

    private static final long NOT_LOOKED_AT = Long.MAX_VALUE / 2;

    private final List<CueExam> exams;
    private final ExecutorService others;
    private final List<Looker> lookers = new ArrayList<>();
    private final List<CueExam> passedOver = new ArrayList<>();
    /** Of the cues that are looked at together: what they took before they last asked whether they are hidden. */
    private final long[] beforeLast = new long[MOST];
    /** And what they took. */
    private final long[] work = new long[MOST];

    private boolean together;
    private int most = FIRST;

    /** What a thread looks with. */
    private record Looker(CueLight light, HiddenCues hiddenCues) {}

    /** The cues from one up to another while they are looked at together. */
    private record Stretch(int from, int to, long spentBefore, AtomicInteger next, AtomicLong spent) {}

    /**
     * A team that has not begun.
     *
     * @param exams of all cues in their order; what was looked at in vain is replaced
     * @param light knows afterwards what is lit
     * @param hiddenCues knows afterwards how much work is left
     * @param threads how many look, at least 1
     */
    ExamTeam(List<CueExam> exams, CueLight light, HiddenCues hiddenCues, int threads) {
        this.exams = exams;
        lookers.add(new Looker(light, hiddenCues));
        together = threads > 1 && exams.size() >= FEWEST;
        others = together ? Executors.newFixedThreadPool(threads - 1, new DaemonThreads("exam")) : null;
        for (int i = 1; together && i < threads; i++) {
            lookers.add(new Looker(new CueLight(), hiddenCues.beside()));
        }
    }

    /**
     * Looks at all of them.
     *
     * @param progress is told of the frames that are looked at at least
     */
    void look(Progress progress) {
        int next = 0;
        while (next < exams.size()) {
            int end = together ? endOfLit(next) : next;
            if (end - next < FEWEST) {
                lookAlone(next++);
            } else {
                next = lookTogether(next, end);
            }
            progress.at((long) CueExam.LEAST * next, (long) CueExam.LEAST * exams.size());
        }
    }

    /** Of which cues it was not found out whether they are hidden. */
    List<CueExam> passedOver() {
        return passedOver;
    }

    private int endOfLit(int from) {
        int end = from;
        while (end < exams.size() && end < from + most && exams.get(end).isLit(first().light())) {
            end++;
        }
        return end;
    }

    private Looker first() {
        return lookers.get(0);
    }

    private void lookAlone(int number) {
        HiddenCues hiddenCues = first().hiddenCues();
        hiddenCues.turnTo(number, exams.size());
        exams.get(number).look(first().light(), hiddenCues);
        if (hiddenCues.hasPassedOver()) {
            passedOver.add(exams.get(number));
        }
    }

    /** Gives the first cue that is still to be looked at. */
    private int lookTogether(int from, int to) {
        Arrays.fill(beforeLast, NOT_LOOKED_AT);
        long spent = first().hiddenCues().spent();
        Stretch stretch = new Stretch(from, to, spent, new AtomicInteger(from), new AtomicLong(spent));
        List<Future<?>> asked = new ArrayList<>();
        for (Looker looker : lookers.subList(1, lookers.size())) {
            looker.light().takeOver(first().light());
            asked.add(others.submit(() -> look(stretch, looker)));
        }
        look(stretch, first());
        asked.forEach(ExamTeam::await);
        int next = addUp(stretch);
        if (next < to) {
            together = false;
            exams.subList(next, to).replaceAll(CueExam::anew);
        }
        most = Math.min(MOST, 2 * most);
        return next;
    }

    private void look(Stretch stretch, Looker looker) {
        int first = stretch.next().getAndAdd(HANDFUL);
        while (first < stretch.to()) {
            for (int number = first; number < Math.min(first + HANDFUL, stretch.to()); number++) {
                look(stretch, number, looker);
            }
            first = stretch.next().getAndAdd(HANDFUL);
        }
    }

    private void look(Stretch stretch, int number, Looker looker) {
        HiddenCues hiddenCues = looker.hiddenCues();
        hiddenCues.turnTo(number, exams.size());
        hiddenCues.hasSpent(stretch.spent().get());
        if (hiddenCues.isExhausted()) {
            return;
        }
        hiddenCues.hasSpent(stretch.spentBefore());
        exams.get(number).look(looker.light(), hiddenCues);
        if (!hiddenCues.hasPassedOver()) {
            int place = number - stretch.from();
            work[place] = hiddenCues.spent() - stretch.spentBefore();
            beforeLast[place] = hiddenCues.spentBeforeLast() - stretch.spentBefore();
            stretch.spent().addAndGet(work[place]);
        }
    }

    /** Counts what the cues took in their order; gives the first that may not have taken it. */
    private int addUp(Stretch stretch) {
        HiddenCues hiddenCues = first().hiddenCues();
        long spent = stretch.spentBefore();
        int number = stretch.from();
        boolean allowed = true;
        while (allowed && number < stretch.to()) {
            int place = number - stretch.from();
            hiddenCues.turnTo(number, exams.size());
            hiddenCues.hasSpent(spent + beforeLast[place]);
            allowed = !hiddenCues.isExhausted();
            if (allowed) {
                spent += work[place];
                number++;
            }
        }
        hiddenCues.hasSpent(spent);
        return number;
    }

    private static void await(Future<?> look) {
        try {
            look.get();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("stopped while cues were looked at", stopped);
        } catch (ExecutionException failed) {
            throw ThreadFault.unchecked(failed.getCause());
        }
    }

    @Override
    public void close() {
        if (others != null) {
            others.shutdownNow();
        }
    }
}
