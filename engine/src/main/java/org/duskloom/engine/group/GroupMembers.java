package org.duskloom.engine.group;

import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.text.Quoted;

/** The members of every group, worked out once. */
final class GroupMembers {
    private final Map<String, GroupDefinition> definitions;
    private final BiFunction<TextNode, Problems, Optional<List<Member>>> expand;
    private final Map<String, Optional<List<Member>>> done = new HashMap<>();
    private String current;

    GroupMembers(
            Map<String, GroupDefinition> definitions, BiFunction<TextNode, Problems, Optional<List<Member>>> expand) {
        this.definitions = definitions;
        this.expand = expand;
    }

    /** Works out groups, each after those that it names. */
    void workOut(List<String> innermostFirst, Problems problems) {
        for (String name : innermostFirst) {
            current = name;
            done.put(name, members(definitions.get(name), problems));
        }
        current = null;
    }

    /** Whether no group is just being worked out. */
    boolean isIdle() {
        return current == null;
    }

    /** Whether this is the group whose addresses are just being resolved. */
    boolean isCurrent(String name) {
        return name.equals(current);
    }

    /**
     * The members of a group; empty if it has errors, of which going in a circle is one. They are reported elsewhere.
     */
    Optional<List<Member>> of(String name) {
        return done.getOrDefault(name, Optional.empty());
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
}
