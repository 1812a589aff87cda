package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import org.duskloom.engine.find.FindRun;
import org.duskloom.engine.find.FindStep;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** {@code proof --find}: the run by which pixels tell a camera their numbers. */
class FindProofTest {
    /** IEC 61966-2-1: 255 (1.055 * 0.3^(1/2.4) - 0.055) = 149.0. */
    private static final byte WHITE = (byte) 149;

    @TempDir
    private Path folder;

    private Path out() {
        return folder.resolve("out");
    }

    /** Every frame of a step lights just the pixels of the step, at the light of 0.3; half a second for blinks. */
    @Test
    void framesShowTheRun() throws IOException {
        assertThat(find(Garden.display(folder))).isEqualTo(new Ran(0, "", "out: 34 steps, 560 frames\n"));
        byte[] rgb = Files.readAllBytes(out().resolve("frames.rgb"));
        FindRun run = new FindRun(18, 1);
        assertThat(rgb).hasSize(18 * 3 * 10 * run.halves());
        for (FindStep step : run.steps()) {
            int first = 10 * step.startHalves();
            for (int frame = first; frame < first + 10 * step.halves(); frame++) {
                for (int pixel = 0; pixel < 18; pixel++) {
                    int at = 3 * (18 * frame + pixel);
                    byte code = run.isLit(step, pixel) ? WHITE : 0;
                    assertThat(List.of(rgb[at], rgb[at + 1], rgb[at + 2])).containsOnly(code);
                }
            }
        }
    }

    /** Kept from when it was last looked at, in the strip of its steps. */
    @Test
    void theRunOfTheGardenIsTheSameBytes() throws Exception {
        assertThat(find(Project.file("demos/garden/display.json")).code()).isZero();
        byte[] digest = MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(out().resolve("frames.rgb")));
        assertThat(HexFormat.of().formatHex(digest))
                .isEqualTo("aa9915ae68f32a501ac1a30aeb4d9f35d2ea3aaacedc2010be3aed6a6188d4ca");
    }

    @Test
    void theStepsSayWhatToDo() throws IOException {
        find(Garden.display(folder), "--hold", "5s", "--apart", "2");
        assertThat(out().resolve("steps.txt"))
                .content()
                .startsWith("How the lights tell a camera where they hang.\n")
                .contains(
                        "on a tripod",
                        "44 photos in their order",
                        "The pixels take turns: there are 2 rounds of it.",
                        "three flashes within a second",
                        "    15 s  round 1: dark                       0    0 %  picture 1: all is dark\n",
                        "    20 s  round 1: lit                        9   30 %  picture 2: in wiring order pixel 1, 3 and so on are lit\n",
                        "round 2: bit 1 turned round",
                        "round 2: check 4",
                        "round 2: parity")
                .doesNotContain("Nothing flashes");
    }

    @Test
    void aMapWillDoAndABareNumberToo() throws IOException {
        Path map = Files.writeString(folder.resolve("map.csv"), "prop,pixel,x,y\na,1,0,0\na,2,1,0\nb,1,0,5\n");
        assertThat(find(map).err()).isEqualTo("out: 26 steps, 400 frames\n");
        byte[] ofMap = Files.readAllBytes(out().resolve("frames.rgb"));
        Ran bare = Ran.with("proof", "--find", "--pixels", "3", "-o", folder.resolve("bare"))
                .without(folder);
        assertThat(bare).isEqualTo(new Ran(0, "", "bare: 26 steps, 400 frames\n"));
        assertThat(folder.resolve("bare/frames.rgb")).hasBinaryContent(ofMap);
        assertThat(folder.resolve("bare/strip.png")).doesNotExist();
        assertThat(folder.resolve("bare/steps.txt")).content().doesNotContain("strip.png");
        assertThat(out().resolve("strip.png")).exists();
    }

    /** To set the exposure by. */
    @Test
    void oneStepCanBeHeld() throws IOException {
        assertThat(find(Garden.display(folder), "--step", "lit").err()).isEqualTo("out: 1 step, 20 frames\n");
        assertThat(Files.readAllBytes(out().resolve("frames.rgb"))).containsOnly(WHITE);
    }

    /** A whole proof of a map without groups, as that of a display. */
    @Test
    void aMapIsProvedToo() throws IOException {
        Path map = Files.writeString(folder.resolve("map.csv"), "prop,pixel,x,y\na,1,0,0\na,2,1,0\nb,1,0,5\n");
        assertThat(Ran.with("proof", map, "-o", out()).without(folder))
                .isEqualTo(new Ran(0, "", "out: 10 steps, 640 frames\n"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "DISPLAY --find --hold 0.4s | --hold is 0.4s; allowed: 500ms to 60s, in steps of 100ms",
                "DISPLAY --find --hold 61s | --hold is 61s; allowed: 500ms to 60s, in steps of 100ms",
                "DISPLAY --find --hold 550ms | --hold is 550ms; allowed: 500ms to 60s, in steps of 100ms",
                "DISPLAY --find --hold soon | --hold: the time \"soon\" has no readable number",
                "DISPLAY --find --light 0 | --light is 0; allowed: above 0, up to 1",
                "DISPLAY --find --light 1.5 | --light is 1.5; allowed: above 0, up to 1",
                "DISPLAY --find --apart 1 | --apart is 1; allowed: 2 to 16",
                "--find --pixels 3 --apart 4 | --apart is 4, but there are only 3 pixels",
                "--find --pixels 0 | --pixels is 0; allowed: 1 to 1000000",
                "--pixels 5 | --pixels is for --find",
                "DISPLAY --find --pixels 5 | --pixels takes the place of a display; leave out one of them",
                "DISPLAY --hold 1s | --hold is for --find",
                "DISPLAY --light 1 | --light is for --find",
                "DISPLAY --apart 2 | --apart is for --find",
                "DISPLAY --find --only fence | --only cannot be used with --find: every pixel needs its own number",
                "DISPLAY --find --step lid | --step: there is no step \"lid\"; did you mean \"lit\"?",
                "--find | the display is missing: name DISPLAY.json or MAP.csv, or say how many pixels there are with"
                        + " --pixels"
            })
    void wrongUseIsToldAndNothingIsWritten(String words, String said) throws IOException {
        Path display = Garden.display(folder);
        Object[] args = ("proof -o OUT " + words)
                .replace("DISPLAY", display.toString())
                .replace("OUT", out().toString())
                .split(" ");
        Ran ran = Ran.with(args);
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains(said);
        assertThat(out()).doesNotExist();
    }

    private Ran find(Path pixels, String... more) {
        Object[] args = new Object[5 + more.length];
        args[0] = "proof";
        args[1] = pixels;
        args[2] = "-o";
        args[3] = out();
        args[4] = "--find";
        System.arraycopy(more, 0, args, 5, more.length);
        return Ran.with(args).without(folder);
    }
}
