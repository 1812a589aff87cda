package org.duskloom.engine.map;

import static org.assertj.core.api.Assertions.assertThat;

import com.code_intelligence.jazzer.junit.DictionaryEntries;
import com.code_intelligence.jazzer.junit.FuzzTest;
import java.util.Optional;
import org.duskloom.engine.document.SourceText;
import org.duskloom.engine.problem.Problems;

/** Any bytes at all as pixel maps: there is a map, or an error that says why not. */
class MapFuzzTest {
    @FuzzTest(maxDuration = "6h", maxExecutions = 1_000_000)
    @DictionaryEntries({
        "prop,pixel,x,y\\x0a",
        "part",
        "ownx",
        "\\x22",
        "\\x0d\\x0a",
        "1e9",
        ";",
        "\\x09",
        "\\xef\\xbb\\xbf",
        "rim/1;rim/2"
    })
    void map(byte[] input) {
        Problems problems = new Problems();
        Optional<PixelMap> map =
                SourceText.of(input, "map.csv", problems).flatMap(source -> MapReader.read(source, problems));
        assertThat(map.isPresent() || problems.hasErrors()).isTrue();
        problems.inFileOrder()
                .forEach(problem ->
                        assertThat(problem.toString()).startsWith("map.csv").doesNotContain("null"));
    }
}
