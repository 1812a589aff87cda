package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** {@code diff}, of 80 frames with 20 pixels: two daisies of 6 and a fence of 8. */
class DiffCommandTest {
    private static final int FRAME_BYTES = 60;

    @TempDir
    private Path folder;

    private Path show;

    @BeforeEach
    void render() throws IOException {
        show = Garden.in(folder.resolve("garden"));
        render("a", show);
        render("b", show);
    }

    private void render(String name, Path which, Object... more) {
        Object[] arguments = new Object[4 + more.length];
        System.arraycopy(new Object[] {"render", which, "-o", folder.resolve(name)}, 0, arguments, 0, 4);
        System.arraycopy(more, 0, arguments, 4, more.length);
        Ran ran = Ran.with(arguments);
        assertThat(ran.code()).as(ran.err()).isZero();
    }

    private Ran diff(Object... arguments) {
        Object[] all = new Object[arguments.length + 1];
        all[0] = "diff";
        System.arraycopy(arguments, 0, all, 1, arguments.length);
        return Ran.with(all).without(folder);
    }

    private Ran diffAb() {
        return diff(folder.resolve("a"), folder.resolve("b"));
    }

    /** Changes a colour of b by so many codes, toward the middle. */
    private void change(int frame, int pixel, int color, int codes) throws IOException {
        Path file = folder.resolve("b/frames.rgb");
        byte[] rgb = Files.readAllBytes(file);
        int at = FRAME_BYTES * frame + 3 * pixel + color;
        rgb[at] += (byte) ((rgb[at] & 0xFF) < 128 ? codes : -codes);
        Files.write(file, rgb);
    }

    @Test
    void theSameIsTheSame() {
        Ran same = new Ran(0, "a and b are the same: 80 frames, 20 pixels\n", "");
        assertThat(diffAb()).isEqualTo(same);
    }

    /** A show is rendered for it. */
    @Test
    void aShowIsComparedWithItsFrames() throws IOException {
        Ran same = new Ran(0, "a and garden/show.json are the same: 80 frames, 20 pixels\n", "");
        assertThat(diff(folder.resolve("a"), show)).isEqualTo(same);
        Files.writeString(show, Files.readString(show).replace("0.8", "0.7"));
        Ran changed = diff(show, folder.resolve("a"));
        assertThat(changed.code()).isEqualTo(1);
        assertThat(changed.out()).contains("fence ").doesNotContain("daisy-");
    }

    /** At 40 frames a second frame 7 is 0.175 s, and so on; counted by hand. */
    @Test
    void framesTimesAndPropsAreTold() throws IOException {
        change(7, 0, 1, 3);
        change(8, 5, 2, 9);
        change(8, 12, 0, 4);
        change(60, 19, 0, 1);
        Ran ran = diffAb();
        assertThat(ran.code()).isEqualTo(1);
        assertThat(ran.err()).isEmpty();
        assertThat(ran.out()).matches("(?s)" + """
                a and b differ
                3 of 80 frames differ: 7\\.\\.9 \\(0\\.175 s to 0\\.2 s\\), 60\\.\\.61 \\(1\\.5 s\\)
                the most: 9 of 255, frame 8 \\(0\\.2 s\\), daisy-1 pixel 6: #[0-9a-f]{6} and #[0-9a-f]{6}

                prop     frames  pixels  from               to                at most
                daisy-1  2       2       frame 7 \\(0\\.175 s\\)  frame 8 \\(0\\.2 s\\)   9
                fence    2       2       frame 8 \\(0\\.2 s\\)    frame 60 \\(1\\.5 s\\)  4
                """);
    }

    @Test
    void programsGetJson() throws IOException {
        change(8, 12, 0, 4);
        Ran ran = diff(folder.resolve("a"), folder.resolve("b"), "--json");
        assertThat(ran.code()).isEqualTo(1);
        assertThat(ran.out())
                .contains(
                        "\"same\": false",
                        "\"compared\": {\"firstFrame\": 0, \"frames\": 80}",
                        "\"frames\": 1",
                        "{\"firstFrame\": 8, \"frames\": 1}",
                        "\"largest\": 4",
                        "{\"name\": \"fence\", \"frames\": 1, \"pixels\": 1, \"firstFrame\": 8, \"lastFrame\": 8,");
        assertThat(diff(folder.resolve("a"), show, "--json").out()).contains("\"same\": true", "\"props\": []");
    }

    /** The JDK decodes it: where something differs there is light, and it is black everywhere else. */
    @Test
    void differencesAreDrawn() throws IOException {
        change(8, 12, 0, 1);
        Path picture = folder.resolve("diff.png");
        assertThat(diff(folder.resolve("a"), folder.resolve("b"), "-o", picture).code())
                .isEqualTo(1);
        BufferedImage drawn = ImageIO.read(picture.toFile());
        int red = 0;
        for (int y = 0; y < drawn.getHeight(); y++) {
            for (int x = 0; x < drawn.getWidth(); x++) {
                int rgb = drawn.getRGB(x, y) & 0xFFFFFF;
                red += (rgb & 0xFFFF) == 0 && rgb >> 16 >= 72 ? 1 : 0;
            }
        }
        int cell = (int) Math.round(Math.sqrt(red));
        assertThat(red).isEqualTo(cell * cell).isPositive();
        Ran again = diff(folder.resolve("a"), folder.resolve("b"), "-o", picture);
        assertThat(again.code()).isEqualTo(1);
        assertThat(again.err()).contains("--force");
    }

