package org.duskloom.engine.timeline;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Deque;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.duskloom.engine.document.Node;
import org.duskloom.engine.problem.Problems;

/**
 * The order in which the instants of cues can be worked out: each after those that it counts from. Walks without
 * recursion, so that any number of cues may follow each other, in any order in the file. Where they go in a circle
 * there is no such order; that is an error.
 */
final class InstantOrder {
    /** So many steps of a circle are told, and the last. */
    private static final int MOST_SHOWN = 12;

    private final Function<CueInstant, List<Reference>> references;
    private final Problems problems;
    private final List<CueInstant> order = new ArrayList<>();
    /** By the numbers of cues, twice as many: a start, then an end. */
    private final BitSet seen = new BitSet();

    private final Map<CueInstant, Iterator<Reference>> open = new LinkedHashMap<>();
    private final Deque<CueInstant> path = new ArrayDeque<>();
    private final Map<CueInstant, Node> followed = new LinkedHashMap<>();

    /**
     * What an instant counts from.
     *
     * @param written where the file says so
     */
    record Reference(CueInstant from, Node written) {}

    private InstantOrder(Function<CueInstant, List<Reference>> references, Problems problems) {
        this.references = references;
        this.problems = problems;
    }

    /**
     * All instants, those that others count from first.
     *
     * @param problems where an error goes for each time that closes a circle
     */
    static List<CueInstant> firstKnownFirst(
            List<CueInstant> instants, Function<CueInstant, List<Reference>> references, Problems problems) {
        for (int i = 0; i < instants.size(); i++) {
            instants.get(i).cue().isNumbered(i);
        }
        InstantOrder walk = new InstantOrder(references, problems);
        instants.forEach(walk::from);
        return walk.order;
    }

    private void from(CueInstant root) {
        enter(root);
        while (!path.isEmpty()) {
            Iterator<Reference> left = open.get(path.peek());
            if (left.hasNext()) {
                Reference next = left.next();
                followed.put(path.peek(), next.written());
                if (open.containsKey(next.from())) {
                    reportCircle(next.from());
                } else {
                    enter(next.from());
                }
            } else {
                order.add(path.peek());
                followed.remove(path.peek());
                open.remove(path.pop());
            }
        }
    }

    private static int place(CueInstant instant) {
        return 2 * instant.cue().number() + (instant.end() ? 1 : 0);
    }

    private void enter(CueInstant instant) {
        if (seen.get(place(instant))) {
            return;
        }
        List<Reference> from = references.apply(instant);
        boolean countsFromKnown = areInOrder(from);
        seen.set(place(instant));
        if (countsFromKnown) {
            order.add(instant);
        } else {
            open.put(instant, from.iterator());
            path.push(instant);
        }
    }

    private boolean areInOrder(List<Reference> from) {
        for (Reference reference : from) {
            if (!seen.get(place(reference.from())) || open.containsKey(reference.from())) {
                return false;
            }
        }
        return true;
    }

    private void reportCircle(CueInstant closing) {
        List<CueInstant> steps = new ArrayList<>(open.keySet());
        List<CueInstant> circle = new ArrayList<>(steps.subList(steps.indexOf(closing), steps.size()));
        Node written = followed.get(circle.get(circle.size() - 1));
        circle.add(closing);
        problems.error(
                written.location(),
                "times go in a circle: " + shown(circle),
                "let one of them count from something else");
    }

    /** Of a long circle its beginning and its end. */
    private static String shown(List<CueInstant> circle) {
        List<String> steps = new ArrayList<>(
                circle.stream().limit(MOST_SHOWN).map(CueInstant::shown).toList());
        int more = circle.size() - MOST_SHOWN - 1;
        if (more > 0) {
            steps.add("(" + more + " more)");
        }
        circle.stream().skip(Math.max(MOST_SHOWN, circle.size() - 1)).forEach(last -> steps.add(last.shown()));
        return String.join(" -> ", steps);
    }
}
