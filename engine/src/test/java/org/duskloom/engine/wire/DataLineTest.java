package org.duskloom.engine.wire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.duskloom.engine.time.FrameRate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Times of data lines at 800 kbit/s: data sheets WS2811 V1.4 (reset 280 us) and WS2812B (reset 50 us); of RGBW pixels
 * SK6812 (reset 80 us). The counts are {@code (1e6/rate - reset) / 30}, rounded down.
 */
class DataLineTest {
    private static final DataLine EARLY = new DataLine(800, 50);

    @ParameterizedTest(name = "{0} pixels")
    @CsvSource({
        "50, 645.161, 561.798",
        "100, 327.869, 304.878",
        "170, 194.175, 185.874",
        "340, 97.561, 95.420",
        "512, 64.893, 63.939",
        "680, 48.900, 48.356",
        "1024, 32.499, 32.258"
    })
    void knowsTheHighestRate(int pixels, double early, double usual) {
        assertThat(EARLY.mostFramesPerSecond(pixels, 24)).isCloseTo(early, within(5e-4));
        assertThat(DataLine.USUAL.mostFramesPerSecond(pixels, 24)).isCloseTo(usual, within(5e-4));
    }

    @ParameterizedTest(name = "{0} frames a second")
    @CsvSource({
        "20, 1665, 1657",
        "25, 1331, 1324",
        "30, 1109, 1101",
        "40, 831, 824",
        "50, 665, 657",
        "60, 553, 546",
        "120, 276, 268"
    })
    void knowsTheMostPixels(int rate, int early, int usual) {
        assertThat(EARLY.mostPixels(FrameRate.of(rate), 24)).isEqualTo(early);
        assertThat(DataLine.USUAL.mostPixels(FrameRate.of(rate), 24)).isEqualTo(usual);
    }

    /** The data sheet of the WS2811 says 1024 points at 30 frames a second, and 512 at 400 kbit/s. */
    @Test
    void agreesWithTheDataSheet() {
        assertThat(EARLY.mostPixels(FrameRate.of(30), 24)).isGreaterThanOrEqualTo(1024);
        assertThat(new DataLine(400, 50).mostPixels(FrameRate.of(30), 24)).isGreaterThanOrEqualTo(512);
        assertThat(EARLY.frameMicros(1024, 24)).isEqualTo(30_770);
    }

    @ParameterizedTest(name = "{0} frames a second")
    @CsvSource({"20, 1248, 1243", "30, 831, 826", "40, 623, 618", "60, 414, 409"})
    void knowsFourColours(int rate, int reset80, int reset280) {
        assertThat(new DataLine(800, 80).mostPixels(FrameRate.of(rate), 32)).isEqualTo(reset80);
        assertThat(DataLine.USUAL.mostPixels(FrameRate.of(rate), 32)).isEqualTo(reset280);
    }

    @Test
    void hasNoRoomAtAVeryHighRate() {
        assertThat(new DataLine(800, 2000).mostPixels(FrameRate.of(1000), 24)).isZero();
    }
}
