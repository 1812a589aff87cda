package org.duskloom.engine.timeline;

import java.util.AbstractList;
import java.util.Objects;
import java.util.RandomAccess;
import org.duskloom.engine.time.EvenInstants;
import org.duskloom.engine.time.ExactTime;

/** When plays start and end that are all as long and as far apart, worked out when it is asked for. Immutable. */
final class EvenTimes extends AbstractList<Plays.Times> implements RandomAccess {
    private final EvenInstants starts;
    private final ExactTime length;

    EvenTimes(EvenInstants starts, ExactTime length) {
        this.starts = starts;
        this.length = length;
    }

    EvenInstants starts() {
        return starts;
    }

    @Override
    public Plays.Times get(int play) {
        Objects.checkIndex(play, size());
        ExactTime at = starts.at(play);
        return new Plays.Times(at, at.plus(length));
    }

    @Override
    public int size() {
        return starts.count();
    }
}
