package org.duskloom.engine.group;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.map.Prop;
import org.duskloom.engine.problem.NearestName;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.text.LookAlike;
import org.duskloom.engine.text.Quoted;

/** Says of a wrong address what was probably meant. */
final class Suggestions {
    private static final int MAX_PROPS_ASKED = 100;
    private static final int MAX_SHOWN = 12;

    private final PixelMap map;
    private final Set<String> groups;
    private final Set<String> incompleteProps;

    Suggestions(PixelMap map, Set<String> groups, Set<String> incompleteProps) {
        this.map = map;
        this.groups = groups;
        this.incompleteProps = incompleteProps;
    }

    List<String> addresses() {
        List<String> all = new ArrayList<>();
        for (Prop prop : map.props()) {
            all.add(prop.name());
            prop.partPaths().forEach(path -> all.add(prop.name() + "/" + path));
        }
        all.addAll(groups);
        return List.copyOf(all);
    }

    void unknown(Address address, Problems problems) {
        String message = Glob.isPattern(address.head())
                ? "no prop and no group matches " + Quoted.of(address.head())
                : "there is no prop and no group " + Quoted.of(address.head());
        String hint = several(address, problems).orElseGet(() -> hint(address.head(), "", heads(), problems));
        problems.error(address.location(), message, hint);
    }

    /** How to write several addresses that stand in one. */
    private Optional<String> several(Address address, Problems problems) {
        return problems.errorCount() >= Problems.LIMIT
                ? Optional.empty()
                : several(address.text())
                        .map(all -> "name each by itself, in a list: "
                                + all.stream().map(Quoted::of).collect(Collectors.joining(", ", "[", "]")));
    }

    /** See {@link SeveralNames#in}. */
    Optional<List<String>> several(String text) {
        return SeveralNames.in(text, heads());
    }

    /** What an address may begin with. */
    private Set<String> heads() {
        Set<String> names = new LinkedHashSet<>(groups);
        map.props().forEach(prop -> names.add(prop.name()));
        return names;
    }

    void noPart(Address address, Prop prop, Problems problems) {
        if (incompleteProps.contains(prop.name())) {
            return;
        }
        String hint = prop.parts().isEmpty()
                ? "it has no parts"
                : hint(address.path(), prop.name() + "/", prop.partPaths(), problems);
        problems.error(
                address.location(),
                Quoted.of(prop.name()) + " has no part " + Quoted.of(address.path()),
                several(address, problems).orElse(hint + "; it is defined at " + prop.definedAt()));
    }

    /** None of the members has the part: what is asked of a part is one inside it. */
    void noneHasPart(Address address, Collection<Member> members, Problems problems) {
        Set<String> paths = new LinkedHashSet<>();
        if (members.stream()
                .anyMatch(member -> incompleteProps.contains(
                        map.props().get(member.propIndex()).name()))) {
            return;
        }
        members.stream().limit(MAX_PROPS_ASKED).forEach(member -> paths.addAll(pathsWithin(member)));
        String hint = hint(address.path(), address.head() + "/", paths, problems);
        boolean areProps = members.stream().allMatch(member -> member.partPath().isEmpty());
        problems.error(
                address.location(),
                "nothing in " + Quoted.of(address.head()) + " has a part " + Quoted.of(address.path()),
                paths.isEmpty() ? (areProps ? "no prop there has parts" : "no part there has parts in it") : hint);
    }

    private List<String> pathsWithin(Member member) {
        List<String> all = map.props().get(member.propIndex()).partPaths();
        if (member.partPath().isEmpty()) {
            return all;
        }
        String outer = member.partPath() + "/";
        return all.stream()
                .filter(path -> path.startsWith(outer))
                .map(path -> path.substring(outer.length()))
                .toList();
    }

    private static String hint(String wrong, String prefix, Collection<String> names, Problems problems) {
        if (problems.errorCount() >= Problems.LIMIT) {
            return "";
        }
        Optional<String> alike =
                names.stream().filter(name -> LookAlike.are(name, wrong)).findFirst();
        if (alike.isPresent()) {
            return LookAlike.hint(Quoted.of(prefix + alike.get()));
        }
        Optional<String> pattern = pattern(wrong, names);
        if (pattern.isPresent()) {
            return "did you mean " + Quoted.of(prefix + pattern.get()) + "?";
        }
        return NearestName.of(wrong, names)
                .map(near -> "did you mean " + Quoted.of(prefix + near) + "?")
                .orElseGet(() -> "known: " + shown(names));
    }

    /** Who names only what several names begin with, up to their numbers, means them all. */
    private static Optional<String> pattern(String wrong, Collection<String> names) {
        if (wrong.isEmpty() || wrong.indexOf('/') >= 0 || Glob.isPattern(wrong)) {
            return Optional.empty();
        }
        String beginning = wrong.endsWith("-") || wrong.endsWith("_") ? wrong : wrong + "-";
        long begun = names.stream()
                .filter(name -> name.startsWith(beginning) && name.indexOf('/') < 0)
                .count();
        return begun < 2 ? Optional.empty() : Optional.of(beginning + "*");
    }

    private static String shown(Collection<String> names) {
        String some = Quoted.choices(names.stream().limit(MAX_SHOWN).toList());
        return names.size() > MAX_SHOWN ? some + " and " + (names.size() - MAX_SHOWN) + " more" : some;
    }
}
