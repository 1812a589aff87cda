package org.duskloom.engine.locate;

import java.util.List;
import java.util.stream.IntStream;
import org.duskloom.engine.find.FindRun;

/**
 * Which pictures show which step of a run.
 *
 * @param run the run
 * @param shown for each of the run's pictures, in order, the ones that show it, at least one; a film has several
 */
record Sequence(FindRun run, List<int[]> shown) {
    /** One photo for each step. */
    static Sequence ofPhotos(FindRun run) {
        return new Sequence(
                run,
                IntStream.range(0, run.pictures().size())
                        .mapToObj(picture -> new int[] {picture})
                        .toList());
    }

    /** Of the pictures that show a step the one in the middle. */
    static int middle(int[] shown) {
        return shown[shown.length / 2];
    }

    /** The pictures of a round: dark, lit, the first bit's ones, its zeros, and so on. */
    List<int[]> round(int round) {
        int each = 2 + 2 * run.code().bits();
        return shown.subList(round * each, (round + 1) * each);
    }
}
