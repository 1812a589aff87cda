package org.duskloom.engine.packet;

import static org.assertj.core.api.Assertions.assertThat;

import org.duskloom.engine.document.Inputs;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.time.FrameRate;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StreamLimitsTest {
    private final Problems problems = new Problems();

    /** ANSI E1.31-2018, Appendix A: a stream is lost 2.5 s after its last packet, so 0.4 frames a second will do. */
    @ParameterizedTest
    @CsvSource({"40, 1, ''", "2, 5, ''", "399, 1000, '1000/399s'", "1, 3, '3s'", "1, 3600, '3600s'"})
    void warnsOfFramesThatComeTooSeldom(int numerator, int denominator, String apart) {
        StreamLimits.warnOfSilence(new FrameRate(numerator, denominator), Location.ofFile("night.json"), problems);
        if (apart.isEmpty()) {
            assertThat(Inputs.shown(problems)).isEmpty();
        } else {
            assertThat(Inputs.shown(problems))
                    .containsExactly("night.json: warning: the packets of a universe come " + apart
                            + " apart; E1.31 has receivers take a stream for lost after 2.5s; where it is sent in real"
                            + " time each frame is repeated; for whoever plays the capture otherwise, raise the rate");
        }
    }
}
