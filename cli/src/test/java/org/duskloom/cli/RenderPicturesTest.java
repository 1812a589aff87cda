package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Pictures that {@code render} draws. */
class RenderPicturesTest {
    @TempDir
    private Path folder;

    /** The pictures are those that the strip command draws from the frames it needs. */
    @Test
    void drawsStrips() throws IOException {
        Path show = Garden.in(folder);
        RenderRuns.render(folder, show, "out", "--strip");
        assertThat(RenderRuns.namesIn(folder.resolve("out")))
                .containsExactly("frames.json", "frames.rgb", "strip.png", "time.png");
        assertThat(Ran.with("strip", show, "-o", folder.resolve("s.png"), "--by", "cue")
                        .code())
                .isZero();
        assertThat(Ran.with("strip", show, "-o", folder.resolve("t.png"), "--kind", "time")
                        .code())
                .isZero();
        assertThat(folder.resolve("out/strip.png")).hasSameBinaryContentAs(folder.resolve("s.png"));
        assertThat(folder.resolve("out/time.png")).hasSameBinaryContentAs(folder.resolve("t.png"));
    }

    /** Of a display that one picture shows it is that picture; older ones go with the folder. */
    @Test
    void drawsTiles() throws IOException {
        Path show = Garden.in(folder);
        Path time = folder.resolve("out/time");
        Files.createDirectories(time);
        Files.writeString(time.resolve("20-39.png"), "old");
        Ran refused =
                Ran.with("render", show, "-o", folder.resolve("out"), "--tiles").without(folder);
        assertThat(refused).isEqualTo(new Ran(1, "", "duskloom: out/time exists already; use --force to replace it\n"));
        RenderRuns.render(folder, show, "out", "--strip", "--tiles", "--force");
        assertThat(RenderRuns.namesIn(folder.resolve("out")))
                .containsExactly("frames.json", "frames.rgb", "strip.png", "time", "time.png");
        assertThat(RenderRuns.namesIn(time)).containsExactly("00-19.png");
        assertThat(time.resolve("00-19.png")).hasSameBinaryContentAs(folder.resolve("out/time.png"));
        assertThat(folder.resolve("out/frames.json")).content().doesNotContain("png");
        assertThat(Ran.with("render", show, "-o", folder.resolve("out"), "--force")
                        .without(folder)
                        .err())
                .contains("out/time is of an earlier rendering; --tiles draws it anew\n");
    }

    /** A folder that holds anything else would be lost. */
    @Test
    void tilesDoNotReplaceAFolderOfSomethingElse() throws IOException {
        Path show = Garden.in(folder);
        Path notes = folder.resolve("out/time/notes.txt");
        Files.createDirectories(notes.getParent());
        Files.writeString(notes, "old");
        assertThat(Ran.with("render", show, "-o", folder.resolve("out"), "--tiles", "--force")
                        .code())
                .isEqualTo(1);
        assertThat(notes).hasContent("old");
        assertThat(RenderRuns.namesIn(folder.resolve("out"))).containsExactly("time");
    }

    /** 65,600 pixels: time.png has every fifth; tiles have all, in six pictures, as a prop of 15,900 stays whole. */
    @Test
    void ofManyPixelsTimeHasSomeAndTilesHaveAll() throws IOException {
        Path show = Garden.in(folder, "2s");
        StringBuilder csv = new StringBuilder("prop,pixel,x,y\n");
        for (int pixel = 0; pixel < 65_600; pixel++) {
            int first = pixel < 600 ? 0 : pixel < 16_500 ? 600 : 16_500;
            csv.append(first == 0 ? "daisy-1" : first == 600 ? "daisy-2" : "fence");
            csv.append(',').append(pixel + 1 - first).append(',').append(pixel).append(",0\n");
        }
        Files.writeString(folder.resolve("map.csv"), csv);
        Path out = folder.resolve("out");
        String told = "out/time.png shows one pixel in 5; --tiles draws all of them, into several pictures\n";
        assertThat(Ran.with("render", show, "-o", out, "--frames", "0..3", "--strip")
                        .without(folder)
                        .err())
                .contains(told);
        Ran ran = Ran.with("render", show, "-o", out, "--frames", "0..3", "--strip", "--tiles", "--force")
                .without(folder);
        assertThat(ran.code()).as(ran.err()).isZero();
        assertThat(ran.err()).doesNotContain("one pixel in");
        assertThat(RenderRuns.namesIn(out.resolve("time")))
                .containsExactly(
                        "00000-00599.png",
                        "00600-16499.png",
                        "16500-32499.png",
                        "32500-48499.png",
                        "48500-64499.png",
                        "64500-65599.png");
    }

    @ParameterizedTest
    @ValueSource(strings = {"--strip", "--tiles"})
    void picturesNeedAFolder(String option) throws IOException {
        Ran ran = Ran.with("render", Garden.in(folder), "-o", "-", option);
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains(option + " needs a folder, and -o is the standard output");
    }

    @Test
    void tellsOfPicturesThatItDidNotDrawAnew() throws IOException {
        Path show = Garden.in(folder);
        Path out = folder.resolve("out");
        RenderRuns.render(folder, show, "out", "--strip");
        assertThat(Ran.with("render", show, "-o", out, "--force")
                        .without(folder)
                        .err())
                .contains("""
                        out/strip.png is of an earlier rendering; --strip draws it anew
                        out/time.png is of an earlier rendering; --strip draws it anew
                        """);
        assertThat(Ran.with("render", show, "-o", out, "--force", "--strip").err())
                .doesNotContain("earlier");
    }
}
