package org.duskloom.engine.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.duskloom.engine.document.Inputs;
import org.duskloom.engine.map.Prop;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.show.DisplayFile;
import org.duskloom.engine.show.InputFile;
import org.duskloom.engine.show.Show;
import org.duskloom.engine.show.ShowReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A timeline that names a display in another folder, which names a file in a third one. */
class ShowDisplayTest {
    private static final String CSV = "pixel,x,y,part\n1,0,0,post\n2,10,0,post\n";

    @TempDir
    Path folder;

    private final Problems problems = new Problems();

    private Path write(String name, String text) throws IOException {
        Path file = folder.resolve(name);
        Files.createDirectories(file.getParent());
        return Files.writeString(file, text);
    }

    private Path timeline(String display) throws IOException {
        return write(
                "shows/night.json",
                "{\"duskloom\": \"timeline/1\", \"length\": \"1s\", \"layers\": [], \"display\": \"" + display + "\"}");
    }

    private void display(String shapes, String rest) throws IOException {
        write(
                "garden/display.json",
                "{\"duskloom\": \"display/1\", \"shapes\": {" + shapes
                        + "}, \"props\": [{\"name\": \"f\", \"shape\": \"fence\", \"at\": [5, 6]}]" + rest + "}");
    }

    @Test
    void leadsToTheSameTypesAsAMap() throws IOException {
        write("garden/csv/fence.csv", CSV);
        display(
                "\"fence\": {\"pixels\": \"csv/fence.csv\"}, \"again\": {\"pixels\": \"csv/fence.csv\"}",
                ", \"groups\": {\"posts\": \"*/post\"}");
        Show show = ShowReader.read(timeline("../garden/display.json"), problems)
                .orElseThrow(() -> new AssertionError(Inputs.shown(problems)));
        assertThat(show.map().props()).extracting(Prop::name).containsExactly("f");
        assertThat(show.map().stage().x(1)).isEqualTo(15);
        assertThat(show.groups().addresses()).containsExactly("f", "f/post", "posts");
    }

    @Test
    void listsEveryFileOnceWithItsChecksum() throws IOException {
        write("garden/csv/fence.csv", CSV);
        display("\"fence\": {\"pixels\": \"csv/fence.csv\"}, \"again\": {\"pixels\": \"csv/fence.csv\"}", "");
        Path timeline = timeline("../garden/display.json");
        Show show = ShowReader.read(timeline, problems).orElseThrow();
        String home = folder + "/shows/";
        assertThat(show.inputs())
                .extracting(InputFile::shownName)
                .containsExactly(
                        timeline.toString(), home + "../garden/display.json", home + "../garden/csv/fence.csv");
        // sha256sum of the two lines and the header, by coreutils.
        assertThat(show.inputs().get(2).sha256Hex())
                .isEqualTo("b80f607263d8925c62dad15cbee21339c015ea5cd06373344fabbc6d9236f9fc");
        assertThat(show.inputs().get(2).path()).exists();
    }

    @Test
    void reportsPlacesInTheFilesWhereTheyAre() throws IOException {
        write("garden/csv/fence.csv", "pixel,x,y\n1,0,zero\n");
        display("\"fence\": {\"pixels\": \"csv/fence.csv\"}, \"gate\": {\"pixels\": \"gate.csv\"}", "");
        assertThat(ShowReader.read(timeline("../garden/display.json"), problems))
                .isEmpty();
        assertThat(Inputs.shown(problems))
                .hasSize(2)
                .anySatisfy(line ->
                        assertThat(line).contains("/shows/../garden/csv/fence.csv:2:5: error: \"y\" is \"zero\""))
                .anySatisfy(line -> assertThat(line)
                        .contains("/shows/../garden/display.json:1:")
                        .contains("error: there is no file \"gate.csv\"; looked for "));
    }

    @Test
    void readsADisplayByItself() throws IOException {
        write("garden/csv/fence.csv", CSV);
        display("\"fence\": {\"pixels\": \"csv/fence.csv\"}", "");
        DisplayFile read = ShowReader.readDisplay(folder.resolve("garden/display.json"), problems)
                .orElseThrow();
        assertThat(read.display().map().pixelCount()).isEqualTo(2);
        assertThat(read.inputs())
                .extracting(InputFile::path)
                .containsExactly(folder.resolve("garden/display.json"), folder.resolve("garden/csv/fence.csv"));
        assertThat(ShowReader.readDisplay(folder.resolve("garden/none.json"), problems))
                .isEmpty();
    }

    @Test
    void refusesADisplayWithoutAName() throws IOException {
        assertThat(ShowReader.read(timeline(""), problems)).isEmpty();
        assertThat(Inputs.shown(problems)).singleElement().asString().contains("\"\" is not the name of a file");
    }
}
