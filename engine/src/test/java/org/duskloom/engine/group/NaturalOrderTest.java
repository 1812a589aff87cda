package org.duskloom.engine.group;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The expected order is common practice, no source. */
class NaturalOrderTest {
    private static final List<String> IN_ORDER = List.of(
            "",
            "0",
            "01",
            "1",
            "2",
            "10",
            "99999999999999999998",
            "99999999999999999999",
            "100000000000000000000",
            "Daisy",
            "daisy",
            "daisy-",
            "daisy-1",
            "daisy-1-a",
            "daisy-1-b2",
            "daisy-1-b10",
            "daisy-002",
            "daisy-2",
            "daisy-2b",
            "daisy-10",
            "daisy-a",
            "pond");

    @Test
    void countsAsPeopleDo() {
        List<String> sorted = new ArrayList<>(IN_ORDER);
        Random random = new Random(1);
        for (int turn = 0; turn < 50; turn++) {
            Collections.shuffle(sorted, random);
            sorted.sort(NaturalOrder.INSTANCE);
            assertThat(sorted).isEqualTo(IN_ORDER);
        }
    }

    @Test
    void isATotalOrder() {
        for (int i = 0; i < IN_ORDER.size(); i++) {
            for (int j = 0; j < IN_ORDER.size(); j++) {
                assertThat(Integer.signum(NaturalOrder.INSTANCE.compare(IN_ORDER.get(i), IN_ORDER.get(j))))
                        .as("%s and %s", IN_ORDER.get(i), IN_ORDER.get(j))
                        .isEqualTo(Integer.signum(Integer.compare(i, j)));
            }
        }
    }
}
