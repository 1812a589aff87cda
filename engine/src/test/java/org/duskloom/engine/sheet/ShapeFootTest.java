package org.duskloom.engine.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.duskloom.engine.display.Shape;
import org.duskloom.engine.label.Area;
import org.duskloom.engine.map.Part;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.problem.Location;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The foot under a drawing from (0, 0) to (300, 200) with letters of 10 mm, worked out on paper: a line every 20 mm.
 */
class ShapeFootTest {
    private static final double LETTERS = 10;

    private static final List<Part> PARTS =
            List.of(new Part("rim", new int[] {0, 1}, List.of()), new Part("tip", new int[] {2}, List.of()));

    private static Drawing foot(List<Part> parts, boolean otherScales, View view) {
        Shape shape = new Shape(
                "leaf",
                new Positions(new double[] {0, 100, 40}, new double[] {0, 0, 80}, new double[3]),
                parts,
                List.of(),
                Location.ofFile("d"));
        ScaledShape scaled = new ScaledShape(shape, 1.5, List.of("leaf-1"), otherScales);
        Drawing drawing = new Drawing(new Area(0, 0, 300, 200));
        ShapeFoot.draw(drawing, Outline.of(scaled, 1, view, new SheetOptions(12)), LETTERS, new PartColors(parts, 3));
        return drawing;
    }

    private static <T extends Stroke> List<T> all(Drawing drawing, Class<T> kind) {
        return drawing.strokes().stream()
                .filter(kind::isInstance)
                .map(kind::cast)
                .toList();
    }

    private static void assertText(Stroke.Text text, String words, double x, double y) {
        assertThat(text.words()).isEqualTo(words);
        assertThat(text.x()).isCloseTo(x, within(1e-9));
        assertThat(text.y()).isCloseTo(y, within(1e-9));
        assertThat(text.height()).isEqualTo(LETTERS);
    }

    /**
     * A letter in from the left: the title, the size, the bar with its words behind it, then the parts with their
     * colours.
     */
    @ParameterizedTest
    @CsvSource({"FRONT, from the front", "BACK, 'from the back, as you wire it'"})
    void linesFollowEachOther(View view, String side) {
        Drawing drawing = foot(PARTS, false, view);
        List<Stroke.Text> texts = all(drawing, Stroke.Text.class);
        assertThat(texts).hasSize(5);
        assertText(texts.get(0), "leaf, scale 1.5, " + side, 10, -20);
        assertText(texts.get(1), "3 pixels, 150 x 120 mm, holes 12.0 mm", 10, -40);
        assertText(texts.get(2), "100 mm", 120, -60);
        assertText(texts.get(3), "rim: 1-2", 30, -80);
        assertText(texts.get(4), "tip: 3", 30, -100);
        List<Stroke.Circle> dots = all(drawing, Stroke.Circle.class);
        for (int i = 0; i < 2; i++) {
            assertThat(dots.get(i)).isEqualTo(new Stroke.Circle(15, -75 - 20.0 * i, 5, 0, SheetColors.part(i)));
        }
    }

    /** The bar lies on the foot of its line and has an upright as high as a letter at each end. */
    @Test
    void theBarHasTwoEnds() {
        assertThat(all(foot(List.of(), false, View.FRONT), Stroke.Line.class))
                .containsExactly(
                        new Stroke.Line(10, -60, 110, -60, LETTERS / 6, SheetColors.INK),
                        new Stroke.Line(10, -60, 10, -50, LETTERS / 6, SheetColors.INK),
                        new Stroke.Line(110, -60, 110, -50, LETTERS / 6, SheetColors.INK));
    }

    /** Who drills for a prop of another scale must see it: in red, before the bar, which goes a line down. */
    @Test
    void otherScalesTakeALine() {
        Drawing drawing = foot(List.of(), true, View.FRONT);
        List<Stroke.Text> texts = all(drawing, Stroke.Text.class);
        assertText(texts.get(2), "for leaf-1; other props have it at another scale", 10, -60);
        assertThat(texts.get(2).color()).isEqualTo(SheetColors.LAST);
        assertText(texts.get(3), "100 mm", 120, -80);
    }

    /**
     * A line of paper is left under the last line; the page is as wide as its longest line and a letter, the sides
     * stay.
     */
    @Test
    void thePageHoldsTheFoot() {
        Area page = foot(PARTS, false, View.FRONT).area();
        assertThat(page.left()).isZero();
        assertThat(page.top()).isEqualTo(200);
        assertThat(page.bottom()).isCloseTo(-120, within(1e-9));
        Drawing wide = foot(List.of(), true, View.FRONT);
        double longest = all(wide, Stroke.Text.class).get(2).width();
        assertThat(wide.area().right()).isCloseTo(10 + longest + LETTERS, within(1e-9));
        assertThat(wide.area().bottom()).isCloseTo(-100, within(1e-9));
    }
}
