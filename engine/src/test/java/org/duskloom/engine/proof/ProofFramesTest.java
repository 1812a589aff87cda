package org.duskloom.engine.proof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.BitSet;
import java.util.List;
import org.duskloom.engine.document.Inputs;
import org.duskloom.engine.find.FindRun;
import org.duskloom.engine.frame.FramePixels;
import org.duskloom.engine.frame.FrameReader;
import org.duskloom.engine.frame.RunStep;
import org.duskloom.engine.group.GroupReader;
import org.duskloom.engine.group.GroupTree;
import org.duskloom.engine.map.Maps;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.api.Test;

/** Proofs as frames, and their steps by themselves. */
class ProofFramesTest {
    private static final PixelMap MAP = Maps.map("""
            prop,pixel,x,y,part
            rake,1,0,0,tip
            rake,2,0,1,
            hoe,1,5,0,
            """);

    private static final GroupTree GROUPS =
            GroupReader.read(Inputs.json("{\"tools\": [\"rake\", \"hoe\"]}"), MAP, new Problems());

    private static final Proof PROOF = Proof.of(GROUPS);

    private final ProofFrames frames = new ProofFrames(PROOF, "proof of tools", FramePixels.of(MAP));

    private static byte[] read(FrameReader reader, long frame) throws Exception {
        byte[] rgb = new byte[3 + 9];
        reader.read(frame, rgb, 3);
        assertThat(rgb).as("what is before the frame stays").startsWith(0, 0, 0);
        return rgb;
    }

    /** Captions follow each other without a gap, and together they are the whole. */
    @Test
    void everyFrameIsInOneStep() {
        List<RunStep> steps = frames.info().steps();
        long next = 0;
        for (int i = 0; i < steps.size(); i++) {
            assertThat(steps.get(i).firstFrame()).isEqualTo(next);
            assertThat(steps.get(i).caption()).isEqualTo(PROOF.steps().get(i).caption());
            next += steps.get(i).frames();
        }
        assertThat(next).isEqualTo(PROOF.frameCount()).isEqualTo(frames.info().showFrames());
        assertThat(frames.info().rate()).isEqualTo(Proof.RATE);
        assertThat(frames.info().title()).isEqualTo("proof of tools");
    }

    /** A frame is what its step paints, from whichever frame one comes. */
    @Test
    void framesMayBeHadInAnyOrder() throws Exception {
        FrameReader reader = frames.reader();
        for (long frame = frames.info().showFrames() - 1; frame >= 0; frame -= 7) {
            RunStep step = stepOf(frame);
            byte[] expected = new byte[12];
            PROOF.step(step.caption())
                    .orElseThrow()
                    .steps()
                    .get(0)
                    .paint((int) (frame - step.firstFrame()), expected, 3, 12);
            assertThat(read(reader, frame)).isEqualTo(expected);
            assertThat(read(frames.reader(), frame)).as("another reader").isEqualTo(expected);
        }
    }

    private RunStep stepOf(long frame) {
        return frames.info().steps().stream()
                .filter(step -> frame >= step.firstFrame() && frame < step.firstFrame() + step.frames())
                .findFirst()
                .orElseThrow();
    }

    /** Whoever types the name of a step need not mind capitals; one that there is not gives nothing. */
    @Test
    void aStepIsFoundByItsName() {
        assertThat(PROOF.step("PROP Rake").orElseThrow().steps()).hasSize(1);
        assertThat(PROOF.step("prop spade")).isEmpty();
    }

    /** Of the other prop nothing is left, and steps that would be dark are left out. */
    @Test
    void onlySomePixels() throws Exception {
        Proof hoe = PROOF.only(new int[] {2});
        ProofFrames frames = new ProofFrames(hoe, "hoe", FramePixels.of(MAP));
        assertThat(hoe.steps())
                .extracting(ProofStep::caption)
                .contains("prop hoe")
                .doesNotContain("prop rake", "part tip");
        for (long frame = 0; frame < hoe.frameCount(); frame++) {
            byte[] rgb = read(frames.reader(), frame);
            for (int at = 3; at < 9; at++) {
                assertThat(rgb[at]).isZero();
            }
        }
        assertThat(hoe.steps()).allSatisfy(step -> assertThat(step.isSeen(3)).isTrue());
    }

    @Test
    void paintsWithinItsFrame() {
        byte[] rgb = new byte[12];
        ProofLight light = new ProofLight(rgb, 3, 9);
        light.fill(0x14);
        assertThat(rgb).containsExactly(0, 0, 0, 20, 20, 20, 20, 20, 20, 0, 0, 0);
        light.set(1, 0x123456);
        assertThat(rgb).containsExactly(0, 0, 0, 20, 20, 20, 0x12, 0x34, 0x56, 0, 0, 0);
        BitSet second = new BitSet();
        second.set(1);
        light.keep(second);
        assertThat(rgb).containsExactly(0, 0, 0, 0, 0, 0, 0x12, 0x34, 0x56, 0, 0, 0);
        assertThat(light.isLit()).isTrue();
        light.keep(new BitSet());
        assertThat(light.isLit()).isFalse();
    }

    /** In wiring order every third pixel, beginning with the first of the round. */
    @Test
    void saysWhichPixelsARoundLights() {
        List<ProofStep> steps = Proof.ofFinding(new FindRun(7, 3), 4, 0.5).steps();
        assertThat(steps)
                .extracting(ProofStep::sight)
                .anyMatch(sight -> sight.endsWith("in wiring order pixel 1, 4 and so on are lit"))
                .anyMatch(sight -> sight.endsWith("in wiring order pixel 3, 6 and so on are lit"));
        assertThat(Proof.ofFinding(new FindRun(7, 1), 4, 0.5).steps())
                .extracting(ProofStep::sight)
                .anyMatch(sight -> sight.endsWith("all pixels are lit"))
                .contains("all is dark for a moment; no photo");
        assertThatThrownBy(() -> Proof.ofFinding(new FindRun(7, 1), 3, 0.5))
                .isInstanceOf(IllegalArgumentException.class);
    }

    /** The pages say how many photos there will be: dark, lit and two for every bit, in each round. */
    @Test
    void theGuideCountsPhotos() {
        FindRun run = new FindRun(50, 2);
        int photos = 2 * (2 + 2 * run.code().bits());
        assertThat(FindGuide.of(run))
                .contains(photos + " photos in their order")
                .contains("there are 2 rounds");
        assertThat(FindGuide.of(new FindRun(50, 1))).doesNotContain("rounds").doesNotContain("PHOTOS");
    }

    /** IEC 61966-2-1: half of the light has the code 188 of 255. */
    @Test
    void lightIsAShareOfLinearLight() {
        ProofStep lit = Proof.ofFinding(new FindRun(3, 1), 4, 0.5).steps().stream()
                .filter(step -> step.sight().contains("all pixels are lit"))
                .findFirst()
                .orElseThrow();
        byte[] rgb = new byte[9];
        lit.paint(0, rgb, 0, 9);
        assertThat(rgb).containsOnly(188);
    }
}
