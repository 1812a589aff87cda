package org.duskloom.cli;

import java.util.List;
import java.util.OptionalInt;
import org.duskloom.engine.format.NpyKind;
import org.duskloom.engine.format.OutputRegistry;
import org.duskloom.engine.format.RgbKind;
import org.duskloom.engine.format.SinglesKind;
import org.duskloom.engine.preview.ContactStripKind;
import org.duskloom.engine.preview.ShownFrames;
import org.duskloom.engine.preview.TimeStripKind;
import org.duskloom.engine.proof.StepsKind;

/** The kinds of output that the commands choose from. */
final class OutputKinds {
    /** In the order of the help. */
    static final OutputRegistry ALL = new OutputRegistry(List.of(
            new RgbKind(),
            new NpyKind(),
            new SinglesKind(),
            ContactStripKind.standard(),
            new TimeStripKind(OptionalInt.empty(), ShownFrames.USUAL_COLUMNS),
            new StepsKind()));

    private OutputKinds() {}
}
