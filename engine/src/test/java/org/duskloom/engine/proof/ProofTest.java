package org.duskloom.engine.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import org.duskloom.engine.document.JsonReader;
import org.duskloom.engine.document.Node;
import org.duskloom.engine.document.SourceText;
import org.duskloom.engine.group.GroupReader;
import org.duskloom.engine.group.GroupTree;
import org.duskloom.engine.map.MapReader;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.api.Test;

/** What the steps of a proof show is compared with what a person would expect, worked out pixel by pixel. */
class ProofTest {
    /** A gate of four pixels one above the other, and a rail that hangs turned: its own up is the stage's right. */
    private static final String MAP = """
            prop,pixel,x,y,part,ownx,owny
            gate,1,0,0,low,0,0
            gate,2,0,10,low,0,10
            gate,3,0,20,high,0,20
            gate,4,0,30,high,0,30
            rail,1,50,15,,0,0
            rail,2,60,15,,0,10
            rail,3,70,15,,0,20
            """;

    private static final String GROUPS = "{\"both\": [\"rail\", \"gate\"]}";

    private final Proof proof = Proof.of(groups());

    private static GroupTree groups() {
        Problems problems = new Problems();
        PixelMap map = MapReader.read(source(MAP, problems), problems).orElseThrow();
        Node groups = JsonReader.read(source(GROUPS, problems), problems).orElseThrow();
        GroupTree tree = GroupReader.read(groups, map, problems);
        assertThat(problems.inFileOrder()).isEmpty();
        return tree;
    }

    private static SourceText source(String text, Problems problems) {
        return SourceText.of(text.getBytes(StandardCharsets.UTF_8), "t", problems)
                .orElseThrow();
    }

    private ProofStep step(String caption) {
        return proof.steps().stream()
                .filter(step -> step.caption().equals(caption))
                .findFirst()
                .orElseThrow();
    }

    private List<Integer> colors(String caption, double share) {
        ProofStep step = step(caption);
        byte[] rgb = new byte[21];
        Arrays.fill(rgb, (byte) 99);
        step.paint((int) Math.round(share * step.frames()), rgb, 0, 21);
        return java.util.stream.IntStream.range(0, 7)
                .mapToObj(i -> (rgb[3 * i] & 255) << 16 | (rgb[3 * i + 1] & 255) << 8 | rgb[3 * i + 2] & 255)
                .toList();
    }

    @Test
    void listsEveryPropPartAndGroup() {
        assertThat(proof.steps().stream().map(ProofStep::caption))
                .containsExactly(
                        "first pixel",
                        "running index",
                        "stage up",
                        "own up",
                        "prop gate",
                        "prop rail",
                        "part low",
                        "part high",
                        "group both",
                        "colour red",
                        "colour green",
                        "colour blue",
                        "colour white");
        assertThat(proof.frameCount())
                .isEqualTo(proof.steps().stream().mapToLong(ProofStep::frames).sum());
    }

    /** IEC 61966-2-1: the code of a tenth of the light is 255 * (1.055 * 0.1^(1 / 2.4) - 0.055), 89. */
    @Test
    void asksForTheOrderOfColors() {
        assertThat(colors("colour red", 0.5)).containsOnly(0x590000);
        assertThat(colors("colour green", 0.5)).containsOnly(0x005900);
        assertThat(colors("colour blue", 0)).containsOnly(0x000059);
        assertThat(colors("colour white", 0.9)).containsOnly(0x595959);
        assertThat(step("colour red").frames()).isEqualTo(2 * 20);
    }

    @Test
    void lightsOnlyWhatIsAskedFor() {
        Proof rail = proof.only(new int[] {4, 5, 6});
        assertThat(rail.steps()).extracting(ProofStep::caption).doesNotContain("prop gate", "part low", "part high");
        byte[] rgb = new byte[21];
        rail.step("first pixel").orElseThrow().steps().get(0).paint(0, rgb, 0, 21);
        assertThat(Arrays.copyOf(rgb, 12)).containsOnly(0);
        assertThat(rgb[12]).isEqualTo((byte) 255);
        assertThat(proof.step("no such")).isEmpty();
    }

    @Test
    void marksFirstAndLastPixels() {
        int dim = ProofLight.DIM;
        assertThat(colors("first pixel", 0.5))
                .containsExactly(ProofLight.WHITE, dim, dim, ProofLight.RED, ProofLight.WHITE, dim, ProofLight.RED);
    }

    /** At half of the way the head is on the third of four pixels, and on the second of three. */
    @Test
    void runsAlongEveryWireAtOnce() {
        assertThat(colors("running index", 0.5))
                .containsExactly(
                        ProofLight.GREEN, ProofLight.GREEN, ProofLight.WHITE, 0, ProofLight.GREEN, ProofLight.WHITE, 0);
    }

    /** The bar is at half of the height, 15: the whole rail is in it, none of the gate. */
    @Test
    void raisesTheBarOverTheStage() {
        List<Integer> colors = colors("stage up", 0.5);
        assertThat(colors.subList(4, 7)).containsOnly(ProofLight.WHITE);
        assertThat(colors.subList(0, 2)).containsOnly(colors.get(0)).doesNotContain(ProofLight.WHITE);
        assertThat(colors.subList(2, 4)).containsOnly(colors.get(3)).doesNotContain(colors.get(0), ProofLight.WHITE);
    }

    /** Along its own up the middle of the rail is at half of its height. */
    @Test
    void raisesTheBarAlongOwnAxes() {
        List<Integer> colors = colors("own up", 0.5);
        assertThat(colors.get(5)).isEqualTo(ProofLight.WHITE);
        assertThat(colors.get(4)).isEqualTo(colors.get(0));
        assertThat(colors.get(6)).isEqualTo(colors.get(3)).isNotEqualTo(colors.get(0));
    }

    @Test
    void lightsPropsPartsAndGroups() {
        assertThat(colors("prop rail", 0)).startsWith(0, 0, 0, 0).endsWith(ProofLight.AMBER, ProofLight.AMBER);
        assertThat(colors("part high", 0.5)).containsExactly(0, 0, ProofLight.GREEN, ProofLight.WHITE, 0, 0, 0);
        assertThat(colors("group both", 0)).startsWith(0, 0, 0, 0).endsWith(ProofLight.WHITE, ProofLight.WHITE);
        assertThat(colors("group both", 0.9)).startsWith(ProofLight.AMBER, ProofLight.AMBER);
    }
}
