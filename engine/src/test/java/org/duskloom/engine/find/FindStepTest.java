package org.duskloom.engine.find;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;

import java.util.EnumSet;
import java.util.stream.IntStream;
import org.duskloom.engine.find.FindStep.Kind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class FindStepTest {
    /** Blinks and pauses are where a film is cut; a photo of them would be one too many. */
    @ParameterizedTest
    @EnumSource
    void photosAreTakenOfAllButBlinksAndPauses(Kind kind) {
        assertThat(new FindStep(kind, 0, 0, 0, 2).isPicture())
                .isEqualTo(!EnumSet.of(Kind.BLINK, Kind.PAUSE).contains(kind));
    }

    @Test
    void needsAKind() {
        assertThatNullPointerException()
                .isThrownBy(() -> new FindStep(null, 0, 0, 0, 2))
                .withMessage("kind");
    }

    /**
     * R. W. Hamming (1950): k bits need the least r with 2^r at least k + r + 1, and one bit more for the parity; dark
     * and lit come before. For no number of pixels are there 12 pictures, or 20.
     */
    @ParameterizedTest
    @CsvSource({"1, 1 to 2", "2, 3 to 4", "3, 5 to 8", "4, 9 to 16", "5, 17 to 32", "11, 1025 to 2048"})
    void countsOfPicturesTellHowManyPixelsThereAre(int numberBits, String pixels) {
        int remainder = IntStream.iterate(1, r -> r + 1)
                .filter(r -> 1 << r >= numberBits + r + 1)
                .findFirst()
                .orElseThrow();
        assertThat(FindRun.pixelsWithPictures(2 + 2 * (numberBits + remainder + 1)))
                .contains(pixels + " pixels");
    }

    @ParameterizedTest
    @ValueSource(ints = {Integer.MIN_VALUE, -2, 0, 1, 2, 8, 11, 12, 20, 1000, Integer.MAX_VALUE})
    void otherCountsAreThoseOfNoRun(int pictures) {
        assertThat(FindRun.pixelsWithPictures(pictures)).isEmpty();
    }
}
