package org.duskloom.engine.group;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.map.Names;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;

/**
 * Resolves addresses to members. Not safe for use by several threads.
 *
 * <p>An address is {@code prop}, {@code prop/part}, {@code prop/part/part}, {@code group}, or {@code group/part}: that
 * part of every member of the group that has it. {@code *} and {@code ?} match within one name. A pattern for the first
 * name means props, in the natural order of their names, {@code daisy-2} before {@code daisy-10}, so that the rows of
 * the map may stand in any order; only where no prop matches, it means groups, in the order of the file. A pattern for
 * a part means the parts in their order. Props that a pattern matches but that lack the part are passed over; a prop
 * that is named must have it.
 */
public final class GroupTree {
    private final PixelMap map;
    private final PropIndex props;
    private final Suggestions suggestions;
    private final Set<String> incompleteProps;
    private final Map<String, GroupDefinition> definitions;
    private final GroupMembers groupMembers;
    private final Set<String> groupsInGroups = new HashSet<>();
    private final Map<String, List<Member>> resolved = new HashMap<>();

    GroupTree(PixelMap map, Map<String, GroupDefinition> definitions, Set<String> incompleteProps, Problems problems) {
        this.map = map;
        this.props = new PropIndex(map);
        this.definitions = new LinkedHashMap<>(definitions);
        this.incompleteProps = Set.copyOf(incompleteProps);
        this.suggestions = new Suggestions(map, namesThatMayStay(), this.incompleteProps);
        this.groupMembers = new GroupMembers(this.definitions, this::expand);
        groupMembers.workOut(GroupOrder.innermostFirst(this.definitions, this::groupsNamedBy, problems), problems);
    }

    /** Nobody shall be led to a name that is refused where it is given. */
    private Set<String> namesThatMayStay() {
        Set<String> names = new LinkedHashSet<>(definitions.keySet());
        names.removeIf(name -> Names.fault(name).isPresent());
        return names;
    }

    /** A map without groups. */
    public static GroupTree of(PixelMap map) {
        return of(map, Set.of());
    }

    /**
     * A map without groups.
     *
     * @param incompleteProps the names of props that may lack parts and pixels; that they lack one is no error
     */
    public static GroupTree of(PixelMap map, Set<String> incompleteProps) {
        return new GroupTree(map, Map.of(), incompleteProps, new Problems());
    }

    /** Whether the pixels of all props are known; those of a prop whose shape has errors are not. */
    public boolean isComplete() {
        return incompleteProps.isEmpty();
    }

    /** Whether the pixels of a prop are known. */
    public boolean isComplete(int propIndex) {
        return !incompleteProps.contains(map.props().get(propIndex).name());
    }

    /** What the addresses point into. */
    public PixelMap map() {
        return map;
    }

    /** The groups' names in the order of the file, those with errors too. */
    public List<String> groupNames() {
        return List.copyOf(definitions.keySet());
    }

    /** Where a group is defined. */
    public Optional<Location> groupLocation(String name) {
        return Optional.ofNullable(definitions.get(name)).map(GroupDefinition::location);
    }

    /** The names of the groups that other groups use. */
    public Set<String> groupsInGroups() {
        return Set.copyOf(groupsInGroups);
    }

    /**
     * The names of the groups that some addresses name, by patterns too; whatever is wrong with them is passed over.
     */
    public Set<String> groupsNamedBy(List<TextNode> addresses) {
        Set<String> named = new HashSet<>();
        for (TextNode written : addresses) {
            Address.of(written, new Problems()).ifPresent(address -> named.addAll(groupsNamedBy(address.head())));
        }
        return named;
    }

    private List<String> groupsNamedBy(String head) {
        if (map.propIndex(head).isPresent()) {
            return List.of();
        }
        if (definitions.containsKey(head)) {
            return List.of(head);
        }
        return Glob.isPattern(head) && props.propsMatching(head).isEmpty() ? groupsMatching(head) : List.of();
    }

    private List<String> groupsMatching(String pattern) {
        return definitions.keySet().stream()
                .filter(name -> Glob.matches(pattern, name))
                .toList();
    }

    /** Every address without a pattern: props, each followed by its parts, then groups. */
    public List<String> addresses() {
        return suggestions.addresses();
    }

    /**
     * The addresses that are meant by a text that is none, with commas or the like between them; slips in the names are
     * mended. Nothing if it is no such list.
     */
    public Optional<List<String>> severalIn(String text) {
        return suggestions.several(text);
    }

    /**
     * Resolves a list of addresses.
     *
     * @param addresses the addresses as written
     * @param problems where errors go: every address that is unknown, or a pattern that matches nothing
     * @return the members in order, without repeats; empty if an address is wrong; no members for no addresses
     */
    public Optional<List<Member>> resolve(List<TextNode> addresses, Problems problems) {
        return MemberLists.joined(addresses, address -> expand(address, problems));
    }

