package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Whatever stands in a file, in its name or on the command line: a message shows it, but it never reaches the terminal
 * as something that acts. Control characters (C0 and C1 of ISO/IEC 6429, which begin escape sequences, ring and delete)
 * and marks of direction (Unicode Standard Annex 9) are escaped, and a line end does not make two lines of one message.
 */
class HostileTextTest {
    /** Clears the screen, rings, goes back to the start of the line, makes a new one, turns the direction. */
    private static final String HOSTILE = "\u001b[2J\u0007\r\nx: error: \u0000\u0008\u007f\u009b1m\u202e\u2028";

    private static final String IN_JSON =
            "\\u001b[2J\\u0007\\r\\nx: error: \\u0000\\u0008\\u007f\\u009b1m\\u202e\\u2028";
    private static final Pattern TEXT = Pattern.compile("\"((?:[^\"\\\\]|\\\\.)*)\"");
    private static final Pattern LINE = Pattern.compile("[^ ]*: (error|warning): .*"
            + "|[^ ]*: \\d+ [a-z]+.*"
            + "|and \\d+ more"
            + "|\\d+ errors?(, \\d+ warnings?)?|\\d+ warnings?"
            + "|duskloom( [a-z]+)?: .*|'duskloom( [a-z]+)? --help' shows what it takes\\.");

    private static final String SHOW = """
            {"duskloom": "timeline/1", "title": "Longest day", "display": "display.json", "rate": "40", "length": "8s",
             "palettes": {"dusk": ["red", ["blue", 0.5]], "dawn": {"stops": ["gold"], "mix": "oklab"}},
             "looks": {"glow": {"effect": "wash", "with": {"palette": "dusk"}}},
             "layers": [{"name": "ground", "blend": "screen", "cues": [
               {"name": "first", "at": "1s", "for": "2s", "on": ["daisies", "fence/left"], "look": "glow",
                "spread": "each", "axes": "own", "fit": "stretch", "order": "up", "blend": "normal",
                "stagger": {"by": "right", "time": "1s"}, "fade": {"in": "1s", "easing": "ease-in"},
                "opacity": {"keys": [["0s", 0], ["1s", 1, "ease-out"]]}},
               {"at": "3s", "until": "4s", "on": "fence", "effect": "lettering",
                "with": {"text": "Night", "font": "letters.bdf", "palette": {"keys": [["0s", "red"], ["1s", "blue"]]}}},
               {"at": "4s", "until": "5s", "on": "daisy-*", "effect": "image", "with": {"file": "pond.png"}},
               {"at": "5s", "for": "1s", "on": "daisies", "spread": "each", "effect": "morph",
                "with": {"from": "rim", "to": "top", "every": "1s"}, "repeat": {"until": "7s", "every": "1s",
                "change": {"phase": 0.1}}}]}]}""";

    private static final String DISPLAY = """
            {"duskloom": "display/1", "units": "mm",
             "shapes": {"daisy": {"build": [{"ring": {"count": 6, "radius": 90, "direction": "clockwise"}, "part": "rim"}],
                                  "parts": {"top": "1-2", "both": ["rim", "top"]}},
                        "fence": {"pixels": "fence.csv"}},
             "props": [{"name": "daisy-1", "shape": "daisy", "at": [0, 900], "mirror": "x"},
                       {"name": "daisy-2", "shape": "daisy", "at": [500, 900]},
                       {"name": "fence", "shape": "fence", "at": [0, 0]}],
             "groups": {"daisies": ["daisy-*"], "rest": {"all": ["fence"], "except": ["fence/left"]}}}""";

    private static final String FENCE = "pixel,x,y,part\n1,0,0,left\n2,50,0,left\n3,100,0,\"\"\n";
    private static final String MAP = "prop,pixel,x,y,z,part\nfence,1,0,0,0,left\nfence,2,50,0,0,left#1\n";
    private static final String FONT = """
            STARTFONT 2.1
            SIZE 8 75 75
            FONTBOUNDINGBOX 5 7 0 0
            STARTPROPERTIES 2
            FONT_ASCENT 7
            FONT_DESCENT 0
            ENDPROPERTIES
            CHARS 1
            STARTCHAR N
            ENCODING 78
            DWIDTH 6 0
            BBX 1 1 0 0
            BITMAP
            80
            ENDCHAR
            ENDFONT
            """;

