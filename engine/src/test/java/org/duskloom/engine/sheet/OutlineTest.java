package org.duskloom.engine.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.duskloom.engine.label.Area;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What of a shape is measured before it is drawn. */
class OutlineTest {
    private static final SheetOptions HOLES = new SheetOptions(12);

    private static Outline outline(String points, View view) {
        return Outline.of(SheetShapes.built("{\"points\": [" + points + "]}", 1), 1, view, HOLES);
    }

    private static Optional<HoleOverlap> overlap(String points, double scale, double millimetresPerUnit) {
        return HoleOverlap.of(SheetShapes.built("{\"points\": [" + points + "]}", scale), millimetresPerUnit, HOLES);
    }

    /** Centimetres at scale 0.5 are 5 mm each; from the back left is right. */
    @Test
    void isMeasuredInMillimetres() {
        ScaledShape shape = SheetShapes.built("{\"points\": [[2, 3], [-4, 8]]}", 0.5);
        Outline front = Outline.of(shape, 10, View.FRONT, HOLES);
        Outline back = Outline.of(shape, 10, View.BACK, HOLES);
        assertThat(front.x()).containsExactly(10, -20);
        assertThat(front.y()).containsExactly(15, 40);
        assertThat(back.x()).containsExactly(-10, 20);
        assertThat(back.y()).containsExactly(15, 40);
        assertThat(front.outerBox()).isEqualTo(new Area(-26, 9, 16, 46));
    }

    /** At an end away from the wire; at a corner outside of it; where the wire is straight, across it and outside. */
    @ParameterizedTest
    @CsvSource(delimiter = ';', textBlock = """
            [0, 0], [90, 0], [90, 90];                    0; 0.5
            [0, 0], [90, 0], [90, 90];                    1; -0.125
            [0, 0], [90, 0], [90, 90];                    2; 0.25
            [0, 0], [50, 0], [100, 0];                    1; 0.25
            [0, 0], [50, 0], [100, 0], [100, 100];        1; -0.25
            [100, 0], [50, 0], [0, 0], [0, 100];          1; -0.25
            [0, 0], [50, 0], [100, 0], [100, -100];       1; 0.25
            [0, 0], [0, 50], [0, 100], [100, 100];        1; 0.5
            [0, 0], [0, 50], [0, 100], [-100, 100];       1; 0
            [0, 0], [50, 0.4], [100, 0], [100, 100];      1; -0.25
            [0, 0], [50, 0.6], [100, 0], [100, 100];      1; 0.25
            [7, 7];                                       0; 0.25
            """)
    void numbersStandOutside(String points, int pixel, double turns) {
        double found = outline(points, View.FRONT).outwardTurns(pixel);
        double off = found - turns;
        assertThat(off - Math.rint(off)).isCloseTo(0, within(1e-9));
    }

    /** The middle of the sorted steps: most are what counts, and a single long one does not. */
    @Test
    void spacingIsTheMedian() {
        assertThat(HoleSpacing.median(new double[] {0, 30, 60, 90, 890}, new double[] {0, 0, 0, 0, 0}))
                .isEqualTo(30);
        assertThat(HoleSpacing.median(new double[] {0, 3, 3}, new double[] {0, 4, 14}))
                .isEqualTo(10);
        assertThat(HoleSpacing.median(new double[] {5}, new double[] {5})).isEqualTo(40);
        assertThat(HoleSpacing.median(new double[] {5, 5}, new double[] {5, 5})).isEqualTo(40);
    }

    /** Holes of 12 mm whose middles are 12 mm apart just touch. */
    @Test
    void holesRunIntoEachOther() {
        assertThat(overlap("[0, 0], [12, 0], [24, 0]", 1, 1)).isEmpty();
        assertThat(overlap("[0, 0], [40, 0], [7.2, 9.59]", 1, 1)).hasValueSatisfying(found -> {
            assertThat(found.first()).isZero();
            assertThat(found.second()).isEqualTo(2);
            assertThat(found.distanceMm()).isCloseTo(Math.hypot(7.2, 9.59), within(1e-12));
        });
        assertThat(overlap("[0, 0], [40, 0], [49, 5]", 1, 1)).hasValueSatisfying(found -> {
            assertThat(found.first()).isEqualTo(1);
            assertThat(found.second()).isEqualTo(2);
            assertThat(found.distanceMm()).isCloseTo(Math.hypot(9, 5), within(1e-12));
        });
    }

