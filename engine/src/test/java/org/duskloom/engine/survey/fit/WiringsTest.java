package org.duskloom.engine.survey.fit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.duskloom.engine.display.Display;
import org.duskloom.engine.display.PlacedProp;
import org.duskloom.engine.survey.Wiring;
import org.duskloom.engine.survey.WiringKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WiringsTest {
    private static final Display GARDEN = new Gardens()
            .prop("daisy", "daisy", 0, 0)
            .prop("turned round", "daisy", 0, 0, "\"reverse\": true")
            .prop("ring", "ring", 0, 0)
            .prop("post", "post", 0, 0)
            .prop("lamp", "lamp", 0, 0)
            .display();

    private static List<Wiring> of(String name) {
        return Wirings.of(prop(name));
    }

    private static PlacedProp prop(String name) {
        return GARDEN.props().get(GARDEN.map().propIndex(name).orElseThrow());
    }

    @ParameterizedTest
    @ValueSource(strings = {"daisy", "turned round", "ring", "post", "lamp"})
    void everyWiringHangsEveryPixelOnce(String name) {
        int count = prop(name).shape().pixelCount();
        assertThat(of(name).get(0)).isEqualTo(Wiring.AS_DESCRIBED);
        assertThat(of(name))
                .doesNotHaveDuplicates()
                .allSatisfy(wiring -> assertThat(IntStream.range(0, count)
                                .map(wiring::describedPixel)
                                .sorted())
                        .containsExactly(IntStream.range(0, count).boxed().toArray(Integer[]::new)));
    }

    /** A ring has two directions for each of its pixels, and so has a post as far as its wiring goes. */
    @Test
    void triesEveryStart() {
        assertThat(of("ring")).hasSize(24);
        assertThat(of("post")).hasSize(40);
        assertThat(of("lamp")).hasSize(1);
        assertThat(of("ring"))
                .filteredOn(wiring -> wiring.kind() == WiringKind.OTHER_WAY)
                .hasSize(1);
        assertThat(of("post"))
                .filteredOn(wiring -> wiring.kind() == WiringKind.OTHER_WAY)
                .isEmpty();
    }

    /** 12 - 1 starts and 12 ways back in the inner ring, 24 - 1 and 24 in the outer, 5 - 1 and 1 in the open stem. */
    @Test
    void triesTheStretchesOfAShapeByThemselves() {
        assertThat(of("daisy")).hasSize(82 + 23 + 47 + 5);
        assertThat(of("ring")).noneMatch(wiring -> wiring.kind() == WiringKind.STRETCH_OTHER_START);
    }

    @Test
    void countsStretchesFromTheOtherEndOfAReversedProp() {
        assertThat(of("daisy"))
                .filteredOn(wiring -> wiring.kind() == WiringKind.STRETCH_OTHER_START)
                .extracting(Wiring::firstPixel)
                .containsOnly(0, 12, 36);
        assertThat(of("turned round"))
                .filteredOn(wiring -> wiring.kind() == WiringKind.STRETCH_OTHER_START)
                .extracting(Wiring::firstPixel)
                .containsOnly(0, 5, 29);
    }

    @Test
    void runsRoundTheEnd() {
        Wiring third = new Wiring(WiringKind.OTHER_START, 0, 12, 3, false);
        assertThat(IntStream.of(0, 8, 9, 11).map(third::describedPixel)).containsExactly(3, 11, 0, 2);
        Wiring back = new Wiring(WiringKind.OTHER_WAY, 0, 12, 0, true);
        assertThat(IntStream.of(0, 1, 11).map(back::describedPixel)).containsExactly(0, 11, 1);
        Wiring stretch = new Wiring(WiringKind.STRETCH_OTHER_START, 12, 24, 20, false);
        assertThat(IntStream.of(11, 12, 16, 36).map(stretch::describedPixel)).containsExactly(11, 32, 12, 36);
    }

    @Test
    void knowsLoops() {
        assertThat(Wirings.isLoop(Points.flat(0, 0, 1, 0, 1, 1, 0, 1), 0, 4)).isTrue();
        assertThat(Wirings.isLoop(Points.flat(0, 0, 1, 0, 2, 0, 3, 0), 0, 4)).isFalse();
        assertThat(Wirings.isLoop(Points.flat(0, 0, 1, 0), 0, 2)).isFalse();
        assertThat(Wirings.isLoop(Points.flat(5, 5, 5, 5, 5, 5), 0, 3)).isFalse();
        // A ring of six of which the closing gap is 1.4 times as wide as the others, and one where it is twice.
        assertThat(Wirings.isLoop(Points.flat(0, 0, 1, 0, 2, 0, 2, 1, 1, 1, 0, 1.4), 0, 6))
                .isTrue();
        assertThat(Wirings.isLoop(Points.flat(0, 0, 1, 0, 2, 0, 2, 1, 1, 1.5, 0, 2), 0, 6))
                .isFalse();
    }
}
