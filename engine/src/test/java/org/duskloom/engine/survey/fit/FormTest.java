package org.duskloom.engine.survey.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.duskloom.engine.survey.Dimensions;
import org.duskloom.engine.survey.WiringKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What readings let differ: an order in which the simpler is never behind what says the same and more. */
class FormTest {
    private static final List<Form> ALL = all();

    private static List<Form> all() {
        List<Form> forms = new ArrayList<>();
        for (Move move : Move.values()) {
            for (Turn turn : Turn.values()) {
                for (WiringKind wiring : WiringKind.values()) {
                    for (int flags = 0; flags < 4; flags++) {
                        forms.add(new Form(move, turn, (flags & 1) != 0, (flags & 2) != 0, wiring));
                    }
                }
            }
        }
        return forms;
    }

    /** Each includes itself, no two include each other, and what is included in an included one is included too. */
    @Test
    void toIncludeIsAnOrder() {
        for (Form a : ALL) {
            assertThat(a.includes(a)).isTrue();
            assertThat(a.includes(Form.AS_DESCRIBED)).isTrue();
            for (Form b : ALL) {
                if (!a.includes(b)) {
                    continue;
                }
                assertThat(b.includes(a)).isEqualTo(a.equals(b));
                for (Form c : ALL) {
                    if (b.includes(c)) {
                        assertThat(a.includes(c)).as("%s, %s, %s", a, b, c).isTrue();
                    }
                }
            }
        }
    }

    /** So that sorting by changes and weight has the simpler one first, and it drops what includes it. */
    @ParameterizedTest
    @EnumSource
    void whatIncludesMoreIsNeverSimpler(Dimensions dimensions) {
        for (Form a : ALL) {
            assertThat(a.parameters(dimensions)).isBetween(0, Form.MOST_PARAMETERS);
            for (Form b : ALL) {
                if (a.includes(b) && !a.equals(b)) {
                    assertThat(a.changes()).as("%s and %s", a, b).isGreaterThanOrEqualTo(b.changes());
                    assertThat(a.weight()).as("%s and %s", a, b).isGreaterThan(b.weight());
                    assertThat(a.parameters(dimensions)).isGreaterThanOrEqualTo(b.parameters(dimensions));
                }
            }
        }
    }

    /** A place, a turn, a size and a start: as many numbers as they have in geometry. */
    @Test
    void countsTheNumbersThatAreFitted() {
        Form everything = new Form(Move.FREE, Turn.ALL_WAYS, true, true, WiringKind.OTHER_START);
        assertThat(everything.parameters(Dimensions.DEEP))
                .isEqualTo(3 + 3 + 1 + 1)
                .isEqualTo(Form.MOST_PARAMETERS);
        Form flat = new Form(Move.FREE, Turn.FREE, false, true, WiringKind.FROM_OTHER_END);
        assertThat(flat.parameters(Dimensions.FLAT)).isEqualTo(2 + 1 + 1);
        assertThat(Form.AS_DESCRIBED.parameters(Dimensions.DEEP)).isZero();
        assertThat(Form.AS_DESCRIBED.changes()).isZero();
        assertThat(Form.AS_DESCRIBED.weight()).isZero();
    }

    /** A prop in the place of another differs by that, and by nothing else that it did not differ by before. */
    @Test
    void toTakeAPlaceIsToMoveThere() {
        for (Form form : ALL) {
            Form taking = form.takingAPlace();
            assertThat(taking.move()).isEqualTo(Move.TAKES_A_PLACE);
            assertThat(new Form(form.move(), taking.turn(), taking.mirrored(), taking.resized(), taking.wiring()))
                    .isEqualTo(form);
        }
        assertThatThrownBy(() -> new Form(null, Turn.STAYS, false, false, WiringKind.AS_DESCRIBED))
                .hasMessage("move");
    }

    /**
     * 12 squares of the error, 4 for each number more and 2 ln of the props: twice the error asks for four times as
     * much, in whatever unit; the more props, the more.
     */
    @Test
    void whatIsClearlyLessGrowsWithTheErrorAndTheProps() {
        for (int more = -3; more <= 8; more++) {
            double one = new Criterion(1, 1).clearly(more);
            assertThat(one).isCloseTo(12 + 4 * Math.max(0, more), within(1e-12));
            assertThat(new Criterion(2, 1).clearly(more)).isCloseTo(4 * one, within(1e-9));
            assertThat(new Criterion(1000, 1).clearly(more)).isCloseTo(1e6 * one, within(1e-6));
            assertThat(new Criterion(1, 50).clearly(more)).isCloseTo(one + 2 * Math.log(50), within(1e-12));
            assertThat(new Criterion(1, 50).slack()).isGreaterThanOrEqualTo(new Criterion(1, 50).clearly(more));
        }
    }
}
