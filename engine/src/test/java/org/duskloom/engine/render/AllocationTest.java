package org.duskloom.engine.render;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import org.duskloom.engine.map.Maps;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.plan.Plan;
import org.duskloom.engine.plan.TestShow;
import org.junit.jupiter.api.Test;

/** Once every brush has been opened, frames cost no memory. */
class AllocationTest {
    private static final String SHOW = """
            "layers": [{"cues": [
               {"on": "line", "effect": "weave", "fade": {"in": "4s", "out": "4s", "easing": "ease-in-out"}},
               {"on": "line/some", "effect": "rank", "spread": "each", "blend": "soft-light",
                "opacity": {"keys": [["0s", 0.2], ["5s", 1, "steps(4)"], ["9s", 0.3, "linear(0, 0.7 30%, 1)"]]}},
               {"on": ["line", "line/some"], "effect": "weave", "spread": "each", "blend": "color-burn", "stagger": "1s"},
               {"on": "line", "effect": "clock", "for": "300ms", "repeat": {"until": "9s", "every": "700ms"}}]},
             {"mask": true, "cues": [{"on": "line", "effect": "place", "order": "outward"}]},
             {"blend": "screen", "cues": [{"on": "line/some", "effect": "light", "with": {"a": 0.5}}]}]""";

    @Test
    void allocatesNothingPerFrame() {
        Plan plan = TestShow.of(map(), SHOW).plan();
        FramePainter painter = new FramePainter(plan);
        byte[] rgb = new byte[3 * plan.pixelCount()];
        // The first round opens all brushes, and the JVM may still be loading code in the second.
        long last = Long.MAX_VALUE;
        for (int round = 0; round < 4 && last > 0; round++) {
            last = allocatedBy(painter, plan, rgb);
        }
        assertThat(last).isZero();
    }

    /** A play of a long repeat is made when it begins, once, and costs nothing while it goes on. */
    @Test
    void aPlayCostsLittleWhenItBegins() {
        Plan plan = TestShow.of(
                        map(),
                        "\"layers\": [{\"cues\": [{\"on\": \"line\", \"effect\": \"clock\", \"for\": \"50ms\","
                                + " \"repeat\": 200}]}]")
                .plan();
        FramePainter painter = new FramePainter(plan);
        byte[] rgb = new byte[3 * plan.pixelCount()];
        long least = Long.MAX_VALUE;
        for (int round = 0; round < 4; round++) {
            least = Math.min(least, allocatedBy(painter, plan, rgb));
        }
        assertThat(least).isPositive().isLessThanOrEqualTo(200 * 400);
    }

    private static long allocatedBy(FramePainter painter, Plan plan, byte[] rgb) {
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        long before = threads.getCurrentThreadAllocatedBytes();
        for (long frame = 0; frame < plan.frameCount(); frame++) {
            painter.render(frame, rgb, 0);
        }
        return threads.getCurrentThreadAllocatedBytes() - before;
    }

    private static PixelMap map() {
        StringBuilder csv = new StringBuilder("prop,pixel,x,y,part\n");
        for (int i = 0; i < 3_000; i++) {
            csv.append("line,").append(i + 1).append(',').append(i).append(',').append(i % 7);
            csv.append(i % 3 == 0 ? ",some\n" : ",\n");
        }
        return Maps.map(csv.toString());
    }
}
