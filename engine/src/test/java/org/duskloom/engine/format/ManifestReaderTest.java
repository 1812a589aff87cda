package org.duskloom.engine.format;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.duskloom.engine.document.JsonReader;
import org.duskloom.engine.document.SourceText;
import org.duskloom.engine.problem.Problem;
import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A description that was damaged, changed by hand, or made to mislead: what is wrong is told where it stands. */
class ManifestReaderTest {
    private static final String GOOD = """
            {
              "duskloom": "frames/1",
              "version": "1.2",
              "title": "Longest day",
              "rate": {"num": 30000, "den": 1001},
              "frames": 1440,
              "pixels": 78,
              "order": "RGB",
              "encoding": "srgb",
              "sha256": "%s",
              "firstFrame": 60,
              "showFrames": 1500,
              "files": [
                {"file": "frames.rgb", "bytes": 336960}
              ],
              "props": [
                {"name": "daisy-1", "first": 0, "count": 61},
                {"name": "fence", "first": 61, "count": 17}
              ],
              "inputs": [
                {"file": "garden.json", "sha256": "%s"}
              ]
            }
            """.formatted("0a".repeat(32), "f9".repeat(32));

    private final Problems problems = new Problems();

    @Test
    void readsWhatWasWritten() {
        assertThat(read(GOOD).map(FrameManifest::json)).contains(GOOD);
        assertThat(problems.inFileOrder()).isEmpty();
    }

    /** The last frame of the show is its 1500th; the next is not there. */
    @Test
    void framesLieWithinTheShow() {
        assertTold("\"firstFrame\": 60", "\"firstFrame\": 61", 12, "frames 61..1501 are not in a show of 1500 frames");
        assertThat(read(GOOD.replace("\"firstFrame\": 60", "\"firstFrame\": 0")))
                .isPresent();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            "first": 61               | "first": 60               | "fence" begins at pixel 60, and the props before it have 61
            "first": 61               | "first": 62               | "fence" begins at pixel 62, and the props before it have 61
            "first": 0                | "first": 1                | "daisy-1" begins at pixel 1, and the props before it have 0
            "name": "fence"           | "name": "daisy-1"         | two props are called "daisy-1"
            "count": 17               | "count": 16               | the props have 77 pixels, and a frame has 78
            "count": 17               | "count": 715827879        | the props have 715827940 pixels, and a frame has 78
            """)
    void propsHaveAllPixelsBetweenThem(String good, String bad, String message) {
        assertTold(good, bad, 16, message);
    }

    /** A manifest comes with frames from anywhere: it must not make a reader open what lies elsewhere. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "/",
                "/etc/passwd",
                "../frames.rgb",
                "a/../../frames.rgb",
                "a/..",
                "..",
                "../",
                "a//b",
                "C:frames.rgb",
                "\\\\\\\\host\\\\frames.rgb",
                "a\\\\..\\\\b"
            })
    void filesLieBesideIt(String name) {
        assertTold("frames.rgb", name, 14, " is not the name of a file beside this one");
    }

    @ParameterizedTest
    @ValueSource(strings = {"a/b.rgb", "singles/", "..rgb", "a..b/c", "G\u00e4nsebl\u00fcmchen.rgb"})
    void filesMayLieFurtherIn(String name) {
        assertThat(read(GOOD.replace("frames.rgb", name)).orElseThrow().files())
                .extracting(WrittenFile::file)
                .containsExactly(name);
    }

    /** 64 digits in small letters, as sha256sum of GNU coreutils prints them; another form would never compare. */
    @ParameterizedTest
    @ValueSource(strings = {"", "0a", "0A0a0a0a0a0a0a0a0a0a0a0a0a0a0a0a0a0a0a0a0a0a0a0a0a0a0a0a0a0a0a0a"})
    void digestsAreWhole(String digest) {
        assertTold("0a".repeat(32), digest, 10, " is no SHA-256");
        assertTold("f9".repeat(32), digest, 21, " is no SHA-256");
    }

    /** A thousand frames a second is the most; one in two million seconds is slow, and a rate. */
    @Test
    void ratesHaveABound() {
        assertTold("\"num\": 30000", "\"num\": 1001001", 5, "1001001/1001 frames per second are too many");
        assertThat(read(GOOD.replace("\"num\": 30000", "\"num\": 1001000"))).isPresent();
        assertThat(read(GOOD.replace("30000, \"den\": 1001", "1, \"den\": 2147483647")))
                .isPresent();
    }

    /** 2^36 frames of 715 million pixels are 1.5e20 bytes, more than a long counts. */
    @Test
    void whatNoFileHoldsIsRefused() {
        String many = GOOD.replace("\"frames\": 1440", "\"frames\": 68719476736")
                .replace("\"firstFrame\": 60", "\"firstFrame\": 0")
                .replace("\"showFrames\": 1500", "\"showFrames\": 68719476736")
                .replace("\"pixels\": 78", "\"pixels\": 715827879")
                .replace("\"count\": 17", "\"count\": 715827818");
        assertThat(read(many)).isEmpty();
        assertThat(told()).contains("are more than a file can hold");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "version",
                "title",
                "rate",
                "frames",
                "pixels",
                "order",
                "encoding",
                "sha256",
                "firstFrame",
                "showFrames",
                "files",
                "props",
                "inputs",
                "num",
                "den",
                "count",
                "bytes"
            })
    void nothingMayBeMissing(String field) {
        assertThat(read(GOOD.replace("\"" + field + "\":", "\"" + field + "x\":")))
                .isEmpty();
        assertThat(told()).contains(field);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            "frames": 1440   | "frames": 0
            "frames": 1440   | "frames": -1
            "frames": 1440   | "frames": 1.5
            "frames": 1440   | "frames": "1440"
            "frames": 1440   | "frames": 99999999999999999999
            "pixels": 78     | "pixels": 99999999999999999999
            "den": 1001      | "den": 99999999999999999999
            "count": 17      | "count": 99999999999999999999
            "pixels": 78     | "pixels": 0
            "pixels": 78     | "pixels": 715827880
            "den": 1001      | "den": 0
            "num": 30000     | "num": 2147483648
            "order": "RGB"   | "order": "GRB"
            "srgb"           | "linear"
            "count": 17      | "count": 0
            "bytes": 336960  | "bytes": -1
            """)
    void numbersAndWordsHaveTheirRange(String good, String bad) {
        assertThat(read(GOOD.replace(good, bad))).isEmpty();
        assertThat(problems.errorCount()).isPositive();
    }

