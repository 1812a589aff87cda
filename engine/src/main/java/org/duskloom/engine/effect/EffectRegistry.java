package org.duskloom.engine.effect;

import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.ServiceLoader;
import java.util.TreeMap;

/** The effects that a timeline may name, by name. */
public final class EffectRegistry {
    private final Map<String, Effect> byName;

    private EffectRegistry(Map<String, Effect> byName) {
        this.byName = Collections.unmodifiableMap(byName);
    }

    /**
     * A registry of just these effects.
     *
     * @throws IllegalArgumentException if two have the same name
     */
    public static EffectRegistry of(Iterable<Effect> effects) {
        Map<String, Effect> byName = new TreeMap<>();
        for (Effect effect : effects) {
            if (byName.put(effect.name(), effect) != null) {
                throw new IllegalArgumentException("two effects are called " + effect.name());
            }
        }
        return new EffectRegistry(byName);
    }

    /** Every effect that the running program offers as a service. */
    public static EffectRegistry installed() {
        return of(ServiceLoader.load(Effect.class, EffectRegistry.class.getClassLoader()));
    }

    /** The effect with this name. */
    public Optional<Effect> find(String name) {
        return Optional.ofNullable(byName.get(name));
    }

    /** All names, in alphabetical order. */
    public Collection<String> names() {
        return byName.keySet();
    }

    /** All effects, by name. */
    public List<Effect> effects() {
        return List.copyOf(byName.values());
    }
}
