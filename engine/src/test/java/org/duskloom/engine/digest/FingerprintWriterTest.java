package org.duskloom.engine.digest;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

class FingerprintWriterTest {
    /**
     * The bytes, put together by hand from the description of the form: a letter, a length where it varies, the bytes.
     */
    @Test
    void isTheDigestOfTheCanonicalForm() throws Exception {
        String bytes = "74 00000003 612f31" // "a/1"
                + "77 0000000000000005"
                + "6e 3ff8000000000000" // 1.5 (IEEE 754)
                + "66 01"
                + "4e 00000002 0000000000000000 8000000000000000" // 0 and -0
                + "57 00000001 ffffffff"
                + "6c 00000002 74 00000001 78 74 00000000";
        byte[] form = HexFormat.of().parseHex(bytes.replace(" ", ""));
        assertThat(new FingerprintWriter("a/1")
                        .whole(5)
                        .number(1.5)
                        .flag(true)
                        .numbers(new double[] {0, -0.0})
                        .wholes(new int[] {-1})
                        .list(List.of("x", ""), FingerprintWriter::text)
                        .finish())
                .hasToString(HexFormat.of()
                        .formatHex(MessageDigest.getInstance("SHA-256").digest(form)));
    }

    /** SHA-256 of "74000000000" and so on differs; what is tested is that nothing of a long value is lost. */
    @Test
    void takesValuesOfAnyLength() throws Exception {
        String text = "daisy ".repeat(5_000);
        int[] wholes = new int[10_000];
        MessageDigest digest = MessageDigest.getInstance("SHA-256");
        digest.update(HexFormat.of().parseHex("7400000000" + "74" + "%08x".formatted(text.length())));
        digest.update(text.getBytes(StandardCharsets.UTF_8));
        digest.update(HexFormat.of().parseHex("57" + "%08x".formatted(wholes.length)));
        digest.update(new byte[4 * wholes.length]);
        assertThat(new FingerprintWriter("").text(text).wholes(wholes).finish())
                .hasToString(HexFormat.of().formatHex(digest.digest()));
    }

    /** Half of a letter has no UTF-8 (RFC 3629, section 3): such a text goes in by its UTF-16 units. */
    @Test
    void takesWhatIsNoUnicodeTextByItsUnits() throws Exception {
        byte[] form = HexFormat.of().parseHex("7400000000" + "7500000004" + "0061d83c" + "7400000004" + "f09f8cbc");
        assertThat(new FingerprintWriter("")
                        .text("a\ud83c")
                        .text("\ud83c\udf3c")
                        .finish())
                .hasToString(HexFormat.of()
                        .formatHex(MessageDigest.getInstance("SHA-256").digest(form)));
    }

    /** A part goes in by its 32 bytes: of SHA-256 of nothing (NIST, SHA-2 short messages, Len = 0). */
    @Test
    void takesPartsByTheirBytes() throws Exception {
        String ofNothing = "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855";
        byte[] form = HexFormat.of().parseHex("7400000000" + "70" + ofNothing + "6601");
        assertThat(new FingerprintWriter("")
                        .part(new Fingerprint(ofNothing))
                        .value(parts -> parts.flag(true))
                        .finish())
                .hasToString(HexFormat.of()
                        .formatHex(MessageDigest.getInstance("SHA-256").digest(form)));
    }

    /** Whatever stands before it and however near the end of a buffer: each value goes in whole and once. */
    @Test
    void nothingIsLostWhereBuffersEnd() throws Exception {
        for (int before = 0; before < 600; before++) {
            FingerprintWriter writer = new FingerprintWriter("");
            StringBuilder form = new StringBuilder("7400000000");
            for (int i = 0; i < before; i++) {
                writer.flag(true);
                form.append("6601");
            }
            writer.whole(-2).number(1.5).wholes(new int[] {7}).text("z");
            form.append("77fffffffffffffffe" + "6e3ff8000000000000" + "570000000100000007" + "74000000017a");
            byte[] bytes = HexFormat.of().parseHex(form);
            assertThat(writer.finish())
                    .hasToString(HexFormat.of()
                            .formatHex(MessageDigest.getInstance("SHA-256").digest(bytes)));
        }
    }

    @Test
    void tellsDifferentValuesApart() {
        Fingerprint part = new FingerprintWriter("part").finish();
        List<UnaryOperator<FingerprintWriter>> values = List.of(
                writer -> writer,
                writer -> writer.text("ab"),
                writer -> writer.text("a").text("b"),
                writer -> writer.text("?"),
                writer -> writer.text("\ud83c"),
                writer -> writer.text("\ud83d"),
                writer -> writer.text("\udf3c"),
                writer -> writer.text("\ud83c\udf3c"),
                writer -> writer.text("\udf3c\ud83c"),
                writer -> writer.text("").text("ab"),
                writer -> writer.whole(0),
                writer -> writer.number(0),
                writer -> writer.number(-0.0),
                writer -> writer.whole(0).whole(0),
                writer -> writer.flag(false),
                writer -> writer.flag(true),
                writer -> writer.part(part),
                writer -> writer.text(part.hex()),
                writer -> writer.numbers(new double[0]),
                writer -> writer.wholes(new int[0]),
                writer -> writer.wholes(new int[] {1, 2}),
                writer -> writer.wholes(new int[] {1}).wholes(new int[] {2}),
                writer -> writer.list(List.of(), FingerprintWriter::text),
                writer -> writer.list(List.of("a"), FingerprintWriter::text),
                writer -> writer.list(List.of("a"), FingerprintWriter::text).list(List.of(), FingerprintWriter::text));
        Set<Fingerprint> prints = new LinkedHashSet<>();
        values.forEach(
                value -> prints.add(value.apply(new FingerprintWriter("v")).finish()));
        assertThat(prints).hasSize(values.size());
    }
}
