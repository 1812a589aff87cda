package org.duskloom.engine.packet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import org.duskloom.engine.document.Inputs;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.time.FrameRate;
import org.duskloom.engine.wire.UniverseLayout;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StreamLimitsTest {
    private final Problems problems = new Problems();

    /** ANSI E1.31-2018, Appendix A: a stream is lost 2.5 s after its last packet, so 0.4 frames a second will do. */
    @ParameterizedTest
    @CsvSource({"40, 1, ''", "2, 5, ''", "399, 1000, '1000/399s'", "1, 3, '3s'", "1, 3600, '3600s'"})
    void warnsOfFramesThatComeTooSeldom(int numerator, int denominator, String apart) {
        StreamLimits.warnOfSilence(new FrameRate(numerator, denominator), Location.ofFile("night.json"), problems);
        if (apart.isEmpty()) {
            assertThat(Inputs.shown(problems)).isEmpty();
        } else {
            assertThat(Inputs.shown(problems))
                    .containsExactly("night.json: warning: the packets of a universe come " + apart
                            + " apart; E1.31 has receivers take a stream for lost after 2.5s; where it is sent in real"
                            + " time each frame is repeated; for whoever plays the capture otherwise, raise the rate");
        }
    }

    private void warn(int frameRate, UniverseLayout... universes) {
        StreamLimits.warn(List.of(universes), FrameRate.of(frameRate), Location.ofFile("display.json"), problems);
    }

    private static UniverseLayout universe(int number, int slots) {
        return new UniverseLayout(number, slots, List.of());
    }

    /**
     * ANSI E1.31-2018, clause 6.6.1, and E1.11-2008: break 92 us, mark 12 us and 44 us a slot leave room for 375 slots
     * at 60 frames a second; 376 take 16,692 us, which is 59.9 times a second.
     */
    @Test
    void warnsOfFramesThatComeFasterThanADmxLineTakesThem() {
        warn(60, universe(1, 375));
        assertThat(Inputs.shown(problems)).isEmpty();

        warn(60, universe(1, 375), universe(2, 376));
        assertThat(Inputs.shown(problems))
                .containsExactly("display.json: warning: universe 2 of 376 slots at 60 frames a second: a DMX512 line"
                        + " carries 375 slots then, and 376 slots 59.9 times a second at most; receivers that drive"
                        + " pixels themselves may take more; a gateway to DMX512 leaves frames out");
    }

    /** Of many the first is told. A full universe goes 44.099 times a second, which is said without rounding up. */
    @Test
    void tellsHowManyUniversesAreTooFast() {
        warn(50, universe(4, 100), universe(5, 512), universe(6, 480));
        assertThat(Inputs.shown(problems))
                .singleElement()
                .asString()
                .contains("2 universes, universe 5 for one, of 512 slots at 50 frames")
                .contains("carries 451 slots then, and 512 slots 44.0 times");
    }

    /** A full universe is 704 bytes on the line: at 40 frames a second 443 of them stay below 100 Mbit/s. */
    @Test
    void warnsOfMoreThanAnEthernetLineCarries() {
        UniverseLayout full = universe(1, 512);
        warn(40, Collections.nCopies(443, full).toArray(UniverseLayout[]::new));
        assertThat(Inputs.shown(problems)).isEmpty();

        warn(40, Collections.nCopies(460, full).toArray(UniverseLayout[]::new));
        assertThat(Inputs.shown(problems))
                .containsExactly("display.json: warning: 460 universes at 40 frames a second are 104 Mbit/s, more than"
                        + " an Ethernet line of 100 Mbit/s; send over a gigabit line, or lower the rate");
    }
}
