package org.duskloom.engine.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is said of files that are no text for people, as spreadsheets and editors leave them. */
class SourceFilesTest {
    @TempDir
    private Path folder;

    private final Problems problems = new Problems();

    private Optional<String> decode(byte[] bytes) {
        return Utf8Text.decode(bytes, "map.csv", problems);
    }

    private String told() {
        assertThat(Inputs.shown(problems)).hasSize(1);
        return Inputs.shown(problems).get(0);
    }

    /** RFC 3629, sections 3 and 4, at the ends of each length: U+7F, 80, 7FF, 800, FFFF, 10000 and 10FFFF. */
    @ParameterizedTest
    @CsvSource({"7f, 7f", "c280, 80", "dfbf, 7ff", "e0a080, 800", "efbfbf, ffff", "f0908080, 10000", "f48fbfbf, 10ffff"
    })
    void decodesEveryLength(String bytes, String codePoint) {
        assertThat(decode(Inputs.hex("41" + bytes)).orElseThrow().codePointAt(1))
                .isEqualTo(Integer.parseInt(codePoint, 16));
    }

    /** RFC 3629, section 10: forms longer than needed, halves of pairs, beyond U+10FFFF and pieces are refused. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "c080",
                "c1bf",
                "e08080",
                "eda080",
                "edbfbf",
                "f0808080",
                "f4908080",
                "f8888080",
                "80",
                "c3",
                "e282",
                "ff"
            })
    void refusesWhatIsNoUtf8(String bytes) {
        assertThat(decode(Inputs.hex("41 0a 42 43" + bytes))).isEmpty();
        assertThat(told()).startsWith("map.csv:2:3: error: byte 0x").contains("is not UTF-8");
    }

    /** The byte order mark that some editors write is no sign of the text. */
    @Test
    void dropsTheByteOrderMark() {
        assertThat(decode(Inputs.hex("efbbbf 61"))).contains("a");
        assertThat(decode(Inputs.hex("efbbbf"))).contains("");
    }

    @ParameterizedTest
    @CsvSource({"UTF-16LE, little-endian", "UTF-16BE, big-endian", "UTF-16, big-endian", "UTF-32LE, ''"})
    void saysWhichOtherEncodingItIs(String charset, String order) {
        assertThat(decode("prop,pixel\n".getBytes(Charset.forName(charset)))).isEmpty();
        assertThat(told()).contains("it looks like UTF-").contains(order).contains("CSV UTF-8");
    }

    @ParameterizedTest
    @CsvSource({"ä, ä", "°, °", "é, é"})
    void guessesTheLetterOfOlderEncodings(String letter, String shown) {
        assertThat(decode(("gr" + letter + "n").getBytes(StandardCharsets.ISO_8859_1)))
                .isEmpty();
        assertThat(told()).contains("1:3").contains("in Latin-1 or Windows-1252 it would be \"" + shown + "\"");
    }

    /** The first bytes of a ZIP file, of a compound file, of PNG and of JPEG. */
    @ParameterizedTest
    @CsvSource({
        "504b0304 0a00, the workbook of a spreadsheet",
        "d0cf11e0a1b11ae1, the workbook of a spreadsheet",
        "89504e470d0a1a0a, it is a picture",
        "ffd8ffe0, it is a picture"
    })
    void knowsFilesThatAreNoText(String bytes, String what) {
        assertThat(decode(Inputs.hex(bytes + "000102"))).isEmpty();
        assertThat(told()).contains(what);
    }

    private Optional<byte[]> read(Path file) {
        return SourceBytes.read(file, "show.json", problems);
    }

    @Test
    void readsTheBytesOfAFile() throws IOException {
        byte[] bytes = new byte[300_000];
        for (int i = 0; i < bytes.length; i++) {
            bytes[i] = (byte) (i % 251 == 0 ? '\n' : i);
        }
        assertThat(read(Files.write(folder.resolve("a"), bytes)).orElseThrow()).isEqualTo(bytes);
        assertThat(problems.errorCount()).isZero();
    }

    @Test
    void saysWhatStandsThereInstead() throws IOException {
        assertThat(read(Files.createDirectory(folder.resolve("b")))).isEmpty();
        assertThat(told()).isEqualTo("show.json: error: is a folder, not a file; name the file inside it");
    }

    /** A slip of the pen in a name is found among the files that are there. */
    @Test
    void saysWhichFileWasMeant() throws IOException {
        Files.createFile(folder.resolve("garden.json"));
        assertThat(read(folder.resolve("gardn.json"))).isEmpty();
        assertThat(told())
                .contains("there is no such file")
                .contains("did you mean \"")
                .contains("garden.json\"?");
    }

    @Test
    void saysWhereItLookedIfNothingIsNear() {
        assertThat(read(folder.resolve("show.json"))).isEmpty();
        assertThat(told()).contains("looked for " + folder.resolve("show.json").toAbsolutePath());
    }

    /** Whether lines end with LF, CR or both, they are counted alike; a line may have 1 MB. */
    @ParameterizedTest
    @ValueSource(strings = {"\n", "\r", "\r\n"})
    void refusesALineWithoutEnd(String end) throws IOException {
        String text = "a" + end + "b" + end + "x".repeat(SourceText.MAX_LINE_BYTES) + end;
        assertThat(read(Files.writeString(folder.resolve("ok"), text))).isPresent();
        assertThat(read(Files.writeString(folder.resolve("long"), text + "x".repeat(SourceText.MAX_LINE_BYTES + 1))))
                .isEmpty();
        assertThat(told()).startsWith("show.json:4:1: error: the line is longer than");
        byte[] bytes = (text + "x".repeat(SourceText.MAX_LINE_BYTES + 1)).getBytes(StandardCharsets.UTF_8);
        assertThat(SourceBytes.isAcceptable(bytes, "show.json", new Problems())).isFalse();
    }

    @Test
    void refusesNothing() {
        assertThat(SourceBytes.isAcceptable(new byte[0], "show.json", problems)).isFalse();
        assertThat(told()).contains("the file is empty");
        assertThat(SourceBytes.isAcceptable(new byte[1], "show.json", problems)).isTrue();
    }
}
