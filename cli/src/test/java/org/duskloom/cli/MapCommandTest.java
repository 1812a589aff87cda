package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.CRC32C;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MapCommandTest {
    @TempDir
    private Path folder;

    /**
     * Six pixels counter-clockwise from the top of a circle of 20: cos 30° = 0.8660 makes the sides 17.32. On the daisy
     * that is turned by a quarter the first pixel is at the left, where its own axes still have it at the top.
     */
    @Test
    void writesEveryPixelInWiringOrder() throws IOException {
        Path display = Garden.display(folder);
        Path map = folder.resolve("made/map.csv");
        assertThat(Ran.with("map", display, "-o", map)).isEqualTo(new Ran(0, "", map + ": 18 pixels in 3 props\n"));
        var lines = Files.readAllLines(map);
        assertThat(lines).hasSize(19);
        assertThat(lines.get(0)).isEqualTo("prop,pixel,x,y,part,ownx,owny,ownz");
        assertThat(lines.get(1)).startsWith("daisy-1,1,0,120,");
        assertThat(lines.get(2)).matches("daisy-1,2,-17\\.32\\d*,110,.*");
        assertThat(lines.get(7)).matches("daisy-2,1,80,100,.*,0,20,0");
        assertThat(lines.get(13)).startsWith("fence,1,0,0,");
        assertThat(lines.get(18)).startsWith("fence,6,100,0,");
    }

    @Test
    void writesTheSameToStandardOutput() throws IOException {
        Path display = Garden.display(folder);
        Path map = folder.resolve("map.csv");
        Ran.with("map", display, "-o", map);
        Ran ran = Ran.with("map", display, "-o", "-");
        assertThat(ran.code()).isZero();
        assertThat(ran.err()).isEmpty();
        assertThat(map).hasContent(ran.out());
    }

    /** What a shell puts into a file is read again, so that it is in UTF-8 whatever letters the terminal has. */
    @ParameterizedTest
    @ValueSource(strings = {"US-ASCII", "windows-1252"})
    void writesTheSameWhateverTheTerminalIs(Charset terminal) throws IOException {
        Path display = Garden.display(folder);
        Files.writeString(display, Files.readString(display).replace("daisy-1", "Gänseblümchen"));
        Path map = folder.resolve("map.csv");
        assertThat(Ran.with("map", display, "-o", map, "--semicolons").code()).isZero();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PrintStream err = new PrintStream(OutputStream.nullOutputStream());
        new Program(new Streams(out, terminal, err, TerminalTraits.PLAIN))
                .run("map", display.toString(), "-o", "-", "--semicolons");
        assertThat(out.toByteArray()).isEqualTo(Files.readAllBytes(map));
        assertThat(map).content().contains("Gänseblümchen");
    }

    /** A map with semicolons is read as the other is. */
    @Test
    void writesSemicolonsAndReadsThem() throws IOException {
        Path display = Garden.display(folder);
        Path map = folder.resolve("map.csv");
        assertThat(Ran.with("map", display, "-o", map, "--semicolons").code()).isZero();
        var lines = Files.readAllLines(map);
        assertThat(lines.get(0)).isEqualTo("\uFEFFprop;pixel;x;y;part;ownx;owny;ownz");
        assertThat(lines.get(2)).matches("daisy-1;2;-17,32\\d*;110;.*");
        Ran same = Ran.with("survey", display, map);
        assertThat(same.code()).as(same.err()).isZero();
        Ran.with("map", display, "-o", folder.resolve("commas.csv"));
        assertThat(same.out())
                .isEqualTo(Ran.with("survey", display, folder.resolve("commas.csv"))
                        .out());
    }

    /** What was measured stands in the map as it was measured, the rest where the survey puts it. */
    @Test
    void writesTheDisplayAsItWasFound() throws IOException {
        Path map = folder.resolve("map.csv");
        Ran ran = Ran.with(
                "map",
                Project.file("demos/garden/display.json"),
                "--from",
                Project.file("demos/garden/measured.csv"),
                "-o",
                map);
        assertThat(ran.code()).isZero();
        assertThat(ran.err())
                .isEqualTo(map + ": 1288 pixels in 18 props; 185 as measured, 1103 where survey puts them\n");
        List<String> rows = Files.readAllLines(map);
        assertThat(rows).hasSize(1289).contains("daisy-3,1,-2817,1753,0,eye,0,0,0");
        // Wired from the other end, as survey says: its first pixel is the one at the right end.
        assertThat(rows.stream().filter(row -> row.startsWith("fence,2,")))
                .singleElement()
                .asString()
                .matches("fence,2,5327\\.5.*");
    }

    /** The places of six pixels of each prop in a picture of which a unit is half a centimetre, y down. */
    @Test
    void knowsPlacesInAPictureByTheirColumn() throws IOException {
        Path display = Garden.display(folder);
        Path map = folder.resolve("map.csv");
        Ran.with("map", display, "-o", map);
        StringBuilder places = new StringBuilder("prop,pixel,x,y,sure\n");
        for (String row : Files.readAllLines(map).subList(1, 19)) {
            String[] cells = row.split(",");
            places.append(cells[0] + "," + cells[1] + "," + (100 + 2 * Double.parseDouble(cells[2])) + ","
                    + (900 - 2 * Double.parseDouble(cells[3])) + ",0.9\n");
        }
        Path measured = Files.writeString(folder.resolve("measured.csv"), places);
        Ran ran = Ran.with("map", display, "--from", measured, "-o", "-");
        assertThat(ran.err()).isEmpty();
        assertThat(ran.out())
                .startsWith("prop,pixel,x,y,")
                .contains("\nfence,6,")
                .hasLineCount(19);
        assertThat(ran.out().lines().filter(row -> row.startsWith("daisy-2,1,")))
                .singleElement()
                .asString()
                .matches("daisy-2,1,(80|79\\.9+|80\\.0+)[0-9]*,(100|99\\.9+|100\\.0+)[0-9]*,.*");
        assertThat(Ran.with("survey", display, measured).out())
                .contains("from a photo: one unit of the picture is 0.5 cm");
    }

    @Test
    void makesNothingOfMeasurementsThatTellNothing() throws IOException {
        Path display = Project.file("demos/garden/display.json");
        StringBuilder places = new StringBuilder();
        for (String row : Files.readAllLines(Project.file("demos/garden/measured.csv"))) {
            String[] cells = row.split(",");
            boolean isNumber = cells.length == 4 && !cells[1].equals("pixel");
            places.append(
                    isNumber
                            ? cells[0] + "," + cells[1] + "," + Double.parseDouble(cells[2]) / 10 + ","
                                    + Double.parseDouble(cells[3]) / 10
                            : row);
            places.append('\n');
        }
        Path measured = Files.writeString(folder.resolve("measured.csv"), places);
        Ran centimetres = Ran.with("map", display, "--from", measured, "-o", folder.resolve("map.csv"));
        assertThat(centimetres.code()).isEqualTo(3);
        assertThat(centimetres.err())
                .contains(
                        "measured.csv:1:1: error: everything seems to be measured in another unit, from another side or")
                .contains("see what survey says of it, and mend that first");
        Random random = new Random(4);
        Files.writeString(measured, "prop,pixel,x,y,sure\n");
        for (int pixel = 1; pixel <= 61; pixel++) {
            for (int daisy = 1; daisy <= 3; daisy++) {
                Files.writeString(
                        measured,
                        "daisy-" + daisy + "," + pixel + "," + random.nextInt(3000) + "," + random.nextInt(2000)
                                + ",1\n",
                        StandardOpenOption.APPEND);
            }
        }
        Ran chance = Ran.with("map", display, "--from", measured, "-o", folder.resolve("map.csv"));
        assertThat(chance.code()).isEqualTo(3);
        assertThat(chance.err()).contains("of 183 pixels agree; is it a picture of this display, from the front?");
        assertThat(folder.resolve("map.csv")).doesNotExist();
    }

    @Test
    void refusesWhatIsNoMeasurement() throws IOException {
        Path display = Garden.display(folder);
        Path measured = Files.writeString(folder.resolve("measured.csv"), "prop,pixel,x,y\nfense,1,0,0\nfence,9,0,0\n");
        Ran ran = Ran.with("map", display, "--from", measured, "-o", folder.resolve("map.csv"));
        assertThat(ran.without(folder)).isEqualTo(new Ran(3, "", """
                measured.csv:2:1: error: there is no prop "fense"; did you mean "fence"?
                measured.csv:3:7: error: "pixel" is "9"; allowed: a whole number from 1 to 6
                2 errors
                """));
        assertThat(Ran.with("map", display, "--photo", "-o", "-").code()).isEqualTo(2);
        Files.writeString(measured, "prop,pixel,x,y\nfence,1,0,0\nfence,5,80,0\n");
        Ran overItself = Ran.with("map", display, "--from", measured, "-o", measured, "--force");
        assertThat(overItself.code()).isEqualTo(2);
        assertThat(measured).content().startsWith("prop,pixel");
    }

    /**
     * A show on a display, and the same timeline on its map with the same groups: the same frames, to the last byte.
     */
    @ParameterizedTest
    @ValueSource(strings = {"demos/garden", "demos/mast"})
    void theMapRendersTheSameFrames(String demo) throws IOException {
        Path home = onMap(demo);
        render(home.resolve("show.json"), "from-display");
        render(home.resolve("on-map.json"), "from-map");
        assertThat(folder.resolve("from-map/frames.rgb"))
                .hasSameBinaryContentAs(folder.resolve("from-display/frames.rgb"));
    }

    /** The rows of a map in any order: every prop has the same bytes, wherever it has come to stand in the file. */
    @ParameterizedTest
    @ValueSource(strings = {"demos/garden", "demos/mast"})
    void theOrderOfItsRowsChangesNoPixel(String demo) throws IOException {
        Path home = onMap(demo);
        render(home.resolve("on-map.json"), "in-order");
        List<String> rows = new ArrayList<>(Files.readAllLines(home.resolve("map.csv")));
        Collections.shuffle(rows.subList(1, rows.size()), new Random(7));
        Files.write(home.resolve("map.csv"), rows);
        render(home.resolve("on-map.json"), "shuffled");

        Map<String, String> inOrder = digestsOfProps(folder.resolve("in-order"));
        Map<String, String> shuffled = digestsOfProps(folder.resolve("shuffled"));
        assertThat(shuffled).isNotEmpty().isEqualTo(inOrder);
    }

    /** A demo's timeline beside its display, played on the map of the display. */
    private Path onMap(String demo) throws IOException {
        Project.copy(demo, folder);
        Path home = folder.resolve(demo);
        String display = Files.readString(home.resolve("display.json"));
        String show = Files.readString(home.resolve("show.json"));
        assertThat(Ran.with("map", home.resolve("display.json"), "-o", home.resolve("map.csv"))
                        .code())
                .isZero();
        int start = display.indexOf("\"groups\"");
        String groups = display.substring(start, display.indexOf("\n  }", start) + "\n  }".length());
        String onMap = show.replace("\"display\": \"display.json\"", "\"map\": \"map.csv\", " + groups.strip());
        assertThat(onMap).isNotEqualTo(show);
        Files.writeString(home.resolve("on-map.json"), onMap);
        return home;
    }

    /** Of each prop, in the order of the file: a checksum of its bytes in all frames. */
    private static Map<String, String> digestsOfProps(Path out) throws IOException {
        byte[] frames = Files.readAllBytes(out.resolve("frames.rgb"));
        String manifest = Files.readString(out.resolve("frames.json"));
        Matcher pixels = Pattern.compile("\"pixels\": (\\d+)").matcher(manifest);
        assertThat(pixels.find()).isTrue();
        int frameBytes = 3 * Integer.parseInt(pixels.group(1));
        Matcher prop = Pattern.compile("\"name\": \"([^\"]+)\", *\"first\": (\\d+), *\"count\": (\\d+)")
                .matcher(manifest);
        Map<String, String> digests = new LinkedHashMap<>();
        while (prop.find()) {
            CRC32C crc = new CRC32C();
            for (int frame = 0; frame < frames.length; frame += frameBytes) {
                crc.update(frames, frame + 3 * Integer.parseInt(prop.group(2)), 3 * Integer.parseInt(prop.group(3)));
            }
            digests.put(prop.group(1), Long.toHexString(crc.getValue()));
        }
        return digests;
    }

    private void render(Path show, String out) {
        Ran ran = Ran.with("render", show, "-o", folder.resolve(out));
        assertThat(ran.code()).as(ran.err()).isZero();
    }
}
