package org.duskloom.engine.packet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import org.duskloom.engine.time.FrameRate;
import org.duskloom.engine.wire.UniverseLayout;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * ANSI E1.11-2008 (R2018), timing of transmitters; the full packet at 22.7 ms is printed in manuals of test equipment.
 */
class NetworkLoadTest {
    @ParameterizedTest(name = "{0} slots")
    @CsvSource({"512, 44.099488", "510, 44.271294", "170, 131.095962", "24, 830.565", "6, 830.565"})
    void rateOfADmxLine(int slots, double framesPerSecond) {
        assertThat(NetworkLoad.mostFramesPerSecond(slots)).isCloseTo(framesPerSecond, within(5e-4));
    }

    @ParameterizedTest(name = "{0} frames a second")
    @CsvSource({"40, 512", "44, 512", "50, 451", "60, 375", "1000, 0"})
    void slotsOfADmxLine(int rate, int slots) {
        assertThat(NetworkLoad.mostSlots(FrameRate.of(rate))).isEqualTo(slots);
    }

    /** A full universe is 704 bytes with preamble and gap: 443 of them fill 100 Mbit/s at 40 frames a second. */
    @Test
    void loadOfEthernet() {
        UniverseLayout full = new UniverseLayout(1, 512, List.of());
        FrameRate rate = FrameRate.of(40);
        assertThat(NetworkLoad.bitsPerSecond(List.of(full), rate)).isEqualTo(225_280);
        assertThat(NetworkLoad.bitsPerSecond(Collections.nCopies(443, full), rate))
                .isLessThan(100e6);
        assertThat(NetworkLoad.bitsPerSecond(Collections.nCopies(444, full), rate))
                .isGreaterThan(100e6);
    }
}
