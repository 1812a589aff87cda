package org.duskloom.engine.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.duskloom.engine.map.Maps;
import org.duskloom.engine.plan.PlannedCue;
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
}
