package org.duskloom.effects.kit.area;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.assertj.core.data.Offset;
import org.duskloom.effects.Canvases;
import org.duskloom.effects.Painting;
import org.duskloom.effects.kit.area.AreaKernel.Style;
import org.duskloom.engine.effect.Brush;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.Patch;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A row of four lights is a field of 8/3 by 2/3, in cells of 2/3; a picture of four pixels covers it. */
class AreaKernelTest {
    private static final Offset<Float> ROUNDING = within(1e-5f);
    private static final Canvas ROW = Canvases.of(Canvases.row(4));
    private static final Style SMOOTH = new Style(false, false);
    private static final Style SHARP = new Style(false, true);
    private static final Style REPEATING = new Style(true, true);
    private static final Laid LAID = Laid.of(8 / 3.0, 2 / 3.0);
    private static final float[] STEPS = {0.125f, 0.25f, 0.5f, 1};

    @Test
    void showsAPixelOnEachLight() {
        for (Laid laid : List.of(LAID, LAID.moving())) {
            for (Style style : List.of(SMOOTH, SHARP, REPEATING)) {
                assertThat(red(ROW, laid, style)).containsExactly(STEPS, ROUNDING);
            }
        }
    }

    /**
     * Half a turn shows it from the other end; a picture twice as large shows the two pixels in its middle, each twice.
     */
    @Test
    void turnsAndZooms() {
        for (Laid laid : List.of(LAID, LAID.moving())) {
            assertThat(red(ROW, laid.turned(180), SHARP))
                    .containsExactly(new float[] {1, 0.5f, 0.25f, 0.125f}, ROUNDING);
            assertThat(red(ROW, laid.zoomed(2), SHARP))
                    .containsExactly(new float[] {0.25f, 0.25f, 0.5f, 0.5f}, ROUNDING);
        }
    }

    /** Moved by one light to the right, the first light sees nothing, or, if it repeats, the last pixel. */
    @Test
    void movesOverTheEdge() {
        for (Laid laid : List.of(LAID.moved(2 / 3.0, 0), LAID.moved(2 / 3.0, 0).moving())) {
            assertThat(red(ROW, laid, SHARP)).containsExactly(new float[] {0, 0.125f, 0.25f, 0.5f}, ROUNDING);
            assertThat(red(ROW, laid, REPEATING)).containsExactly(new float[] {1, 0.125f, 0.25f, 0.5f}, ROUNDING);
        }
    }

    /** Moved by half a light, each sees half of two pixels, and the first half of one and half of nothing. */
    @Test
    void coversACellInPart() {
        for (Laid laid : List.of(LAID.moved(1 / 3.0, 0), LAID.moved(1 / 3.0, 0).moving())) {
            Painting painting = painting(ROW, laid, SHARP);
            assertThat(painting.red()).containsExactly(new float[] {0.0625f, 0.1875f, 0.375f, 0.75f}, ROUNDING);
            assertThat(painting.alpha()).containsExactly(new float[] {0.5f, 1, 1, 1}, ROUNDING);
        }
    }

    /** A picture smaller than a cell covers an eighth of its width and half of its height: a sixteenth of one light. */
    @Test
    void coversNoMoreThanItsOwnSize() {
        Canvas one = Canvases.of(Canvases.row(1));
        for (Laid laid : List.of(Laid.of(0.25, 1), Laid.of(0.25, 1).moving())) {
            Painting painting = painting(one, laid, SHARP);
            assertThat(painting.alpha()[0]).isCloseTo(1 / 16f, ROUNDING);
            assertThat(painting.red()[0]).isCloseTo(1.875f / 4 / 16, ROUNDING);
        }
    }

    /** What moves shows at an instant what it would show if it lay still there. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 17, 45, 90, 200})
    void showsWhatItWouldIfItLayStill(double degrees) {
        Canvas canvas = Canvases.of(Canvases.scattered(300));
        Laid laid = Laid.of(4, 4).turned(degrees);
        Painting exact = painting(canvas, laid, SMOOTH);
        Painting near = painting(canvas, laid.moving(), SMOOTH);
        assertThat(near.red()).containsExactly(exact.red(), within(1e-6f));
        assertThat(near.alpha()).containsExactly(exact.alpha(), within(1e-6f));
    }

    /** Members lie each in their own field, also where their pixels take turns in the patches. */
    @Test
    void laysItOnEachMember() {
        Canvas two = new Canvases()
                .member("arch", Canvases.row(4))
                .member("fence", Canvases.moved(Canvases.row(4), -3, 0, 0, 1))
                .build();
        Painting painting = painting(two, LAID.moving(), SHARP);
        assertThat(Arrays.copyOf(painting.red(), 4)).containsExactly(STEPS, ROUNDING);
        // The second has cells of 2 by 2. Of those beside the middle the picture, 4/3 to either side and 2/3 high,
        // covers 2/3
        // of the width and 1/3 of the height; the outer ones are beyond it.
        assertThat(Arrays.copyOfRange(painting.alpha(), 4, 8))
                .containsExactly(new float[] {0, 2 / 9f, 2 / 9f, 0}, ROUNDING);
        Brush brush =
                AreaKernel.of(two, reel(STEPS), time -> 0, LAID.moving(), SHARP).open();
        assertThat(Painting.of(brush, two, 0, 3, 5).isSame(painting)).isTrue();
    }

    /** Which picture is seen is what the clock says of the instant, whatever was seen before. */
    @Test
    void showsThePictureOfTheInstant() {
        for (Laid laid : List.of(LAID, LAID.moving())) {
            Brush brush = AreaKernel.of(ROW, new Greys(3), time -> (int) (time.seconds() / 2) % 3, laid, SMOOTH)
                    .open();
            for (int second : new int[] {0, 4, 2, 3, 6, 1}) {
                float expected = (second / 2 % 3 + 1) / 4f;
                assertThat(Painting.of(brush, ROW, second, Patch.CAPACITY, 0).red())
                        .containsOnly(new float[] {expected}, ROUNDING);
            }
        }
    }

    @Test
    void paintsNothingOnNoPixels() {
        assertThat(red(new Canvases().build(), LAID, SMOOTH)).isEmpty();
        assertThat(red(new Canvases().build(), LAID.moving(), SMOOTH)).isEmpty();
    }

    private static float[] red(Canvas canvas, Laid laid, Style style) {
        return painting(canvas, laid, style).red();
    }

    private static Painting painting(Canvas canvas, Laid laid, Style style) {
        Brush brush = AreaKernel.of(canvas, reel(STEPS), time -> 0, laid, style).open();
        return Painting.of(brush, canvas, 0, Patch.CAPACITY, 0);
    }

    private static Reel reel(float... red) {
        return Reel.of(row(red));
    }

    private static LightImage row(float... red) {
        float[] light = new float[red.length * 4];
        for (int i = 0; i < red.length; i++) {
            light[4 * i] = red[i];
            light[4 * i + 3] = 1;
        }
        return new LightImage(red.length, 1, light);
    }

    /** Even pictures of red 1/4, 2/4 and so on. */
    private record Greys(int count) implements Reel {
        @Override
        public int width() {
            return 4;
        }

        @Override
        public int height() {
            return 1;
        }

        @Override
        public LightImage image(int index) {
            float red = (index + 1) / 4f;
            return row(red, red, red, red);
        }
    }
}
