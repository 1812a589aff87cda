package org.duskloom.effects.festoon;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SwagTest {
    private static Swag swag(double rise, double sag) {
        Swag swag = new Swag();
        swag.hang(rise, sag);
        return swag;
    }

    /**
     * Straight, from (0, 0) to (1, 0.75), 1.25 long: (0.3, 0.6) lies 0.3 from it, at 0.6 of 1.25 (foot (0.48, 0.36)).
     */
    @Test
    void findsTheFootOnAStraightLine() {
        Swag swag = swag(0.75, 0);

        assertThat(swag.nearest(0.3, 0.6, 1)).isTrue();
        assertThat(swag.distance()).isCloseTo(0.3, within(1e-12));
        assertThat(swag.share()).isCloseTo(0.48, within(1e-12));
    }

    /** Beyond an end the nearest place is the end. */
    @Test
    void endsAtItsEnds() {
        Swag swag = swag(0, 0.3);

        assertThat(swag.nearest(1.3, 0.4, 1)).isTrue();
        assertThat(swag.distance()).isCloseTo(0.5, within(1e-12));
        assertThat(swag.share()).isEqualTo(1);
    }

    /** From below, or from above but nearer than a to the lowest point, that point is the nearest: half way along. */
    @ParameterizedTest
    @CsvSource({"-0.4, 0.1", "-0.7, 0.4", "-0.2, 0.1", "-0.3, 0"})
    void findsTheLowestPoint(double y, double distance) {
        Swag swag = swag(0, 0.3);

        assertThat(swag.nearest(0.5, y, 1)).isTrue();
        assertThat(swag.distance()).isCloseTo(distance, within(1e-4));
        assertThat(swag.share()).isCloseTo(0.5, within(1e-3));
    }

    @Test
    void looksNoFartherThanItsReach() {
        Swag swag = swag(0, 0.3);

        assertThat(swag.nearest(0.5, -0.4, 0.0999)).isFalse();
        assertThat(swag.nearest(0.5, -0.4, 0.1002)).isTrue();
        assertThat(swag.nearest(-0.2, 0, 0.19)).isFalse();
    }

    /** Whatever the reach, the same place is found to the bit; so a moving thickness does not make colours jump. */
    @Test
    void findsTheSameWithAnyReach() {
        Swag swag = swag(0.3, 0.6);
        for (double x = -0.1; x <= 1.1; x += 0.04) {
            for (double y = -0.8; y <= 0.4; y += 0.04) {
                swag.nearest(x, y, 5);
                double distance = swag.distance();
                double share = swag.share();
                if (swag.nearest(x, y, 0.1)) {
                    assertThat(swag.distance()).isEqualTo(distance);
                    assertThat(swag.share()).isEqualTo(share);
                } else {
                    assertThat(distance).isGreaterThanOrEqualTo(0.1);
                }
            }
        }
    }

    /**
     * Points of the exact curve lie on it, at the share of the length where they are, but for the height of an arc over
     * its chord: c² / 8r, c being the length of a piece and r, the radius of curvature, nowhere less than a.
     */
    @ParameterizedTest
    @CsvSource({"0, 0.3", "0.5, 0.3", "-1, 0.6", "0, 2"})
    void followsTheCatenary(double rise, double sag) {
        Swag swag = swag(rise, sag);
        Catenary chain = hung(rise, sag);
        double piece = chain.length() / Swag.PIECES;
        for (double share = 0.0123; share < 1; share += 0.05) {
            double x = chain.xAtArc(share * chain.length());

            assertThat(swag.nearest(x, chain.heightAt(x), 0.1)).isTrue();
            assertThat(swag.distance()).isLessThan(piece * piece / 8 / chain.a() * 1.01);
            assertThat(swag.share()).isCloseTo(share, within(1e-4));
        }
    }

    private static Catenary hung(double rise, double sag) {
        Catenary chain = new Catenary();
        chain.hang(rise, sag);
        return chain;
    }

    /**
     * Against places close together all along the curve, which {@link Catenary} is checked for: nothing that is near is
     * missed. The swag is of straight pieces, so it strays from the curve by a thousandth or two.
     */
    @ParameterizedTest
    @CsvSource({"0, 0.3", "0.4, 0.3", "-1.5, 0.1", "0, 2", "2, 2", "0.2, 0"})
    void missesNothing(double rise, double sag) {
        Swag swag = swag(rise, sag);
        double[][] curve = curve(rise, sag);
        double reach = 0.11;
        for (double x = 0; x <= 1; x += 1 / 32.0) {
            for (double y = -2.5; y <= 2.5; y += 1 / 32.0) {
                double least = leastDistance(curve, x, y);
                boolean found = swag.nearest(x, y, reach);
                if (least < reach - 2e-3) {
                    assertThat(swag.isFar(x, y, reach)).isFalse();
                    assertThat(found).isTrue();
                    assertThat(swag.distance()).isCloseTo(least, within(2e-3));
                }
                if (swag.isFar(x, y, reach)) {
                    assertThat(found).isFalse();
                }
            }
        }
    }

    private static double[][] curve(double rise, double sag) {
        Catenary chain = new Catenary();
        chain.hang(rise, sag);
        double[][] places = new double[1001][];
        for (int i = 0; i < places.length; i++) {
            double x = chain.xAtArc(chain.length() * i / (places.length - 1));
            places[i] = new double[] {x, chain.heightAt(x)};
        }
        return places;
    }

    private static double leastDistance(double[][] curve, double x, double y) {
        double least = Double.POSITIVE_INFINITY;
        for (double[] place : curve) {
            double dx = x - place[0];
            double dy = y - place[1];
            least = Math.min(least, dx * dx + dy * dy);
        }
        return Math.sqrt(least);
    }
}
