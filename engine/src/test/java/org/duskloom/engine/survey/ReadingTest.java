package org.duskloom.engine.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import org.duskloom.engine.display.Mirror;
import org.duskloom.engine.display.PlacedProp;
import org.duskloom.engine.display.Placement;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.survey.fit.Built;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class ReadingTest {
    /** Own places (0, 0), (10, 0) and (10, 5). */
    private static final String HOOK = "\"hook\": {\"build\": [{\"points\": [[0, 0], [10, 0], [10, 5]]}]}";

    private static final Wiring BACK = new Wiring(WiringKind.FROM_OTHER_END, 0, 3, 2, true);

    private static PlacedProp hook(String rest) {
        return Built.display(HOOK, "{\"name\": \"hook\", \"shape\": \"hook\", \"at\": [100, 200]" + rest + "}")
                .props()
                .get(0);
    }

    private static String places(PlacedProp prop, Placement placement, Wiring wiring) {
        Positions places = new Reading(List.of(), placement, wiring, 0, 0, 0).places(prop);
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < places.size(); i++) {
            text.append(Math.round(places.x(i))).append(',').append(Math.round(places.y(i)));
            text.append(i < places.size() - 1 ? " " : "");
            assertThat(places.z(i)).isZero();
        }
        return text.toString();
    }

    @Test
    void putsPixelsWhereThePlacementDoes() {
        assertThat(places(hook(""), hook("").placement(), Wiring.AS_DESCRIBED)).isEqualTo("100,200 110,200 110,205");
    }

    /** A quarter to the left takes (x, y) to (-y, x); a mirror in x is done before the turn, a scale too. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            NONE | 1 | 90  | 0,0 0,10 -5,10
            NONE | 2 | 90  | 0,0 0,20 -10,20
            X    | 1 | 90  | 0,0 0,-10 -5,-10
            Y    | 1 | 180 | 0,0 -10,0 -10,5
            """)
    void putsThemByAnyPlacement(Mirror mirror, double scale, double turn, String places) {
        assertThat(places(hook(""), new Placement(mirror, scale, turn, 0, 0, 0, 0, 0), Wiring.AS_DESCRIBED))
                .isEqualTo(places);
    }

    /** Wired from the other end and described so is as the shape was drawn. */
    @Test
    void turnsAReversedPropRoundAgain() {
        Placement zero = Placement.at(0, 0, 0);
        assertThat(places(hook(""), zero, BACK)).isEqualTo("10,5 10,0 0,0");
        assertThat(places(hook(", \"reverse\": true"), zero, Wiring.AS_DESCRIBED))
                .isEqualTo("10,5 10,0 0,0");
        assertThat(places(hook(", \"reverse\": true"), zero, BACK)).isEqualTo("0,0 10,0 10,5");
    }

    /** The same place as a matrix of rows (cos, -sin), (sin, cos) gives, computed here with the JDK's sines. */
    @Test
    void turnsByAnyAngle() {
        double angle = Math.toRadians(37);
        Positions places = new Reading(
                        List.of(), new Placement(Mirror.NONE, 1, 37, 0, 0, 3, 4, 0), Wiring.AS_DESCRIBED, 0, 0, 0)
                .places(hook(""));
        assertThat(places.x(2)).isCloseTo(3 + 10 * Math.cos(angle) - 5 * Math.sin(angle), within(1e-9));
        assertThat(places.y(2)).isCloseTo(4 + 10 * Math.sin(angle) + 5 * Math.cos(angle), within(1e-9));
    }

    /** An entry of a display has "reverse", but no word for any other order. */
    @ParameterizedTest
    @EnumSource
    void onlyTheOtherEndCanBeWritten(WiringKind kind) {
        Reading reading = new Reading(List.of(), Placement.at(0, 0, 0), new Wiring(kind, 0, 3, 0, true), 0, 0, 0);
        assertThat(reading.isWritable())
                .isEqualTo(EnumSet.of(WiringKind.AS_DESCRIBED, WiringKind.FROM_OTHER_END)
                        .contains(kind));
    }

    /** Of 30 pixels ten are a third: that is enough. */
    @ParameterizedTest
    @CsvSource({"9, 30, true", "10, 30, false", "0, 1, true", "1, 3, false", "33, 100, true", "34, 100, false"})
    void aPhotoWithWhichFewerThanAThirdAgreeIsDoubtful(int agreeing, int pixels, boolean doubtful) {
        PhotoAlignment photo = new PhotoAlignment(1, 0, true, agreeing, Optional.empty());
        assertThat(photo.isDoubtful(pixels)).isEqualTo(doubtful);
    }

    @Test
    void flatPlacesHaveTwoCoordinatesAndDeepOnesThree() {
        assertThat(Dimensions.FLAT.count()).isEqualTo(2);
        assertThat(Dimensions.DEEP.count()).isEqualTo(3);
    }
}
