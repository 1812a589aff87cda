package org.duskloom.engine.map;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.duskloom.engine.document.Inputs;
import org.duskloom.engine.problem.Location;
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

    private static List<Prop> withoutPlaces(PixelMap map) {
        Location nowhere = Location.ofFile("");
        return map.props().stream()
                .map(prop -> new Prop(prop.name(), prop.firstPixel(), prop.pixelCount(), prop.parts(), nowhere))
                .toList();
    }

    /** Asserts that two maps are the same but for where their props are defined. */
    public static void assertSame(PixelMap actual, PixelMap expected) {
        assertThat(withoutPlaces(actual)).isEqualTo(withoutPlaces(expected));
        assertThat(actual.stage()).isEqualTo(expected.stage());
        assertThat(actual.own()).isEqualTo(expected.own());
    }
}
