package org.duskloom.engine.display;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Optional;
import org.duskloom.engine.document.Inputs;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PixelRangesTest {
    private final Problems problems = new Problems();

    private Optional<int[]> read(String text, int count) {
        return PixelRanges.read(new TextNode(new Location("d.json", 3, 4), text), "part \"top\"", count, problems);
    }

    /** Written numbers count from 1, indices from 0. */
    @ParameterizedTest
    @CsvSource(delimiter = '~', textBlock = """
            1-6, 9, 14-10 ~ [0, 1, 2, 3, 4, 5, 8, 13, 12, 11, 10, 9]
            1             ~ [0]
            14            ~ [13]
            3-3           ~ [2]
            2 - 1,5       ~ [1, 0, 4]
            007           ~ [6]
            """)
    void keepsTheOrderWritten(String text, String expected) {
        assertThat(Arrays.toString(read(text, 14).orElseThrow())).isEqualTo(expected);
        assertThat(problems.errorCount()).isZero();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '~', quoteCharacter = '`', textBlock = """
            0                ~ part "top" holds "0"; allowed: pixels 1 to 14
            15               ~ part "top" holds "15"; allowed: pixels 1 to 14
            1-999999999      ~ part "top" holds "1-999999999"; allowed: pixels 1 to 14
            0-3              ~ part "top" holds "0-3"; allowed: pixels 1 to 14
            1-3, 2           ~ part "top" holds pixel 2 twice; every pixel of a part stands once
            5, 7-4           ~ part "top" holds pixel 5 twice; every pixel of a part stands once
            1,,2             ~ part "top" lacks a pixel number; pixels are written as in 1-6, 9, 14-10
            ``               ~ part "top" lacks a pixel number; pixels are written as in 1-6, 9, 14-10
            1-2-3            ~ part "top" holds "1-2-3"; pixels are written as in 1-6, 9, 14-10
            -3               ~ part "top" holds "-3"; pixels are written as in 1-6, 9, 14-10
            1–3              ~ part "top" holds "1–3"; a range is written with the plain hyphen: -
            rim              ~ part "top" holds "rim"; pixels are written as in 1-6, 9, 14-10; parts stand in a list: ["rim", "petals/1"]
            99999999999      ~ part "top" holds "99999999999"; pixels are written as in 1-6, 9, 14-10
            """)
    void teachesWhatIsWrong(String text, String expected) {
        assertThat(read(text, 14)).isEmpty();
        assertThat(Inputs.shown(problems)).containsExactly("d.json:3:4: error: " + expected);
    }

    @Test
    void reportsEveryWrongRange() {
        assertThat(read("1, x, 20, 1", 14)).isEmpty();
        assertThat(problems.errorCount()).isEqualTo(3);
    }
}
