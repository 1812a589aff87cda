package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Element;

class SheetCommandTest {
    private static final List<String> SHEETS =
            List.of("daisy-back", "daisy-front", "fence-back", "fence-front", "stage", "stage-back");

    @TempDir
    private Path folder;

    private Path display;

    @BeforeEach
    void write() throws IOException {
        display = Garden.display(folder);
    }

    /** Front and back of both shapes that props have, and the stage; none of the bench, which nobody has placed. */
    @Test
    void drawsEveryShapeThatIsUsed() throws IOException {
        assertThat(sheet("out").without(folder)).isEqualTo(new Ran(0, "", "out: 14 files\n"));
        List<String> expected = new ArrayList<>(List.of("places.csv", "parts.csv"));
        SHEETS.forEach(name -> expected.addAll(List.of(name + ".png", name + ".svg")));
        try (Stream<Path> files = Files.list(folder.resolve("out"))) {
            assertThat(files.map(file -> file.getFileName().toString())).containsExactlyInAnyOrderElementsOf(expected);
        }
    }

    /** The second daisy is turned by 90 degrees: its first pixel, which the shape has on top, hangs at its left. */
    @Test
    void tablesSayWherePropsHangAndWhichPartsPixelsAreIn() throws IOException {
        sheet("out");
        List<String> places = Files.readAllLines(folder.resolve("out/places.csv"));
        assertThat(places.get(0))
                .startsWith("prop,shape,x,y,z,turn,tilt,yaw,scale,mirror,reverse,pixels,first_pixel,first_x");
        assertThat(places).hasSize(4);
        String[] second = places.get(2).split(",", -1);
        assertThat(second).hasSize(16).startsWith("daisy-2", "daisy");
        assertThat(second[5]).isEqualTo("90");
        assertThat(second[12]).isEqualTo("7");
        assertThat(Double.parseDouble(second[13])).isEqualTo(Double.parseDouble(second[2]) - 20);
        assertThat(second[14]).isEqualTo(second[3]);
        List<String> parts = Files.readAllLines(folder.resolve("out/parts.csv"));
        assertThat(parts).startsWith("shape,pixel,x,y,z,parts", "daisy,1,0,20,0,rim; top");
        assertThat(parts).hasSize(1 + 6 + 6);
    }

    /**
     * SVG 2, section 5.1: the root element is svg in its namespace. The fence is a metre long, and the sheet is true to
     * scale: it cannot be narrower than 1000 mm.
     */
    @Test
    void aSheetToPrintIsTrueToScale() throws Exception {
        sheet("out");
        for (String name : SHEETS) {
            Element root = svg("out/" + name + ".svg");
            assertThat(root.getLocalName()).isEqualTo("svg");
            assertThat(root.getNamespaceURI()).isEqualTo("http://www.w3.org/2000/svg");
        }
        String width = svg("out/fence-front.svg").getAttribute("width");
        assertThat(width).endsWith("mm");
        assertThat(Double.parseDouble(width.replace("mm", ""))).isBetween(1000.0, 1300.0);
    }

    @Test
    void aSheetToLookAtIsAPicture() throws IOException {
        sheet("out");
        for (String name : SHEETS) {
            BufferedImage image =
                    ImageIO.read(folder.resolve("out/" + name + ".png").toFile());
            int corner = image.getRGB(0, 0);
            boolean drawn = false;
            for (int x = 0; x < image.getWidth() && !drawn; x++) {
                for (int y = 0; y < image.getHeight() && !drawn; y++) {
                    drawn = image.getRGB(x, y) != corner;
                }
            }
            assertThat(drawn).as(name).isTrue();
        }
    }

