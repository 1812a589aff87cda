package org.duskloom.engine.render;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.duskloom.engine.map.Maps;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.plan.TestShow;
import org.junit.jupiter.api.Test;

/** The light that cues paint by themselves, worked out by hand, in shows of ten seconds at 40 frames a second. */
class CueMeanTest {
    private static final PixelMap THREE = Maps.map("prop,pixel,x,y\na,1,0,0\na,2,1,0\nb,1,2,0\n");
    private static final double CLOSE = 1e-6;

    /** Relative luminance of red is 0.2126 (WCAG 2.2); half of it at half the opacity. */
    @Test
    void weighsColorAndOpacity() {
        List<CueMean> means = means("""
                {"cues": [{"on": "a", "at": "1s", "for": "2s", "effect": "solid", "with": {"color": "red"}},
                          {"on": "*", "at": "4s", "for": "1s", "effect": "solid", "opacity": 0.5}]}""");

        assertThat(means)
                .extracting(CueMean::meanLight)
                .satisfiesExactly(
                        red -> assertThat(red).isCloseTo(0.2126, within(CLOSE)),
                        white -> assertThat(white).isCloseTo(0.5, within(CLOSE)));
        assertThat(means).extracting(CueMean::pixelFrames).containsExactly(2.0 * 80, 3.0 * 40);
        assertThat(means).noneMatch(CueMean::mask);
    }

    /** A fade in and out over the whole time is half as bright on average; 24 frames that lie evenly tell it. */
    @Test
    void seesFades() {
        assertThat(means("""
                {"cues": [{"on": "a", "at": "0s", "for": "4s", "effect": "solid", "fade": {"in": "2s", "out": "2s"}}]}""").get(0).meanLight()).isCloseTo(0.5, within(0.01));
    }

    /** All plays of a cue are one line; a mask says so; what is over between two frames paints nothing. */
    @Test
    void putsPlaysTogether() {
        List<CueMean> means = means("""
                {"cues": [{"on": "b", "at": "0s", "for": "500ms", "effect": "solid",
                           "repeat": {"every": "1s", "count": 4}}]},
                {"mask": true, "cues": [{"on": "*", "effect": "solid"}]},
                {"cues": [{"on": "a", "at": "1.001s", "for": "1ms", "effect": "solid"}]}""");

        assertThat(means).extracting(CueMean::layerIndex).containsExactly(0, 1, 2);
        assertThat(means).extracting(CueMean::mask).containsExactly(false, true, false);
        assertThat(means).extracting(CueMean::pixelFrames).containsExactly(4.0 * 20, 3.0 * 400, 0.0);
        assertThat(means.get(2).meanLight()).isZero();
    }

    private static List<CueMean> means(String layers) {
        return CueMean.of(TestShow.of(THREE, "\"layers\": [" + layers + "]")
                .withPlainEffects()
                .plan());
    }
}
