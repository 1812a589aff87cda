package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is given where a folder is needed. */
class OutputNamesTest {
    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource({"r.csv, r", "out/show.rgb, out/show", "Sheets.PDF, Sheets", "a.b.json, a.b"})
    void whatIsCalledLikeAFileIsNoFolder(String name, String instead) {
        assertThatThrownBy(() -> OutputNames.requireFolder("--csv", folder.resolve(name)))
                .isInstanceOf(MisuseException.class)
                .hasMessage("--csv takes a folder, for several files, and " + folder.resolve(name)
                        + " is called like one file; name a folder, such as " + folder.resolve(instead)
                        + " (if a folder shall be called so, make it before)");
    }

    @ParameterizedTest
    @ValueSource(strings = {"csv", "garden.2", "2031.06.21", "show.rgb.d", ".json", "out/.csv"})
    void whatPeopleCallFoldersIsOne(String name) {
        assertThatCode(() -> OutputNames.requireFolder("-o", folder.resolve(name)))
                .doesNotThrowAnyException();
    }

    @Test
    void aFolderThatStandsThereIsOne() throws IOException {
        Path there = Files.createDirectory(folder.resolve("r.csv"));
        assertThatCode(() -> OutputNames.requireFolder("--csv", there)).doesNotThrowAnyException();
    }

    /** Each command that writes several files says so before it writes one. */
    @Test
    void everyCommandLooks() throws IOException {
        Path show = Garden.in(folder);
        Path out = folder.resolve("out.png");
        for (List<Object> typed : List.<List<Object>>of(
                List.of("render", show, "-o", out),
                List.of("proof", folder.resolve("map.csv"), "-o", out),
                List.of("sheet", folder.resolve("display.json"), "-o", out),
                List.of("join", folder, "-o", out),
                List.of("report", show, "--csv", out),
                List.of("effects", "--gallery", out),
                List.of("new", out))) {
            Ran ran = Ran.with(typed.toArray());
            assertThat(ran.code()).as("%s", typed).isEqualTo(2);
            assertThat(ran.err()).contains(" takes a folder, for several files, and " + out);
            assertThat(out).doesNotExist();
        }
    }

    /** Of what can go into a pipe a file can be had. */
    @Test
    void renderTellsHowToGetOneFile() throws IOException {
        Path show = Garden.in(folder);
        assertThat(Ran.with("render", show, "-o", "show.rgb").err())
                .contains("name a folder, such as show; for rgb alone: -o - > show.rgb (if");
        assertThat(Ran.with("render", show, "-o", "show.rgb", "--as", "rgb,npy").err())
                .contains("name a folder, such as show (if");
    }
}