    /** A hole is a white disc in the sheet: its radius is 4 mm of 8, 6 of 12, which is the usual one. */
    @Test
    void holesHaveTheDiameterThatIsAskedFor() throws IOException {
        sheet("usual");
        sheet("twelve", "--hole", "12");
        sheet("eight", "--hole", "8");
        String usual = Files.readString(folder.resolve("usual/daisy-front.svg"));
        assertThat(folder.resolve("twelve/daisy-front.svg")).hasContent(usual);
        assertThat(usual).contains(" r=\"6\" fill=\"#ffffff\"").doesNotContain(" r=\"4\" fill=\"#ffffff\"");
        assertThat(folder.resolve("eight/daisy-front.svg"))
                .content()
                .contains(" r=\"4\" fill=\"#ffffff\"")
                .doesNotContain(" r=\"6\" fill=\"#ffffff\"");
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "0.99", "-12", "200.5"})
    void aHoleOutOfRangeIsRefused(String hole) {
        Ran ran = sheet("out", "--hole", hole);
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).startsWith("duskloom sheet: --hole: a hole of ").contains("allowed: 1 to 200");
        assertThat(folder.resolve("out")).doesNotExist();
    }

    @Test
    void aHoleThatIsNoNumberIsRefused() {
        Ran ran = sheet("out", "--hole", "wide");
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).startsWith("duskloom sheet: ").contains("wide");
    }

    /** 24 pixels on a ring of radius 30 mm are 2 x 30 x sin(7.5 degrees) = 7.8 mm apart, the first and the last too. */
    @Test
    void warnsOfAnAssumedUnitAndOfHolesThatOverlap() throws IOException {
        Path tight = folder.resolve("tight.json");
        Files.writeString(tight, """
                {"duskloom": "display/1",
                 "shapes": {"tight": {"build": [{"ring": {"count": 24, "radius": 30}}]}},
                 "props": [{"name": "a", "shape": "tight", "at": [0, 0]}]}
                """);
        Ran ran = Ran.with("sheet", tight, "-o", folder.resolve("tight")).without(folder);
        assertThat(ran.code()).isZero();
        assertThat(ran.err().lines())
                .containsExactly(
                        "tight.json: warning: the display does not say its \"units\": the sheets take its lengths for"
                                + " millimetres; write \"units\": \"mm\", \"cm\", \"m\" or \"in\"",
                        "tight.json:2:13: warning: holes of shape \"tight\" overlap: pixels 1 and 24 are 7.8 mm apart,"
                                + " and a hole is 12 mm wide; check its lengths and the unit, or choose a smaller --hole",
                        "2 warnings",
                        "tight: 10 files");
        assertThat(Ran.with("sheet", tight, "-o", folder.resolve("small"), "--hole", "7.8")
                        .err())
                .doesNotContain("overlap");
    }

    /**
     * 24 pixels on a ring of 300 mm are 78.3 mm apart; at a tenth of that, holes of 12 mm overlap, and that prop needs
     * a sheet of its own.
     */
    @Test
    void drawsAShapeInEveryScaleThatItsPropsHave() throws Exception {
        Path sizes = folder.resolve("sizes.json");
        Files.writeString(sizes, """
                {"duskloom": "display/1", "units": "mm",
                 "shapes": {"ring": {"build": [{"ring": {"count": 24, "radius": 300}}]}},
                 "props": [{"name": "a", "shape": "ring", "at": [0, 0]},
                           {"name": "b", "shape": "ring", "at": [900, 0], "scale": 0.1}]}
                """);
        Ran ran = Ran.with("sheet", sizes, "-o", folder.resolve("sizes")).without(folder);
        assertThat(ran.code()).isZero();
        assertThat(ran.err().lines())
                .containsExactly(
                        "sizes.json:2:13: warning: holes of shape \"ring\" at scale 0.1 overlap: pixels 1 and 24 are 7.8 mm"
                                + " apart, and a hole is 12 mm wide; check its lengths and the unit, or choose a"
                                + " smaller --hole",
                        "1 warning",
                        "sizes: 14 files");
        try (Stream<Path> files = Files.list(folder.resolve("sizes"))) {
            assertThat(files.map(file -> file.getFileName().toString()).filter(name -> name.endsWith(".svg")))
                    .containsExactlyInAnyOrder(
                            "ring-front.svg",
                            "ring-back.svg",
                            "ring-scale-0.1-front.svg",
                            "ring-scale-0.1-back.svg",
                            "stage.svg",
                            "stage-back.svg");
        }
        for (String view : List.of("front", "back")) {
            assertThat(Files.readString(folder.resolve("sizes/ring-" + view + ".svg")))
                    .contains("ring, scale 1, ", "600 x 600 mm", "for a;");
            assertThat(Files.readString(folder.resolve("sizes/ring-scale-0.1-" + view + ".svg")))
                    .contains("ring, scale 0.1, ", "60 x 60 mm", "for b;");
        }
    }

    /** A helix is no plate: what lies behind each other in its sheet is not drilled. */
    @Test
    void doesNotWarnOfHolesInWhatIsNotFlat() throws IOException {
        Path pole = folder.resolve("pole.json");
        Files.writeString(pole, """
                {"duskloom": "display/1", "units": "mm",
                 "shapes": {"pole": {"build": [{"helix": {"count": 100, "radius": 200, "height": 900, "turns": 5}}]}},
                 "props": [{"name": "a", "shape": "pole", "at": [0, 0]}]}
                """);
        assertThat(Ran.with("sheet", pole, "-o", folder.resolve("pole")).without(folder))
                .isEqualTo(new Ran(0, "", "pole: 10 files\n"));
    }

    /** Elsewhere - is the standard output, which takes one file. */
    @ParameterizedTest
    @ValueSource(strings = {"sheet DISPLAY -o -", "proof DISPLAY -o -", "effects --gallery -"})
    void theStandardOutputIsNoFolder(String words) {
        Ran ran =
                Ran.with((Object[]) words.replace("DISPLAY", display.toString()).split(" "));
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err())
                .contains(
                        "- is the standard output, and several files are written; name a folder (./- is one called -)");
        assertThat(Path.of("-")).doesNotExist();
    }

    private Ran sheet(String out, String... options) {
        return Ran.with(Stream.concat(Stream.of("sheet", display, "-o", folder.resolve(out)), Stream.of(options))
                .toArray());
    }

    private Element svg(String name) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setNamespaceAware(true);
        return factory.newDocumentBuilder().parse(folder.resolve(name).toFile()).getDocumentElement();
    }
}
