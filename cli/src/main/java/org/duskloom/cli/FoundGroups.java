package org.duskloom.cli;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.duskloom.engine.map.Names;
import org.duskloom.engine.map.Part;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.map.Prop;

/**
 * What can be told of a pixel map from its names alone: props that are numbered belong together, and so do parts that
 * several props have.
 */
final class FoundGroups {
    private static final Pattern NUMBERED = Pattern.compile("(?<start>(?<stem>.*[^-_. 0-9])[-_. ]*)[0-9]+");
    private static final Pattern NUMBER = Pattern.compile("[0-9]+");

    private final PixelMap map;
    private final NavigableSet<String> props = new TreeSet<>();
    private final Set<String> taken;
    private final List<Found> inTurn = new ArrayList<>();
    private final Found everything;

    /**
     * Something to play on.
     *
     * @param name of a prop or a group
     * @param addresses what the group holds; empty where it is a prop
     */
    record Found(String name, List<String> addresses) {
        boolean isGroup() {
            return !addresses.isEmpty();
        }
    }

    FoundGroups(PixelMap map) {
        this.map = map;
        map.props().forEach(prop -> props.add(prop.name()));
        taken = new HashSet<>(props);
        everything = new Found(freeName("everything"), List.of("*"));
        findProps();
        findParts();
    }

    /** The whole map. */
    Found everything() {
        return everything;
    }

    /** Numbered props as groups and single props in the order of the map, then the parts of several props. */
    List<Found> inTurn() {
        return List.copyOf(inTurn);
    }

    private void findProps() {
        Map<String, List<String>> byStart = new LinkedHashMap<>();
        for (Prop prop : map.props()) {
            Matcher numbered = NUMBERED.matcher(prop.name());
            String start = numbered.matches() ? numbered.group("start") : prop.name();
            byStart.computeIfAbsent(start, unused -> new ArrayList<>()).add(prop.name());
        }
        byStart.forEach((start, names) ->
                inTurn.add(names.size() == 1 ? new Found(names.get(0), List.of()) : family(start, names)));
    }

    private Found family(String start, List<String> names) {
        long withStart = props.tailSet(start).stream()
                .takeWhile(name -> name.startsWith(start))
                .count();
        boolean alone = withStart == names.size();
        Matcher numbered = NUMBERED.matcher(names.get(names.size() - 1));
        String stem = numbered.matches() ? numbered.group("stem") : start;
        return new Found(freeName(stem), alone ? List.of(start + "*") : names);
    }

    private void findParts() {
        Map<String, Integer> counts = new LinkedHashMap<>();
        map.props()
                .forEach(prop -> prop.parts().stream()
                        .map(Part::name)
                        .filter(name -> !NUMBER.matcher(name).matches())
                        .forEach(name -> counts.merge(name, 1, Integer::sum)));
        counts.forEach((name, count) -> {
            if (count > 1) {
                inTurn.add(new Found(freeName(name), List.of("*/" + name)));
            }
        });
    }

    /** Groups have names that no prop has. */
    private String freeName(String wanted) {
        String name = Names.fault(wanted).isEmpty() ? wanted : "group";
        for (int number = 0; !taken.add(name); number++) {
            name = number == 0 ? "every " + wanted : "every " + wanted + " " + number;
        }
        return name;
    }
}
