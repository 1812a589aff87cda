package org.duskloom.engine.proof;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.group.GroupTree;
import org.duskloom.engine.group.Member;
import org.duskloom.engine.map.Part;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.map.Prop;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.text.Counted;

/** The steps that prove wiring and orientation of a display or a map. */
final class DisplaySteps {
    private static final int LONG = 6 * 20;
    private static final int STILL = 4 * 20;
    private static final int SHORT = 20;

    private final PixelMap map;
    private final List<ProofStep> steps = new ArrayList<>();

    private DisplaySteps(PixelMap map) {
        this.map = map;
    }

    /** All of them, in order. */
    static List<ProofStep> of(GroupTree groups) {
        DisplaySteps all = new DisplaySteps(groups.map());
        all.addWiring();
        all.addOrientation();
        all.addProps();
        all.addParts();
        all.addGroups(groups);
        all.addColors();
        return all.steps;
    }

    private void addWiring() {
        steps.add(new ProofStep(
                "first pixel",
                "on every prop the first pixel is white and the last one red, all others are dim",
                STILL,
                (share, light) -> {
                    light.fill(ProofLight.DIM & 0xFF);
                    for (Prop prop : map.props()) {
                        light.set(prop.firstPixel() + prop.pixelCount() - 1, ProofLight.RED);
                        light.set(prop.firstPixel(), ProofLight.WHITE);
                    }
                }));
        steps.add(new ProofStep(
                "running index",
                "on every prop a white light runs along the wire and leaves green behind it, all arriving together",
                LONG,
                (share, light) -> map.props().forEach(prop -> run(prop, share, light))));
    }

    private static void run(Prop prop, double share, ProofLight light) {
        int head = (int) (share * prop.pixelCount());
        for (int i = 0; i < head; i++) {
            light.set(prop.firstPixel() + i, ProofLight.GREEN);
        }
        light.set(prop.firstPixel() + head, ProofLight.WHITE);
    }

    private void addOrientation() {
        Heights stage = Heights.ofStage(map);
        steps.add(new ProofStep(
                "stage up",
                "a white bar rises level through the whole display; amber is above it, blue below",
                LONG,
                (share, light) -> stage.paint(share, light)));
        Heights own = Heights.ofEachPropItself(map);
        steps.add(new ProofStep(
                "own up",
                "the same bar rises along each shape's own up: on a prop that is mounted turned, it runs the way the"
                        + " prop is turned",
                LONG,
                (share, light) -> own.paint(share, light)));
    }

    private void addProps() {
        for (Prop prop : map.props()) {
            steps.add(new ProofStep("prop " + prop.name(), "only " + prop.name() + " is lit", SHORT, (share, light) -> {
                for (int i = 0; i < prop.pixelCount(); i++) {
                    light.set(prop.firstPixel() + i, ProofLight.AMBER);
                }
            }));
        }
    }

    private void addParts() {
        Map<String, List<int[]>> byPath = new LinkedHashMap<>();
        for (Prop prop : map.props()) {
            for (String path : prop.partPaths()) {
                int[] pixels = prop.part(path).map(Part::pixels).orElseThrow();
                for (int i = 0; i < pixels.length; i++) {
                    pixels[i] += prop.firstPixel();
                }
                byPath.computeIfAbsent(path, unseen -> new ArrayList<>()).add(pixels);
            }
        }
        byPath.forEach((path, everywhere) -> steps.add(new ProofStep(
                "part " + path,
                "the part runs in its own order, white head over green, on " + Counted.of(everywhere.size(), "prop"),
                2 * SHORT,
                (share, light) -> everywhere.forEach(pixels -> runPart(pixels, share, light)))));
    }

    private static void runPart(int[] pixels, double share, ProofLight light) {
        int head = (int) (share * pixels.length);
        for (int i = 0; i < pixels.length; i++) {
            light.set(pixels[i], i == head ? ProofLight.WHITE : ProofLight.GREEN);
        }
    }

    private void addGroups(GroupTree groups) {
        for (String name : groups.groupNames()) {
            TextNode address = new TextNode(Location.ofFile(""), name);
            Optional<List<Member>> members = groups.resolve(List.of(address), new Problems());
            members.ifPresent(all -> steps.add(new ProofStep(
                    "group " + name,
                    "all " + Counted.of(all.size(), "member")
                            + " of the group, the first white, then amber one after the" + " other",
                    2 * SHORT,
                    (share, light) -> light(all, share, light))));
        }
    }

    /** Who sees another colour than the one that is said has found the order of the colours on the wire. */
    private void addColors() {
        int tenth = ProofLight.TENTH;
        addColor("red", tenth << 16);
        addColor("green", tenth << 8);
        addColor("blue", tenth);
        addColor("white", tenth << 16 | tenth << 8 | tenth);
    }

    private void addColor(String word, int color) {
        steps.add(new ProofStep(
                "colour " + word,
                "every pixel is " + word
                        + ", at a tenth of the light; where it has another colour, the order of the colours"
                        + " on its wire is another",
                2 * SHORT,
                (share, light) -> {
                    for (int pixel = 0; pixel < map.pixelCount(); pixel++) {
                        light.set(pixel, color);
                    }
                }));
    }

    private static void light(List<Member> members, double share, ProofLight light) {
        int reached = Math.min(members.size() - 1, (int) (1.5 * share * members.size()));
        for (int k = 0; k <= reached; k++) {
            for (int pixel : members.get(k).pixels()) {
                light.set(pixel, k == 0 ? ProofLight.WHITE : ProofLight.AMBER);
            }
        }
    }
}
