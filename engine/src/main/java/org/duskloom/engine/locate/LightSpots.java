package org.duskloom.engine.locate;

import java.util.List;

/** The lit pictures without anything but what is near lights. Immutable. */
public final class LightSpots {
    private final List<Reference> rounds;

    LightSpots(List<Reference> rounds) {
        this.rounds = List.copyOf(rounds);
    }

    /** Takes dots one by one. */
    @FunctionalInterface
    public interface DotSink {
        /**
         * A dot.
         *
         * @param x column, from 0
         * @param y row, from 0
         * @param light its linear light above the dark, 0 to 1
         */
        void take(int x, int y, double light);
    }

    /** Hands over all dots that are near lights; with several rounds some come more than once. */
    public void forEach(DotSink sink) {
        for (Reference round : rounds) {
            for (int i = 0; i < round.dots.count(); i++) {
                sink.take(round.dots.x(i), round.dots.y(i), Math.max(0, round.lit[i] - round.dark[i]));
            }
        }
    }

    /** How bright the middle of a usual light is, in linear light above the dark; above 0. */
    public double usualPeak() {
        return rounds.get(0).usualPeak;
    }
}
