package org.duskloom.engine.locate;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.duskloom.engine.document.CsvStyle;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.map.Prop;
import org.duskloom.engine.problem.Location;
import org.junit.jupiter.api.Test;

class MeasuredTextTest {
    private static final PixelMap MAP = new PixelMap(
            Stream.of(
                            new Prop("say \"hi\"", 0, 2, List.of(), Location.ofFile("m")),
                            new Prop("0.5", 2, 2, List.of(), Location.ofFile("m")))
                    .toList(),
            new Positions(new double[4], new double[4], new double[4]),
            new Positions(new double[4], new double[4], new double[4]));

    private static final Located LOCATED = new Located(
            new PictureSize(640, 480),
            0,
            List.of(new Sighting(1, 12.345, 0, 1), new Sighting(2, 639.996, 7.5, 0.004)),
            List.of(),
            0,
            new LightSpots(List.of()));

    /** A row for each pixel that was found, and where the size of the picture stands for whoever draws on it. */
    @Test
    void writesWhatWasFoundInHundredthsOfADot() {
        assertThat(MeasuredText.of(LOCATED, MAP, CsvStyle.COMMAS)).isEqualTo("""
                # Places in a picture of 640 x 480 dots: x to the right, y down, 0 and 0 is the middle of its top left dot.
                prop,pixel,x,y,sure
                "say ""hi""\",2,12.35,0.00,1.00
                0.5,1,640.00,7.50,0.00
                """);
    }

    @Test
    void writesSemicolonsToo() {
        assertThat(MeasuredText.of(LOCATED, MAP, CsvStyle.SEMICOLONS).lines().skip(1))
                .containsExactly(
                        "prop;pixel;x;y;sure", "\"say \"\"hi\"\"\";2;12,35;0,00;1,00", "0.5;1;640,00;7,50;0,00");
    }
}
