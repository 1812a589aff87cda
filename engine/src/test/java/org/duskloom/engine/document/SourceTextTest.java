package org.duskloom.engine.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SourceTextTest {
    @TempDir
    private Path folder;

    private final Problems problems = new Problems();

    private Optional<SourceText> of(byte[] bytes) {
        return SourceText.of(bytes, "garden.csv", problems);
    }

    @Test
    void readsAFileWithItsShownName() throws IOException {
        Path file = Files.writeString(folder.resolve("garden.csv"), "prop,pixel\n");
        SourceText source = SourceText.read(file, "plot 7/garden.csv", problems).orElseThrow();
        assertThat(source.text()).isEqualTo("prop,pixel\n");
        assertThat(source.end()).hasToString("plot 7/garden.csv:2:1");
    }

    @Test
    void namesTheMissingFileAndWhereItWasLookedFor() {
        assertThat(SourceText.read(folder.resolve("gone.csv"), "gone.csv", problems))
                .isEmpty();
        assertThat(Inputs.shown(problems))
                .containsExactly("gone.csv: error: there is no such file; looked for " + folder.resolve("gone.csv"));
    }

    @Test
    void suggestsTheNearestFileOfTheFolder() throws IOException {
        Files.createFile(folder.resolve("garden.csv"));
        Files.createDirectory(folder.resolve("gardn"));
        assertThat(SourceText.read(folder.resolve("gardn.csv"), "gardn.csv", problems))
                .isEmpty();
        assertThat(Inputs.shown(problems))
                .containsExactly("gardn.csv: error: there is no such file; did you mean \"garden.csv\"?");
    }

    /** Editors of texts put it behind a name, and Windows hides endings that it knows, unless it is told not to. */
    @Test
    void tellsOfAHiddenEnding() throws IOException {
        Files.writeString(folder.resolve("show.json.txt"), "{}");
        SourceText.read(folder.resolve("show.json"), "show.json", problems);
        assertThat(Inputs.shown(problems))
                .containsExactly(
                        "show.json: error: there is no such file; there is \"show.json.txt\", whose .txt Windows may"
                                + " hide: rename it");
    }

    @Test
    void refusesAFolder() {
        assertThat(SourceText.read(folder, "plot", problems)).isEmpty();
        assertThat(Inputs.shown(problems)).singleElement().asString().startsWith("plot: error: is a folder");
    }

    /** Nobody writes into the pipe: whoever opened it would wait for ever. */
    @Test
    @Timeout(value = 20, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
    void refusesAPipeWithoutOpeningIt() throws Exception {
        Path pipe = folder.resolve("pipe");
        assumeThat(new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor())
                .isZero();
        assertThat(SourceText.read(pipe, "pipe", problems)).isEmpty();
        assertThat(Inputs.shown(problems))
                .containsExactly(
                        "pipe: error: is a pipe or a device, not a file; save what it gives and name that file");
    }

    @Test
    void refusesAnEmptyFile() throws IOException {
        Path file = Files.createFile(folder.resolve("empty.json"));
        assertThat(SourceText.read(file, "empty.json", problems)).isEmpty();
        assertThat(Inputs.shown(problems)).containsExactly("empty.json:1:1: error: the file is empty");
    }

    /** FIPS 180-4, example of a one-block message: SHA-256 of "abc", as published with the standard by NIST. */
    @Test
    void hashesTheBytes() {
        assertThat(of("abc".getBytes(StandardCharsets.UTF_8)).orElseThrow().sha256Hex())
                .isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    }

    /** What decoders put in place of wrong bytes (Unicode 15, section 5.22) is a sign like any other in a file. */
    @Test
    void takesTheSignForWrongBytesWhereItIsMeant() {
        byte[] meant = "b\uFFFDe\n".getBytes(StandardCharsets.UTF_8);
        assertThat(of(meant).orElseThrow().text()).isEqualTo("b\uFFFDe\n");
        byte[] wrong = Arrays.copyOf(meant, meant.length + 1);
        wrong[meant.length] = (byte) 0xFF;
        assertThat(of(wrong)).isEmpty();
        assertThat(Inputs.shown(problems)).singleElement().asString().startsWith("garden.csv:2:1: error: byte 0xFF");
    }

    /** RFC 3629 section 7 gives these four sequences and their code points; the last begins with a byte order mark. */
    @ParameterizedTest
    @CsvSource({
        "41 E2 89 A2 CE 91 2E,               \\u0041\\u2262\\u0391\\u002e",
        "ED 95 9C EA B5 AD EC 96 B4,         \\ud55c\\uad6d\\uc5b4",
        "E6 97 A5 E6 9C AC E8 AA 9E,         \\u65e5\\u672c\\u8a9e",
        "EF BB BF F0 A3 8E B4,               \\ud84c\\udfb4"
    })
    void decodesTheExamplesOfTheStandard(String hex, String escaped) {
        String expected = ((TextNode) Inputs.json("\"" + escaped + "\"")).value();
        assertThat(of(Inputs.hex(hex)).orElseThrow().text()).isEqualTo(expected);
    }

    @Test
    void countsColumnsBehindAByteOrderMarkFromOne() {
        SourceText source = of(Inputs.hex("EF BB BF 61 62")).orElseThrow();
        assertThat(source.text()).isEqualTo("ab");
        assertThat(source.locationAt(0)).hasToString("garden.csv:1:1");
    }

    /**
     * Ill-formed by RFC 3629 section 3 and 10: overlong forms, surrogates, beyond U+10FFFF, cut sequences, lone bytes.
     * Every one stands behind "é", a line feed and "ab", so at line 2, column 3, or later by what is well-formed before
     * it.
     */
    @ParameterizedTest
    @CsvSource({
        "C0 80, 3, C0",
        "2F C0 AE 2E 2F, 4, C0",
        "E0 80 AF, 3, E0",
        "ED A1 8C ED BE B4, 3, ED",
        "F4 90 80 80, 3, F4",
        "F5 80 80 80, 3, F5",
        "FF, 3, FF",
        "80, 3, 80",
        "E2 89, 3, E2",
        "F0 A3 8E, 3, F0",
        "E2 89 22, 3, E2"
    })
    void findsTheFirstBadByte(String hex, int column, String bad) {
        byte[] bytes = Inputs.hex("C3 A9 0A 61 62" + hex);
        assertThat(of(bytes)).isEmpty();
        assertThat(Inputs.shown(problems))
                .singleElement()
                .asString()
                .startsWith("garden.csv:2:" + column + ": error: byte 0x" + bad + " is not UTF-8")
                .contains("save it as UTF-8");
    }

    @Test
    void findsABadByteFarBehindTheDecodersBuffer() {
        byte[] bytes = new byte[100_000];
        Arrays.fill(bytes, (byte) 'a');
        bytes[99_990] = (byte) 0xFC;
        of(bytes);
        assertThat(Inputs.shown(problems))
                .singleElement()
                .asString()
                .startsWith("garden.csv:1:99991: error: byte 0xFC");
    }

    @Test
    void saysWhichLetterALatin1ByteWouldBe() {
        of("Gänseblümchen".getBytes(StandardCharsets.ISO_8859_1));
        assertThat(Inputs.shown(problems))
                .singleElement()
                .asString()
                .contains("1:2: error: byte 0xE4 is not UTF-8", "in Latin-1 or Windows-1252 it would be \"ä\"");
    }

    @ParameterizedTest
    @CsvSource({
        "UTF-16LE, UTF-16 (little-endian)",
        "UTF-16BE, UTF-16 (big-endian)",
        "UTF-16, UTF-16 (big-endian)",
        "x-UTF-16LE-BOM, UTF-16 (little-endian)",
        "X-UTF-32LE-BOM, UTF-32",
        "X-UTF-32BE-BOM, UTF-32"
    })
    void recognisesOtherUnicodeEncodings(String charset, String name) {
        assertThat(of("prop,pixel,x,y\n".getBytes(Charset.forName(charset)))).isEmpty();
        assertThat(Inputs.shown(problems))
                .singleElement()
                .asString()
                .startsWith("garden.csv:1:1: error: the file is not UTF-8, it looks like " + name)
                .contains("save it as UTF-8");
    }

    /** The first bytes of a ZIP file (PKWARE, APPNOTE.TXT 6.3, 4.3.7) and of a compound file ([MS-CFB] 2.2). */
    @ParameterizedTest
    @ValueSource(strings = {"504B0304 14000600 FFFE", "D0CF11E0 A1B11AE1 0000"})
    void recognisesWorkbooks(String bytes) {
        assertThat(of(Inputs.hex(bytes))).isEmpty();
        assertThat(Inputs.shown(problems))
                .containsExactly(
                        "garden.csv:1:1: error: this is no text, it looks like the workbook of a spreadsheet or"
                                + " another packed file; save it in the spreadsheet as CSV, file type \"CSV UTF-8\", and name that"
                                + " file");
    }

    /** The marks of PNG (W3C, Portable Network Graphics, section 5.2) and of JPEG (ITU-T T.81, annex B). */
    @ParameterizedTest
    @ValueSource(strings = {"89504E47 0D0A1A0A 0000000D", "FFD8FFE0 0010"})
    void recognisesPictures(String bytes) {
        assertThat(of(Inputs.hex(bytes))).isEmpty();
        assertThat(Inputs.shown(problems))
                .containsExactly("garden.csv:1:1: error: this is no text, it is a picture; is it the right file? a"
                        + " timeline and a display are JSON, a pixel map and measurements are CSV");
    }

    @ParameterizedTest
    @ValueSource(strings = {"a\nb\nc", "a\rb\rc", "a\r\nb\r\nc", "a\nb\rc", "a\r\nb\nc", "a\rb\r\nc"})
    void countsLinesWithAnyLineEnds(String text) {
        SourceText source = of(text.getBytes(StandardCharsets.UTF_8)).orElseThrow();
        assertThat(source.locationAt(text.indexOf('b'))).hasToString("garden.csv:2:1");
        assertThat(source.locationAt(text.indexOf('c'))).hasToString("garden.csv:3:1");
        assertThat(source.end()).hasToString("garden.csv:3:2");
    }

    @Test
    void countsEmptyLines() {
        SourceText source = of("\n\r\r\n\n\rx".getBytes(StandardCharsets.UTF_8)).orElseThrow();
        assertThat(source.locationAt(6)).hasToString("garden.csv:6:1");
    }

    /**
     * U+1F33C lies outside the basic plane, so it is two UTF-16 units (Unicode Standard, table 3-5), and one column.
     */
    @Test
    void countsColumnsInCodePoints() {
        String daisy = "\ud83c\udf3c";
        SourceText source = of((daisy + "a\n" + daisy + daisy + "b").getBytes(StandardCharsets.UTF_8))
                .orElseThrow();
        assertThat(source.locationAt(2)).hasToString("garden.csv:1:2");
        assertThat(source.locationAt(8)).hasToString("garden.csv:2:3");
    }

    @Test
    void bringsOffsetsIntoTheText() {
        SourceText source = of("ab".getBytes(StandardCharsets.UTF_8)).orElseThrow();
        assertThat(source.locationAt(-5)).hasToString("garden.csv:1:1");
        assertThat(source.locationAt(99)).hasToString("garden.csv:1:3");
    }

    @Test
    void refusesAHundredMegabytesInOneLineWithoutReadingThemAll() throws IOException {
        Path file = folder.resolve("long.csv");
        try (RandomAccessFile sparse = new RandomAccessFile(file.toFile(), "rw")) {
            sparse.writeBytes("prop,pixel\r\nabc");
            sparse.setLength(100 << 20);
        }
        assertThat(SourceText.read(file, "long.csv", problems)).isEmpty();
        assertThat(Inputs.shown(problems))
                .singleElement()
                .asString()
                .startsWith("long.csv:2:1: error: the line is longer than 16 MB");
    }

    @Test
    void acceptsTheLongestLineAndRefusesOneByteMore() {
        byte[] line = new byte[SourceText.MAX_LINE_BYTES + 1];
        Arrays.fill(line, (byte) ' ');
        line[SourceText.MAX_LINE_BYTES] = '\n';
        assertThat(of(line)).isPresent();
        line[SourceText.MAX_LINE_BYTES] = ' ';
        assertThat(of(line)).isEmpty();
    }

    @Test
    void refusesAFileBeyondTheLimit() {
        byte[] bytes = new byte[SourceText.MAX_FILE_BYTES + 1];
        Arrays.fill(bytes, (byte) '\n');
        assertThat(of(bytes)).isEmpty();
        assertThat(Inputs.shown(problems))
                .containsExactly("garden.csv: error: the file is larger than 64 MB; split it into several files");
    }
}
