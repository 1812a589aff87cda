package org.duskloom.engine.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.duskloom.engine.document.Inputs;
import org.duskloom.engine.find.FindRun;
import org.duskloom.engine.frame.FrameBatch;
import org.duskloom.engine.frame.FramePixels;
import org.duskloom.engine.frame.FrameReader;
import org.duskloom.engine.frame.RunInfo;
import org.duskloom.engine.group.GroupReader;
import org.duskloom.engine.map.Maps;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.api.Test;

/**
 * The page to hold in hand while a proof is played. Shares are worked out by hand: the sum of all codes of a frame over
 * 7 pixels times 3 times 255, which is 5355, in hundredths and rounded up.
 */
class StepsTextTest {
    /** A gate of four pixels, one above the other, of which two are a part, and a rail of three. */
    private static final PixelMap MAP = Maps.map("""
            prop,pixel,x,y,part
            gate,1,0,0,low
            gate,2,0,10,low
            gate,3,0,20,
            gate,4,0,30,
            rail,1,50,15,
            rail,2,60,15,
            rail,3,70,15,
            """);

    private static String text(Proof proof, FramePixels pixels, Optional<String> guide) throws IOException {
        ProofFrames frames = new ProofFrames(proof, "Gate", pixels);
        RunInfo run = frames.info();
        StepsText text = new StepsText(run, guide);
        try (FrameReader reader = frames.reader()) {
            for (long frame = 0; frame < run.showFrames(); frame++) {
                byte[] rgb = new byte[run.frameBytes()];
                reader.read(frame, rgb, 0);
                text.count(FrameBatch.of(frame, rgb));
            }
        }
        return text.lines();
    }

    private static String proof() throws IOException {
        Proof proof = Proof.of(GroupReader.read(Inputs.json("{\"both\": [\"rail\", \"gate\"]}"), MAP, new Problems()));
        return text(proof, FramePixels.of(MAP), Optional.empty());
    }

    private static String line(String caption) throws IOException {
        return proof().lines()
                .filter(line ->
                        line.length() > 40 && line.substring(10, 40).strip().equals(caption))
                .findFirst()
                .orElseThrow();
    }

    /** White 765, dim 3 * 20, red 224 + 16 + 16: 2 * 765 + 3 * 60 + 2 * 256 = 2222 of 5355 is 41.5 in a hundred. */
    @Test
    void tellsHowManyAreLitAndHowMuch() throws IOException {
        assertThat(line("first pixel"))
                .isEqualTo(
                        "     0 s  first pixel                         7   42 %  on every prop the first pixel is white"
                                + " and the last one red, all others are dim");
    }

    /** The most of all frames, not of the last: the head goes on over 5 greens of 224, 2 * 765 + 5 * 224 = 2650. */
    @Test
    void tellsTheMostOfAllFramesOfAStep() throws IOException {
        assertThat(line("running index")).startsWith("     4 s  ").contains(" 7   50 %  ");
        assertThat(line("prop rail")).startsWith("    23 s  ").contains(" 3   24 %  ");
        assertThat(line("part low")).startsWith("    24 s  ").contains(" 2   19 %  ");
    }

    /** IEC 61966-2-1 gives 89 for a tenth of the light: 89 of 255 is 34.9 in a hundred, a channel alone 11.6. */
    @Test
    void colorsAreATenthOfTheLight() throws IOException {
        assertThat(line("colour white")).contains(" 7   35 %  ");
        assertThat(line("colour red")).contains(" 7   12 %  ");
    }

    /** The rail white, the gate amber: 3 * 765 + 4 * 415 = 3955 of 5355 is 73.9, more than any other step. */
    @Test
    void warnsAboveTheStepThatDrawsTheMost() throws IOException {
        List<String> lines = proof().lines().toList();

        assertThat(lines)
                .contains("The most is 74 % of that, in \"group both\": wire, fuses and supplies must bear it."
                        + " Nothing flashes.");
        int brightest = lines.indexOf(line("group both"));
        assertThat(lines.get(brightest)).contains(" 7   74 %  ");
        assertThat(lines.get(brightest - 2)).startsWith("          * The next step draws the most current of all");
        assertThat(lines.get(brightest - 1)).contains("local codes and licensed practice");
        assertThat(lines.stream().filter(line -> line.contains("The next step")))
                .hasSize(1);
    }

    /** A strip of pictures is made only where it is known where pixels hang. */
    @Test
    void namesTheStripWhereThereIsOne() throws IOException {
        Proof proof = Proof.ofFinding(new FindRun(4, 1), 2, 1);

        assertThat(proof()).contains("here and in strip.png");
        assertThat(text(proof, FramePixels.unnamed(4), Optional.empty()))
                .contains("at which the steps begin.\n")
                .doesNotContain("strip.png");
    }

    /** What blinks is not said not to flash. */
    @Test
    void aGuideStandsFirst() throws IOException {
        FindRun run = new FindRun(4, 1);
        String text = text(Proof.ofFinding(run, 2, 1), FramePixels.unnamed(4), Optional.of(FindGuide.of(run)));

        assertThat(text)
                .startsWith("How the lights tell a camera where they hang.\n")
                .containsSubsequence("sensitive to flashing light should look away", "What is seen, at 20 frames")
                .contains("The most is 100 % of that")
                .doesNotContain("Nothing flashes", "PHOTOS", "ROUNDS", "What the proof shows");
    }

    /** Of so many photos; rounds are told only where there are some. */
    @Test
    void theGuideCountsPhotosAndRounds() {
        FindRun at = new FindRun(5, 1);
        assertThat(FindGuide.of(at)).contains("16 photos in their order").doesNotContain("take turns");
        FindRun turns = new FindRun(10, 3);
        assertThat(FindGuide.of(turns))
                .contains(turns.pictures().size() + " photos")
                .contains("The pixels take turns: there are 3 rounds of it.");
    }
}
