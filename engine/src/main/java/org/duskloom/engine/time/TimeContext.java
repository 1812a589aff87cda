package org.duskloom.engine.time;

import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * What the words in a time refer to.
 *
 * @param rate what one frame ({@code f}) is; empty where frames cannot be used
 * @param beats where the beats ({@code b}) lie; empty where none are given
 * @param beatsFaulty whether beats are given but cannot be read; that is told where they stand, and not at every time
 * @param zero from which instant of the music times count: zero, but for those in a scene the start of the scene
 * @param inScene whether beats count from there, and not from the first beat of the music
 * @param marks the named instants; empty where marks cannot be used, as for a length of time
 * @param marksFaulty whether there are more that cannot be read; that is told where they stand, and not at every time
 */
public record TimeContext(
        Optional<FrameRate> rate,
        Optional<Beats> beats,
        boolean beatsFaulty,
        ExactTime zero,
        boolean inScene,
        Optional<Map<String, ExactTime>> marks,
        boolean marksFaulty) {
    /** Neither frames nor beats nor marks. */
    public static final TimeContext NONE =
            new TimeContext(Optional.empty(), Optional.empty(), false, ExactTime.ZERO, false, Optional.empty(), false);

    public TimeContext {
        Objects.requireNonNull(rate, "rate");
        Objects.requireNonNull(beats, "beats");
        Objects.requireNonNull(zero, "zero");
        marks = marks.map(Map::copyOf);
    }

    /** This, with frames. */
    public TimeContext withRate(FrameRate frameRate) {
        return new TimeContext(Optional.of(frameRate), beats, beatsFaulty, zero, inScene, marks, marksFaulty);
    }

    /** This, with beats. */
    public TimeContext withBeats(Beats ofMusic) {
        return new TimeContext(rate, Optional.of(ofMusic), false, zero, inScene, marks, marksFaulty);
    }

    /** This, where beats are given but cannot be read. */
    public TimeContext withFaultyBeats() {
        return new TimeContext(rate, beats, true, zero, inScene, marks, marksFaulty);
    }

    /** This, where marks are given that cannot be read. */
    public TimeContext withFaultyMarks() {
        return new TimeContext(rate, beats, beatsFaulty, zero, inScene, marks, true);
    }

    /** This, in a scene that starts at an instant of the music: times, and beats too, count from there. */
    public TimeContext inScene(ExactTime start) {
        return new TimeContext(rate, beats, beatsFaulty, start, true, marks, marksFaulty);
    }

    /** This, with marks. */
    public TimeContext withMarks(Map<String, ExactTime> instantByName) {
        return new TimeContext(rate, beats, beatsFaulty, zero, inScene, Optional.of(instantByName), marksFaulty);
    }

    /** This, for a length of time instead of an instant. */
    public TimeContext withoutMarks() {
        return new TimeContext(rate, beats, beatsFaulty, zero, inScene, Optional.empty(), marksFaulty);
    }

    /** Whether a length of time is the same wherever it starts. */
    public boolean isEven() {
        return beats.isEmpty() || beats.get().isEven();
    }

    /** How long something lasts that starts at an instant of this clock. */
    public ExactTime lasting(Lapse lapse, ExactTime start) {
        return lapse.from(zero.plus(start));
    }

    /** How long something lasts that ends at an instant of this clock. */
    public ExactTime ending(Lapse lapse, ExactTime end) {
        return lapse.until(zero.plus(end));
    }

    /** The instant of this clock at a number of beats or bars. */
    ExactTime place(Pulse pulse, Ratio count) {
        Beats all = beats.orElseThrow();
        return inScene ? all.later(zero, pulse, count).minus(zero) : all.timeOf(pulse, count);
    }

    /** The instant of this clock so many beats or bars after another. */
    ExactTime moved(ExactTime from, Pulse pulse, Ratio count) {
        return beats.orElseThrow().later(zero.plus(from), pulse, count).minus(zero);
    }
}
