package org.duskloom.engine.survey;

import static org.assertj.core.api.Assertions.assertThat;

import com.code_intelligence.jazzer.junit.DictionaryEntries;
import com.code_intelligence.jazzer.junit.FuzzTest;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.duskloom.engine.document.SourceText;
import org.duskloom.engine.map.MapReader;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.problem.Problems;

/** Any bytes at all as measurements of a row of pixels. */
class MeasurementFuzzTest {
    private static final PixelMap MAP = map();

    private static PixelMap map() {
        StringBuilder csv = new StringBuilder("prop,pixel,x,y\n");
        for (int pixel = 1; pixel <= 8; pixel++) {
            csv.append("fence,").append(pixel).append(',').append(10 * pixel).append(",0\n");
        }
        Problems problems = new Problems();
        return SourceText.of(csv.toString().getBytes(StandardCharsets.UTF_8), "map.csv", problems)
                .flatMap(source -> MapReader.read(source, problems))
                .orElseThrow();
    }

    @FuzzTest(maxDuration = "6h", maxExecutions = 1_000_000)
    @DictionaryEntries({"prop,pixel,x,y\\x0a", "fence,1,", ",z", "\\x22", "\\x0d\\x0a", "1e9", ";"})
    void measurements(byte[] input) {
        for (boolean fromPhoto : new boolean[] {false, true}) {
            Problems problems = new Problems();
            Optional<Measurements> measured = SourceText.of(input, "measured.csv", problems)
                    .flatMap(source -> MeasurementReader.read(source, MAP, fromPhoto, problems));
            assertThat(measured.isPresent() || problems.hasErrors()).isTrue();
        }
    }
}
