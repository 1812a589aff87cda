package org.duskloom.engine.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.duskloom.engine.compare.Comparison.Contrast;
import org.duskloom.engine.compare.Comparison.Pair;
import org.duskloom.engine.frame.FrameList;
import org.duskloom.engine.frame.PropSpan;
import org.duskloom.engine.frame.RunInfo;
import org.duskloom.engine.time.FrameSpan;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Which of two renderings is the first one must not matter to what is found. */
class ComparisonSymmetryTest {
    private static final List<String> NAMES = List.of("arch", "bench", "pond", "shed", "well");

    /** Some props, some frames, one of two rates. */
    private static RunInfo run(Random random) {
        List<PropSpan> props = new ArrayList<>();
        int next = 0;
        for (String name : NAMES) {
            int pixels = 1 + random.nextInt(2);
            if (random.nextInt(4) > 0) {
                props.add(new PropSpan(name, next, pixels));
                next += pixels;
            }
        }
        int from = random.nextInt(10);
        return Painted.run(random.nextInt(4) > 0 ? 40 : 25, 20, props.toArray(PropSpan[]::new))
                .only(FrameList.of(new FrameSpan(from, from + 1 + random.nextInt(10))));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void theOtherWayRoundTheSameIsFound(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 300; i++) {
            RunInfo one = run(random);
            RunInfo two = run(random);
            if (one.pixelCount() == 0 || two.pixelCount() == 0) {
                continue;
            }
            Comparison there = Comparison.of(one, two);
            Comparison back = Comparison.of(two, one);
            assertThat(back.frames().isEmpty()).isEqualTo(there.frames().isEmpty());
            if (!there.frames().isEmpty()) {
                assertThat(back.frames()).isEqualTo(there.frames());
            }
            assertThat(back.pixelCount()).isEqualTo(there.pixelCount());
            assertThat(back.props())
                    .containsExactlyInAnyOrderElementsOf(there.props().stream()
                            .map(pair -> new Pair(pair.name(), pair.second(), pair.first(), pair.count()))
                            .toList());
            assertThat(back.contrasts())
                    .containsExactlyInAnyOrderElementsOf(there.contrasts().stream()
                            .map(contrast -> new Contrast(contrast.what(), contrast.second(), contrast.first()))
                            .toList());
            assertThat(Comparison.of(one, one).contrasts()).isEmpty();
        }
    }
}
