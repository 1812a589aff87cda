package org.duskloom.engine.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.duskloom.engine.compare.Comparison.Pair;
import org.duskloom.engine.frame.FrameList;
import org.duskloom.engine.frame.FramePixels;
import org.duskloom.engine.frame.PropSpan;
import org.duskloom.engine.frame.RunInfo;
import org.duskloom.engine.time.FrameRate;
import org.duskloom.engine.time.FrameSpan;
import org.junit.jupiter.api.Test;

class ComparisonTest {
    private static final RunInfo GARDEN = Painted.run(40, 100, new PropSpan("fence", 0, 5), new PropSpan("gate", 5, 3));

    @Test
    void theSameHasNoContrasts() {
        Comparison same = Comparison.of(GARDEN, GARDEN);
        assertThat(same.contrasts()).isEmpty();
        assertThat(same.frames()).isEqualTo(new FrameSpan(0, 100));
        assertThat(same.props()).containsExactly(new Pair("fence", 0, 0, 5), new Pair("gate", 5, 5, 3));
        assertThat(same.pixelCount()).isEqualTo(8);
    }

    /** Props of one name are compared wherever their pixels stand in a frame, in the order of the first. */
    @Test
    void propsAreFoundByTheirNames() {
        RunInfo moved = Painted.run(40, 100, new PropSpan("gate", 0, 3), new PropSpan("fence", 3, 5));
        Comparison comparison = Comparison.of(GARDEN, moved);
        assertThat(comparison.props()).containsExactly(new Pair("fence", 0, 3, 5), new Pair("gate", 5, 0, 3));
        assertThat(Painted.words(comparison.contrasts()))
                .containsExactly(
                        "prop fence: from pixel 0 of a frame / from pixel 3 of a frame",
                        "prop gate: from pixel 5 of a frame / from pixel 0 of a frame");
        assertThat(comparison.spans()).containsExactly(new PropSpan("fence", 0, 5), new PropSpan("gate", 5, 3));
    }

    @Test
    void propsThatOnlyOneHasAndThoseOfAnotherSizeAreLeftOut() {
        RunInfo other = Painted.run(
                40, 100, new PropSpan("fence", 0, 5), new PropSpan("gate", 5, 1), new PropSpan("pond", 6, 2));
        Comparison comparison = Comparison.of(GARDEN, other);
        assertThat(comparison.props()).extracting(Pair::name).containsExactly("fence");
        assertThat(Painted.words(comparison.contrasts()))
                .containsExactly("prop gate: 3 pixels / 1 pixel", "prop pond: not there / 2 pixels");
        RunInfo fence = Painted.run(40, 100, new PropSpan("fence", 0, 5));
        assertThat(Painted.words(Comparison.of(GARDEN, fence).contrasts()))
                .containsExactly("pixels: 8 / 5", "prop gate: 3 pixels / not there");
    }

    /** Frame 7 at one rate is another instant than at another rate: nothing is compared. */
    @Test
    void otherRatesHaveNoFrameInCommon() {
        RunInfo slow = Painted.run(25, 100, new PropSpan("fence", 0, 5), new PropSpan("gate", 5, 3));
        Comparison comparison = Comparison.of(GARDEN, slow);
        assertThat(comparison.frames().isEmpty()).isTrue();
        assertThat(Painted.words(comparison.contrasts()))
                .containsExactly("rate: 40 frames a second / 25 frames a second");
    }

    @Test
    void framesThatBothHaveAreCompared() {
        RunInfo first = GARDEN.only(FrameList.of(new FrameSpan(0, 60)));
        RunInfo second = GARDEN.only(FrameList.of(new FrameSpan(40, 100)));
        Comparison comparison = Comparison.of(first, second);
        assertThat(comparison.frames()).isEqualTo(new FrameSpan(40, 60));
        assertThat(Painted.words(comparison.contrasts()))
                .containsExactly("frames there: frames 0..60 / frames 40..100");
        RunInfo longer = Painted.run(40, 101, new PropSpan("fence", 0, 5), new PropSpan("gate", 5, 3));
        assertThat(Painted.words(Comparison.of(GARDEN, longer).contrasts()))
                .containsExactly("length: 100 frames / 101 frames", "frames there: frames 0..100 / frames 0..101");
        assertThat(Comparison.of(GARDEN, longer).frames()).isEqualTo(new FrameSpan(0, 100));
    }

    /** Frames whose props nobody knows are compared pixel by pixel, if there are as many. */
    @Test
    void withoutPropsAllPixelsAreOne() {
        RunInfo bare = RunInfo.ofWhole("", FrameRate.of(40), 100, FramePixels.unnamed(8));
        assertThat(Comparison.of(GARDEN, bare).props()).containsExactly(new Pair("all pixels", 0, 0, 8));
        assertThat(Comparison.of(bare, GARDEN).props()).containsExactly(new Pair("all pixels", 0, 0, 8));
        RunInfo more = RunInfo.ofWhole("", FrameRate.of(40), 100, FramePixels.unnamed(9));
        Comparison none = Comparison.of(GARDEN, more);
        assertThat(none.props()).isEmpty();
        assertThat(none.frames().isEmpty()).isTrue();
        assertThat(none.pixelCount()).isZero();
        assertThat(none.spans()).isEqualTo(List.of());
    }
}
