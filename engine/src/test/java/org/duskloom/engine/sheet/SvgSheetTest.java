package org.duskloom.engine.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import org.duskloom.engine.label.Area;
import org.junit.jupiter.api.Test;

/**
 * SVG 1.1 (W3C): y runs down from the top of the view box, strokes lie half inside and half outside, a polygon is a
 * triangle.
 */
class SvgSheetTest {
    /** A page of 100 by 50 mm: its top left corner, (-20, 60), is the zero of the view box. */
    @Test
    void writesEveryStrokeInItsPlace() {
        Drawing drawing = new Drawing(new Area(-20, 10, 80, 60));
        drawing.add(new Stroke.Circle(10, 40, 6, 0, 0xFFFFFF));
        drawing.add(new Stroke.Circle(10.12345, 40, 6, 1.5, 0x0A8A2A));
        drawing.add(new Stroke.Line(0, 10, 80, 60, 0.25, 0x1A1A1A));
        drawing.add(new Stroke.Arrow(20, 30, 1, 0, 6, 0x707070));
        drawing.add(new Stroke.Arrow(20, 30, 0.6, -0.8, 30, 0x707070));
        drawing.add(new Stroke.Text("5 < 6 & \"7\" > 4", -10, 20, 7.2, 0xC01818));
        drawing.widen(new Area(0, 20, 80, 60));

        assertThat(SvgSheet.of(drawing, "a <b> & c").lines().toList())
                .containsExactly(
                        "<?xml version=\"1.0\" encoding=\"UTF-8\"?>",
                        "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"100mm\" height=\"50mm\" viewBox=\"0 0 100 50\">",
                        "<title>a &lt;b&gt; &amp; c</title>",
                        "<g font-family=\"sans-serif\">",
                        "<circle cx=\"30\" cy=\"20\" r=\"6\" fill=\"#ffffff\"/>",
                        "<circle cx=\"30.123\" cy=\"20\" r=\"6\" fill=\"none\" stroke=\"#0a8a2a\" stroke-width=\"1.5\"/>",
                        "<line x1=\"20\" y1=\"50\" x2=\"100\" y2=\"0\" stroke=\"#1a1a1a\" stroke-width=\"0.25\"/>",
                        // The tip 3 to the right, the foot 3 to the left and 2 up and down.
                        "<polygon points=\"43,30 37,28 37,32\" fill=\"#707070\"/>",
                        // The tip 15 along (0.6, -0.8); the foot 15 back, and 10 along (0.8, 0.6) to either side.
                        "<polygon points=\"49,42 39,12 23,24\" fill=\"#707070\"/>",
                        "<text x=\"10\" y=\"40\" font-size=\"10\" fill=\"#c01818\">5 &lt; 6 &amp; \"7\" &gt; 4</text>",
                        "</g>",
                        "</svg>");
    }

    @Test
    void aDrawingGrowsWithWhatItHolds() {
        Drawing drawing = new Drawing(new Area(0, 0, 10, 5));
        drawing.widen(new Area(-1, 2, 4, 9));
        assertThat(drawing.widthMm()).isEqualTo(11);
        assertThat(drawing.heightMm()).isEqualTo(9);
    }
}
