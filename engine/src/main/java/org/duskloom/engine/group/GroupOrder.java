package org.duskloom.engine.group;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.problem.Problems;

/**
 * The order in which groups can be worked out: each after those that it names. Walks without recursion, so that groups
 * may be nested as deep as anybody likes, in any order in the file. Where they go in a circle there is no such order;
 * that is an error.
 */
final class GroupOrder {
    private final Map<String, GroupDefinition> definitions;
    private final Function<String, List<String>> groupsByHead;
    private final Problems problems;
    private final Map<String, List<String>> knownHeads = new HashMap<>();
    private final List<String> order = new ArrayList<>();
    private final Set<String> seen = new HashSet<>();
    private final Map<String, Iterator<Reference>> open = new LinkedHashMap<>();

    /** A group that another one names, and where. */
    private record Reference(String name, TextNode written) {}

    private GroupOrder(
            Map<String, GroupDefinition> definitions, Function<String, List<String>> groupsByHead, Problems problems) {
        this.definitions = definitions;
        this.groupsByHead = groupsByHead;
        this.problems = problems;
    }

    /**
     * All groups, those that others name first.
     *
     * @param groupsByHead the groups that the first name of an address stands for
     * @param problems where an error goes for each address that closes a circle
     */
    static List<String> innermostFirst(
            Map<String, GroupDefinition> definitions, Function<String, List<String>> groupsByHead, Problems problems) {
        GroupOrder walk = new GroupOrder(definitions, groupsByHead, problems);
        definitions.keySet().forEach(walk::from);
        return walk.order;
    }

    private void from(String root) {
        Deque<String> path = new ArrayDeque<>();
        enter(root, path);
        while (!path.isEmpty()) {
            Iterator<Reference> left = open.get(path.peek());
            if (left.hasNext()) {
                Reference next = left.next();
                if (open.containsKey(next.name())) {
                    reportCircle(next);
                } else {
                    enter(next.name(), path);
                }
            } else {
                order.add(path.peek());
                open.remove(path.pop());
            }
        }
    }

    private void enter(String name, Deque<String> path) {
        if (seen.add(name)) {
            open.put(name, references(definitions.get(name)));
            path.push(name);
        }
    }

    private Iterator<Reference> references(GroupDefinition group) {
        return Stream.concat(group.all().stream(), group.except().stream())
                .flatMap(written -> Address.of(written, new Problems()).stream()
                        .flatMap(address -> groupsFor(address.head(), group.name()))
                        .map(name -> new Reference(name, written)))
                .iterator();
    }

    /** A pattern does not stand for the group in which it is written. */
    private Stream<String> groupsFor(String head, String within) {
        List<String> named = knownHeads.computeIfAbsent(head, groupsByHead);
        return named.stream().filter(name -> !name.equals(within) || !Glob.isPattern(head));
    }

    private void reportCircle(Reference closing) {
        List<String> path = new ArrayList<>(open.keySet());
        List<String> circle = new ArrayList<>(path.subList(path.indexOf(closing.name()), path.size()));
        circle.add(closing.name());
        problems.error(
                closing.written().location(),
                "groups go in a circle: " + String.join(" -> ", circle),
                "take one of them out of the circle");
    }
}
