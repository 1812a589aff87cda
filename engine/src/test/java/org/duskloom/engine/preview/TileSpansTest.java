package org.duskloom.engine.preview;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.duskloom.engine.frame.PropSpan;
import org.duskloom.engine.preview.TileSpans.Span;
import org.junit.jupiter.api.Test;

class TileSpansTest {
    @Test
    void onePictureTakesAllThatFits() {
        assertThat(TileSpans.of(scene("", 10, List.of()), 10)).containsExactly(new Span(0, 10));
        assertThat(TileSpans.of(scene("", 11, List.of()), 10)).containsExactly(new Span(0, 10), new Span(10, 11));
    }

    /** Of ten rows the first two props fill seven; the third has more than a picture, the last has what is left. */
    @Test
    void propsStayTogetherIfTheyCan() {
        List<PropSpan> props = List.of(
                new PropSpan("gate", 0, 4),
                new PropSpan("pond", 4, 3),
                new PropSpan("fence", 7, 25),
                new PropSpan("shed", 32, 2));
        assertThat(TileSpans.of(scene("", 34, props), 10))
                .containsExactly(new Span(0, 7), new Span(7, 17), new Span(17, 27), new Span(27, 34));
    }

    /** However props fall: pictures follow each other, are none too large, and cut no prop that fits. */
    @Test
    void everyPixelIsInOnePicture() {
        SplittableRandom random = new SplittableRandom(25);
        for (int round = 0; round < 300; round++) {
            List<PropSpan> props = new ArrayList<>();
            int pixels = 0;
            for (int i = 0; i < 1 + random.nextInt(12); i++) {
                int count = 1 + random.nextInt(20);
                props.add(new PropSpan("p" + i, pixels, count));
                pixels += count;
            }
            int most = 1 + random.nextInt(30);
            PreviewScene whole = scene("Dusk", pixels, props);
            int next = 0;
            for (Span span : TileSpans.of(whole, most)) {
                assertThat(span.first()).isEqualTo(next);
                assertThat(span.end() - span.first()).isBetween(1, most);
                next = span.end();
                requireWhole(props, span, most);
                assertThat(span.of(whole).props().stream()
                                .mapToInt(PropSpan::pixelCount)
                                .sum())
                        .isEqualTo(span.end() - span.first());
            }
            assertThat(next).isEqualTo(pixels);
        }
    }

    private static void requireWhole(List<PropSpan> props, Span span, int most) {
        for (PropSpan prop : props) {
            int end = prop.firstPixel() + prop.pixelCount();
            if (prop.firstPixel() < span.end() && end > span.end()) {
                assertThat(prop.firstPixel() <= span.first() || prop.pixelCount() > most)
                        .as("%s cut by %s", prop, span)
                        .isTrue();
            }
        }
    }

    @Test
    void namesSortAsThePixelsDo() {
        assertThat(new Span(0, 16_000).file(1_000_000)).isEqualTo("000000-015999.png");
        assertThat(new Span(992_000, 1_000_000).file(1_000_000)).isEqualTo("992000-999999.png");
        assertThat(new Span(0, 1).file(1)).isEqualTo("0-0.png");
        assertThat(new Span(0, 101).file(101)).isEqualTo("000-100.png");
    }

    @Test
    void saysWhichPixelsItShowsUnlessItShowsAll() {
        List<PropSpan> props = List.of(new PropSpan("gate", 0, 3000), new PropSpan("pond", 3000, 1000));
        PreviewScene whole = scene("Dusk", 4000, props);
        assertThat(new Span(0, 4000).of(whole)).isSameAs(whole);
        PreviewScene part = new Span(2000, 3500).of(whole);
        assertThat(part.title()).isEqualTo("Dusk, pixels 2,000 to 3,499");
        assertThat(part.props()).containsExactly(new PropSpan("gate", 0, 1000), new PropSpan("pond", 1000, 500));
        assertThat(part.x()).hasSize(1500).startsWith(2000).endsWith(3499);
        assertThat(new Span(0, 9).of(scene("", 10, List.of())).title()).isEqualTo("pixels 0 to 8");
    }

    private static PreviewScene scene(String title, int pixels, List<PropSpan> props) {
        double[] x = IntStream.range(0, pixels).asDoubleStream().toArray();
        return new PreviewScene(title, x, x, props, frame -> frame / 40.0);
    }
}
