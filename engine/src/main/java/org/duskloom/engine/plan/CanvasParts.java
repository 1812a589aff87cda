package org.duskloom.engine.plan;

import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.effect.PartFinder;
import org.duskloom.engine.group.Member;
import org.duskloom.engine.map.Part;
import org.duskloom.engine.map.Prop;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.show.Show;

/** Finds the parts that a setting names among the pixels of a canvas. */
final class CanvasParts implements PartFinder {
    private final Show show;
    private final CanvasGrounds grounds;
    private final List<Integer> together;
    private final int[] stagePixels;
    private final int[] memberOf;

    CanvasParts(Show show, CanvasGrounds grounds, List<Integer> together, int[] stagePixels, int[] memberOf) {
        this.show = show;
        this.grounds = grounds;
        this.together = together;
        this.stagePixels = stagePixels;
        this.memberOf = memberOf;
    }

    @Override
    public Optional<int[]> find(int member, String address) {
        Set<Integer> found = new LinkedHashSet<>();
        membersOf(member).forEach(each -> addPart(each, address, found));
        if (found.isEmpty() && grounds.isWhole()) {
            TextNode written = new TextNode(Location.ofFile(""), address);
            show.groups()
                    .resolve(List.of(written), new Problems())
                    .orElse(List.of())
                    .forEach(each -> {
                        for (int pixel : each.pixels()) {
                            found.add(pixel);
                        }
                    });
        }
        int[] canvasPixels = found.stream()
                .mapToInt(pixel -> Arrays.binarySearch(stagePixels, pixel))
                .filter(index -> index >= 0 && memberOf[index] == member)
                .toArray();
        return canvasPixels.length == 0 ? Optional.empty() : Optional.of(canvasPixels);
    }

    @Override
    public String memberName(int member) {
        return grounds.name(together.get(member));
    }

    @Override
    public List<String> known(int member) {
        Set<String> paths = new LinkedHashSet<>();
        for (Member each : membersOf(member)) {
            String inside = each.partPath().isEmpty() ? "" : each.partPath() + "/";
            prop(each).partPaths().stream()
                    .filter(path -> path.startsWith(inside))
                    .forEach(path -> paths.add(path.substring(inside.length())));
        }
        if (grounds.isWhole()) {
            grounds.members().forEach(each -> paths.add(each.name()));
        }
        return List.copyOf(paths);
    }

    private List<Member> membersOf(int member) {
        return grounds.isWhole() ? grounds.members() : List.of(grounds.member(together.get(member)));
    }

    private void addPart(Member member, String address, Set<Integer> found) {
        String inside = member.partPath();
        Prop prop = prop(member);
        Optional<Part> part = prop.part(inside.isEmpty() ? address : inside + "/" + address);
        part.ifPresent(present -> {
            for (int pixel : present.pixels()) {
                found.add(prop.firstPixel() + pixel);
            }
        });
    }

    private Prop prop(Member member) {
        return show.map().props().get(member.propIndex());
    }
}
