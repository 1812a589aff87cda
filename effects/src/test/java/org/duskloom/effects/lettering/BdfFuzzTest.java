package org.duskloom.effects.lettering;

import static org.assertj.core.api.Assertions.assertThat;

import com.code_intelligence.jazzer.junit.DictionaryEntries;
import com.code_intelligence.jazzer.junit.FuzzTest;
import java.util.Optional;
import org.duskloom.engine.problem.Problems;

/** Any bytes at all as fonts. */
class BdfFuzzTest {
    @FuzzTest(maxDuration = "6h", maxExecutions = 1_000_000)
    @DictionaryEntries({
        "STARTFONT 2.1\\x0a",
        "FONTBOUNDINGBOX ",
        "STARTCHAR ",
        "ENCODING ",
        "DWIDTH ",
        "BBX ",
        "BITMAP\\x0a",
        "ENDCHAR\\x0a",
        "ENDFONT\\x0a",
        "CHARS ",
        "2147483647"
    })
    void font(byte[] input) {
        Problems problems = new Problems();
        Optional<BdfFont> font = BdfReader.read(input, "font.bdf", problems);
        assertThat(font.isPresent() || problems.hasErrors()).isTrue();
    }
}
