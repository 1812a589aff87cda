package org.duskloom.engine.map;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;

import java.util.ArrayList;
import java.util.List;
import org.duskloom.engine.problem.Location;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PropTest {
    private static final Location PLACE = Location.ofFile("map.csv");

    private static Part part(String name, int... pixels) {
        return new Part(name, pixels, List.of());
    }

    private static Prop prop(String name, int first, int count, Part... parts) {
        return new Prop(name, first, count, List.of(parts), PLACE);
    }

    @ParameterizedTest
    @CsvSource(quoteCharacter = '`', textBlock = """
            a*,    0, 1, 0, prop name "a*" holds *
            ``,    0, 1, 0, prop name "" is empty
            fence, 0, 0, 0, prop "fence" has no pixel
            fence, -1, 1, 0, prop "fence" has no pixel
            fence, 0, 3, 3, part "rim" goes beyond prop "fence"
            """)
    void refusesWhatIsNoProp(String name, int first, int count, int pixelOfPart, String message) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> prop(name, first, count, part("rim", pixelOfPart)))
                .withMessageStartingWith(message);
    }

    @Test
    void refusesTwoPartsOfOneName() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> prop("fence", 0, 2, part("rim", 0), part("rim", 1)))
                .withMessage("two parts are called \"rim\"");
        assertThatNullPointerException()
                .isThrownBy(() -> new Prop("fence", 0, 1, List.of(), null))
                .withMessage("definedAt");
    }

    /** Parts are numbers within the prop, so it matters nothing where in the whole it starts. */
    @Test
    void itsPartsCountFromItsOwnFirstPixel() {
        assertThat(prop("fence", 90, 2, part("rim", 1)).parts()).containsExactly(part("rim", 1));
    }

    @Test
    void keepsItsOwnListOfParts() {
        List<Part> parts = new ArrayList<>(List.of(part("rim", 0)));
        Prop fence = new Prop("fence", 0, 1, parts, PLACE);
        parts.clear();
        assertThat(fence.partPaths()).containsExactly("rim");
    }

    /** In a spreadsheet the tenth petal sorts before the second. */
    @Test
    void ordersNumberedPartsByNumberAndOthersByPixel() {
        assertThat(prop("daisy", 0, 3, part("10", 0), part("2", 1), part("1", 2))
                        .partPaths())
                .containsExactly("1", "2", "10");
        assertThat(prop("daisy", 0, 3, part("10", 0), part("2", 1), part("eye", 2))
                        .partPaths())
                .containsExactly("10", "2", "eye");
        assertThat(prop("daisy", 0, 3, part("007", 1), part("5", 2)).partPaths())
                .as("a number that begins with 0 is a name")
                .containsExactly("007", "5");
    }
}
