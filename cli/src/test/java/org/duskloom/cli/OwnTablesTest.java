package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every table that a command writes for people, given back to a command that reads another one. */
class OwnTablesTest {
    @TempDir
    private Path folder;

    private Path show;

    private List<Path> written(String... style) throws IOException {
        show = WiredGarden.show(folder, 20, 40, "{\"name\": \"left\", \"chain\": [\"fence\"]}");
        run("sheet", style, folder.resolve("display.json"), "-o", folder.resolve("sheets"));
        run("render", style, show, "-o", folder.resolve("frames"), "--as", "ports");
        run("report", style, show, "--csv", folder.resolve("report"));
        List<Path> tables = new ArrayList<>();
        for (String name : List.of("sheets", "frames", "report")) {
            try (Stream<Path> files = Files.list(folder.resolve(name))) {
                files.filter(file -> file.toString().endsWith(".csv")).sorted().forEach(tables::add);
            }
        }
        assertThat(tables).hasSize(2 + 1 + 9);
        return tables;
    }

    private static void run(String command, String[] style, Object... arguments) {
        List<Object> all = new ArrayList<>(List.of(command));
        all.addAll(List.of(arguments));
        all.addAll(List.of(style));
        Ran ran = Ran.with(all.toArray());
        assertThat(ran.code()).as(ran.err()).isZero();
    }

    private static void assertToldOnce(Ran ran, Path table, String instead) {
        String command = table.getParent()
                .getFileName()
                .toString()
                .replace("sheets", "sheet")
                .replace("frames", "render");
        assertThat(ran.code()).as("%s", table).isEqualTo(3);
        assertThat(ran.err().lines().toList()).as("%s", table).hasSize(2).last().isEqualTo("1 error");
        assertThat(ran.err())
                .startsWith(table + ":1:1: error: this is " + table.getFileName() + " as \"duskloom " + command
                        + "\" writes it: ")
                .contains("; " + instead);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "--semicolons"})
    void noneIsAPixelMap(String style) throws IOException {
        for (Path table : written(style.isEmpty() ? new String[0] : new String[] {style})) {
            assertToldOnce(
                    Ran.with("new", folder.resolve("new"), "--map", table),
                    table,
                    "\"duskloom map DISPLAY.json -o map.csv\" writes a pixel map\n");
        }
        assertThat(folder.resolve("new")).doesNotExist();
    }

    /** As a spreadsheet saves it: it is the wrong one, and other signs between the cells would not help. */
    @ParameterizedTest
    @ValueSource(strings = {"\t", "|"})
    void noneIsReadWithOtherSignsBetweenItsCells(String sign) throws IOException {
        for (Path table : written()) {
            Files.writeString(table, Files.readString(table).replace(",", sign));
            assertToldOnce(
                    Ran.with("new", folder.resolve("new"), "--map", table),
                    table,
                    "\"duskloom map DISPLAY.json -o map.csv\" writes a pixel map\n");
            assertToldOnce(
                    Ran.with("survey", folder.resolve("display.json"), table),
                    table,
                    "measurements have the columns prop,pixel,x,y; ");
        }
    }

    @Test
    void noneHoldsMeasurements() throws IOException {
        for (Path table : written()) {
            assertToldOnce(
                    Ran.with("survey", folder.resolve("display.json"), table),
                    table,
                    "measurements have the columns prop,pixel,x,y; \"duskloom map DISPLAY.json\" writes such a table");
        }
    }

    @Test
    void noneIsATimeline() throws IOException {
        for (Path table : written()) {
            assertToldOnce(Ran.with("check", table), table, "a timeline or a display starts with {\n");
        }
    }

    /** The pixels of all shapes under each other are no shape. */
    @Test
    void noneIsAShape() throws IOException {
        written();
        Path display = folder.resolve("display.json");
        Files.writeString(
                display,
                Files.readString(display)
                        .replaceAll("\\{\"build\".*?\\}\\}\\]\\}", "{\"pixels\": \"sheets/parts.csv\"}"));
        Ran ran = Ran.with("check", display).without(folder);
        assertThat(ran.code()).isEqualTo(3);
        assertThat(ran.err())
                .contains("sheets/parts.csv:1:1: error: this is parts.csv as \"duskloom sheet\" writes it: pixels of"
                        + " shapes, which hang nowhere yet; the pixels of one shape have the columns pixel,x,y\n");
    }

    /** A column of one's own is told as such. */
    @Test
    void aMapWithColumnsOfOthersIsAMap() throws IOException {
        Path map = Files.writeString(
                folder.resolve("fence.csv"), "prop,pixel,x,y,port,universe,slot\nfence,1,0,0,a,1,1\n");
        assertThat(Ran.with("new", folder.resolve("new"), "--map", map).err())
                .contains("there is no column \"slot\"; a column of notes may stay if its name begins with #");
    }
}