    /** One error, and not one of each field that other files have not. */
    @Test
    void anotherKindOfFileIsToldOnce() {
        assertThat(read("{\"duskloom\": \"show/1\", \"display\": \"garden.json\"}"))
                .isEmpty();
        assertThat(problems.inFileOrder()).hasSize(1);
        assertThat(told()).contains("this is no description of frames: \"duskloom\" is \"show/1\"");
    }

    /** All that is wrong is told at once. */
    @Test
    void faultsDoNotHideEachOther() {
        read(GOOD.replace("0a0a", "0x0a")
                .replace("\"num\": 30000", "\"num\": 9999999")
                .replace("frames.rgb", "../a"));
        assertThat(problems.errorCount()).isEqualTo(3);
    }

    private void assertTold(String good, String bad, int line, String message) {
        Problems own = new Problems();
        assertThat(GOOD).contains(good);
        assertThat(read(GOOD.replace(good, bad), own)).isEmpty();
        List<Problem> found = own.inFileOrder();
        assertThat(found).hasSize(1);
        assertThat(found.get(0).message()).contains(message);
        assertThat(found.get(0).location().toString()).startsWith("frames.json:" + line + ":");
    }

    private String told() {
        return problems.inFileOrder().stream().map(Problem::toString).collect(Collectors.joining("\n"));
    }

    private Optional<FrameManifest> read(String json) {
        return read(json, problems);
    }

    private static Optional<FrameManifest> read(String json, Problems problems) {
        return SourceText.of(json.getBytes(StandardCharsets.UTF_8), "frames.json", problems)
                .flatMap(source -> JsonReader.read(source, problems))
                .flatMap(root -> ManifestReader.read(root, problems))
                .map(ManifestReader.Located::manifest);
    }
}