    @TempDir
    private Path folder;

    @BeforeEach
    void writeShow() throws IOException {
        write("show.json", SHOW);
        write("display.json", DISPLAY);
        write("fence.csv", FENCE);
        write("map.csv", MAP);
        write("letters.bdf", FONT);
        ImageIO.write(
                new BufferedImage(2, 2, BufferedImage.TYPE_INT_RGB),
                "png",
                folder.resolve("pond.png").toFile());
    }

    private void write(String name, String text) throws IOException {
        Files.writeString(folder.resolve(name), text);
    }

    private Ran ran(Object... arguments) {
        return Ran.with(arguments).without(folder);
    }

    private static void assertHarmless(Ran ran) {
        assertThat(ran.err() + ran.out())
                .as(ran.err())
                .doesNotContainPattern("[\\p{Cntrl}&&[^\\n]]")
                .doesNotContainPattern("[\\u007f-\\u009f\\u202a-\\u202e\\u2066-\\u2069\\u2028\\u2029]");
        assertThat(ran.err().lines())
                .as(ran.err())
                .allMatch(line -> LINE.matcher(line).matches());
        assertThat(ran.err()).doesNotContain("fault in the program");
    }

    /** Without anything hostile the files are in order, so that what is said comes from what is put in. */
    @Test
    void theFilesAreSound() {
        assertThat(ran("check", folder.resolve("show.json"), folder.resolve("display.json")))
                .satisfies(ran -> assertThat(ran.err()).doesNotContain("error"))
                .extracting(Ran::code)
                .isEqualTo(0);
    }

    /**
     * Every name and every text of a file in turn is made hostile, alone or at its end, where it looks like the right
     * one.
     */
    @ParameterizedTest
    @ValueSource(strings = {"show.json", "display.json"})
    void namesAndTextsOfJson(String name) throws IOException {
        String sound = Files.readString(folder.resolve(name));
        List<MatchResult> texts = TEXT.matcher(sound).results().toList();
        assertThat(texts).hasSizeGreaterThan(45);
        int refused = 0;
        for (int i = 0; i < texts.size(); i++) {
            MatchResult text = texts.get(i);
            String hostile = (i % 2 == 0 ? text.group(1) : "") + IN_JSON;
            write(name, sound.substring(0, text.start(1)) + hostile + sound.substring(text.end(1)));
            Ran ran = ran("check", folder.resolve("show.json"), folder.resolve("display.json"));
            assertHarmless(ran);
            refused += ran.code() == 3 ? 1 : 0;
        }
        assertThat(refused).isGreaterThan(texts.size() / 2);
    }

