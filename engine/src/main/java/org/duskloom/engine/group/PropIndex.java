package org.duskloom.engine.group;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.duskloom.engine.map.Part;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.map.Prop;

/** Finds props and their parts by name or pattern, and makes each member once. */
final class PropIndex {
    private final PixelMap map;
    private final Map<String, Member> memberByName = new HashMap<>();
    private final Map<Integer, Map<String, Part>> partsByPath = new HashMap<>();
    private final List<Integer> inNaturalOrder;

    PropIndex(PixelMap map) {
        this.map = map;
        this.inNaturalOrder = IntStream.range(0, map.props().size())
                .boxed()
                .sorted(Comparator.comparing(this::name, NaturalOrder.INSTANCE))
                .toList();
    }

    /** Indices of the props whose name matches, in the natural order of their names. */
    List<Integer> propsMatching(String pattern) {
        return inNaturalOrder.stream()
                .filter(index -> Glob.matches(pattern, name(index)))
                .toList();
    }

    private String name(int propIndex) {
        return map.props().get(propIndex).name();
    }

    /** The members that the steps lead to from a prop's part, or from the prop itself where the path is empty. */
    List<Member> members(int propIndex, String fromPath, List<String> steps) {
        if (steps.stream().noneMatch(Glob::isPattern)) {
            return exactMember(propIndex, joined(fromPath, String.join("/", steps)));
        }
        Prop prop = map.props().get(propIndex);
        List<Part> level = fromPath.isEmpty()
                ? prop.parts()
                : parts(propIndex).get(fromPath).children();
        List<Member> found = new ArrayList<>();
        collect(propIndex, fromPath, level, steps, found);
        return found;
    }

    /** The path of a member's part within its prop; empty for a whole prop. */
    String path(Member member) {
        String propName = map.props().get(member.propIndex()).name();
        return member.name().length() == propName.length() ? "" : member.name().substring(propName.length() + 1);
    }

    private List<Member> exactMember(int propIndex, String path) {
        if (path.isEmpty()) {
            return List.of(member(propIndex, "", null));
        }
        Part part = parts(propIndex).get(path);
        return part == null ? List.of() : List.of(member(propIndex, path, part));
    }

    private void collect(int propIndex, String path, List<Part> level, List<String> steps, List<Member> found) {
        String step = steps.get(0);
        for (Part part : level) {
            if (Glob.matches(step, part.name())) {
                String partPath = joined(path, part.name());
                if (steps.size() == 1) {
                    found.add(member(propIndex, partPath, part));
                } else {
                    collect(propIndex, partPath, part.children(), steps.subList(1, steps.size()), found);
                }
            }
        }
    }

    private Member member(int propIndex, String path, Part part) {
        Prop prop = map.props().get(propIndex);
        return memberByName.computeIfAbsent(
                joined(prop.name(), path), name -> new Member(name, propIndex, globalPixels(prop, part)));
    }

    private static int[] globalPixels(Prop prop, Part part) {
        int[] pixels = part == null ? new int[prop.pixelCount()] : part.pixels();
        for (int i = 0; i < pixels.length; i++) {
            pixels[i] = prop.firstPixel() + (part == null ? i : pixels[i]);
        }
        return pixels;
    }

    private Map<String, Part> parts(int propIndex) {
        return partsByPath.computeIfAbsent(propIndex, index -> {
            Map<String, Part> byPath = new HashMap<>();
            enter(map.props().get(index).parts(), "", byPath);
            return byPath;
        });
    }

    private static void enter(List<Part> parts, String path, Map<String, Part> byPath) {
        for (Part part : parts) {
            byPath.put(joined(path, part.name()), part);
            enter(part.children(), joined(path, part.name()), byPath);
        }
    }

    private static String joined(String path, String rest) {
        return path.isEmpty() || rest.isEmpty() ? path + rest : path + "/" + rest;
    }
}
