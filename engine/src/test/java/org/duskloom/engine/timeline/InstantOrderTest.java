package org.duskloom.engine.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.duskloom.engine.document.Fields;
import org.duskloom.engine.document.Inputs;
import org.duskloom.engine.document.Node;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Instants in an order in which they can be worked out, or the circle that forbids it. */
class InstantOrderTest {
    private final Problems problems = new Problems();
    private final Map<CueInstant, List<InstantOrder.Reference>> references = new HashMap<>();

    private List<CueInstant> starts(int count) {
        List<CueInstant> starts = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Fields fields = Fields.of(Inputs.json("{\"name\": \"c" + i + "\"}"), CueFields.CUE, "a cue", problems)
                    .orElseThrow();
            starts.add(new CueInstant(new OpenCue(fields, true, problems), false));
            references.put(starts.get(i), new ArrayList<>());
        }
        return starts;
    }

    private void countsFrom(CueInstant one, CueInstant other, int line) {
        Node written = new TextNode(new Location("show.json", line, 7), "@x");
        references.get(one).add(new InstantOrder.Reference(other, written));
    }

    private List<CueInstant> ordered(List<CueInstant> instants) {
        return InstantOrder.firstKnownFirst(instants, references::get, problems);
    }

    /** Whatever counts from whatever stands before it in a list that the file does not have. */
    @Test
    void eachComesAfterThoseThatItCountsFrom() {
        Random random = new Random(5);
        for (int round = 0; round < 200; round++) {
            references.clear();
            List<CueInstant> starts = starts(12);
            for (int i = 1; i < 12; i++) {
                for (int k = random.nextInt(4); k > 0; k--) {
                    countsFrom(starts.get(i), starts.get(random.nextInt(i)), 1);
                }
            }
            List<CueInstant> file = new ArrayList<>(starts);
            Collections.shuffle(file, random);
            List<CueInstant> order = ordered(file);
            assertThat(order).containsExactlyInAnyOrderElementsOf(starts);
            references.forEach((one, from) -> from.forEach(
                    reference -> assertThat(order.indexOf(reference.from())).isLessThan(order.indexOf(one))));
        }
        assertThat(Inputs.shown(problems)).isEmpty();
    }

    /** There is a circle if taking away what counts from nothing, again and again, leaves some (A. B. Kahn, 1962). */
    @Test
    void tellsOfACircleWhereverThereIsOne() {
        Random random = new Random(6);
        int circles = 0;
        for (int round = 0; round < 300; round++) {
            references.clear();
            List<CueInstant> starts = starts(7);
            for (int k = 0; k < 6; k++) {
                countsFrom(starts.get(random.nextInt(7)), starts.get(random.nextInt(7)), 1);
            }
            int before = problems.errorCount();
            assertThat(ordered(starts)).containsExactlyInAnyOrderElementsOf(starts);
            assertThat(problems.errorCount() > before).isEqualTo(hasCircle(starts));
            circles += hasCircle(starts) ? 1 : 0;
        }
        assertThat(circles).isBetween(30, 270);
    }

    private boolean hasCircle(List<CueInstant> starts) {
        Set<CueInstant> left = new HashSet<>(starts);
        while (left.removeIf(one -> references.get(one).stream().noneMatch(from -> left.contains(from.from())))) {
            // Those that counted from it only are free now.
        }
        return !left.isEmpty();
    }

    /** Up to thirteen steps are told, the first named again among them; of more the middle is counted. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            1  | c0 -> c0
            2  | c0 -> c1 -> c0
            12 | c0 -> c1 -> c2 -> c3 -> c4 -> c5 -> c6 -> c7 -> c8 -> c9 -> c10 -> c11 -> c0
            13 | c0 -> c1 -> c2 -> c3 -> c4 -> c5 -> c6 -> c7 -> c8 -> c9 -> c10 -> c11 -> (1 more) -> c0
            20 | c0 -> c1 -> c2 -> c3 -> c4 -> c5 -> c6 -> c7 -> c8 -> c9 -> c10 -> c11 -> (8 more) -> c0
            """)
    void showsTheCircle(int count, String circle) {
        List<CueInstant> starts = starts(count);
        for (int i = 0; i < count; i++) {
            countsFrom(starts.get(i), starts.get((i + 1) % count), i + 1);
        }
        ordered(starts);
        assertThat(Inputs.shown(problems))
                .containsExactly("show.json:" + count + ":7: error: times go in a circle: "
                        + circle.replaceAll("c(\\d+)", "the start of \"c$1\"")
                        + "; let one of them count from something else");
    }

    /** What leads into a circle is no part of it, and a second circle is told as well. */
    @Test
    void tellsOnlyTheCircleAndEveryOne() {
        List<CueInstant> starts = starts(5);
        countsFrom(starts.get(0), starts.get(1), 1);
        countsFrom(starts.get(1), starts.get(2), 2);
        countsFrom(starts.get(2), starts.get(1), 3);
        countsFrom(starts.get(3), starts.get(4), 4);
        countsFrom(starts.get(4), starts.get(3), 5);
        ordered(starts);
        assertThat(Inputs.shown(problems))
                .containsExactly(
                        "show.json:3:7: error: times go in a circle: the start of \"c1\" -> the start of \"c2\" -> the"
                                + " start of \"c1\"; let one of them count from something else",
                        "show.json:5:7: error: times go in a circle: the start of \"c3\" -> the start of \"c4\" -> the"
                                + " start of \"c3\"; let one of them count from something else");
    }
}