    /** Texts that are no JSON at all: the characters stand as they are. */
    @Test
    void rawCharactersBetweenAndInValues() throws IOException {
        for (int i = 0; i < HOSTILE.length(); i++) {
            String raw = HOSTILE.substring(i, i + 1);
            for (String broken : List.of(
                    raw + SHOW,
                    SHOW + raw,
                    SHOW.replace(": \"8s\"", ": " + raw + "8s" + raw),
                    SHOW.replace("Longest", raw + "Longest"),
                    SHOW.replace("\"title\"", raw + "title"))) {
                write("show.json", broken);
                assertHarmless(ran("check", folder.resolve("show.json")));
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"fence.csv", "map.csv"})
    void cellsOfCsv(String name) throws IOException {
        String sound = Files.readString(folder.resolve(name));
        write("show.json", SHOW.replace("\"display\": \"display.json\"", "\"map\": \"map.csv\""));
        for (MatchResult cell :
                Pattern.compile("[^,\n\"]+").matcher(sound).results().toList()) {
            for (String hostile : List.of('"' + HOSTILE + '"', '"' + cell.group() + HOSTILE + '"', HOSTILE)) {
                write(name, sound.substring(0, cell.start()) + hostile + sound.substring(cell.end()));
                assertHarmless(ran("check", folder.resolve("show.json"), folder.resolve("display.json")));
                assertHarmless(ran("survey", folder.resolve("display.json"), folder.resolve(name)));
            }
        }
    }

    @Test
    void linesOfAFont() throws IOException {
        int refused = 0;
        for (MatchResult word : Pattern.compile("\\S+").matcher(FONT).results().toList()) {
            for (String hostile : List.of("\u001b[2J\u0007", word.group() + "\u001b[2J\u0007\u009b")) {
                byte[] font = (FONT.substring(0, word.start()) + hostile + FONT.substring(word.end()))
                        .getBytes(StandardCharsets.ISO_8859_1);
                Files.write(folder.resolve("letters.bdf"), font);
                Ran ran = ran("check", folder.resolve("show.json"));
                assertHarmless(ran);
                refused += ran.code() == 3 ? 1 : 0;
            }
        }
        assertThat(refused).isGreaterThan(20);
    }

    /** Names near hostile ones, so that the hint shows those. */
    @Test
    void namesThatAreAllowed() throws IOException {
        write(
                "show.json",
                SHOW.replace("\"dusk\":", "\"dusk" + IN_JSON + "\":").replace("\"glow\":", "\"glow\\u001b\":"));
        Ran ran = ran("check", folder.resolve("show.json"));
        assertHarmless(ran);
        assertThat(ran.err()).contains("\\u001b");
    }

    /** Where the system takes such names for files, they come back in messages. */
    @Test
    void namesOfFiles() throws IOException {
        Path hostile = Files.createDirectory(folder.resolve("a\u001b[2J\u0007\r\nb"));
        Path show = Files.writeString(hostile.resolve("sh\u001bow.json"), SHOW);
        assertHarmless(ran("check", show));
        assertHarmless(ran("check", hostile.resolve("none.json")));
        assertHarmless(ran("check", hostile));
        assertHarmless(ran("render", folder.resolve("show.json"), "-o", show));
        Files.copy(folder.resolve("display.json"), hostile.resolve("display.json"));
        Files.copy(folder.resolve("fence.csv"), hostile.resolve("fence.csv"));
        assertHarmless(ran("check", hostile.resolve("display.json")));
        assertHarmless(ran("check", hostile.resolve("display.json"), folder.resolve("show.json")));
        assertHarmless(ran("map", hostile.resolve("display.json"), "-o", hostile.resolve("map.csv")));
        assertHarmless(ran("map", hostile.resolve("display.json"), "-o", hostile.resolve("map.csv")));
        assertHarmless(ran("sheet", hostile.resolve("display.json"), "-o", hostile.resolve("sheets")));
        assertHarmless(ran("render", hostile.resolve("display.json"), "-o", hostile.resolve("out")));
        assertHarmless(ran("--debug", "check", hostile));
    }

    @Test
    void wordsOfTheCommandLine() {
        String show = folder.resolve("show.json").toString();
        String out = folder.resolve("out").toString();
        for (Object[] arguments : new Object[][] {
            {HOSTILE},
            {"--" + HOSTILE},
            {"help", HOSTILE},
            {"effects", HOSTILE},
            {"effects", "sweep" + HOSTILE},
            {"check"},
            {"check", show, "--" + HOSTILE},
            {"render", show, "-o", out, "--frames", HOSTILE},
            {"render", show, "-o", out, "--threads", HOSTILE},
            {"render", show, "-o", out, "--as", HOSTILE},
            {"render", show, "-o", out, HOSTILE},
            {"strip", show, "-o", out, "--at", HOSTILE},
            {"strip", show, "-o", out, "--count", HOSTILE},
            {"strip", show, "-o", out + HOSTILE},
            {"survey", show, HOSTILE.replace("\u0000", "")},
        }) {
            assertHarmless(ran(arguments));
        }
    }
}
