package org.duskloom.engine.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.duskloom.engine.map.Maps;
import org.duskloom.engine.plan.PlannedCue;
import org.duskloom.engine.plan.PlannedLayer;
import org.duskloom.engine.plan.TestShow;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The cues of a frame, against asking every one of them. */
class ActiveCuesTest {
    private static List<PlannedCue> cues(String cues) {
        return TestShow.of(Maps.map("prop,pixel,x,y\na,1,0,0\n"), "\"layers\": [{\"cues\": [" + cues + "]}]")
                .plan()
                .layers()
                .get(0)
                .cues();
    }

    private static String cue(int at, int lasts) {
        return "{\"at\": \"%sf\", \"for\": \"%sf\", \"on\": \"a\", \"effect\": \"solid\"}".formatted(at, lasts);
    }

    private static List<PlannedCue> seen(ActiveCues index, long frame) {
        List<PlannedCue> seen = new ArrayList<>();
        index.addTo(seen, frame);
        return seen;
    }

    /** In any order of the file, of any number, short ones among long ones. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 31, 32, 33, 200})
    void areThoseThatAreSeenInTheOrderOfPainting(int count) {
        Random random = new Random(count);
        List<PlannedCue> cues = cues(IntStream.range(0, count)
                .mapToObj(i -> {
                    int at = random.nextInt(399);
                    int most = random.nextInt(4) == 0 ? 400 - at : Math.min(9, 400 - at);
                    return cue(at, 1 + random.nextInt(most));
                })
                .collect(Collectors.joining(", ")));
        ActiveCues index = new ActiveCues(cues);
        for (int frame = -1; frame <= 400; frame++) {
            int number = frame;
            assertThat(seen(index, frame))
                    .as("frame %s", frame)
                    .isEqualTo(cues.stream()
                            .filter(cue -> cue.firstFrame() <= number && number < cue.endFrameExclusive())
                            .toList());
        }
    }

    @Test
    void areNoneInALayerWithoutCues() {
        assertThat(seen(new ActiveCues(List.of()), 0)).isEmpty();
    }

    /** A cue that begins and ends between two frames is never seen. */
    @Test
    void areNotThoseWithoutAFrame() {
        List<PlannedCue> cues =
                cues("{\"at\": \"1ms\", \"for\": \"2ms\", \"on\": \"a\", \"effect\": \"solid\"}, " + cue(0, 3));
        assertThat(seen(new ActiveCues(cues), 1)).containsExactly(cues.get(1));
    }

    /** Repeats of every length among single cues, frames in any order: the same plays as if each were a cue. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6})
    void arePlaysOfRepeatsToo(int seed) {
        Random random = new Random(seed);
        PlannedLayer layer = TestShow.of(
                        Maps.map("prop,pixel,x,y\na,1,0,0\n"),
                        "\"layers\": [{\"cues\": ["
                                + IntStream.range(0, 6)
                                        .mapToObj(i -> i % 3 == 2 ? cue(random.nextInt(300), 50) : repeat(random))
                                        .collect(Collectors.joining(", "))
                                + "]}]")
                .plan()
                .layers()
                .get(0);
        assertThat(layer.items()).hasSize(6);
        ActiveCues index = new ActiveCues(layer.items());
        ActiveCues beside = new ActiveCues(index);
        for (int i = 0; i < 400; i++) {
            int number = i % 2 == 0 ? i : random.nextInt(420) - 10;
            List<PlannedCue> expected = layer.cues().stream()
                    .filter(cue -> cue.firstFrame() <= number && number < cue.endFrameExclusive())
                    .toList();
            assertThat(seen(index, number)).as("frame %s", number).isEqualTo(expected);
            assertThat(seen(beside, number)).isEqualTo(expected);
        }
    }

    private static String repeat(Random random) {
        int lasts = 1 + random.nextInt(random.nextBoolean() ? 400 : 20);
        int every = 1 + random.nextInt(random.nextBoolean() ? 400 : 60);
        return "{\"at\": \"%sms\", \"for\": \"%sms\", \"on\": \"a\", \"effect\": \"solid\","
                        .formatted(random.nextInt(3000), lasts)
                + " \"repeat\": {\"until\": \"%sms\", \"every\": \"%sms\"}}"
                        .formatted(4000 + random.nextInt(6000), every);
    }

    /** While a play is seen it is the same object: nothing is made for a frame that shows what the one before did. */
    @Test
    void areKeptWhileTheyAreSeen() {
        PlannedLayer layer = TestShow.withCue(
                        "prop,pixel,x,y\na,1,0,0\n",
                        "{\"on\": \"a\", \"effect\": \"solid\", \"for\": \"1s\", \"repeat\": {\"count\": 9,"
                                + " \"every\": \"500ms\"}}")
                .plan()
                .layers()
                .get(0);
        ActiveCues index = new ActiveCues(layer.items());
        PlannedCue second = seen(index, 20).get(1);
        assertThat(seen(index, 39).get(1)).isSameAs(second);
        assertThat(seen(index, 59).get(0)).isSameAs(second);
        assertThat(second).isEqualTo(layer.cues().get(1));
    }
}