    /**
     * Resolves addresses in which some first names stand for other members than usual, as if they were groups of these.
     *
     * @param instead members by name
     */
    public Optional<List<Member>> resolve(
            List<TextNode> addresses, Map<String, List<Member>> instead, Problems problems) {
        return instead.isEmpty()
                ? resolve(addresses, problems)
                : MemberLists.joined(addresses, written -> expand(written, instead, problems));
    }

    /** Whether an address may begin with this: the name of a prop or group, or a pattern. */
    public boolean isHead(String name) {
        return Glob.isPattern(name) || map.propIndex(name).isPresent() || definitions.containsKey(name);
    }

    private Optional<List<Member>> expand(TextNode written, Map<String, List<Member>> instead, Problems problems) {
        Optional<Address> address = Address.of(written, new Problems());
        List<Member> members = address.map(sound -> instead.get(sound.head())).orElse(null);
        if (members == null) {
            return expand(written, problems);
        }
        Set<Member> all = new LinkedHashSet<>();
        members.forEach(member -> all.addAll(within(member, address.get())));
        return orElse(List.copyOf(all), () -> suggestions.noneHasPart(address.get(), members, problems));
    }

    private Optional<List<Member>> expand(TextNode written, Problems problems) {
        List<Member> known = resolved.get(written.value());
        if (known != null) {
            return Optional.of(known);
        }
        Optional<Address> address = Address.of(written, problems);
        Optional<List<Member>> found = address.flatMap(sound -> expand(sound, problems));
        if (found.isPresent() && isSettled(address.get(), found.get())) {
            resolved.put(written.value(), found.get());
        }
        return found;
    }

    /** A pattern that means groups leaves out the group in which it stands; elsewhere it may mean more. */
    private boolean isSettled(Address address, List<Member> found) {
        return groupMembers.isIdle()
                || !Glob.isPattern(address.head())
                || Glob.matches(
                        address.head(),
                        map.props().get(found.get(0).propIndex()).name());
    }

    private Optional<List<Member>> expand(Address address, Problems problems) {
        OptionalInt prop = map.propIndex(address.head());
        if (prop.isPresent()) {
            List<Member> found = props.members(prop.getAsInt(), "", address.steps());
            return orElse(found, () -> suggestions.noPart(address, map.props().get(prop.getAsInt()), problems));
        }
        if (definitions.containsKey(address.head())) {
            return ofGroups(address, List.of(address.head()), problems);
        }
        return Glob.isPattern(address.head()) ? ofPattern(address, problems) : unknown(address, problems);
    }

    private Optional<List<Member>> ofPattern(Address address, Problems problems) {
        List<Integer> matching = props.propsMatching(address.head());
        if (!matching.isEmpty()) {
            List<Member> found = new ArrayList<>();
            matching.forEach(index -> found.addAll(props.members(index, "", address.steps())));
            return orElse(found, () -> suggestions.noneHasPart(address, wholes(matching), problems));
        }
        List<String> groups = groupsMatching(address.head()).stream()
                .filter(name -> !groupMembers.isCurrent(name))
                .toList();
        return groups.isEmpty() ? unknown(address, problems) : ofGroups(address, groups, problems);
    }

    private Optional<List<Member>> ofGroups(Address address, List<String> names, Problems problems) {
        if (!groupMembers.isIdle()) {
            groupsInGroups.addAll(names);
        }
        Set<Member> all = new LinkedHashSet<>();
        Set<Member> asked = new LinkedHashSet<>();
        for (String name : names) {
            Optional<List<Member>> members = groupMembers.of(name);
            if (members.isEmpty()) {
                return Optional.empty();
            }
            if (address.steps().isEmpty() && names.size() == 1) {
                return members;
            }
            members.get().forEach(member -> all.addAll(within(member, address)));
            asked.addAll(members.get());
        }
        return orElse(List.copyOf(all), () -> suggestions.noneHasPart(address, asked, problems));
    }

    private List<Member> wholes(List<Integer> propIndices) {
        return propIndices.stream()
                .flatMap(index -> props.members(index, "", List.of()).stream())
                .toList();
    }

    private List<Member> within(Member member, Address address) {
        if (address.steps().isEmpty()) {
            return List.of(member);
        }
        List<Member> parts = props.members(member.propIndex(), props.path(member), address.steps());
        return MemberLists.onlyPixelsOf(member, parts);
    }

    private Optional<List<Member>> unknown(Address address, Problems problems) {
        suggestions.unknown(address, problems);
        return Optional.empty();
    }

    private static Optional<List<Member>> orElse(List<Member> found, Runnable report) {
        if (found.isEmpty()) {
            report.run();
            return Optional.empty();
        }
        return Optional.of(List.copyOf(found));
    }
}
