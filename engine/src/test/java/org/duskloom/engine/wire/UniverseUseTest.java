package org.duskloom.engine.wire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.duskloom.engine.document.Inputs;
import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class UniverseUseTest {
    private final Problems problems = new Problems();
    private final UniverseUse use = new UniverseUse(problems);

    private boolean claim(String name, int universe, int slot, int pixels) {
        return use.claim(Lines.port(name, Lines.plain("RGB", 8), universe, slot, Lines.pixels(0, pixels)), Lines.PLACE);
    }

    /** Three bytes a pixel: ten pixels from slot 1 take slots 1 to 30. */
    @ParameterizedTest
    @CsvSource({"1, 31, true", "1, 30, false", "1, 1, false", "2, 1, true", "1, 500, true"})
    void portsMayLieBesideEachOther(int universe, int slot, boolean free) {
        assertThat(claim("a", 1, 1, 10)).isTrue();
        assertThat(claim("b", universe, slot, 4)).isEqualTo(free);
        assertThat(problems.errorCount()).isEqualTo(free ? 0 : 1);
    }

    @Test
    void saysWhichSlotsAreTakenAndWhichUniverseIsFree() {
        claim("a", 7, 1, 10);
        claim("b", 7, 28, 4);
        assertThat(Inputs.shown(problems))
                .singleElement()
                .asString()
                .contains("port \"b\" runs into port \"a\": both have slots 28 to 30 of universe 7")
                .contains("universe 8 and those after it are free");
    }

    @Test
    void saysASingleSlotAsOne() {
        claim("a", 7, 1, 10);
        claim("b", 7, 30, 1);
        assertThat(Inputs.shown(problems)).singleElement().asString().contains("both have slot 30 of universe 7");
    }

    /** 170 pixels of three bytes fill 510 slots; the 171st lies in the next universe. */
    @Test
    void findsPortsThatRunIntoLaterUniverses() {
        assertThat(claim("long", 1, 1, 171)).isTrue();
        assertThat(claim("b", 2, 3, 1)).isFalse();
        assertThat(claim("c", 2, 4, 1)).isTrue();
    }

    /** A port that was refused has nothing, so the next one is not told of it. */
    @Test
    void takesNothingForAPortThatIsRefused() {
        claim("a", 1, 1, 10);
        assertThat(claim("b", 1, 30, 100)).isFalse();
        assertThat(claim("c", 1, 31, 10)).isTrue();
        assertThat(problems.errorCount()).isEqualTo(1);
    }

    @Test
    void tellsOfEachPortThatIsMetOnce() {
        claim("a", 1, 1, 170);
        claim("b", 2, 1, 170);
        assertThat(claim("c", 1, 1, 340)).isFalse();
        assertThat(Inputs.shown(problems)).hasSize(2);
    }

    @Test
    void offersNoUniverseBeyondTheLast() {
        claim("a", UniverseRun.LAST_UNIVERSE, 1, 10);
        claim("b", UniverseRun.LAST_UNIVERSE, 1, 10);
        assertThat(Inputs.shown(problems)).singleElement().asString().doesNotContain("free");
    }

    /** Two runs meet if some slot is in both: counted slot by slot. */
    @Test
    void meetsWhereASlotIsInBoth() {
        Random random = new Random(1);
        for (int run = 0; run < 2000; run++) {
            UniverseRun one = new UniverseRun(1, 1 + random.nextInt(12), 0, 1 + random.nextInt(6));
            UniverseRun other =
                    new UniverseRun(1 + random.nextInt(2), 1 + random.nextInt(12), 0, 1 + random.nextInt(6));
            boolean shared = false;
            for (int slot = one.firstSlot(); slot <= one.lastSlot(); slot++) {
                shared |= one.universe() == other.universe() && slot >= other.firstSlot() && slot <= other.lastSlot();
            }
            assertThat(one.meets(other)).as("%s %s", one, other).isEqualTo(shared);
            assertThat(other.meets(one)).isEqualTo(shared);
        }
    }

    /** Whatever the packing, the runs of a port hold every byte once, in order, within 512 slots. */
    @Test
    void runsHoldEveryByteOnce() {
        Random random = new Random(2);
        for (int i = 0; i < 500; i++) {
            int bytes = 3 + random.nextInt(6);
            boolean whole = random.nextBoolean();
            int slot = 1 + random.nextInt(whole ? 513 - bytes : 512);
            int pixels = 1 + random.nextInt(700);
            List<UniverseRun> runs = new Packing(5, slot, whole).runs(pixels, bytes);
            int next = 0;
            for (int run = 0; run < runs.size(); run++) {
                UniverseRun at = runs.get(run);
                assertThat(at.universe()).isEqualTo(5 + run);
                assertThat(at.firstByte()).isEqualTo(next);
                assertThat(at.firstSlot()).isEqualTo(run == 0 ? slot : 1);
                assertThat(at.lastSlot()).isLessThanOrEqualTo(512);
                assertThat(whole && at.byteCount() % bytes != 0).isFalse();
                next += at.byteCount();
            }
            assertThat(next).isEqualTo(pixels * bytes);
            assertThat(new Packing(5, slot, whole).lastUniverse(pixels, bytes)).isEqualTo(4 + runs.size());
        }
    }

    /** The layout of all ports lists universes upward, with every run of every port once. */
    @Test
    void layoutsHoldAllRunsOfAllPorts() {
        Ports ports = new Ports(List.of(
                Lines.port("a", Lines.plain("RGB", 8), 3, 1, Lines.pixels(0, 200)),
                Lines.port("b", Lines.plain("RGB", 8), 1, 1, Lines.pixels(0, 2)),
                Lines.port("c", Lines.plain("RGB", 8), 4, 200, Lines.pixels(0, 5))));
        List<UniverseLayout> layouts = UniverseLayout.of(ports);
        assertThat(layouts).extracting(UniverseLayout::universe).containsExactly(1, 3, 4);
        assertThat(layouts).extracting(UniverseLayout::slotCount).containsExactly(24, 510, 214);
        List<UniverseRun> runs = new ArrayList<>();
        layouts.forEach(layout -> layout.pieces().forEach(piece -> runs.add(piece.run())));
        assertThat(runs)
                .containsExactlyInAnyOrderElementsOf(ports.ports().stream()
                        .flatMap(port -> port.runs().stream())
                        .toList());
    }

    @Test
    void refusesPortsThatCannotBe() {
        Port one = Lines.port("a", Signal.USUAL, 1, 1, Lines.pixels(0, 1));
        List<Port> twins = List.of(one, one);
        assertThatThrownBy(() -> new Ports(twins)).hasMessageContaining("two ports are called \"a\"");
        Link[] nothing = {};
        assertThatThrownBy(() -> Lines.port("a", Signal.USUAL, 1, 1, nothing)).hasMessageContaining("has no pixel");
        assertThatThrownBy(() -> new PortMap(Ports.NONE, Lines.fence(1))).hasMessage("no ports");
    }
}