    @Test
    void holesKeepTheirSizeWhenAShapeIsScaled() {
        assertThat(overlap("[0, 0], [20, 0]", 0.5, 1)).isPresent();
        assertThat(overlap("[0, 0], [20, 0]", 1, 1)).isEmpty();
        assertThat(overlap("[0, 0], [10, 0]", 1, 1)).isPresent();
        assertThat(overlap("[0, 0], [10, 0]", 2, 1)).isEmpty();
        assertThat(overlap("[0, 0], [1, 0]", 1, 10)).isPresent();
        assertThat(overlap("[0, 0], [1.3, 0]", 1, 10)).isEmpty();
    }

    /** What is deeper than a hole is wide is no plate. */
    @Test
    void onlyPlatesAreDrilled() {
        assertThat(overlap("[0, 0, -6], [5, 0, 6]", 1, 1)).isPresent();
        assertThat(overlap("[0, 0, -6], [5, 0, 6.1]", 1, 1)).isEmpty();
        assertThat(overlap("[0, 0, 0], [0.5, 0, 1.3]", 1, 10)).isEmpty();
        assertThat(overlap("[0, 0, 0], [5, 0, 7]", 2, 1)).isEmpty();
        assertThat(overlap("[0, 0, 60], [5, 0, 70]", 1, 1)).isPresent();
    }

    /** As large as the spacing allows, 22 in 100, between 8 mm and 1.6 mm; each step 85 in 100 of the one before. */
    @Test
    void lettersOnPaper() {
        assertThat(LetterSizes.onPaper(1000)).startsWith(8.0, 8 * 0.85).endsWith(1.6);
        List<Double> sizes = LetterSizes.onPaper(10);
        assertThat(sizes).hasSize(3);
        assertThat(sizes.get(0)).isCloseTo(2.2, within(1e-12));
        assertThat(sizes.get(1)).isCloseTo(1.87, within(1e-12));
        assertThat(sizes.get(2)).isEqualTo(1.6);
        assertThat(LetterSizes.onPaper(2)).containsExactly(1.6);
    }

    /**
     * A shape of 1300 mm has 2 dots for each millimetre, then more, up to 4000 dots in all; capitals of 14 dots, two
     * for each of the font, and at last of 7.
     */
    @Test
    void lettersOnPictures() {
        List<LetterSizes.ForPicture> sizes = LetterSizes.onPicture(1300, 1);
        assertThat(sizes)
                .extracting(size -> Math.round(size.dotsPerMm() * 1000) / 1000.0)
                .containsExactly(2.0, 2.353, 2.768, 3.077, 3.077);
        assertThat(sizes).extracting(LetterSizes.ForPicture::letterDots).containsExactly(14, 14, 14, 14, 7);
        assertThat(sizes.get(0).letterMm()).isEqualTo(7);
        assertThat(LetterSizes.onPicture(100, 1).get(0).dotsPerMm()).isEqualTo(2);
        assertThat(LetterSizes.onPicture(100, 1))
                .last()
                .satisfies(size -> assertThat(size.dotsPerMm()).isEqualTo(12));
        assertThat(LetterSizes.onPicture(2600, 1).get(0).dotsPerMm()).isEqualTo(1);
        assertThat(LetterSizes.onPicture(40_000, 1).get(0).dotsPerMm()).isCloseTo(0.065, within(1e-12));
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, 12, 200})
    void holesOfSize(double size) {
        assertThat(new SheetOptions(size).holeMm()).isEqualTo(size);
    }

    @ParameterizedTest
    @CsvSource({"0.99, 0.99", "200.5, 200.5", "-3, -3", "NaN, NaN", "Infinity, Infinity"})
    void holesOfNoSize(double size, String shown) {
        assertThatThrownBy(() -> new SheetOptions(size)).hasMessage("a hole of " + shown + " mm; allowed: 1 to 200");
    }
}
