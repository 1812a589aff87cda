package org.duskloom.engine.locate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import org.duskloom.engine.find.FindRun;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** 30 pixels in three rounds: 5 bits of the number, 4 of the remainder and the parity, so 22 pictures each. */
class RoundPicturesTest {
    private static final FindRun RUN = new FindRun(30, 3);
    private static final int EACH = 22;

    private static RoundPictures round(int round) {
        return new RoundPictures(RUN, round, picture -> "dsc-" + (100 * round + picture));
    }

    @Test
    void readingsComeBehindTheDarkAndTheLitOne() {
        assertThat(round(2).dark()).isEqualTo("dsc-200");
        assertThat(round(2).lit()).isEqualTo("dsc-201");
        assertThat(round(2).name(0)).isEqualTo("dsc-202");
        assertThat(round(2).code().pixelCount()).isEqualTo(30);
    }

    /** As steps.txt numbers and names them, over all rounds. */
    @ParameterizedTest
    @CsvSource({
        "0, 0, 3, round 1: bit 1",
        "0, 1, 4, round 1: bit 1 turned round",
        "1, 8, 33, round 2: bit 5",
        "1, 11, 36, round 2: check 1 turned round",
        "2, 19, 66, round 3: parity turned round"
    })
    void callsThemAsTheStepsAreCalled(int round, int reading, int number, String step) {
        assertThat(round(round).number(reading)).isEqualTo(number);
        assertThat(round(round).step(reading)).isEqualTo(step);
        assertThat(RUN.name(RUN.pictures().get(number - 1))).isEqualTo(step);
    }

    /** By the words of the round's own pixels, of which there are ten. */
    @Test
    void knowsByHowMuchStepsDiffer() {
        for (int round = 0; round < 3; round++) {
            for (int reading = 0; reading < EACH - 2; reading++) {
                for (int other = 0; other < EACH - 2; other++) {
                    int turned = (reading ^ other) & 1;
                    int one = reading / 2;
                    int two = other / 2;
                    long differing = IntStream.iterate(round, pixel -> pixel < 30, pixel -> pixel + 3)
                            .map(pixel -> RUN.code().word(pixel))
                            .filter(word -> (word >>> one & 1 ^ word >>> two & 1 ^ turned) == 1)
                            .count();
                    assertThat(round(round).difference(reading, other)).isCloseTo(differing / 10.0, within(1e-12));
                }
            }
            assertThat(round(round).difference(6, 7)).as("a pair").isEqualTo(1);
        }
    }

    @Test
    void saysWhichStepToTakeAgain() {
        assertThat(DotPictures.said(round(1).again(3, "is blurred")))
                .isEqualTo("dsc-105 is blurred; play that step alone with --step \"round 2: bit 2 turned round\" and"
                        + " take it again, with the camera where it was; or take all of them again");
        assertThat(DotPictures.said(RoundPictures.order("dsc-7", "is early")))
                .isEqualTo("dsc-7 is early; put the photos in the order of steps.txt, one for each step that is called"
                        + " a picture, and try again");
    }
}
