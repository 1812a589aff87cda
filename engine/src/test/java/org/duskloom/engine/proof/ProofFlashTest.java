package org.duskloom.engine.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.duskloom.engine.document.Inputs;
import org.duskloom.engine.find.FindRun;
import org.duskloom.engine.frame.FramePixels;
import org.duskloom.engine.frame.FrameReader;
import org.duskloom.engine.group.GroupReader;
import org.duskloom.engine.map.Maps;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Nobody is to get a fit from a proof. WCAG 2.2, success criterion 2.3.1, allows three flashes within any second, each
 * a pair of opposing changes of light. Here any change of a pixel counts, however small: that is more than WCAG counts.
 */
class ProofFlashTest {
    private static final int FRAMES_OF_A_SECOND = 20;

    /** The most opposing changes that any pixel has within a second, also where the frames are played in a loop. */
    private static int mostChanges(Proof proof, int pixels) throws IOException {
        ProofFrames frames = new ProofFrames(proof, "proof", FramePixels.unnamed(pixels));
        int count = (int) frames.info().showFrames();
        int[][] light = new int[count + FRAMES_OF_A_SECOND][pixels];
        try (FrameReader reader = frames.reader()) {
            byte[] rgb = new byte[3 * pixels];
            for (int frame = 0; frame < light.length; frame++) {
                reader.read(frame % count, rgb, 0);
                for (int pixel = 0; pixel < pixels; pixel++) {
                    light[frame][pixel] =
                            (rgb[3 * pixel] & 0xFF) + (rgb[3 * pixel + 1] & 0xFF) + (rgb[3 * pixel + 2] & 0xFF);
                }
            }
        }
        int most = 0;
        for (int pixel = 0; pixel < pixels; pixel++) {
            List<Integer> turns = turns(light, pixel);
            for (int i = 0; i < turns.size(); i++) {
                int first = turns.get(i);
                most = Math.max(most, (int) turns.stream()
                        .filter(turn -> turn >= first && turn < first + FRAMES_OF_A_SECOND)
                        .count());
            }
        }
        return most;
    }

    /** The frames in which a pixel that got darker gets brighter, or the other way round. */
    private static List<Integer> turns(int[][] light, int pixel) {
        List<Integer> turns = new ArrayList<>();
        int direction = 0;
        for (int frame = 1; frame < light.length; frame++) {
            int change = Integer.signum(light[frame][pixel] - light[frame - 1][pixel]);
            if (change != 0 && change != direction) {
                turns.add(frame);
                direction = change;
            }
        }
        return turns;
    }

    /** Its text says that nothing flashes: small props, many parts of the same pixels, and groups of groups. */
    @Test
    void aProofOfADisplayDoesNotFlash() throws IOException {
        PixelMap map = Maps.map("""
                prop,pixel,x,y,part
                lamp,1,0,0,a;b;c;d/e#1
                gate,1,0,5,a;b
                gate,2,0,9,b;a;d/e#2
                gate,3,0,10,c;d/e#1
                rail,1,50,15,a
                rail,2,60,15,d/e/f
                """);
        Problems problems = new Problems();
        Proof proof = Proof.of(GroupReader.read(
                Inputs.json("{\"one\": [\"lamp\"], \"all\": [\"one\", \"gate\", \"rail\"], \"same\": [\"all\"]}"),
                map,
                problems));
        assertThat(Inputs.shown(problems)).isEmpty();
        assertThat(mostChanges(proof, 6)).isBetween(1, 6);
    }

    /** Half a second is the shortest that a step is held for; its text says that it blinks twice a second at most. */
    @ParameterizedTest
    @CsvSource({"1, 1, 10", "9, 1, 10", "9, 4, 10", "16, 1, 20", "5, 2, 12"})
    void aRunForACameraBlinksTwiceASecondAtMost(int pixels, int apart, int holdFrames) throws IOException {
        assertThat(mostChanges(Proof.ofFinding(new FindRun(pixels, apart), holdFrames, 1), pixels))
                .isBetween(1, 4);
    }
}
