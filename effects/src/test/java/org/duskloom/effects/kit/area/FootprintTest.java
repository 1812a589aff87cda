package org.duskloom.effects.kit.area;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Offset;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A picture of 80 by 60 pixels, 4 canvas units wide and 3 high, so 20 pixels a unit; cells of 0.3 by 0.4 units. */
class FootprintTest {
    private static final LightField FIELD = new LightField(0, 0, 4, 3, 0.3, 0.4);
    private static final Reel REEL = Reel.of(new LightImage(80, 60, new float[80 * 60 * 4]));
    private static final Laid LAID = Laid.of(4, 3);
    private static final Offset<Double> ROUNDING = within(1e-5);

    /**
     * Upright a cell takes in 6 by 8 pixels; turned by a quarter, 8 by 6; at twice the size half as many. Turned by
     * 45°, both sides of the cell lie on both sides of the picture: the mean of 0.3² and 0.4² is 0.125, its root
     * 0.35355 units.
     */
    @ParameterizedTest
    @CsvSource({
        "0, 1, 6, 8",
        "90, 1, 8, 6",
        "180, 1, 6, 8",
        "0, 2, 3, 4",
        "270, 0.5, 16, 12",
        "45, 1, 7.0710678, 7.0710678",
        // 60°: sqrt(0.3²/4 + 0.4²·3/4) = sqrt(0.1425) across, sqrt(0.3²·3/4 + 0.4²/4) = sqrt(0.1075) up.
        "60, 1, 7.5498344, 6.5574385"
    })
    void takesInACell(double degrees, double zoom, double cellWidth, double cellHeight) {
        Laid laid = LAID.turned(degrees).zoomed(zoom);
        Footprint footprint = Footprint.of(REEL, laid, FIELD, laid.pose(FIELD));
        assertThat(footprint.cellWidth()).isCloseTo(cellWidth, ROUNDING);
        assertThat(footprint.cellHeight()).isCloseTo(cellHeight, ROUNDING);
    }
}
