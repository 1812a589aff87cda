package org.duskloom.engine.effect;

import java.util.List;

/**
 * A pure function of canvas position (or order position), time and seed to a colour with alpha. Implementations are
 * stateless services, found by {@link EffectRegistry}.
 */
public interface Effect {
    /** The word that stands in a timeline: lower case, unique. */
    String name();

    /** What the audience sees, in one sentence without a full stop. */
    String summary();

    /** The formula, in the words of the settings, for the reference. */
    String formula();

    /** Everything that can be set, in the order in which the reference lists it. */
    List<Setting<?>> settings();

    /**
     * Whether it makes random choices. Only then does its canvas have random keys, and is it compiled anew for every
     * play of a cue that is repeated; kernels of other effects serve all plays with the same settings.
     */
    default boolean usesChance() {
        return false;
    }

    /** Whether it runs along the order of the pixels; if not, a cue's {@code order} changes nothing. */
    default boolean usesOrder() {
        return false;
    }

    /**
     * What is allowed but mostly a slip; each becomes a warning. Asked only with settings that could be prepared.
     *
     * @throws SettingException never where {@link #prepare} did not throw
     */
    default List<Doubt> doubts(Settings settings) throws SettingException {
        return List.of();
    }

    /**
     * Compiles the effect for one canvas: everything that does not change with time is computed here.
     *
     * @throws SettingException if the settings contradict each other or do not fit the canvas
     */
    Kernel prepare(Settings settings, Canvas canvas) throws SettingException;
}
