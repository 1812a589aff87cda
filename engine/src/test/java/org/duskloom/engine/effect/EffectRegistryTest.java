package org.duskloom.engine.effect;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

class EffectRegistryTest {
    @Test
    void findsEffectsByName() {
        EffectRegistry registry = EffectRegistry.of(List.of(PlainEffects.SOLID, PlainEffects.CLOCK));
        assertThat(registry.names()).containsExactly("clock", "solid");
        assertThat(registry.effects()).containsExactly(PlainEffects.CLOCK, PlainEffects.SOLID);
        assertThat(registry.find("clock")).containsSame(PlainEffects.CLOCK);
        assertThat(registry.find("Clock")).isEmpty();
    }

    @Test
    void refusesTwoOfOneName() {
        List<Effect> twins = List.of(PlainEffects.SOLID, PlainEffects.SOLID);
        assertThatThrownBy(() -> EffectRegistry.of(twins)).hasMessage("two effects are called solid");
    }
}
