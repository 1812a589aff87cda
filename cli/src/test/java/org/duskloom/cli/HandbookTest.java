package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HexFormat;
import java.util.List;
import java.util.function.Predicate;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the handbook says can be typed and copied, works as it stands there. */
class HandbookTest {
    private static final String HANDBOOK = "demos/reference/handbook.md";

    @TempDir
    private Path folder;

    private ReadersFolder reader;

    @BeforeEach
    void copyDemos() throws IOException {
        reader = new ReadersFolder(folder);
    }

    /** What is left are the pieces that the other tests put to use. */
    @Test
    void everyCommandRunsAndEveryFileIsSound() throws IOException {
        List<String> pieces = reader.follow(Guide.of(HANDBOOK));
        assertThat(reader.written())
                .contains("evening/map.csv", "evening/show.json", "evening/display.json", "evening/night.json");
        assertThat(reader.commands()).isGreaterThanOrEqualTo(35);
        assertThat(pieces)
                .satisfiesExactly(
                        mask -> assertThat(mask).contains("\"passes\": 0"),
                        music -> assertThat(music).contains("\"tempo\": 128"),
                        follower -> assertThat(follower).contains("\"follow\": \"low\""),
                        ports -> assertThat(ports).startsWith("\"ports\":"),
                        supplies -> assertThat(supplies).startsWith("\"kinds\":"));
    }

    /** Five pixels in a row: those that are seen are always the first ones, until after four seconds all are. */
    @Test
    void theMaskUncoversFromTheLeft() throws IOException {
        String cue = pieceWith("\"passes\": 0");
        Files.writeString(reader.resolve("row.csv"), "prop,pixel,x,y\na,1,0,0\na,2,1,0\na,3,2,0\na,4,3,0\na,5,4,0\n");
        Path show = Files.writeString(reader.resolve("mask.json"), """
                {"duskloom": "timeline/1", "map": "row.csv", "groups": {"garden": ["a"]}, "rate": 10, "length": "5s",
                 "layers": [{"cues": [{"on": "garden", "effect": "wash"}]}, {"mask": true, "cues": [%s]}]}
                """.formatted(cue));
        assertThat(Ran.with("render", show, "-o", reader.resolve("mask")).code())
                .isZero();
        byte[] rgb = Files.readAllBytes(reader.resolve("mask/frames.rgb"));
        int before = 0;
        for (int frame = 0; frame < 50; frame++) {
            int seen = 0;
            while (seen < 5 && rgb[15 * frame + 3 * seen] != 0) {
                seen++;
            }
            for (int hidden = seen; hidden < 5; hidden++) {
                assertThat(rgb[15 * frame + 3 * hidden]).isZero();
            }
            assertThat(seen).isBetween(before, before + 1);
            before = seen;
        }
        assertThat(before).isEqualTo(5);
    }

    /** The music of the handbook under its cue that follows it: at 128 beats a minute a beat lasts 15/32 s. */
    @Test
    void theMusicIsCounted() throws IOException {
        String music = pieceWith("\"tempo\": 128").strip();
        String cue = pieceWith("\"follow\": \"low\"");
        Files.writeString(reader.resolve("row.csv"), "prop,pixel,x,y\ntrellis,1,0,0\ntrellis,2,1,0\n");
        Files.write(reader.resolve("evening.wav"), HexFormat.of().parseHex(SILENCE));
        Path show = Files.writeString(
                reader.resolve("music.json"), """
                {"duskloom": "timeline/1", "map": "row.csv", "length": "2:00", %s, "layers": [{"cues": [
                 %s, {"at": "@chorus+2b", "for": "2 bars", "on": "trellis", "effect": "wash"}]}]}
                """.formatted(music.substring(1, music.length() - 1), cue));
        Ran ran = Ran.with("check", show, "--times", "--fast");
        assertThat(ran.err()).isEmpty();
        assertThat(ran.out()).contains("43.4375s  47.1875s");
    }

    /** A WAV file of four samples: IBM and Microsoft's RIFF WAVE of 1991. */
    private static final String SILENCE =
            "524946462c00000057415645666d7420100000000100010044ac0000885801000200100064617461080000000000000000000000";

    /** The ports of the guide in place of the garden's own. */
    @Test
    void thePortsFitTheGarden() throws IOException {
        Path display = gardenWiredBy("ports");
        Ran ran = Ran.with("check", display);
        assertThat(ran.code()).as(ran.err()).isZero();
        assertThat(ran.out()).contains("ports    2");
    }

    /** The kinds and supplies of the guide in place of the garden's own. */
    @Test
    void theSuppliesFitTheGarden() throws IOException {
        gardenWiredBy("kinds");
        Ran ran = Ran.with("report", reader.resolve("demos/garden/show.json"));
        assertThat(ran.code()).as(ran.err()).isZero();
        assertThat(ran.out()).contains("shed").contains("122");
    }

    /** The display of the garden, with the piece of the handbook that begins so in place of its own wiring. */
    private Path gardenWiredBy(String field) throws IOException {
        String wiring = piece(text -> text.startsWith("\"" + field + "\":"));
        Path display = reader.resolve("demos/garden/display.json");
        String garden = Files.readString(display);
        return Files.writeString(display, garden.substring(0, garden.indexOf("\"kinds\":")) + wiring + "}");
    }

    private static String pieceWith(String part) throws IOException {
        return piece(text -> text.contains(part));
    }

    /** The first piece of JSON in the handbook that is so. */
    private static String piece(Predicate<String> which) throws IOException {
        return Guide.of(HANDBOOK).blocks("json").stream()
                .map(Guide.Block::text)
                .filter(which)
                .findFirst()
                .orElseThrow();
    }
}
