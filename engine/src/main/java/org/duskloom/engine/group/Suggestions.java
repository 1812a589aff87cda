package org.duskloom.engine.group;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.map.Prop;
import org.duskloom.engine.problem.NearestName;
import org.duskloom.engine.problem.Problems;
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
        List<String> names = new ArrayList<>(groups);
        map.props().forEach(prop -> names.add(prop.name()));
        problems.error(address.location(), message, hint(address.head(), "", names, problems));
    }

    void noPart(Address address, Prop prop, Problems problems) {
        if (incompleteProps.contains(prop.name())) {
            return;
        }
        String hint = hint(address.path(), prop.name() + "/", prop.partPaths(), problems);
        problems.error(
                address.location(),
                Quoted.of(prop.name()) + " has no part " + Quoted.of(address.path()),
                (prop.parts().isEmpty() ? "it has no parts" : hint) + "; it is defined at " + prop.definedAt());
    }

    void noneHasPart(Address address, List<Prop> matched, Problems problems) {
        Set<String> paths = new LinkedHashSet<>();
        List<Prop> asked = matched.isEmpty() ? map.props() : matched;
        if (!incompleteProps.isEmpty() && asked.stream().anyMatch(prop -> incompleteProps.contains(prop.name()))) {
            return;
        }
        asked.stream().limit(MAX_PROPS_ASKED).forEach(prop -> paths.addAll(prop.partPaths()));
        String hint = hint(address.path(), address.head() + "/", paths, problems);
        problems.error(
                address.location(),
                "nothing in " + Quoted.of(address.head()) + " has a part " + Quoted.of(address.path()),
                paths.isEmpty() ? "no prop there has parts" : hint);
    }

    private static String hint(String wrong, String prefix, Collection<String> names, Problems problems) {
        if (problems.errorCount() >= Problems.LIMIT) {
            return "";
        }
        return NearestName.of(wrong, names)
                .map(near -> "did you mean " + Quoted.of(prefix + near) + "?")
                .orElseGet(() -> "known: " + shown(names));
    }

    private static String shown(Collection<String> names) {
        String some = Quoted.choices(names.stream().limit(MAX_SHOWN).toList());
        return names.size() > MAX_SHOWN ? some + " and " + (names.size() - MAX_SHOWN) + " more" : some;
    }
}
