package org.duskloom.engine.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.duskloom.engine.group.Member;
import org.duskloom.engine.map.PixelMap;

/**
 * Which of the steps of a stagger each member starts at: part after part, or prop after prop. Parts of one path in
 * different props are one step; steps follow each other in the order in which the prop has its parts, whole props
 * first. Where several shapes have parts of their own, each is put next to those that it stands beside in its prop.
 */
final class PartSteps {
    private PartSteps() {}

    /** The step of each member by the part that it is. */
    static int[] byPart(List<Member> members, PixelMap map) {
        Map<Integer, Set<String>> pathsByProp = new LinkedHashMap<>();
        members.forEach(member -> pathsByProp
                .computeIfAbsent(member.propIndex(), index -> new HashSet<>())
                .add(member.partPath()));
        List<String> order = new ArrayList<>();
        pathsByProp.forEach((index, paths) -> merge(inOrder(index, paths, map), order));
        Map<String, Integer> step = new HashMap<>();
        order.forEach(path -> step.put(path, step.size()));
        return members.stream().mapToInt(member -> step.get(member.partPath())).toArray();
    }

    /** The step of each member by the prop that it is in; props in the order of the members. */
    static int[] byProp(List<Member> members) {
        Map<Integer, Integer> step = new HashMap<>();
        return members.stream()
                .mapToInt(member -> {
                    step.putIfAbsent(member.propIndex(), step.size());
                    return step.get(member.propIndex());
                })
                .toArray();
    }

    private static List<String> inOrder(int propIndex, Set<String> paths, PixelMap map) {
        List<String> ordered = new ArrayList<>();
        if (paths.contains("")) {
            ordered.add("");
        }
        map.props().get(propIndex).partPaths().stream().filter(paths::contains).forEach(ordered::add);
        return ordered;
    }

    /** Puts new paths behind the known one before them; those before all known ones before the first of these. */
    private static void merge(List<String> paths, List<String> order) {
        Set<String> known = new HashSet<>(order);
        int place = paths.stream()
                .filter(known::contains)
                .findFirst()
                .map(order::indexOf)
                .orElse(order.size());
        for (String path : paths) {
            if (known.contains(path)) {
                place = order.indexOf(path) + 1;
            } else {
                order.add(place++, path);
            }
        }
    }
}
