package org.duskloom.engine.color;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.zip.CRC32;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** W3C CSS Color Module Level 4, "Named Colors". */
final class CssNamesTest {
    /**
     * The 148 lines "name #rrggbb", sorted, are 2654 bytes with the CRC-32 0cc1642e, computed from the module's table.
     */
    @Test
    void holdsThePublishedTable() {
        StringBuilder lines = new StringBuilder();
        named().forEach((name, rgb) ->
                lines.append(name).append(" #").append(rgb).append('\n'));
        byte[] bytes = lines.toString().getBytes(StandardCharsets.US_ASCII);
        CRC32 crc = new CRC32();
        crc.update(bytes);

        assertThat(bytes).hasSize(2654);
        assertThat(crc.getValue()).isEqualTo(0x0cc1642eL);
    }

    /** 148 names, 139 values: nine pairs share theirs. */
    @Test
    void ninePairsAreOneColor() {
        Set<String> values = new HashSet<>(named().values());

        assertThat(named()).hasSize(148);
        assertThat(values).hasSize(139);
        assertThat(named().get("aqua")).isEqualTo(named().get("cyan"));
        assertThat(named().get("fuchsia")).isEqualTo(named().get("magenta"));
    }

    /** Well-known traps: green is not lime, and gray is darker than darkgray. */
    @ParameterizedTest
    @CsvSource({"green, 008000", "lime, 00ff00", "gray, 808080", "darkgray, a9a9a9", "rebeccapurple, 663399"})
    void traps(String name, String rgb) {
        assertThat(named()).containsEntry(name, rgb);
    }

    private static Map<String, String> named() {
        Map<String, String> named = new TreeMap<>();
        CssNames.COLORS.forEach((name, color) -> {
            if (!name.equals("transparent")) {
                named.put(name, hex(color));
            }
        });
        return named;
    }

    private static String hex(LinearColor color) {
        return String.format(
                Locale.ROOT,
                "%02x%02x%02x",
                SrgbEncoder.code(color.red()),
                SrgbEncoder.code(color.green()),
                SrgbEncoder.code(color.blue()));
    }
}
