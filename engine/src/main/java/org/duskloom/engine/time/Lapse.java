package org.duskloom.engine.time;

import java.util.Objects;

/**
 * A length of time as written: it is always as long, or counts beats that are not everywhere as long. Starts and ends
 * are instants by the clock of the music.
 */
public sealed interface Lapse {
    /** No time at all. */
    Lapse NONE = new Fixed(ExactTime.ZERO);

    /** Always as long. */
    record Fixed(ExactTime length) implements Lapse {
        public Fixed {
            Objects.requireNonNull(length, "length");
        }

        @Override
        public boolean isFixed() {
            return true;
        }

        @Override
        public ExactTime from(ExactTime start) {
            return length;
        }

        @Override
        public ExactTime until(ExactTime end) {
            return length;
        }

        @Override
        public Lapse times(long numerator, long denominator) {
            return new Fixed(length.times(numerator, denominator));
        }
    }

    /** So many beats or bars. */
    record Counted(Beats beats, Pulse pulse, Ratio count) implements Lapse {
        public Counted {
            Objects.requireNonNull(beats, "beats");
            Objects.requireNonNull(pulse, "pulse");
            Objects.requireNonNull(count, "count");
        }

        @Override
        public boolean isFixed() {
            return false;
        }

        @Override
        public ExactTime from(ExactTime start) {
            return beats.later(start, pulse, count).minus(start);
        }

        @Override
        public ExactTime until(ExactTime end) {
            return end.minus(beats.later(end, pulse, count.negated()));
        }

        @Override
        public Lapse times(long numerator, long denominator) {
            return new Counted(beats, pulse, count.times(Ratio.of(numerator, denominator)));
        }
    }

    /** A length that is always the same. */
    static Lapse of(ExactTime length) {
        return new Fixed(length);
    }

    /** So many beats or bars: fixed where these are even. */
    static Lapse of(Beats beats, Pulse pulse, Ratio count) {
        Lapse counted = new Counted(beats, pulse, count);
        return beats.isEven() ? new Fixed(counted.from(beats.known().get(0))) : counted;
    }

    /** Whether it is as long wherever it starts. */
    boolean isFixed();

    /** How long it is from a start on. */
    ExactTime from(ExactTime start);

    /** How long it is up to an end. */
    ExactTime until(ExactTime end);

    /** So many times this. */
    Lapse times(long numerator, long denominator);

    /** Whether it is no time at all. */
    default boolean isZero() {
        return from(ExactTime.ZERO).isZero();
    }
}
