package org.duskloom.effects.kit.area;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.duskloom.effects.kit.area.LatticeStack.Need;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LatticeStackTest {
    /**
     * Cells of 4 pixels at zoom 1, of 16 at zoom 1/4: two octaves, three levels, of which the next one is mixed in from a third
     * to two thirds of each octave (2^-1/2 lies half way, 2^-1/4 and 2^-3/4 do not).
     */
    @ParameterizedTest
    @CsvSource({
        "1, 0",
        "2, 0",
        "0.7071067811865476, 0.5",
        "0.8408964152537145, 0",
        "0.5946035575013605, 1",
        "0.25, 2",
        "0.1, 2"
    })
    void goesDownALevelForEachOctave(double zoom, double level) {
        Need need = Need.of(new Footprint(4, 4), 0.25, 1);

        assertThat(need.key().levels()).isEqualTo(3);
        assertThat(need.level(zoom)).isCloseTo(level, within(1e-9));
    }

    /** Where pixels are larger than cells, one level serves until they are as large: here at a tenth of the zoom. */
    @Test
    void needsNoLevelsWhereThePictureIsCoarse() {
        Need need = Need.of(new Footprint(0.1, 0.05), 0.2, 1);
        assertThat(need.key()).isEqualTo(new LatticeStack.Key(1, 1, 1));

        Need deeper = Need.of(new Footprint(0.1, 0.05), 0.05, 1);
        assertThat(deeper.firstZoom()).isEqualTo(0.1);
        assertThat(deeper.key().levels()).isEqualTo(2);
        assertThat(deeper.key().cellHeight()).isEqualTo(0.5);
    }

    /** Cells of nearly one size share a stack, so a hundred like members cost no more than one. */
    @Test
    void isSharedByLikeCells() {
        assertThat(Need.of(new Footprint(4.01, 8.02), 1, 1).key())
                .isEqualTo(Need.of(new Footprint(4, 8), 1, 1).key());
        assertThat(Need.of(new Footprint(4.5, 8), 1, 1).key())
                .isNotEqualTo(Need.of(new Footprint(4, 8), 1, 1).key());
    }
}
