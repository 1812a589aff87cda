package org.duskloom.engine.wire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where pixels lie in universes of 512 slots (ANSI E1.31-2018). */
class PackingTest {
    private static final Packing WHOLE = new Packing(1, 1, true);
    private static final Packing DENSE = new Packing(1, 1, false);

    /** The universe and slot where the last pixel starts and ends: by hand from 512 div bytes per pixel. */
    @ParameterizedTest(name = "{0} pixels of {1} bytes")
    @CsvSource({
        // 3 colours, 8 bits: 170 pixels in 510 slots
        "169, 3, 1, 505, 507",
        "170, 3, 1, 508, 510",
        "171, 3, 2, 1, 3",
        "340, 3, 2, 508, 510",
        "341, 3, 3, 1, 3",
        "1000, 3, 6, 448, 450",
        // 4 colours, 8 bits: 128 pixels in 512 slots
        "169, 4, 2, 161, 164",
        "170, 4, 2, 165, 168",
        "171, 4, 2, 169, 172",
        "340, 4, 3, 333, 336",
        "341, 4, 3, 337, 340",
        // 3 colours, 16 bits: 85 pixels in 510 slots
        "169, 6, 2, 499, 504",
        "170, 6, 2, 505, 510",
        "171, 6, 3, 1, 6",
        "340, 6, 4, 505, 510",
        "341, 6, 5, 1, 6",
        // 4 colours, 16 bits: 64 pixels in 512 slots
        "169, 8, 3, 321, 328",
        "170, 8, 3, 329, 336",
        "171, 8, 3, 337, 344",
        "340, 8, 6, 153, 160",
        "341, 8, 6, 161, 168"
    })
    void keepsPixelsWhole(int pixels, int bytesPerPixel, int universe, int firstSlot, int lastSlot) {
        List<UniverseRun> runs = WHOLE.runs(pixels, bytesPerPixel);
        UniverseRun last = runs.get(runs.size() - 1);
        assertThat(last.universe()).isEqualTo(universe).isEqualTo((int) WHOLE.lastUniverse(pixels, bytesPerPixel));
        assertThat(last.lastSlot()).isEqualTo(lastSlot);
        assertThat(last.lastSlot() - bytesPerPixel + 1).isEqualTo(firstSlot);
        assertThat(runs).allMatch(run -> run.byteCount() % bytesPerPixel == 0);
    }

    /** Without gaps, pixel 171 has slots 511 and 512 of universe 1 and slot 1 of universe 2. */
    @Test
    void packsWithoutGaps() {
        assertThat(DENSE.runs(171, 3)).containsExactly(new UniverseRun(1, 1, 0, 512), new UniverseRun(2, 1, 512, 1));
    }

    @ParameterizedTest(name = "{0} pixels of {1} bytes")
    @CsvSource({"170, 3, 1, 510", "171, 3, 2, 1", "341, 3, 2, 511", "341, 4, 3, 340", "171, 6, 3, 2", "341, 8, 6, 168"})
    void endsWithoutGaps(int pixels, int bytesPerPixel, int universe, int lastSlot) {
        List<UniverseRun> runs = DENSE.runs(pixels, bytesPerPixel);
        assertThat(runs.get(runs.size() - 1).universe()).isEqualTo(universe);
        assertThat(runs.get(runs.size() - 1).lastSlot()).isEqualTo(lastSlot);
    }

    @Test
    void startsWhereItIsTold() {
        assertThat(new Packing(7, 508, true).runs(3, 3))
                .containsExactly(new UniverseRun(7, 508, 0, 3), new UniverseRun(8, 1, 3, 6));
        assertThat(new Packing(7, 511, false).runs(1, 3))
                .containsExactly(new UniverseRun(7, 511, 0, 2), new UniverseRun(8, 1, 2, 1));
    }

    @Test
    void refusesWhatDoesNotFit() {
        assertThat(new Packing(7, 511, true).startsTooLate(3)).isTrue();
        assertThat(new Packing(7, 510, true).startsTooLate(3)).isFalse();
        assertThatThrownBy(() -> new Packing(7, 511, true).runs(1, 3)).isInstanceOf(IllegalArgumentException.class);
        assertThat(new Packing(63_999, 1, true).lastUniverse(171, 3)).isEqualTo(64_000);
        assertThatThrownBy(() -> new Packing(63_999, 1, true).runs(171, 3))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Packing(0, 1, true)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Packing(1, 513, true)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void gathersWhatPortsPutIntoAUniverse() {
        Ports ports = new Ports(List.of(
                Lines.port("left", Lines.plain("RGB", 8), 1, 1, Lines.pixels(0, 171)),
                Lines.port("right", Lines.plain("RGB", 8), 2, 10, Lines.pixels(171, 181))));
        List<UniverseLayout> universes = UniverseLayout.of(ports);
        assertThat(universes).extracting(UniverseLayout::universe).containsExactly(1, 2);
        assertThat(universes).extracting(UniverseLayout::slotCount).containsExactly(510, 39);
        assertThat(universes.get(1).pieces())
                .containsExactly(
                        new UniverseLayout.Piece(0, new UniverseRun(2, 1, 510, 3)),
                        new UniverseLayout.Piece(1, new UniverseRun(2, 10, 0, 30)));
    }

    /** 24 slots fill the shortest time from break to break of ANSI E1.11-2008: 92 + 12 + 25 * 44 us = 1204 us. */
    @Test
    void sendsSmallUniversesOfTwentyFourSlots() {
        Ports ports = new Ports(List.of(Lines.port("left", Lines.plain("RGB", 8), 1, 4, Lines.pixels(0, 1))));
        assertThat(UniverseLayout.of(ports).get(0).slotCount()).isEqualTo(24);
    }

    @Test
    void copiesPortsIntoTheirSlots() {
        Ports ports = new Ports(List.of(
                Lines.port("left", Lines.plain("RGB", 8), 1, 1, Lines.pixels(0, 2)),
                Lines.port("right", Lines.plain("GRB", 8), 1, 10, Lines.dark(1), Lines.pixels(2, 3))));
        PortFrames frames = new PortFrames(new PortMap(ports, Lines.fence(3)));
        frames.encode(0, Lines.bytes(255, 0, 0, 0, 255, 0, 0, 0, 255), 0);
        byte[] packet = new byte[30];
        frames.copy(UniverseLayout.of(ports).get(0), packet, 5);
        int[] expected = new int[30];
        expected[5] = 255;
        expected[5 + 4] = 255;
        expected[5 + 9 + 3 + 2] = 255;
        assertThat(Lines.unsigned(packet)).isEqualTo(expected);
    }
}
