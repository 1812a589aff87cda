package org.duskloom.engine.effect;

/**
 * The beats of the music under the members of a cue, counted from the instant at which the members began. Between two
 * beats is counted evenly. Immutable; asking allocates nothing.
 */
public interface MusicClock {
    /** No music. */
    MusicClock NONE = new MusicClock() {
        @Override
        public double beatsAt(long frame) {
            throw none();
        }

        @Override
        public double barsAt(long frame) {
            throw none();
        }

        @Override
        public double secondsAfterBeats(double beats) {
            throw none();
        }

        @Override
        public double secondsAfterBars(double bars) {
            throw none();
        }

        private static IllegalStateException none() {
            return new IllegalStateException("the show has no beats");
        }
    };

    /** How many beats have gone by in a frame; below zero before the members begin. */
    double beatsAt(long frame);

    /** How many bars have gone by in a frame. */
    double barsAt(long frame);

    /** How long it takes from the start until so many beats have gone by; below zero for what was before it. */
    double secondsAfterBeats(double beats);

    /** How long it takes from the start until so many bars have gone by. */
    double secondsAfterBars(double bars);
}
