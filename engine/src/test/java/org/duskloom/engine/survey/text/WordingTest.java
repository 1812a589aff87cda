package org.duskloom.engine.survey.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.duskloom.engine.display.Mirror;
import org.duskloom.engine.display.Units;
import org.duskloom.engine.survey.Change;
import org.duskloom.engine.survey.Wiring;
import org.duskloom.engine.survey.WiringKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class WordingTest {
    private static final Wording MM = new Wording(Units.MILLIMETRES);

    private static String said(Change change) {
        return MM.changes(List.of(change));
    }

    /** Halves go to the even digit; a binary 2.35 is a little more than that, so it goes up. */
    @ParameterizedTest
    @CsvSource({
        "12.345, 1, 12.3",
        "-0.04, 1, 0",
        "-0.06, 1, -0.1",
        "100, 1, 100",
        "1e9, 1, 1000000000",
        "0.0001, 4, 0.0001",
        "0.00004, 4, 0",
        "2.25, 1, 2.2",
        "2.75, 1, 2.8",
        "2.35, 1, 2.4",
        "-3.50, 0, -4",
        "20, 0, 20"
    })
    void writesNumbersPlainly(double value, int decimals, String text) {
        assertThat(Wording.number(value, decimals)).isEqualTo(text);
    }

    /** About a tenth of a millimetre in each: 0.01 cm, 0.01 in, 0.0001 m. */
    @ParameterizedTest
    @CsvSource({
        "MILLIMETRES, 12.3457, 12.3 mm",
        "CENTIMETRES, 12.3457, 12.35 cm",
        "INCHES, 12.3457, 12.35 in",
        "METRES, 12.34567, 12.3457 m"
    })
    void writesLengthsToATenthOfAMillimetre(Units units, double value, String text) {
        assertThat(new Wording(units).length(value)).isEqualTo(text);
    }

    @ParameterizedTest
    @EnumSource
    void aStepOfALengthIsLessThanHalfAMillimetre(Units units) {
        double step = units.millimetres() * Math.pow(10, -Wording.lengthDecimals(units));
        assertThat(step).isBetween(0.05, 0.5);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            1200 | 300.5 | 0     | (1200, 300.5)
            0    | -1    | 0.04  | (0, -1)
            0    | -1    | -0.06 | (0, -1, -0.1)
            """)
    void writesPlacesWithDepthWhereThereIsSome(double x, double y, double z, String text) {
        assertThat(MM.place(x, y, z)).isEqualTo(text);
    }

    /** Right, up and toward the audience count up. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            40  | -3  | 0    | 40 mm to the right and 3 mm down
            -40 | 3   | 0.04 | 40 mm to the left and 3 mm up
            0   | 0   | 12   | 0 mm to the right and 0 mm up, 12 mm forward
            1   | 2   | -12  | 1 mm to the right and 2 mm up, 12 mm back
            """)
    void saysWhichWay(double dx, double dy, double dz, String text) {
        assertThat(MM.way(dx, dy, dz)).isEqualTo(text);
        assertThat(said(new Change.Moved(dx, dy, dz, 0.25))).isEqualTo("moved " + text + " (give or take 0.2 mm)");
    }

    @ParameterizedTest
    @CsvSource({
        "4.1, turned by 4.1 degrees counter-clockwise",
        "-4.1, turned by 4.1 degrees clockwise",
        "0.04, upright",
        "-0.04, upright",
        "-180, turned by 180 degrees clockwise"
    })
    void saysHowAPictureStands(double degrees, String text) {
        assertThat(MM.askew(degrees)).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource({
        "90, a quarter turn to the left: 90 degrees counter-clockwise",
        "-90, a quarter turn to the right: 90 degrees clockwise",
        "180, upside down: turned by 180 degrees",
        "-180, upside down: turned by 180 degrees"
    })
    void saysQuarters(double degrees, String text) {
        assertThat(said(new Change.Turned(degrees, true, 0))).isEqualTo(text);
    }

    @Test
    void saysOtherTurnsWithTheirError() {
        assertThat(said(new Change.Turned(-7.25, false, 0.31)))
                .isEqualTo("turned by 7.2 degrees clockwise (give or take 0.3 degrees)");
        assertThat(said(new Change.TurnedInSpace(33.333))).isEqualTo("turned by 33.3 degrees out of its plane");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            NONE | not mirrored
            X    | mirrored: left and right change places
            Y    | mirrored: top and bottom change places
            """)
    void saysHowItIsMirrored(Mirror now, String text) {
        assertThat(said(new Change.Mirrored(now))).isEqualTo(text);
    }

    /** Pixels count from 1 for whoever stands on the ladder. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            AS_DESCRIBED        | 0 | 0  | 0 | wired as described
            FROM_OTHER_END      | 0 | 12 | 11 | wired from the other end
            OTHER_WAY           | 0 | 12 | 0 | wired the other way round from the same first pixel
            OTHER_START         | 0 | 12 | 3 | pixel 1 hangs where pixel 4 is described, and the others follow
            OTHER_WAY_AND_START | 0 | 12 | 3 | wired the other way round, and pixel 1 hangs where pixel 4 is described
            STRETCH_OTHER_START | 12 | 24 | 2 | of the pixels 13 to 36 the first hangs where pixel 15 is described, and the others follow
            STRETCH_OTHER_WAY   | 12 | 24 | 0 | the pixels 13 to 36 are wired the other way round, and the first of them hangs where pixel 13 is described
            """)
    void saysInWhichOrderPixelsAre(WiringKind kind, int first, int count, int start, String text) {
        assertThat(said(new Change.Rewired(new Wiring(kind, first, count, start, false))))
                .isEqualTo(text);
    }

    @Test
    void saysTheRest() {
        assertThat(said(new Change.Resized(1.23456, 0.0012))).isEqualTo("1.235 times as large (give or take 0.001)");
        assertThat(said(new Change.TookThePlace("bean pole", false)))
                .isEqualTo("hangs where \"bean pole\" is described");
        assertThat(said(new Change.TookThePlace("bean pole", true)))
                .isEqualTo("hangs where \"bean pole\" is described, and is turned like that one");
        assertThat(said(new Change.MovedTogether(0))).isEqualTo("moved together with others, as said above");
    }

    @Test
    void saysAllChangesInTheirOrder() {
        assertThat(MM.changes(List.of())).isEqualTo("as described");
        assertThat(MM.changes(List.of(new Change.Mirrored(Mirror.X), new Change.Turned(180, true, 0))))
                .isEqualTo("mirrored: left and right change places; upside down: turned by 180 degrees");
    }
}
