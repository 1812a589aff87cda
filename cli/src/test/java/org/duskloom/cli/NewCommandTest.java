package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a show of one's own begins with is sound, can be seen, and takes nobody's place. */
class NewCommandTest {
    @TempDir
    private Path temp;

    @Test
    void saysWhatItWroteAndWhatToTypeNext() {
        Path folder = temp.resolve("garden");
        assertThat(Ran.with("new", folder).without(temp)).isEqualTo(new Ran(0, "", """
                garden/display.json
                garden/show.json
                next:
                  duskloom watch garden/show.json
                      See it in a browser while you change it.
                  duskloom check garden/show.json
                      Whatever is wrong with it, with its line.
                  duskloom film garden/show.json -o garden/show.html
                      A page to keep.
                """));
    }

    /** A shell that takes the commands apart has the name of the file again. POSIX.1-2017, 2.2.2 and 2.2.3. */
    @ParameterizedTest
    @ValueSource(strings = {"our garden", "Anna's", "a;b", "$HOME", "Blüten"})
    @DisabledOnOs(OS.WINDOWS)
    void theNextCommandsCanBeTyped(String name) throws Exception {
        Path folder = temp.resolve(name);
        String check = Ran.with("new", folder)
                .err()
                .lines()
                .filter(line -> line.startsWith("  duskloom check "))
                .findFirst()
                .orElseThrow();
        Process shell = new ProcessBuilder("/bin/sh", "-c", "printf '%s|' " + check.strip()).start();
        String words = new String(shell.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(words).isEqualTo("duskloom|check|" + folder.resolve("show.json") + "|");
    }

    @Test
    void whatItWritesIsSoundAndCanBeSeen() throws IOException {
        Path folder = temp.resolve("garden");
        Ran.with("new", folder);
        Ran check = Ran.with("check", folder.resolve("display.json"), folder.resolve("show.json"));
        assertThat(check.err()).isEmpty();
        assertThat(check.out()).contains("title    garden", "pixels   126", "length   24s");
        isSeen(folder);
        assertThat(Ran.with("film", folder.resolve("show.json"), "-o", folder.resolve("show.html"))
                        .code())
                .isZero();
    }

    /** Three flashes within a second are what WCAG 2.2, success criterion 2.3.1, allows. */
    @Test
    void whatItWritesFlashesNoMoreThanIsAllowed() {
        Path folder = temp.resolve("garden");
        Ran.with("new", folder);
        assertThat(Ran.with("report", folder.resolve("show.json")).out())
                .contains("Nothing flashes more than three times within a second.");
    }

    @Test
    void everyRemarkTeachesSomething() throws IOException {
        Path folder = temp.resolve("garden");
        Ran.with("new", folder);
        String display = Files.readString(folder.resolve("display.json"));
        String show = Files.readString(folder.resolve("show.json"));
        for (String field : List.of("units", "shapes", "props", "groups")) {
            assertThat(display).as(field).containsPattern("//[^\n]*\n  \"" + field + "\"");
        }
        for (String field : List.of("rate", "palettes", "layers")) {
            assertThat(show).as(field).containsPattern("//[^\n]*\n  \"" + field + "\"");
        }
    }

    /** What a remark tells to try can be tried: in place of what the cue says, or as one more of its settings. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            "toward": 0}     | "toward": 90}
            "tail": 0.5      | "heads": 4, "tail": 0.5
            "spread": "each",|
            "toward": 90     | "toward": 0
            """)
    void whatTheRemarksTellToTryIsSound(String written, String tried) throws IOException {
        Path folder = temp.resolve("garden");
        Ran.with("new", folder);
        Path show = folder.resolve("show.json");
        String text = Files.readString(show);
        int at = text.lastIndexOf(written);
        assertThat(at).isPositive();
        String other = tried == null ? "" : tried;
        Files.writeString(show, text.substring(0, at) + other + text.substring(at + written.length()));
        Ran check = Ran.with("check", show);
        assertThat(check.err()).isEmpty();
        assertThat(check.code()).isZero();
    }

    @Test
    void aTableIsCopiedAndItsNamesBecomeGroups() throws IOException {
        Path table = Files.writeString(temp.resolve("pixels.csv"), """
                prop,pixel,x,y,part
                fence,1,0,0,
                daisy-1,1,0,10,rim
                daisy-1,2,0,11,
                daisy-2,1,20,10,rim
                daisy-2,2,20,11,
                lamp1,1,30,10,
                lamp2,1,31,10,
                lampshade,1,40,10,
                """);
        Path folder = temp.resolve("garden");
        assertThat(Ran.with("new", folder, "--map", table).without(temp).err())
                .startsWith("garden/map.csv\ngarden/show.json\n");
        assertThat(folder.resolve("map.csv")).hasSameBinaryContentAs(table);
        assertThat(Files.readString(folder.resolve("show.json")))
                .contains(
                        """
                  "map": "map.csv",
                """,
                        """
                  "groups": {
                    "everything": ["*"],
                    "daisy": ["daisy-*"],
                    "lamp": ["lamp1", "lamp2"],
                    "rim": ["*/rim"]
                  },
                """,
                        "\"on\": \"fence\"",
                        "\"on\": \"lampshade\"",
                        "\"on\": \"daisy\", \"spread\": \"each\"");
        isSound(folder);
        isSeen(folder);
    }

    @Test
    void aTableThatLiesThereIsLeftWhereItIs() throws IOException {
        Path table = Files.writeString(temp.resolve("pixels.csv"), "prop;pixel;x;y\nfence;1;0;0\nfence;2;1,5;0\n");
        Ran ran = Ran.with("new", temp, "--map", table).without(temp);
        assertThat(ran.err()).startsWith("show.json\nnext:\n");
        assertThat(temp.resolve("map.csv")).doesNotExist();
        assertThat(Files.readString(temp.resolve("show.json"))).contains("\"map\": \"pixels.csv\"");
        isSound(temp);
    }

    /** Names that groups cannot have any more, and one that looks like a mark of the text. */
    @Test
    void namesThatAreTakenAreKept() throws IOException {
        Path table = Files.writeString(temp.resolve("pixels.csv"), """
                prop,pixel,x,y,part
                everything,1,0,0,a@MAP@
                every everything,1,2,0,a@MAP@
                rose,1,4,0,
                rose 1,1,6,0,rose
                rose 2,1,8,0,rose
                1,1,10,0,
                2,1,12,0,
                "a ""quote\"\"\",1,14,0,
                """);
        Path folder = temp.resolve("garden");
        Ran.with("new", folder, "--map", table);
        assertThat(Files.readString(folder.resolve("show.json")))
                .contains(
                        "\"every everything 1\": [\"*\"]",
                        "\"every rose\": [\"rose *\"]",
                        "\"every rose 1\": [\"*/rose\"]",
                        "\"a@MAP@\": [\"*/a@MAP@\"]");
        isSound(folder);
    }

    /** Whatever hangs where, the show on it is without a warning. Seeds 1 to 24. */
    @Test
    void everyTableHasASoundShow() throws IOException {
        for (int seed = 1; seed <= 24; seed++) {
            Path table = Files.writeString(temp.resolve("table-" + seed + ".csv"), table(new Random(seed)));
            Path folder = temp.resolve("garden-" + seed);
            assertThat(Ran.with("new", folder, "--map", table).code()).isZero();
            isSound(folder);
        }
    }

    /** One to thirty props of one to twenty pixels, in a line, in a plane or in space, with parts here and there. */
    private static String table(Random random) {
        StringBuilder csv = new StringBuilder("prop,pixel,x,y,z,part\n");
        int dimensions = 1 + random.nextInt(3);
        int props = 1 + random.nextInt(random.nextBoolean() ? 3 : 30);
        for (int prop = 0; prop < props; prop++) {
            String name = List.of("rose-", "bed ", "lamp", "gate").get(random.nextInt(4)) + prop;
            int pixels = random.nextInt(4) == 0 ? 1 : 1 + random.nextInt(20);
            for (int pixel = 1; pixel <= pixels; pixel++) {
                csv.append(name).append(',').append(pixel).append(',').append(100 * prop + pixel);
                for (int axis = 1; axis < 3; axis++) {
                    csv.append(',').append(axis < dimensions ? random.nextInt(100) : 0);
                }
                csv.append(',').append(random.nextInt(3) == 0 ? "tip" : "").append('\n');
            }
        }
        return csv.toString();
    }

    @ParameterizedTest
    @ValueSource(strings = {"display.json", "show.json"})
    void nothingIsReplaced(String name) throws IOException {
        Path mine = Files.writeString(temp.resolve(name), "mine");
        Ran ran = Ran.with("new", temp).without(temp);
        assertThat(ran)
                .isEqualTo(new Ran(
                        1,
                        "",
                        "duskloom: " + name + " exists already, and nothing is replaced; name another folder\n"));
        assertThat(mine).hasContent("mine");
        try (Stream<Path> files = Files.list(temp)) {
            assertThat(files).containsExactly(mine);
        }
    }

    @Test
    void nothingIsReplacedByTheCopyOfATable() throws IOException {
        Path table = Files.writeString(temp.resolve("pixels.csv"), "prop,pixel,x,y\nfence,1,0,0\n");
        Path folder = Files.createDirectory(temp.resolve("garden"));
        Path mine = Files.writeString(folder.resolve("map.csv"), "mine");
        assertThat(Ran.with("new", folder, "--map", table).code()).isEqualTo(1);
        assertThat(mine).hasContent("mine");
        assertThat(folder.resolve("show.json")).doesNotExist();
    }

    @Test
    void aTableWithErrorsMakesNothing() throws IOException {
        Path table = Files.writeString(temp.resolve("pixels.csv"), "prop,pixel,x\nfence,1,0\n");
        Path folder = temp.resolve("garden");
        Ran ran = Ran.with("new", folder, "--map", table).without(temp);
        assertThat(ran.code()).isEqualTo(3);
        assertThat(ran.err()).startsWith("pixels.csv:1:1: error: the column \"y\" is missing");
        assertThat(folder).doesNotExist();
        assertThat(Ran.with("new", folder, "--map", temp.resolve("pixel.csv")).err())
                .contains("there is no such file", "pixels.csv");
        assertThat(folder).doesNotExist();
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void whereNothingCanBeMadeIsSaid() throws IOException {
        Path file = Files.writeString(temp.resolve("file"), "");
        assertThat(Ran.with("new", file).without(temp))
                .isEqualTo(
                        new Ran(1, "", "duskloom: file/display.json cannot be made: file is a file, not a folder\n"));
        assertThat(Ran.with("new", "-").code()).isEqualTo(2);
        Path closed = Files.createDirectory(
                temp.resolve("closed"),
                PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("r-xr-xr-x")));
        Assumptions.assumeFalse(Files.isWritable(closed), "who runs this may write everywhere");
        assertThat(Ran.with("new", closed).code()).isEqualTo(1);
    }

    private static void isSound(Path folder) {
        Ran check = Ran.with("check", folder.resolve("show.json"));
        assertThat(check.err()).as(folder.toString()).isEmpty();
        assertThat(check.code()).isZero();
    }

    /** Every pixel lights up at some time. */
    private static void isSeen(Path folder) throws IOException {
        assertThat(Ran.with("render", folder.resolve("show.json"), "-o", folder.resolve("out"))
                        .code())
                .isZero();
        String[] frames = Files.readString(folder.resolve("out/frames.json")).split("\"pixels\": ");
        int pixels = Integer.parseInt(frames[1].substring(0, frames[1].indexOf(',')));
        byte[] rgb = Files.readAllBytes(folder.resolve("out/frames.rgb"));
        int[] brightest = new int[pixels];
        for (int i = 0; i < rgb.length; i++) {
            int pixel = i / 3 % pixels;
            brightest[pixel] = Math.max(brightest[pixel], rgb[i] & 0xFF);
        }
        assertThat(brightest).doesNotContain(0).hasSize(pixels);
    }
}
