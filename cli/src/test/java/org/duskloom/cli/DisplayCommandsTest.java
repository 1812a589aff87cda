package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What all commands on a display have in common. */
class DisplayCommandsTest {
    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"map", "proof", "sheet"})
    void listAllProblemsOfADisplayAndWriteNothing(String command) throws IOException {
        Path display = Garden.display(folder);
        Files.writeString(
                display,
                Files.readString(display)
                        .replace("\"units\": \"cm\"", "\"units\": \"ell\"")
                        .replace("\"shape\": \"fence\"", "\"shape\": \"fense\""));
        Ran ran = Ran.with(command, display, "-o", folder.resolve("out")).without(folder);
        assertThat(ran.code()).isEqualTo(3);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err())
                .startsWith("display.json:3:12: error: \"units\" of the display is \"ell\"")
                .contains("\ndisplay.json:15:32: error: ", "did you mean \"fence\"?")
                .endsWith("\n2 errors\n");
        assertThat(names()).containsExactly("display.json");
    }

    @ParameterizedTest
    @ValueSource(strings = {"map", "proof", "sheet"})
    void aTimelineIsNoDisplay(String command) throws IOException {
        Ran ran = Ran.with(command, Garden.in(folder), "-o", folder.resolve("out"))
                .without(folder);
        assertThat(ran.code()).isEqualTo(3);
        assertThat(ran.err())
                .isEqualTo("show.json:2:15: error: this is a timeline, not a display; it has no display, only the map"
                        + " map.csv\n1 error\n");
    }

    /** Each file of each command in turn: the old one stays, and no other comes. */
    @ParameterizedTest
    @CsvSource({
        "map,   out,     out",
        "proof, out/frames.rgb, out",
        "proof, out/frames.json, out",
        "proof, out/strip.png, out",
        "proof, out/steps.txt, out",
        "sheet, out/daisy-front.svg, out",
        "sheet, out/fence-back.png, out",
        "sheet, out/stage.svg, out",
        "sheet, out/stage.png, out"
    })
    void anOutputThatExistsIsReplacedOnlyWhenForced(String command, String name, String output) throws IOException {
        Path display = Garden.display(folder);
        Path old = folder.resolve(name);
        Files.createDirectories(old.getParent());
        Files.writeString(old, "old");
        Ran ran = Ran.with(command, display, "-o", folder.resolve(output)).without(folder);
        String said = "duskloom: " + name + " exists already; use --force to replace it\n";
        assertThat(ran).isEqualTo(new Ran(1, "", said));
        assertThat(old).hasContent("old");
        assertThat(names()).containsExactlyInAnyOrder("display.json", name);
        assertThat(Ran.with(command, display, "-o", folder.resolve(output), "--force")
                        .code())
                .isZero();
        assertThat(Files.size(old)).isGreaterThan(3);
    }

    @ParameterizedTest
    @CsvSource({"map, .", "proof, frames.rgb", "sheet, daisy-front.svg"})
    void anInputIsNeverReplaced(String command, String name) throws IOException {
        Path display = Garden.display(folder);
        if (!name.equals(".")) {
            display = Files.move(display, folder.resolve(name));
        }
        byte[] before = Files.readAllBytes(display);
        Ran ran = Ran.with(command, display, "--force", "-o", name.equals(".") ? display : folder);
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains(display + " is an input");
        assertThat(display).hasBinaryContent(before);
        assertThat(names()).hasSize(1);
    }

    private Stream<String> names() throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files
                    .filter(Files::isRegularFile)
                    .map(file -> folder.relativize(file).toString())
                    .toList()
                    .stream();
        }
    }
}
