package org.duskloom.engine.locate;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** What is kept of pictures: promises of the design, no source. */
class ReferenceTest {
    private static final int LIGHT = 230;

    /** A light of 2 x 2 dots every hundred dots each way, the rest as bright as said. */
    private static Plane lights(PictureSize size, int rest) {
        Plane plane = new Plane(size);
        for (int dot = 0; dot < plane.codes.length; dot++) {
            boolean light = dot % plane.width % 100 < 2 && dot / plane.width % 100 < 2;
            plane.codes[dot] = (byte) (light ? LIGHT : rest);
        }
        return plane;
    }

    @Test
    void whatIsNearLightsIsKept() {
        PictureSize size = new PictureSize(400, 300);
        Reference reference = Reference.of(size, new Plane(size), lights(size, 0), 12);
        for (int i = 0; i < reference.dots.count(); i++) {
            assertThat((reference.dots.x(i) + 2) % 100).isLessThan(6);
            assertThat((reference.dots.y(i) + 2) % 100).isLessThan(6);
        }
        // Each light with two dots round it; three of the twelve are at the left edge or the upper one.
        assertThat(reference.dots.count()).isEqualTo(16 * 22);
        assertThat(reference.usualPeak).isEqualTo(Plane.light((byte) LIGHT));
    }

    /** Of a white wall that lights shine on no more is kept than there is room for; of the lights all is. */
    @Test
    void aWallThatIsLitTakesNoRoom() {
        PictureSize size = new PictureSize(3000, 1000);
        int wall = 50;
        Reference reference = Reference.of(size, new Plane(size), lights(size, wall), 300);
        assertThat(Plane.light((byte) wall)).isGreaterThan(0.02f * Plane.light((byte) LIGHT));
        assertThat(reference.dots.count()).isLessThan(20_000);
        assertThat(reference.dots.at(1100, 500)).isNotNegative();
        assertThat(reference.dots.at(1101, 501)).isNotNegative();
    }
}
