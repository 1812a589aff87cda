package org.duskloom.engine.find;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The Gray code is that of F. Gray, US 2,632,058 (1953), the distance that of R. W. Hamming (1950). */
class FindCodeTest {
    /** F. Gray, US 2,632,058: 0 to 15 in the reflected code. */
    @Test
    void theFirstNumbersAreThoseOfThePatent() {
        FindCode code = new FindCode(16);
        assertThat(IntStream.range(0, 16).map(pixel -> code.word(pixel) & 15))
                .containsExactly(0, 1, 3, 2, 6, 7, 5, 4, 12, 13, 15, 14, 10, 11, 9, 8);
    }

    /** Values of {@code n ^ n >>> 1}, worked out independently. */
    @ParameterizedTest
    @CsvSource({"100, 56", "255, 80", "256, 180", "1000, 21C", "1287, 784", "3839, 980", "65535, 8000"})
    void greaterNumbersAreReflectedToo(int pixel, String gray) {
        FindCode code = new FindCode(65536);
        assertThat(code.word(pixel) & 0xFFFF).isEqualTo(Integer.parseInt(gray, 16));
    }

    /** In how many words each bit is 1, low bit first, worked out independently for 1288 pixels. */
    @Test
    void everyBitLightsHalfOfThePixelsOrSo() {
        FindCode code = new FindCode(1288);
        assertThat(code.numberBits()).isEqualTo(11);
        assertThat(IntStream.range(0, 11)
                        .map(bit -> IntStream.range(0, 1288)
                                .map(pixel -> code.word(pixel) >>> bit & 1)
                                .sum()))
                .containsExactly(644, 644, 644, 640, 640, 640, 640, 648, 520, 776, 264);
    }

    /** Hamming: n bits need the least r with 2^r at least n + r + 1; one bit more gives distance 4. */
    @ParameterizedTest
    @CsvSource({"1, 1, 2", "2, 1, 2", "3, 2, 3", "16, 4, 3", "17, 5, 4", "2048, 11, 4", "2049, 12, 5", "1000000, 20, 5"
    })
    void wordsAreAsShortAsHammingAllows(int pixels, int numberBits, int remainderBits) {
        FindCode code = new FindCode(pixels);
        assertThat(code.numberBits()).isEqualTo(numberBits);
        assertThat(code.bits() - code.numberBits() - 1).isEqualTo(remainderBits);
        assertThat(code.bits()).isEqualTo(numberBits + remainderBits + 1);
    }

    /** Hamming (1950), by trying all pairs. */
    @ParameterizedTest
    @ValueSource(ints = {2, 3, 50, 1288, 5000})
    void anyTwoWordsDifferInFourBits(int pixels) {
        FindCode code = new FindCode(pixels);
        int[] words = IntStream.range(0, pixels).map(code::word).toArray();
        int least = Integer.MAX_VALUE;
        for (int i = 0; i < pixels; i++) {
            for (int k = 0; k < i; k++) {
                least = Math.min(least, Integer.bitCount(words[i] ^ words[k]));
            }
        }
        assertThat(least).isGreaterThanOrEqualTo(4);
    }

    @Test
    void oneWrongBitIsPutRightAndTwoAreNoticed() {
        FindCode code = new FindCode(1288);
        for (int pixel = 0; pixel < 1288; pixel += 7) {
            int word = code.word(pixel);
            assertThat(code.pixel(word)).isEqualTo(pixel);
            assertThat(code.wrongBit(word)).isEqualTo(-1);
            for (int bit = 0; bit < code.bits(); bit++) {
                int once = word ^ 1 << bit;
                assertThat(code.pixel(once)).isEqualTo(-1);
                assertThat(code.wrongBit(once)).isEqualTo(bit);
                for (int other = 0; other < bit; other++) {
                    assertThat(code.pixel(once ^ 1 << other)).isEqualTo(-1);
                    assertThat(code.wrongBit(once ^ 1 << other)).isEqualTo(-1);
                }
            }
        }
    }

    /** A word that would be that of pixel 1500 is nobody's among 1288. */
    @Test
    void wordsBeyondTheLastPixelAreNobodys() {
        assertThat(new FindCode(1288).pixel(new FindCode(2048).word(1500))).isEqualTo(-1);
    }

    @ParameterizedTest
    @ValueSource(ints = {0, -1, (1 << 24) + 1})
    void refusesNumbersThatHaveNoWords(int pixels) {
        assertThatIllegalArgumentException().isThrownBy(() -> new FindCode(pixels));
    }
}
