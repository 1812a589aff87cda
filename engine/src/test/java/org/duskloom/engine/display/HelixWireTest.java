package org.duskloom.engine.display;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.duskloom.engine.map.Positions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HelixWireTest {
    /**
     * Simpson's rule over the speed sqrt(h² + (r1 - r0)² + (2π·turns·r(t))²), which is the definition of the length.
     */
    private static double measured(HelixWire wire, double from, double to) {
        int pieces = 20_000;
        double sum = 0;
        for (int i = 0; i <= pieces; i++) {
            double weight = i == 0 || i == pieces ? 1 : i % 2 == 1 ? 4 : 2;
            double radius = wire.radiusAt(from + (to - from) * i / pieces);
            double round = 2 * Math.PI * wire.turns() * radius;
            double rise = wire.top() - wire.bottom();
            sum += weight * Math.sqrt(wire.height() * wire.height() + rise * rise + round * round);
        }
        return sum * (to - from) / (3 * pieces);
    }

    /** Unrolled, a helix on a cylinder is the hypotenuse over its height and its way round: here 3, 4, 5 times 100. */
    @Test
    void aMastIsATriangleUnrolled() {
        HelixWire wire = new HelixWire(200 / Math.PI, 200 / Math.PI, 300, 1);
        assertThat(wire.length()).isCloseTo(500, within(1e-9));
        assertThat(new HelixWire(200 / Math.PI, 200 / Math.PI, 300, 99)
                        .withLength(500)
                        .turns())
                .isCloseTo(1, within(1e-12));
    }

    /**
     * Nearly flat, a cone is a spiral r = bθ, whose length is b/2·(θ·sqrt(1 + θ²) + asinh θ) (closed form, as in
     * handbooks of curves for the spiral of Archimedes). Five turns out to radius 100: θ = 10π, b = 100/θ.
     */
    @Test
    void aFlatConeIsTheSpiralOfArchimedes() {
        double theta = 10 * Math.PI;
        double root = Math.sqrt(1 + theta * theta);
        double expected = 100 / theta / 2 * (theta * root + StrictMath.log(theta + root));
        assertThat(new HelixWire(0, 100, 0.001, 5).length()).isCloseTo(expected, within(1e-6));
        assertThat(new HelixWire(100, 0, 0.001, 5).length()).isCloseTo(expected, within(1e-6));
    }

    @ParameterizedTest
    @CsvSource({"300, 20, 900, 3.5", "300, 0, 900, 12", "0, 250, 100, 0.3", "100, 100.001, 50, 7", "100, 100.2, 50, 7"})
    void wireBetweenPixelsIsEquallyLong(double bottom, double top, double height, double turns) {
        HelixWire wire = new HelixWire(bottom, top, height, turns);
        double whole = measured(wire, 0, 1);
        assertThat(wire.length()).isCloseTo(whole, within(whole * 1e-7));
        double before = 0;
        for (int i = 1; i <= 16; i++) {
            double share = wire.shareAt(i / 16.0, before);
            assertThat(measured(wire, before, share)).isCloseTo(whole / 16, within(whole * 1e-6));
            before = share;
        }
        assertThat(before).isEqualTo(1);
    }

    @ParameterizedTest
    @CsvSource({"300, 20, 900, 3.5", "300, 0, 900, 12", "0, 250, 100, 0.3", "80, 80, 2000, 21"})
    void turnsFollowFromTheLength(double bottom, double top, double height, double turns) {
        double length = measured(new HelixWire(bottom, top, height, turns), 0, 1);
        assertThat(new HelixWire(bottom, top, height, 1).withLength(length).turns())
                .isCloseTo(turns, within(turns * 1e-9));
    }

    /** The straight way up a cone of height 3 and radii 4 and 0 is 5; a wire of that length makes no turn. */
    @Test
    void aWireThatIsTooShortMakesNoTurn() {
        assertThat(new HelixWire(4, 0, 3, 1).withLength(5).turns()).isZero();
        assertThat(new HelixWire(4, 0, 3, 1).withLength(5.001).turns()).isPositive();
    }

    /** 101 pixels 50 apart are 5000 of wire; on a mast of radius 50 and height 3000 it goes 4000 round: 40/π turns. */
    @Test
    void spacingDecidesOnTheTurnsOfAStep() {
        Shape mast = Displays.shape(
                "{\"helix\": {\"count\": 101, \"radius\": 50, \"height\": 3000, \"spacing\": 50}, \"part\": \"m\"}");
        Positions pixels = mast.pixels();
        double turns = 40 / Math.PI;
        for (int i = 0; i <= 100; i++) {
            double angle = 2 * Math.PI * turns * i / 100;
            assertThat(pixels.x(i)).isCloseTo(50 * StrictMath.cos(angle), within(1e-6));
            assertThat(pixels.y(i)).isCloseTo(30.0 * i, within(1e-9));
            assertThat(pixels.z(i)).isCloseTo(-50 * StrictMath.sin(angle), within(1e-6));
        }
        // 12.73 turns: the thirteenth is begun.
        assertThat(mast.parts().get(0).children()).hasSize(13);
    }

    @Test
    void theLastPixelBelongsToTheLastTurn() {
        Shape mast = Displays.shape(
                "{\"helix\": {\"count\": 7, \"radius\": 50, \"height\": 30, \"turns\": 3}, \"part\": \"m\"}");
        assertThat(mast.parts().get(0).children())
                .extracting(part -> part.name() + part.pixelCount())
                .containsExactly("12", "22", "33");
    }
}
