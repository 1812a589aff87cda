package org.duskloom.engine.label;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LabelFinderTest {
    private static final double RADIUS = 2;

    private static PixelField grid(int side, double spacing) {
        double[] x = new double[side * side];
        double[] y = new double[side * side];
        for (int i = 0; i < x.length; i++) {
            x[i] = i % side * spacing;
            y[i] = (double) (i / side) * spacing;
        }
        return new PixelField(x, y);
    }

    /** Two pixels 100 apart, a label of 8 by 2 that may begin 3 from the first: above it, its foot is at 3. */
    @Test
    void standsWhereItIsWantedIfThereIsRoom() {
        PixelField field = new PixelField(new double[] {0, 100}, new double[] {0, 0});
        LabelPlace place = new LabelFinder(field, RADIUS, 2)
                .beside(new LabelWish(Span.of(0), 8, 2, 3, 0.25))
                .orElseThrow();
        assertThat(place.leader()).isEmpty();
        assertThat(place.area().left()).isCloseTo(-4, within(1e-6));
        assertThat(place.area().bottom()).isCloseTo(3, within(1e-6));
        assertThat(place.area().width()).isCloseTo(8, within(1e-9));
        assertThat(place.area().height()).isCloseTo(2, within(1e-9));
    }

    /**
     * Pixels 20 apart leave 16 between their rims: labels of 8 fit, and apart 9 over them; where they are nearer, lines
     * lead to the inner ones.
     */
    @ParameterizedTest
    @ValueSource(doubles = {20, 14, 9, 6, 4.5})
    void allFindPlacesApart(double spacing) {
        PixelField field = grid(6, spacing);
        LabelFinder finder = new LabelFinder(field, RADIUS, 2);
        List<Area> found = new ArrayList<>();
        int led = 0;
        for (int i = 0; i < 36; i++) {
            LabelWish wish = new LabelWish(Span.of(i), 8, 2, 2.5, 0.25);
            Optional<LabelPlace> beside = finder.beside(wish);
            led += beside.isPresent() ? 0 : 1;
            LabelPlace place = beside.or(() -> finder.led(wish)).orElseThrow();
            Area area = place.area();
            assertThat(found).noneMatch(area::meets);
            for (int other = 0; other < 36; other++) {
                double distance = area.distanceTo(field.x(other), field.y(other));
                assertThat(distance).isGreaterThan(RADIUS);
                if (other != i && beside.isPresent()) {
                    assertThat(distance).isGreaterThan(area.distanceTo(field.x(i), field.y(i)));
                }
            }
            int own = i;
            place.leader()
                    .ifPresent(line -> assertThat(Math.hypot(line.toX() - field.x(own), line.toY() - field.y(own)))
                            .isCloseTo(RADIUS, within(1e-6)));
            found.add(area);
        }
        assertThat(led > 0).isEqualTo(spacing < 8);
    }

    @Test
    void keepsOffWhatIsTakenAndOffLines() {
        PixelField field = new PixelField(new double[] {0, 100}, new double[] {0, 0});
        LabelFinder finder = new LabelFinder(field, RADIUS, 2);
        finder.take(new Area(-50, 0.5, 50, 50));
        finder.takeLine(-50, -4, 50, -4);
        LabelWish wish = new LabelWish(Span.of(0), 8, 2, 3, 0.25);
        Area area = finder.beside(wish).orElseThrow().area();
        assertThat(area.top()).isLessThanOrEqualTo(0.5);
        assertThat(area.bottom() > -4 || area.top() < -4).isTrue();
    }

    /** The name of two pixels left and right of another prop's: in the middle between them it would name that one. */
    @Test
    void aNameIsNearestToItsOwnPixels() {
        PixelField field = new PixelField(new double[] {-10, 10, 0, 0}, new double[] {0, 0, -6, 6});
        LabelPlace place = new LabelFinder(field, 1, 2)
                .beside(new LabelWish(new Span(0, 2), 6, 2, 2, 0.75))
                .orElseThrow();
        double own = Math.min(place.area().distanceTo(-10, 0), place.area().distanceTo(10, 0));
        double other = Math.min(place.area().distanceTo(0, -6), place.area().distanceTo(0, 6));
        assertThat(own).isLessThan(other);
    }

    @Test
    void staysWithinBounds() {
        PixelField field = grid(2, 10);
        Area bounds = new Area(-3, -3, 13, 13);
        LabelFinder finder = new LabelFinder(field, RADIUS, 2, bounds);
        for (int i = 0; i < 4; i++) {
            LabelWish wish = new LabelWish(Span.of(i), 5, 2, 2.5, 0.6);
            finder.beside(wish)
                    .or(() -> finder.led(wish))
                    .ifPresent(place -> assertThat(bounds.holds(place.area())).isTrue());
        }
        LabelWish tooWide = new LabelWish(Span.of(0), 17, 2, 2.5, 0);
        assertThat(finder.beside(tooWide)).isEmpty();
        assertThat(finder.led(tooWide)).isEmpty();
    }
}
