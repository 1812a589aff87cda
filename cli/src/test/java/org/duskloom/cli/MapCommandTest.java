package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
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
