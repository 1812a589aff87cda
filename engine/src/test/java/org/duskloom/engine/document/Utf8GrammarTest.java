package org.duskloom.engine.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Random;
import java.util.regex.Pattern;
import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.api.Test;

/** Bytes are a text if and only if RFC 3629, section 4 makes them one; its rules stand here as a pattern over bytes. */
class Utf8GrammarTest {
    private static final String TAIL = "[\\x80-\\xBF]";
    private static final Pattern OCTETS = Pattern.compile("(?s)(?:[\\x00-\\x7F]"
            + "|[\\xC2-\\xDF]" + TAIL
            + "|\\xE0[\\xA0-\\xBF]" + TAIL + "|[\\xE1-\\xEC]" + TAIL + "{2}|\\xED[\\x80-\\x9F]" + TAIL
            + "|[\\xEE-\\xEF]" + TAIL + "{2}"
            + "|\\xF0[\\x90-\\xBF]" + TAIL + "{2}|[\\xF1-\\xF3]" + TAIL + "{3}|\\xF4[\\x80-\\x8F]" + TAIL + "{2})*+");

    private static void check(int... bytes) {
        // Two letters first, lest a zero byte make it UTF-16.
        byte[] file = new byte[bytes.length + 3];
        Arrays.fill(file, (byte) 'a');
        for (int i = 0; i < bytes.length; i++) {
            file[i + 2] = (byte) bytes[i];
        }
        boolean allowed =
                OCTETS.matcher(new String(file, StandardCharsets.ISO_8859_1)).matches();
        Problems problems = new Problems();
        assertThat(SourceText.of(file, "map.csv", problems).isPresent())
                .as(Arrays.toString(bytes))
                .isEqualTo(allowed);
        assertThat(problems.errorCount()).isEqualTo(allowed ? 0 : 1);
    }

    @Test
    void everyPairOfBytes() {
        for (int first = 0; first < 256; first++) {
            check(first);
            for (int second = 0; second < 256; second++) {
                check(first, second);
            }
        }
    }

    /** Mostly bytes that lead and follow, for whatever comes of all bytes alike is mostly no text. */
    @Test
    void longerSequences() {
        Random random = new Random(8);
        int[] edges = {0x7F, 0x80, 0x8F, 0x90, 0x9F, 0xA0, 0xBF};
        for (int round = 0; round < 40_000; round++) {
            int[] bytes = new int[3 + random.nextInt(2)];
            bytes[0] = 0xE0 + random.nextInt(22);
            for (int i = 1; i < bytes.length; i++) {
                bytes[i] = random.nextInt(4) > 0 ? edges[random.nextInt(edges.length)] : random.nextInt(256);
            }
            check(bytes);
        }
    }
}
