package org.duskloom.engine.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.duskloom.engine.meter.LeadFigures;
import org.duskloom.engine.wire.Conductor;
import org.duskloom.engine.wire.Feed;
import org.duskloom.engine.wire.Lead;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is said of cables. */
class FeedWordsTest {
    private static LeadFigures lead(double peakAmps, double fullAmps) {
        Lead wire = new Lead(Conductor.ofGauge(18), 2.5);
        return new LeadFigures(new Feed("left", 0, Optional.of(wire)), peakAmps, fullAmps);
    }

    /** A note on UL 508 in a machine's manual: 5 A up to 20 V, 100 VA up to 30 V; 100/24 is 4.17. */
    @ParameterizedTest
    @CsvSource({
        "5, 5, 5, within 5.00 A",
        "12, 5.01, 9, more than 5.00 A",
        "12, 1.2, 5.37, 'peak within 5.00 A, all on more'",
        "20, 4, 5, within 5.00 A",
        "24, 4.1, 4.1, within 4.17 A",
        "24, 4.1, 4.2, 'peak within 4.17 A, all on more'",
        "24, 4.2, 9, more than 4.17 A",
        "30, 3.3, 3.3, within 3.33 A",
        "30.5, 1, 9, ''"
    })
    void comparesWithCircuitsOfLimitedPower(double volts, double peakAmps, double fullAmps, String words) {
        assertThat(FeedWords.compared(volts, lead(peakAmps, fullAmps))).isEqualTo(words);
    }

    @Test
    void saysWhichCableItIs() {
        assertThat(FeedWords.wire(lead(1, 9).feed())).isEqualTo("18 AWG, 2.50 m");
        assertThat(FeedWords.wire(new Feed("left", 0, Optional.empty()))).isEqualTo("not said");
    }

    /** Too little wire cannot be made longer. */
    @ParameterizedTest
    @CsvSource({"3.11, m, 3.2", "3.2, m, 3.2", "7, pieces, 7"})
    void buysEnough(double count, String unit, double enough) {
        assertThat(new PartLine("what", "which", count, unit, "").enough()).isEqualTo(enough);
    }
}
