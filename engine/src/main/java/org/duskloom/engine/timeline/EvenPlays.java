package org.duskloom.engine.timeline;

import java.util.AbstractList;
import java.util.List;
import java.util.Objects;
import java.util.RandomAccess;
import org.duskloom.engine.time.EvenInstants;
import org.duskloom.engine.time.ExactTime;

/**
 * A cue that is played again and again, all as long and as far apart, with nothing that changes from play to play but
 * what random choices are keyed by. A play is made when somebody asks for it: there may be very many, and most of what
 * is asked of them follows from their number.
 *
 * @param first its first play
 * @param starts when its plays start
 * @param cut where a play that goes on is cut off
 */
public record EvenPlays(Cue first, EvenInstants starts, ExactTime cut) implements LayerItem {
    public EvenPlays {
        Objects.requireNonNull(first, "first");
        Objects.requireNonNull(starts, "starts");
        Objects.requireNonNull(cut, "cut");
    }

    /** How often it is played. */
    public int count() {
        return starts.count();
    }

    /** One of its plays, counted from 0. */
    public Cue play(int number) {
        ExactTime at = starts.at(number);
        Plays.Times times = new Plays.Times(at, at.plus(first.length()));
        return first.repeated(number + 1, times, cut, first.fade());
    }

    /** All of its plays, each made when it is asked for. */
    public List<Cue> plays() {
        return new AllPlays(this);
    }

    private static final class AllPlays extends AbstractList<Cue> implements RandomAccess {
        private final EvenPlays plays;

        AllPlays(EvenPlays plays) {
            this.plays = plays;
        }

        @Override
        public Cue get(int number) {
            Objects.checkIndex(number, size());
            return plays.play(number);
        }

        @Override
        public int size() {
            return plays.count();
        }
    }
}
