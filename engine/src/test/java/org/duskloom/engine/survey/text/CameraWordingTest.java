package org.duskloom.engine.survey.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
import org.duskloom.engine.display.Units;
import org.duskloom.engine.survey.CameraStand;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CameraWordingTest {
    private static List<String> lines(double aside, double above) {
        return lines(new CameraStand(
                aside, above, OptionalDouble.of(8123.44), OptionalDouble.of(3456.7), OptionalDouble.of(-0.0416)));
    }

    private static List<String> lines(CameraStand camera) {
        return new CameraWording(new Wording(Units.MILLIMETRES)).lines(camera);
    }

    /** Half a degree is as straight as anybody stands. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            0    | 0    | straight ahead
            0.49 | -0.49 | straight ahead
            0.6  | 0    | 0.6 degrees to the right
            -4.9 | 0    | 4.9 degrees to the left
            0    | 12   | straight ahead and 12 degrees above the middle
            3    | -2.5 | 3 degrees to the right and 2.5 degrees below the middle
            """)
    void saysWhereItStood(double aside, double above, String where) {
        assertThat(lines(aside, above))
                .containsExactly("taken from " + where
                        + ", 8123.4 mm away, with a focal length of 3457 units of the picture and a lens bend of"
                        + " -0.042");
    }

    @ParameterizedTest
    @CsvSource({"5, 1", "-5, 1", "5.1, 2", "-25, 2"})
    void warnsOfDepthSeenFromAside(double aside, int count) {
        List<String> lines = lines(aside, 0);
        assertThat(lines).hasSize(count);
        assertThat(lines.get(count - 1).contains("depth is taken as described")).isEqualTo(count == 2);
    }

    @Test
    void saysThatAPictureOfSomethingFlatDoesNotTellHowFarAway() {
        OptionalDouble unknown = OptionalDouble.empty();
        assertThat(lines(new CameraStand(0, 0, unknown, unknown, unknown)))
                .containsExactly(
                        "taken from straight ahead; how far away, a picture of something so flat does not tell");
    }
}
