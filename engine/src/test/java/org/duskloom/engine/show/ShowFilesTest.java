package org.duskloom.engine.show;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.duskloom.engine.document.Inputs;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Files that name each other, and how one kind of file is told from another. */
class ShowFilesTest {
    /** NIST, FIPS 180-2, appendix B.1. */
    private static final String ABC = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";

    @TempDir
    private Path folder;

    private final Problems problems = new Problems();

    private static TextNode written(String text) {
        return new TextNode(new Location("show.json", 3, 14), text);
    }

    private ShowFiles files() {
        return ShowFiles.beside(folder.resolve("show.json"));
    }

    private Path write(String name, String text) throws IOException {
        Path file = folder.resolve(name);
        Files.createDirectories(file.getParent());
        return Files.writeString(file, text);
    }

    private String told() {
        assertThat(Inputs.shown(problems)).hasSize(1);
        return Inputs.shown(problems).get(0).replace(folder.toString(), "HERE");
    }

    @Test
    void pathsBeginInTheFolderOfTheFileThatNamesThem() throws IOException {
        write("maps/beds.csv", "abc");
        write("maps/more/shape.csv", "abc");
        ShowFiles files = files();
        assertThat(files.locate(written("maps/beds.csv"), problems)).contains(folder.resolve("maps/beds.csv"));
        ShowFiles inMaps = files.namedIn(folder.resolve("maps/display.json"), "maps/display.json");
        assertThat(inMaps.locate(written("more/shape.csv"), problems)).contains(folder.resolve("maps/more/shape.csv"));
        assertThat(inMaps.shown("more/shape.csv")).isEqualTo("maps/more/shape.csv");
        String absolute = folder.resolve("x.csv").toAbsolutePath().toString();
        assertThat(inMaps.shown(absolute)).isEqualTo(absolute);
        assertThat(problems.errorCount()).isZero();
    }

    /** Every file counts, read or not, and each once, with the digest of its bytes, in the order of reading. */
    @Test
    void remembersWhatWasRead() throws IOException {
        Path bee = write("bee.png", "abc");
        Path map = write("map.csv", "abc");
        ShowFiles files = files();
        files.text(written("map.csv"), problems);
        assertThat(files.remember(written("bee.png"), bee, problems)).isTrue();
        assertThat(files.remember(written("./bee.png"), bee, problems)).isTrue();
        files.text(written("map.csv"), problems);
        assertThat(files.inputs())
                .extracting(input -> input.path().getFileName().toString())
                .containsExactly("map.csv", "bee.png");
        assertThat(files.sha256Hex(bee)).isEqualTo(ABC);
        assertThat(files.sha256Hex(map)).isEqualTo(ABC);
        assertThat(files.remembered(written("bee.png"))).contains(bee);
        assertThat(files.remembered(written("fly.png"))).isEmpty();
        assertThatThrownBy(() -> files.sha256Hex(folder.resolve("fly.png")))
                .isInstanceOf(IllegalArgumentException.class);
    }

    /** What a show looks for in vain may come later, and is then another show: it is remembered as well. */
    @Test
    void remembersWhatIsMissing() throws IOException {
        ShowFiles files = files();
        assertThat(files.locate(written("map.csv"), problems)).isEmpty();
        assertThat(files.lookedFor()).containsKey(folder.resolve("map.csv"));
        assertThat(files.inputs()).isEmpty();
        FileStamp missing = files.lookedFor().get(folder.resolve("map.csv"));
        assertThat(FileStamp.of(write("map.csv", "abc"))).isNotEqualTo(missing);
    }

    @Test
    void proposesAFileThatIsThere() throws IOException {
        write("maps/garden.csv", "abc");
        files().locate(written("maps/gardn.csv"), problems);
        assertThat(told())
                .isEqualTo(
                        "show.json:3:14: error: there is no file \"maps/gardn.csv\"; did you mean \"maps/garden.csv\"?");
    }

    @Test
    void saysWhereItLooked() {
        files().locate(written("../map.csv"), problems);
        assertThat(told())
                .endsWith("looked for "
                        + folder.resolveSibling("map.csv").toAbsolutePath().normalize());
    }

    @ParameterizedTest
    @CsvSource({"'', \"\" is not the name of a file", "maps, \"maps\" is a folder"})
    void refusesWhatIsNoFile(String name, String message) throws IOException {
        Files.createDirectories(folder.resolve("maps"));
        assertThat(files().locate(written(name), problems)).isEmpty();
        assertThat(told()).contains(message);
    }

    @Test
    void refusesANameThatNoFileCanHave() {
        assertThat(files().locate(written("a\0b"), problems)).isEmpty();
        assertThat(told()).contains("is not the name of a file");
        assertThat(files().remembered(written("a\0b"))).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', nullValues = "-", textBlock = """
            {"duskloom": "timeline/1"} | TIMELINE
            {"duskloom": "timeline/9"} | TIMELINE
            {"duskloom": "display/1"}  | DISPLAY
            {"duskloom": "frames/1"}   | FRAMES
            {"duskloom": "garden/1"}   | -
            {"duskloom": 7}            | -
            {"layers": []}             | -
            []                         | -
            """)
    void aFileSaysWhatItIs(String json, DocumentKind kind) {
        assertThat(DocumentKind.of(Inputs.json(json)).orElse(null)).isEqualTo(kind);
    }

    /** Each is told by a field that only files of its kind have, where it says something else. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            {"duskloom": "display/1", "layers": []}     | TIMELINE | says that it is a display, but has "layers", as a timeline does
            {"duskloom": "timeline/1", "shapes": {}}    | TIMELINE | says that it is a timeline, but has "shapes", as a display does
            {"duskloom": "display/1", "props": []}      | TIMELINE | this is a display, not a timeline
            {"duskloom": "timeline/1", "display": "d.json"} | DISPLAY | its display is d.json
            {"duskloom": "timeline/1", "map": "m.csv"}  | DISPLAY  | it has no display, only the map m.csv
            {"duskloom": "frames/1"}                    | DISPLAY  | this is a description of frames, not a display
            """)
    void aFileOfAnotherKindIsTold(String json, DocumentKind wanted, String message) {
        assertThat(wanted.accepts(Inputs.json(json), "in.json", ShowFiles.beside(Path.of("in.json")), problems))
                .isFalse();
        assertThat(told()).startsWith("in.json:1:14: error:").contains(message);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            {"duskloom": "timeline/1", "layers": []}          | TIMELINE
            {"duskloom": "timeline/1", "layers": [], "shapes": 1} | TIMELINE
            {"duskloom": "garden/1"}                          | TIMELINE
            {"layers": []}                                    | DISPLAY
            7                                                 | DISPLAY
            """)
    void theRestIsForItsReaderToTell(String json, DocumentKind wanted) {
        assertThat(wanted.accepts(Inputs.json(json), "in.json", ShowFiles.beside(Path.of("in.json")), problems))
                .isTrue();
        assertThat(problems.errorCount()).isZero();
    }
}
