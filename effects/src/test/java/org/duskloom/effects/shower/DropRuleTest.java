package org.duskloom.effects.shower;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.duskloom.effects.Canvases;
import org.duskloom.effects.kit.Motion;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.CueTime;
import org.duskloom.engine.effect.NumberKey;
import org.duskloom.engine.effect.NumberTrack;
import org.duskloom.engine.effect.Period;
import org.duskloom.engine.effect.Setting;
import org.duskloom.engine.effect.SettingException;
import org.duskloom.engine.effect.Settings;
import org.duskloom.engine.time.Easing;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DropRuleTest {
    private final Map<Setting<?>, Object> given = new HashMap<>(Map.of(Motion.EVERY, Optional.of(Period.ofSeconds(2))));

    private Settings settings() {
        return Settings.of(given);
    }

    private DropRule rule() throws SettingException {
        return DropRule.of(settings(), Motion.of(settings()));
    }

    private DropRule rule(double density, double tail, double vary) throws SettingException {
        given.put(Shower.DENSITY, NumberTrack.constant(density));
        given.put(Shower.TAIL, NumberTrack.constant(tail));
        given.put(Shower.VARY, NumberTrack.constant(vary));
        return rule();
    }

    /** As many slots as drops at most, and so the chance of one is never above 1: density / slots. */
    @ParameterizedTest
    @CsvSource({"0, 1, 0", "0.3, 1, 0.3", "1, 1, 1", "1.5, 2, 0.75", "3, 3, 1", "3.2, 4, 0.8"})
    void hasSlotsForAllDrops(double density, int slots, double chance) throws SettingException {
        DropRule rule = rule(density, 0, 0);
        assertThat(rule.slotsPerPass()).isEqualTo(slots);
        assertThat(rule.chance(5.5, new CueTime())).isCloseTo(chance, within(1e-12));
        assertThat(rule.isLasting()).isTrue();
    }

    /** The slowest drop needs 1 + vary passes to the end, and its tail as much more as it is long. */
    @ParameterizedTest
    @CsvSource({"1, 0, 0, 2", "1, 1, 0, 3", "1, 1, 1, 5", "3, 0.5, 0.5, 8"})
    void looksBackAsLongAsTheSlowestIsSeen(double density, double tail, double vary, int slots)
            throws SettingException {
        assertThat(rule(density, tail, vary).slotsInSight(tail, vary)).isEqualTo(slots);
    }

    /** From 0 to 4 drops a pass over 8 s, passes of 2 s: one that starts after one pass has the chance of second 2. */
    @Test
    void readsADensityThatMovesWhereTheDropStarts() throws SettingException {
        given.put(
                Shower.DENSITY,
                NumberTrack.keyed(List.of(new NumberKey(0, 0, Easing.LINEAR), new NumberKey(8, 4, Easing.LINEAR))));
        DropRule rule = rule();
        assertThat(rule.isLasting()).isFalse();
        assertThat(rule.slotsPerPass()).isEqualTo(4);
        assertThat(rule.chance(1, new CueTime())).isCloseTo(0.25, within(1e-12));
        assertThat(rule.chance(3, new CueTime())).isCloseTo(0.75, within(1e-12));
        assertThat(rule.chance(-5, new CueTime())).isZero();
    }

    /** Passes are counted upward either way, so that the same drops fall. */
    @Test
    void countsPassesTheSameBackward() throws SettingException {
        CueTime time = new CueTime().set(5, 10);
        assertThat(rule().passes(time)).isEqualTo(2.5);
        given.put(Motion.REVERSE, true);
        assertThat(rule().passes(time)).isEqualTo(2.5);
    }

    /**
     * The drops in sight of random instants: sorted in each lane by how far they have come, none behind its way, and
     * the index of every section is what looking at all heads finds.
     */
    @Test
    void dropsAreSortedAndFound() throws SettingException {
        given.put(Shower.LANES, NumberTrack.constant(7));
        DropRule rule = rule(2.6, 0.4, 0.7);
        Canvas canvas = new Canvases().member("bed", Canvases.scattered(200)).build();
        Lanes lanes = Lanes.of(canvas, settings());
        Drops drops = new Drops(canvas, lanes, rule);
        Random random = new Random(3);
        for (int run = 0; run < 200; run++) {
            drops.begin(new CueTime().set(random.nextDouble(0, 500), 1000), 0.4, 0.7);
            int at = 0;
            for (int lane = 0; lane < lanes.count(); lane++) {
                int first = at;
                float before = 0;
                while (drops.heads()[at] <= 1.4f) {
                    assertThat(drops.heads()[at]).isBetween(before, 1.4f);
                    assertThat(drops.draws()[at]).isBetween(0f, 1f);
                    before = drops.heads()[at++];
                }
                assertThat(drops.heads()[at]).as("the end of a lane").isGreaterThan(2);
                for (int section = 0; section < Lanes.SECTIONS; section++) {
                    int found = first;
                    while (drops.heads()[found] < (float) section / Lanes.SECTIONS) {
                        found++;
                    }
                    assertThat(drops.firstOfSection()[lane * Lanes.SECTIONS + section])
                            .isEqualTo(found);
                }
                at++;
            }
        }
    }

    /** Going on from frame to frame or coming from anywhere else: the drops of an instant are the same. */
    @Test
    void anInstantHasItsDropsWhereverOneComesFrom() throws SettingException {
        given.put(Shower.LANES, NumberTrack.constant(3));
        DropRule rule = rule(2, 0.4, 0.7);
        Canvas canvas = new Canvases().member("bed", Canvases.scattered(50)).build();
        Lanes lanes = Lanes.of(canvas, settings());
        Drops going = new Drops(canvas, lanes, rule);
        for (int frame = 0; frame < 200; frame++) {
            CueTime time = new CueTime().set(frame / 10.0, 1000);
            going.begin(time, 0.4, 0.7);
            Drops fresh = new Drops(canvas, lanes, rule);
            fresh.begin(time, 0.4, 0.7);
            for (int at = 0, lane = 0; lane < lanes.count(); at++) {
                assertThat(going.heads()[at]).isEqualTo(fresh.heads()[at]);
                assertThat(going.draws()[at]).isEqualTo(fresh.draws()[at]);
                lane += fresh.heads()[at] > 2 ? 1 : 0;
            }
        }
    }
}
