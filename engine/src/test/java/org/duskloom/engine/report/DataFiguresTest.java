package org.duskloom.engine.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import org.duskloom.engine.display.Display;
import org.duskloom.engine.time.FrameRate;
import org.duskloom.engine.wire.Ports;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the data of a show ask of their lines, by the sums of ANSI E1.31 and ANSI E1.11. */
class DataFiguresTest {
    @TempDir
    private Path folder;

    /**
     * A universe of 512 slots is a packet of 638 bytes (ANSI E1.31), so one of n is 126 + n; Ethernet, IP and
     * UDP add 14 + 20 + 8, and check, preamble and gap 4 + 8 + 12. Five pixels of 3 bytes and two of 4 need 15
     * and 8 slots, and 24 are sent of both: with fewer a DMX512 line has to wait, as breaks are 1204 us apart
     * at least (ANSI E1.11). All that twenty times a second.
     */
    @Test
    void addsUpWhatTravelsOnTheNetwork() throws IOException {
        DataFigures data = Reported.of(folder, Reported.KIND + Reported.ports(Reported.FENCE, Reported.POST))
                .report()
                .data();
        assertThat(data.universes()).isEqualTo(2);
        assertThat(data.fullestSlots()).isEqualTo(24);
        assertThat(data.bitsPerSecond()).isCloseTo(20 * 8 * 2 * (126 + 24 + 42 + 24), within(1e-6));
    }

    /**
     * 24 slots take 92 + 12 + 25 x 44 us, just the shortest time that there may be. At 40 frames a second all
     * 512 slots fit, at 60 no more than 375: the figures of ANSI E1.11-2008.
     */
    @Test
    void comparesWithADmxLine() throws IOException {
        Ports ports = Reported.of(folder, Reported.KIND + Reported.ports(Reported.FENCE))
                .show()
                .display()
                .map(Display::ports)
                .orElseThrow();
        DataFigures slow = DataFigures.of(ports, FrameRate.of(40));
        DataFigures fast = DataFigures.of(ports, FrameRate.of(60));
        assertThat(slow.dmxRate()).isCloseTo(1e6 / 1204, within(1e-9));
        assertThat(slow.dmxSlots()).isEqualTo(512);
        assertThat(fast.dmxSlots()).isEqualTo(375);
        assertThat(fast.bitsPerSecond()).isCloseTo(1.5 * slow.bitsPerSecond(), within(1e-6));
    }

    @Test
    void asksNothingWithoutPorts() {
        DataFigures data = DataFigures.of(Ports.NONE, FrameRate.of(40));
        assertThat(data.ports()).isEmpty();
        assertThat(data.universes()).isZero();
        assertThat(data.bitsPerSecond()).isZero();
        assertThat(data.fullestSlots()).isZero();
    }
}
