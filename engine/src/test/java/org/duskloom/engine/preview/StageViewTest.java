package org.duskloom.engine.preview;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class StageViewTest {
    @Test
    void upIsUpAndProportionsAreTrue() {
        StageView.Box box = new StageView.Box(100, 200, 400, 100);
        StageView view = StageView.fit(box, 200, 200);
        assertThat(view.scale()).isEqualTo(0.5);
        assertThat(view.panelX(100)).isEqualTo(0);
        assertThat(view.panelX(500)).isEqualTo(200);
        assertThat(view.panelY(200)).isEqualTo(125);
        assertThat(view.panelY(300)).isEqualTo(75);
    }

    @Test
    void aPointStandsInTheMiddle() {
        StageView.Box box =
                StageView.Box.of(new double[] {7}, new double[] {-3}).withMargin(0.1);
        StageView view = StageView.fit(box, 90, 60);
        assertThat(view.panelX(7)).isEqualTo(45);
        assertThat(view.panelY(-3)).isEqualTo(30);
        assertThat(box.aspect()).isEqualTo(1);
    }

    @Test
    void aLineHasRoomOnAllSides() {
        StageView.Box box = StageView.Box.of(new double[] {0, 10}, new double[] {4, 4});
        assertThat(box.aspect()).isInfinite();
        StageView.Box roomy = box.withMargin(0.1);
        assertThat(roomy).isEqualTo(new StageView.Box(-1, 3, 12, 2));
        assertThat(roomy.aspect()).isCloseTo(6, within(1e-12));
    }

    @Test
    void staysFiniteForHugeAndTinyDisplays() {
        for (double size : new double[] {1e-300, 1e-30, 1e30, 1e300}) {
            StageView.Box box = StageView.Box.of(new double[] {0, size}, new double[] {0, size});
            StageView view = StageView.fit(box.withMargin(0.05), 100, 100);
            assertThat(view.panelX(0)).isBetween(0.0, 100.0);
            assertThat(view.panelX(size)).isBetween(0.0, 100.0);
        }
    }
}
