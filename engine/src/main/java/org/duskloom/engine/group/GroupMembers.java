package org.duskloom.engine.group;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.text.Quoted;

/** The members of every group, worked out once; finds circles. */
final class GroupMembers {
    private static final int MAX_DEPTH = 64;

    private final Map<String, GroupDefinition> definitions;
    private final BiFunction<TextNode, Problems, Optional<List<Member>>> expand;
    private final Map<String, Optional<List<Member>>> done = new HashMap<>();
    private final LinkedHashSet<String> open = new LinkedHashSet<>();
    private String innermost;

    GroupMembers(
            Map<String, GroupDefinition> definitions, BiFunction<TextNode, Problems, Optional<List<Member>>> expand) {
        this.definitions = definitions;
        this.expand = expand;
    }

    /** Whether no group is just being worked out. */
    boolean isIdle() {
        return open.isEmpty();
    }

    /** Whether this is the group whose addresses are just being resolved. */
    boolean isInnermost(String name) {
        return name.equals(innermost);
    }

    /** The members of a group; empty if it has errors, which are reported once. */
    Optional<List<Member>> of(String name, Problems problems) {
        return from(name, definitions.get(name).location(), problems);
    }

    /** The same, asked for by an address that is written there. */
    Optional<List<Member>> from(String name, Location place, Problems problems) {
        Optional<List<Member>> known = done.get(name);
        if (known != null) {
            return known;
        }
        if (open.contains(name)) {
            reportCircle(name, place, problems);
            return Optional.empty();
        }
        if (open.size() >= MAX_DEPTH) {
            problems.error(place, "groups are nested deeper than " + MAX_DEPTH, "name the props themselves");
            return Optional.empty();
        }
        String outer = innermost;
        innermost = name;
        open.add(name);
        Optional<List<Member>> members = members(definitions.get(name), problems);
        open.remove(name);
        innermost = outer;
        done.put(name, members);
        return members;
    }

    private Optional<List<Member>> members(GroupDefinition group, Problems problems) {
        Optional<List<Member>> all = MemberLists.joined(group.all(), address -> expand.apply(address, problems));
        Optional<BitSet> except = except(group, all, problems);
        if (all.isEmpty() || except.isEmpty() || all.get().isEmpty()) {
            return Optional.empty();
        }
        List<Member> left = except.get().isEmpty() ? all.get() : MemberLists.without(all.get(), except.get());
        if (left.isEmpty()) {
            String message = "group " + Quoted.of(group.name()) + " is empty, \"except\" takes everything away";
            problems.error(group.location(), message, "take something out of \"except\", or remove the group");
            return Optional.empty();
        }
        return Optional.of(List.copyOf(left));
    }

    private Optional<BitSet> except(GroupDefinition group, Optional<List<Member>> all, Problems problems) {
        BitSet taken = new BitSet();
        BitSet listed = MemberLists.pixelsOf(all.orElse(List.of()));
        boolean complete = true;
        for (TextNode address : group.except()) {
            Optional<List<Member>> members = expand.apply(address, problems);
            complete &= members.isPresent();
            BitSet pixels = MemberLists.pixelsOf(members.orElse(List.of()));
            if (members.isPresent() && !listed.isEmpty() && !pixels.intersects(listed)) {
                problems.warn(
                        address.location(),
                        Quoted.of(address.value()) + " is excepted from group " + Quoted.of(group.name())
                                + ", but is not in it",
                        "leave it out");
            }
            taken.or(pixels);
        }
        return complete ? Optional.of(taken) : Optional.empty();
    }

    private void reportCircle(String name, Location place, Problems problems) {
        List<String> circle = new ArrayList<>(open);
        circle = new ArrayList<>(circle.subList(circle.indexOf(name), circle.size()));
        circle.add(name);
        problems.error(
                place, "groups go in a circle: " + String.join(" -> ", circle), "take one of them out of the circle");
    }
}
