package org.duskloom.engine.meter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.duskloom.engine.wire.Port;
import org.duskloom.engine.wire.Ports;
import org.duskloom.engine.wire.Supply;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is told of a supply of 1 A, of which 0.8 are to be used. */
class PowerFiguresTest {
    private static final Ports PORTS = PoweredDisplay.ports();
    private static final Supply SHED = PORTS.supplies().get(0);

    /** The share is of what it may give, the margin is to what is to be used: at 0.9 A it gives 0.1 A too much. */
    @ParameterizedTest
    @CsvSource({"0, 0, 0.8", "0.4, 0.4, 0.4", "0.8, 0.8, 0", "0.9, 0.9, -0.1", "1.5, 1.5, -0.7"})
    void shareAndMargin(double peak, double share, double margin) {
        SupplyFigures figures = figures(SHED, peak);
        assertThat(figures.peakShare()).isCloseTo(share, within(1e-12));
        assertThat(figures.marginAmps()).isCloseTo(margin, within(1e-12));
    }

    /** 20 A used to three quarters: 12 A are 0.6 of it and leave 3 A. */
    @Test
    void ofAnotherSupply() {
        Supply large = new Supply("house", 5, 20, 0.75, SHED.feeds(), SHED.definedAt());
        assertThat(figures(large, 12).peakShare()).isCloseTo(0.6, within(1e-12));
        assertThat(figures(large, 12).marginAmps()).isCloseTo(3, within(1e-12));
    }

    /** A port that no supply feeds has no figures of one: nobody's limits are told as its own. */
    @Test
    void findsTheSupplyOfAPort() {
        Port left = PORTS.ports().get(0);
        Port right = PORTS.ports().get(1);
        Supply half = new Supply("half", 12, 1, 0.8, SHED.feedsOf("right"), SHED.definedAt());
        PowerFigures figures = new PowerFigures(List.of(figures(half, 0.2)), List.of());
        assertThat(figures.supplyOf(left)).isEmpty();
        assertThat(figures.supplyOf(right).orElseThrow().supply()).isEqualTo(half);
    }

    private static SupplyFigures figures(Supply supply, double peak) {
        return new SupplyFigures(supply, new AmpFigures(peak / 2, peak, peak, 0, new double[0]), 0, 3, 0);
    }
}
