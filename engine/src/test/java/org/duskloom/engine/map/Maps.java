package org.duskloom.engine.map;

import static org.assertj.core.api.Assertions.assertThat;

import org.duskloom.engine.document.Inputs;
import org.duskloom.engine.problem.Problems;

/** Maps for tests. */
public final class Maps {
    private Maps() {}

    /** The map of that CSV text, which must be sound. */
    public static PixelMap map(String csv) {
        Problems problems = new Problems();
        PixelMap map = MapReader.read(Inputs.source("map.csv", csv), problems)
                .orElseThrow(() -> new AssertionError(Inputs.shown(problems)));
        if (problems.hasErrors()) {
            throw new AssertionError(Inputs.shown(problems));
        }
        return map;
    }

    /** Asserts that two maps are the same but for where their props are defined. */
    static void assertSame(PixelMap actual, PixelMap expected) {
        assertThat(actual.props())
                .usingRecursiveFieldByFieldElementComparatorIgnoringFields("definedAt")
                .isEqualTo(expected.props());
        assertThat(actual.stage()).isEqualTo(expected.stage());
        assertThat(actual.own()).isEqualTo(expected.own());
    }
}
