package org.duskloom.engine.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import org.duskloom.engine.time.FrameRate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * How many pixels a line carries. A bit takes 1.25 us at 800 kbit/s, a pixel of 24 bits 30 us, and the line rests for
 * at least 50 us, or 280 us, after a frame (data sheets of the WS2811 and WS2812B, as distributors copy them).
 */
class PortTimingTest {
    @TempDir
    private Path folder;

    /** Of so many pixels on one line, of which the last four are those of the fence. */
    private PortTiming timing(int pixels, String kind) throws IOException {
        return Reported.of(
                        folder,
                        "\"kinds\": {\"chip\": {\"volts\": 12, \"milliamps\": [10, 10, 10], " + kind
                                + "}}, \"ports\": [{\"name\": \"left\", \"kind\": \"chip\", \"chain\": [{\"skip\": "
                                + (pixels - 4) + "}, \"fence\"]}]")
                .report()
                .data()
                .ports()
                .get(0);
    }

    /** 1e6 / (30 n + rest); at 400 kbit/s a pixel takes 60 us, and 512 of them and 1024 of the fast ones 30.77 ms. */
    @ParameterizedTest
    @CsvSource({
        "50, 800, 50, 645.161",
        "170, 800, 50, 194.175",
        "170, 800, 280, 185.874",
        "512, 800, 280, 63.939",
        "1024, 800, 50, 32.499",
        "512, 400, 50, 32.499"
    })
    void aFrameTakesSoLong(int pixels, int kilobits, int restMicros, double framesPerSecond) throws IOException {
        PortTiming timing = timing(pixels, "\"kilobits\": " + kilobits + ", \"reset\": \"" + restMicros + "us\"");
        assertThat(timing.highestRate()).isCloseTo(framesPerSecond, within(5e-4));
        assertThat(timing.frameMillis()).isCloseTo(1000 / framesPerSecond, within(1e-3));
    }

    /** floor((1e6 / rate - rest) / 30) pixels are carried, and not one more. */
    @ParameterizedTest
    @CsvSource({"20, 50, 1665", "30, 280, 1101", "40, 50, 831", "40, 280, 824", "60, 280, 546"})
    void soManyPixelsAreCarried(int rate, int restMicros, int most) throws IOException {
        String kind = "\"reset\": \"" + restMicros + "us\"";
        assertThat(timing(most, kind).carries(FrameRate.of(rate))).isTrue();
        assertThat(timing(most + 1, kind).carries(FrameRate.of(rate))).isFalse();
    }

    /** 170 pixels of three slots fill a universe of 512 (ANSI E1.11), as a pixel stays whole. */
    @Test
    void countsUniverses() throws IOException {
        assertThat(timing(170, "\"idle\": 1").universeCount()).isEqualTo(1);
        assertThat(timing(171, "\"idle\": 1").universeCount()).isEqualTo(2);
        PortTiming three = timing(341, "\"idle\": 1");
        assertThat(three.universeCount()).isEqualTo(3);
        assertThat(three.firstUniverse()).isEqualTo(1);
        assertThat(three.lastUniverse()).isEqualTo(3);
    }
}
