package org.duskloom.engine.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.Normalizer;
import org.duskloom.engine.link.Links;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is said of a file that is not there, in folders that are. */
class NearbyFileTest {
    @TempDir
    private Path folder;

    private Path file(String name) throws IOException {
        return Files.createFile(folder.resolve(name));
    }

    @ParameterizedTest
    @CsvSource({"Garden.json, garden.json", "gardn.json, garden.json", "fense.csv, fence.csv"})
    void namesTheFileThatWasMeant(String missing, String meant) throws IOException {
        file("garden.json");
        file("fence.csv");
        assertThat(NearbyFile.of(folder.resolve(missing))).contains(meant);
        assertThat(NearbyFile.hint(folder.resolve(missing), "plot 7/"))
                .isEqualTo("did you mean \"plot 7/" + meant + "\"?");
    }

    /** A folder cannot be read in the place of a file, but may be meant where either may stand. */
    @Test
    void namesAFolderOnlyWhereOneMayStand() throws IOException {
        Files.createDirectory(folder.resolve("frames"));
        assertThat(NearbyFile.of(folder.resolve("frame"))).isEmpty();
        assertThat(NearbyFile.orFolder(folder.resolve("frame"))).contains("frames");
    }

    /** Of equally near names the first by the alphabet, whatever order the system lists them in. */
    @Test
    void saysTheSameOnEverySystem() throws IOException {
        for (String name : new String[] {"bed-3.csv", "bed-1.csv", "bed-2.csv"}) {
            file(name);
        }
        assertThat(NearbyFile.of(folder.resolve("bed-4.csv"))).contains("bed-1.csv");
    }

    @Test
    void saysWhereItLookedWithoutDetours() throws IOException {
        Path missing = Files.createDirectory(folder.resolve("bed")).resolve("../shed/map.csv");
        assertThat(NearbyFile.hint(missing, "")).isEqualTo("looked for " + folder.resolve("shed/map.csv"));
        assertThat(NearbyFile.of(missing)).isEmpty();
    }

    /** A folder of that name hides nothing. */
    @Test
    void onlyAFileHasAHiddenEnding() throws IOException {
        Files.createDirectory(folder.resolve("show.json.txt"));
        assertThat(NearbyFile.hint(folder.resolve("show.json"), "")).startsWith("looked for ");
        file("map.csv.txt");
        assertThat(NearbyFile.hint(folder.resolve("map.csv"), "a/"))
                .isEqualTo("there is \"a/map.csv.txt\", whose .txt Windows may hide: rename it");
    }

    /**
     * Some systems store a letter and its accent apart, others together (Unicode Standard Annex #15, forms D and C):
     * the name looks the same, and "did you mean" would be a riddle.
     */
    @ParameterizedTest
    @CsvSource({"NFC, NFD", "NFD, NFC"})
    void tellsOfANameThatOnlyLooksTheSame(Normalizer.Form stored, Normalizer.Form written) throws IOException {
        file(Normalizer.normalize("Gänseblümchen.csv", stored));
        assertThat(NearbyFile.hint(folder.resolve(Normalizer.normalize("Gänseblümchen.csv", written)), "a/"))
                .isEqualTo("there is \"a/" + Normalizer.normalize("Gänseblümchen.csv", stored)
                        + "\", which looks the same but has its accents stored in another way: type both names anew");
    }

    /** Each accent that is stored apart is one character more, and may make most of the name. */
    @ParameterizedTest
    @CsvSource({"NFC, NFD", "NFD, NFC"})
    void findsANameOfManyAccents(Normalizer.Form stored, Normalizer.Form written) throws IOException {
        String name = Normalizer.normalize("äöüéè.csv", stored);
        file(name);
        assertThat(NearbyFile.of(folder.resolve(Normalizer.normalize("äöüéè.csv", written))))
                .contains(name);
        assertThat(NearbyFile.hint(folder.resolve(Normalizer.normalize("Äöuéè.csv", written)), ""))
                .isEqualTo("did you mean \"" + name + "\"?");
    }

    /** Forms KC and KD of that annex would take the two for one, and nobody's eye does. */
    @Test
    void signsThatLookDifferentAreDifferent() throws IOException {
        file("bed-9m².csv");
        assertThat(NearbyFile.hint(folder.resolve("bed-9m2.csv"), "")).isEqualTo("did you mean \"bed-9m².csv\"?");
    }

    @Test
    void tellsOfALinkThatLeadsNowhere() throws IOException {
        Links.symbolic(folder.resolve("show.json"), folder.resolve("gone.json"));
        assertThat(NearbyFile.hint(folder.resolve("show.json"), "")).isEqualTo("it is a link that leads nowhere");
    }

    @Test
    void tellsOfAFolderThatIsALinkThatLeadsNowhere() throws IOException {
        Path lost = folder.resolve("garden");
        Links.symbolic(lost, folder.resolve("gone"));
        assertThat(NearbyFile.hint(lost.resolve("beds/show.json"), ""))
                .isEqualTo("\"" + lost + "\" is a link that leads nowhere");
        Links.symbolic(folder.resolve("plot"), Files.createDirectory(folder.resolve("plot-7")));
        assertThat(NearbyFile.lostLink(folder.resolve("plot/show.json"))).isEmpty();
    }

    /** What cannot be seen in a name that somebody gave a file does nothing to the terminal. */
    @Test
    void showsHiddenCharacters() throws IOException {
        file("map\u001b1.csv");
        assertThat(NearbyFile.hint(folder.resolve("map1.csv"), "")).isEqualTo("did you mean \"map\\u001b1.csv\"?");
    }
}
