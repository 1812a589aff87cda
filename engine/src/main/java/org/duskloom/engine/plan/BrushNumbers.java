package org.duskloom.engine.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntSupplier;
import org.duskloom.engine.time.FrameSpan;

/** Numbers the brushes of one canvas of a cue: plays that are not seen at the same time share one. */
final class BrushNumbers {
    private final List<Integer> numbers = new ArrayList<>();
    /** For each of them the first frame that it is not needed in. */
    private final List<Long> freeFrom = new ArrayList<>();

    /**
     * The number of the brush of a play; plays come in the order of their starts.
     *
     * @param fresh gives a number that no canvas has yet
     */
    int take(FrameSpan frames, IntSupplier fresh) {
        for (int i = 0; i < numbers.size(); i++) {
            if (freeFrom.get(i) <= frames.firstFrame()) {
                freeFrom.set(i, frames.endFrameExclusive());
                return numbers.get(i);
            }
        }
        numbers.add(fresh.getAsInt());
        freeFrom.add(frames.endFrameExclusive());
        return numbers.get(numbers.size() - 1);
    }
}
