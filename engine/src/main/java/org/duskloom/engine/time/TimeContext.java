package org.duskloom.engine.time;

import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * What the words in a time refer to.
 *
 * @param rate what one frame ({@code f}) is; empty where frames cannot be used
 * @param tempo what one beat ({@code b}) is; empty where no tempo is given
 * @param marks the named instants; empty where marks cannot be used, as for a length of time
 */
public record TimeContext(Optional<FrameRate> rate, Optional<Tempo> tempo, Optional<Map<String, ExactTime>> marks) {
    /** Neither frames nor beats nor marks. */
    public static final TimeContext NONE = new TimeContext(Optional.empty(), Optional.empty(), Optional.empty());

    public TimeContext {
        Objects.requireNonNull(rate, "rate");
        Objects.requireNonNull(tempo, "tempo");
        marks = marks.map(Map::copyOf);
    }

    /** This, with frames. */
    public TimeContext withRate(FrameRate frameRate) {
        return new TimeContext(Optional.of(frameRate), tempo, marks);
    }

    /** This, with beats. */
    public TimeContext withTempo(Tempo steadyTempo) {
        return new TimeContext(rate, Optional.of(steadyTempo), marks);
    }

    /** This, with marks. */
    public TimeContext withMarks(Map<String, ExactTime> instantByName) {
        return new TimeContext(rate, tempo, Optional.of(instantByName));
    }

    /** This, for a length of time instead of an instant. */
    public TimeContext withoutMarks() {
        return new TimeContext(rate, tempo, Optional.empty());
    }
}
