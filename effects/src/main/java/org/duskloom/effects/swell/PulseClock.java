package org.duskloom.effects.swell;

import org.duskloom.effects.kit.Motion;
import org.duskloom.engine.effect.CueTime;
import org.duskloom.engine.effect.Hits;
import org.duskloom.engine.effect.Period;
import org.duskloom.engine.effect.Setting;
import org.duskloom.engine.effect.SettingException;
import org.duskloom.engine.effect.Settings;

/** When pulses come: one after the other, or on instants of the music. Immutable. */
sealed interface PulseClock {
    /**
     * The clock that the settings describe.
     *
     * @throws SettingException if settings that belong to one of the two are given with the other
     */
    static PulseClock of(Settings settings) throws SettingException {
        if (!settings.isGiven(Swell.ON)) {
            return new Passing(Motion.of(settings));
        }
        for (Setting<?> other : new Setting<?>[] {Motion.PASSES, Motion.PHASE}) {
            if (settings.isGiven(other)) {
                throw new SettingException(
                        other.name(),
                        "on says when swells start, and " + other.name() + " does so too",
                        "leave one of them out; every may stand beside on and says how long a swell takes");
            }
        }
        Hits hits = settings.value(Swell.ON);
        boolean toTheNext = hits.isEndless() && !settings.isGiven(Motion.EVERY);
        Period every = toTheNext ? null : settings.value(Motion.EVERY).orElseThrow();
        return new Hitting(hits, every, settings.value(Motion.REVERSE));
    }

    /** Whether no pulse is under way. */
    boolean isOver(CueTime time);

    /** How far the pulse is: in [0, 1), and backward in (0, 1]. */
    double passed(CueTime time);

    /** Its number: 0 for the first that starts with the cue or in it. */
    double pass(CueTime time);

    /** Whether pulses run backward. */
    boolean isReversed();

    /** One after the other. */
    record Passing(Motion motion) implements PulseClock {
        @Override
        public boolean isOver(CueTime time) {
            return false;
        }

        @Override
        public double passed(CueTime time) {
            return motion.passed(time);
        }

        @Override
        public double pass(CueTime time) {
            return motion.pass(time);
        }

        @Override
        public boolean isReversed() {
            return motion.isReversed();
        }
    }

    /**
     * On instants of the music.
     *
     * @param every how long a pulse takes; null if until the next one
     */
    record Hitting(Hits hits, Period every, boolean isReversed) implements PulseClock {
        @Override
        public boolean isOver(CueTime time) {
            return hits.lastAt(time.frame()) == Hits.NEVER || share(time) >= 1;
        }

        @Override
        public double passed(CueTime time) {
            double share = Math.min(1, share(time));
            return isReversed ? 1 - share : share;
        }

        private double share(CueTime time) {
            return every == null
                    ? hits.shareToNext(time.frame())
                    : hits.since(time.frame(), every.unit()) / every.count();
        }

        @Override
        public double pass(CueTime time) {
            long last = hits.lastAt(time.frame());
            long before = hits.lastBefore(time.startSeconds());
            return last == Hits.NEVER ? -1 : last - (before == Hits.NEVER ? -1 : before) - 1;
        }
    }
}
