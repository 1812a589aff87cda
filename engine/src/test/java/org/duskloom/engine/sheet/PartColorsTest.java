package org.duskloom.engine.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.duskloom.engine.label.Area;
import org.duskloom.engine.map.Part;
import org.junit.jupiter.api.Test;

/** What a person reads who looks for the parts of a shape on its sheet. */
class PartColorsTest {
    private static final ScaledShape DAISY = SheetShapes.written("""
            {"build": [{"ring": {"count": 20, "radius": 100}, "part": "rim"},
                       {"spokes": {"count": 16, "pixels": 2, "from": 200, "to": 250}, "part": "petals"},
                       {"points": [[0, 0]]}],
             "parts": {"top": "3-5, 8, 7-6"}}""", 1);

    /** The rim of pixel 4 has the colour of the first part that it is in; the disc inside that of the second. */
    @Test
    void aPixelShowsItsFirstTwoParts() {
        PartColors colors = new PartColors(DAISY.shape().parts(), DAISY.shape().pixelCount());
        assertThat(colors.of(0)).isEqualTo(SheetColors.part(1));
        assertThat(colors.isShared(0)).isFalse();
        assertThat(colors.inner(0)).isEqualTo(SheetColors.INK);
        assertThat(colors.of(3)).isEqualTo(SheetColors.part(1));
        assertThat(colors.isShared(3)).isTrue();
        assertThat(colors.inner(3)).isEqualTo(SheetColors.part(2));
        assertThat(colors.of(20)).isEqualTo(SheetColors.part(0));
        assertThat(colors.isShared(20)).isFalse();
        assertThat(colors.of(52)).isEqualTo(SheetColors.INK);
    }

    @Test
    void coloursBeginAgainAfterTheLast() {
        assertThat(IntStream.range(0, 7).map(SheetColors::part).distinct()).hasSize(7);
        assertThat(SheetColors.part(7)).isEqualTo(SheetColors.part(0));
        assertThat(SheetColors.part(9)).isEqualTo(SheetColors.part(2));
    }

    /** Every numbered part has a line of its own, in the colour of the one round it. */
    @Test
    void theLegendSaysWhatIsWhat() {
        PartColors colors = new PartColors(DAISY.shape().parts(), DAISY.shape().pixelCount());
        assertThat(colors.entries())
                .hasSize(19)
                .startsWith(
                        new PartColors.Entry("petals: 21-52", SheetColors.part(0)),
                        new PartColors.Entry("petals/1: 21-22", SheetColors.part(0)),
                        new PartColors.Entry("petals/2: 23-24", SheetColors.part(0)))
                .endsWith(
                        new PartColors.Entry("petals/16: 51-52", SheetColors.part(0)),
                        new PartColors.Entry("rim: 1-20", SheetColors.part(1)),
                        new PartColors.Entry("top: 3-5, 8-6", SheetColors.part(2)));
    }

    @Test
    void ofVeryManyPartsTheLegendShowsTheFirst() {
        List<Part> parts = IntStream.rangeClosed(1, 150)
                .mapToObj(i -> new Part(String.valueOf(i), new int[] {i - 1}, List.of()))
                .toList();
        assertThat(new PartColors(parts, 150).entries())
                .hasSize(121)
                .endsWith(new PartColors.Entry("and 30 parts more: see parts.csv", SheetColors.QUIET));
    }

    @Test
    void rangesOfMoreThanTwelve() {
        int[] odd = IntStream.range(0, 13).map(i -> 2 * i).toArray();
        String twelve = IntStream.range(0, 12).mapToObj(i -> "" + (2 * i + 1)).collect(Collectors.joining(", "));
        assertThat(PixelRangeText.of(odd)).isEqualTo(twelve + ", ...");
        assertThat(PixelRangeText.of(IntStream.range(0, 12).map(i -> 2 * i).toArray()))
                .isEqualTo(twelve);
        assertThat(PixelRangeText.of(new int[] {4, 5, 4, 9})).isEqualTo("5-6, 5, 10");
        assertThat(PixelRangeText.of(new int[] {})).isEmpty();
    }

    /**
     * In the foot: name and side, size, bar, then a disc of its colour before every part, each line under the one
     * before.
     */
    @Test
    void theFootOfASheet() {
        Drawing drawing = ShapeSheet.draw(DAISY, 1, View.BACK, new SheetOptions(12));
        List<Stroke.Text> lines = drawing.strokes().stream()
                .filter(Stroke.Text.class::isInstance)
                .map(Stroke.Text.class::cast)
                .filter(text -> !text.words().matches("\\d+( IN| OUT)?"))
                .toList();
        assertThat(lines)
                .extracting(Stroke.Text::words)
                .hasSize(22)
                .startsWith(
                        "a, scale 1, from the back, as you wire it",
                        "53 pixels, 500 x 500 mm, holes 12.0 mm",
                        "100 mm",
                        "petals: 21-52",
                        "petals/1: 21-22")
                .endsWith("petals/16: 51-52", "rim: 1-20", "top: 3-5, 8-6");
        Area page = drawing.area();
        double letters = lines.get(0).height();
        for (int i = 0; i < lines.size(); i++) {
            assertThat(page.holds(lines.get(i).area())).isTrue();
            if (i > 0) {
                assertThat(lines.get(i - 1).y() - lines.get(i).y()).isEqualTo(2 * letters);
            }
        }
        for (int part = 0; part < 3; part++) {
            Stroke.Text line = lines.get(part == 0 ? 3 : 19 + part);
            int color = SheetColors.part(part);
            assertThat(drawing.strokes())
                    .anySatisfy(stroke -> assertThat(stroke)
                            .isEqualTo(new Stroke.Circle(
                                    line.x() - 1.5 * letters, line.y() + letters / 2, letters / 2, 0, color)));
        }
        double left = lines.get(0).x();
        double bar = lines.get(2).y();
        double width = letters / 6;
        assertThat(drawing.strokes())
                .contains(
                        new Stroke.Line(left, bar, left + 100, bar, width, SheetColors.INK),
                        new Stroke.Line(left, bar, left, bar + letters, width, SheetColors.INK),
                        new Stroke.Line(left + 100, bar, left + 100, bar + letters, width, SheetColors.INK));
        assertThat(lines.get(2).x()).isEqualTo(left + 100 + letters);
        // Every hole lies above the foot.
        assertThat(drawing.strokes().stream()
                        .filter(stroke -> stroke instanceof Stroke.Circle circle && circle.radius() == 6)
                        .mapToDouble(stroke -> ((Stroke.Circle) stroke).y() - 6))
                .allMatch(bottom -> bottom > lines.get(0).y() + letters);
    }

    @Test
    void onePixelIsNotCalledMany() {
        ScaledShape shape = SheetShapes.built("{\"points\": [[0, 0]]}", 1);
        assertThat(ShapeSheet.draw(shape, 1, View.FRONT, new SheetOptions(9.5)).strokes())
                .anyMatch(stroke ->
                        stroke instanceof Stroke.Text text && text.words().equals("1 pixel, 0 x 0 mm, holes 9.5 mm"));
    }
}
