package org.duskloom.engine.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Iterator;
import java.util.List;
import org.duskloom.engine.plan.Plan;
import org.duskloom.engine.plan.TestShow;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Plays share kernels and brushes; what is seen is what the same cues show that are written one by one. */
class RepeatedPlaysTest {
    private static final String MAP = "prop,pixel,x,y\na,1,0,0\na,2,1,0\nb,1,2,3\n";

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            {"count": 4, "every": "2s"}    | 0s-3s 2s-5s 4s-7s 6s-9s
            {"until": "7500ms"}            | 0s-3s 3s-6s 6s-9s
            {"count": 3}                   | 0s-3s 3s-6s 6s-9s
            """)
    void showWhatCuesOneByOneShow(String repeat, String spans) {
        String body = "\"on\": [\"a\", \"b\"], \"spread\": \"each\", \"stagger\": \"300ms\", \"effect\": \"clock\","
                + " \"blend\": \"screen\", \"opacity\": 0.6, \"fade\": {\"out\": \"1s\"}";
        StringBuilder single = new StringBuilder();
        // An order that the effect does not look at keeps the cues from sharing with each other.
        Iterator<String> orders = List.of("wiring", "right", "up", "outward").iterator();
        for (String span : spans.split(" ")) {
            String[] ends = span.split("-");
            single.append(single.length() == 0 ? "" : ",\n").append("{").append(body);
            single.append(", \"order\": \"" + orders.next() + "\"");
            single.append(", \"at\": \"" + ends[0] + "\", \"until\": \"" + ends[1] + "\"}");
        }
        Plan written = TestShow.withCue(MAP, single.toString()).plan();
        Plan repeated = TestShow.withCue(MAP, "{" + body + ", \"for\": \"3s\", \"repeat\": " + repeat + "}")
                .plan();
        assertThat(repeated.brushCount()).isLessThan(written.brushCount());
        FramePainter painter = new FramePainter(repeated);
        FramePainter reference = new FramePainter(written);
        long end = repeat.contains("until") ? 300 : repeated.frameCount();
        for (long frame : new long[] {0, 90, 10, 399, 130, 131, 279, 299, 1, 240, 361}) {
            byte[] found = new byte[9];
            byte[] wanted = new byte[9];
            painter.render(frame, found, 0);
            if (frame < end) {
                reference.render(frame, wanted, 0);
            }
            assertThat(found).as("frame " + frame).isEqualTo(wanted);
        }
    }
}