    /** A column stands for several frames of a long show, and hides none of them: here frame 4801 of 9600. */
    @Test
    void noFrameIsHiddenInThePictureOfALongShow() throws IOException {
        Path longShow = Garden.in(folder.resolve("long"), "240s");
        render("a", longShow, "--force");
        render("b", longShow, "--force");
        change(4801, 12, 1, 1);
        Path picture = folder.resolve("diff.png");
        diff(folder.resolve("a"), folder.resolve("b"), "-o", picture);
        BufferedImage drawn = ImageIO.read(picture.toFile());
        int green = 0;
        for (int y = 0; y < drawn.getHeight(); y++) {
            for (int x = 0; x < drawn.getWidth(); x++) {
                green += (drawn.getRGB(x, y) & 0xFF00FF) == 0 && (drawn.getRGB(x, y) & 0xFF00) != 0 ? 1 : 0;
            }
        }
        assertThat(green).isPositive();
    }

    @ParameterizedTest
    @CsvSource({
        "'\"rate\": 40', '\"rate\": 20', 'rate: 40 frames a second, and 20 frames a second'",
        "'\"rate\": 40', '\"rate\": 20', 'no frames were compared: at another rate the same number is another time'",
        "'\"length\": \"2s\"', '\"length\": \"3s\"', 'length: 80 frames, and 120 frames'",
        "'\"length\": \"2s\"', '\"length\": \"3s\"', 'the frames that were compared are the same: 0..80'"
    })
    void whatElseDiffersIsTold(String before, String after, String told) throws IOException {
        Files.writeString(show, Files.readString(show).replace(before, after));
        render("b", show, "--force");
        Ran ran = diffAb();
        assertThat(ran.code()).isEqualTo(1);
        assertThat(ran.out()).contains("a and b differ\n", told);
    }

    /** A prop more, and one pixel less: those that both have are compared all the same. */
    @Test
    void otherPixelsAreTold() throws IOException {
        Path map = folder.resolve("garden/map.csv");
        String rows = Files.readString(map).replaceAll("fence,8,.*\n", "");
        Files.writeString(map, "prop,pixel,x,y\nbench,1,5,5\n" + rows.substring(rows.indexOf('\n') + 1));
        Files.writeString(show, Files.readString(show).replace("[\"*\"]", "[\"bench\"]"));
        render("b", show, "--force");
        Ran ran = diffAb();
        assertThat(ran.code()).isEqualTo(1);
        assertThat(ran.out())
                .contains(
                        "prop daisy-1: from pixel 0 of a frame, and from pixel 1 of a frame\n",
                        "prop fence: 8 pixels, and 7 pixels\n",
                        "prop bench: not there, and 1 pixel\n",
                        " of 80 frames differ",
                        "daisy-2 ");
    }

    @Test
    void piecesWithoutACommonFrameDiffer() {
        render("b", show, "--force", "--shard", "2/2");
        render("a", show, "--force", "--shard", "1/2");
        Ran ran = diff(folder.resolve("a"), folder.resolve("b"), "-o", folder.resolve("diff.png"));
        assertThat(ran.code()).isEqualTo(1);
        assertThat(ran.out())
                .contains("frames there: frames 0..40, and frames 40..80", "there is no frame that both have");
        assertThat(ran.err()).contains("no picture was drawn");
        assertThat(folder.resolve("diff.png")).doesNotExist();
    }

    @Test
    void whatCannotBeComparedIsRefused() throws IOException {
        Ran none = diff(folder.resolve("gone"), folder.resolve("a"));
        assertThat(none.code()).isEqualTo(3);
        assertThat(none.err()).contains("gone: error: ");
        render("npy", show, "--as", "npy");
        Ran noRgb = diff(folder.resolve("npy"), folder.resolve("a"));
        assertThat(noRgb.code()).isEqualTo(3);
        assertThat(noRgb.err()).contains("render them with rgb among what is written");
        assertThat(diff(folder.resolve("a")).code()).isEqualTo(2);
        assertThat(diff(show, show, "-o", folder.resolve("diff.jpg")).code()).isEqualTo(2);
        assertThat(diff(show, show, "-o", "-", "--json").code()).isEqualTo(2);
    }

    /** Frames alone have neither a rate nor names of props. */
    @Test
    void aFileOfAFolderIsToldToBeOne() throws IOException {
        for (String name : new String[] {"frames.rgb", "frames.json"}) {
            Ran file = diff(folder.resolve("a"), folder.resolve("b").resolve(name));
            assertThat(file.code()).isEqualTo(3);
            assertThat(file.err())
                    .isEqualTo("b/" + name + ": error: is one file of rendered frames; name the folder, which holds"
                            + " frames.rgb and frames.json: b\n1 error\n");
        }
        Path alone = Files.copy(folder.resolve("b/frames.rgb"), folder.resolve("frames.rgb"));
        assertThat(diff(folder.resolve("a"), alone).err()).doesNotContain("name the folder");
    }
}
