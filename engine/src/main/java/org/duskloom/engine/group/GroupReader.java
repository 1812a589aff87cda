package org.duskloom.engine.group;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.duskloom.engine.document.DeclaredField;
import org.duskloom.engine.document.DeclaredObject;
import org.duskloom.engine.document.Expected;
import org.duskloom.engine.document.Field;
import org.duskloom.engine.document.Fields;
import org.duskloom.engine.document.ListNode;
import org.duskloom.engine.document.Node;
import org.duskloom.engine.document.ObjectNode;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.document.ValueKind;
import org.duskloom.engine.map.Names;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.map.Prop;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.text.Quoted;

/**
 * Reads groups: an object that holds for each name a list of addresses, or {@code {"all": [...], "except": [...]}},
 * which takes the pixels of the excepted addresses away from the members of the others. An address alone may stand for
 * a list.
 */
public final class GroupReader {
    private static final DeclaredField<List<TextNode>> ALL =
            DeclaredField.required("all", new ValueKind.Texts("address"), "whose pixels the group has");
    private static final DeclaredField<List<TextNode>> EXCEPT = DeclaredField.optional(
            "except", new ValueKind.Texts("address"), "none", "whose pixels are taken away from them");
    private static final DeclaredObject GROUP = DeclaredObject.of("group", ALL, EXCEPT);
    private static final ValueKind<Node> ONE = ValueKind.Own.of(
            "address, list of addresses, or object: " + GROUP.name(),
            new ValueKind.Texts("address"),
            new ValueKind.Nested(GROUP));

    /** All groups, by name. */
    public static final ValueKind.Own GROUPS =
            ValueKind.Own.of("object; for each name of a group: " + ONE.phrase(), new ValueKind.Named("group", ONE));

    private final PixelMap map;
    private final Problems problems;

    private GroupReader(PixelMap map, Problems problems) {
        this.map = map;
        this.problems = problems;
    }

    /**
     * Reads and resolves all groups.
     *
     * @param groups the object of all groups
     * @param map what they address
     * @param problems where errors go: names that are not allowed or are a prop's, unknown addresses, patterns that
     *     match nothing, empty groups, circles
     * @return the groups; those with errors are known by name, but have no members
     */
    public static GroupTree read(Node groups, PixelMap map, Problems problems) {
        return read(groups, map, Set.of(), problems);
    }

    /**
     * The same where some props could not be read fully.
     *
     * @param incompleteProps the names of props that may lack parts and pixels; that they lack one is no error
     */
    public static GroupTree read(Node groups, PixelMap map, Set<String> incompleteProps, Problems problems) {
        Map<String, GroupDefinition> definitions = new LinkedHashMap<>();
        GroupReader reader = new GroupReader(map, problems);
        Expected.object(groups, "\"groups\"", problems)
                .map(ObjectNode::fields)
                .orElse(List.of())
                .forEach(field -> reader.definition(field).ifPresent(group -> definitions.put(group.name(), group)));
        return new GroupTree(map, definitions, incompleteProps, problems);
    }

    private Optional<GroupDefinition> definition(Field field) {
        String what = "group " + Quoted.of(field.name());
        Optional<String> fault = Names.fault(field.name());
        if (fault.isPresent()) {
            // What names it all the same is no second slip.
            problems.error(field.nameLocation(), "the group name " + Quoted.of(field.name()) + " " + fault.get());
            return Optional.of(definition(field, what));
        }
        Optional<Prop> prop = map.prop(field.name());
        if (prop.isPresent()) {
            problems.error(
                    field.nameLocation(),
                    what + " has the name of a prop",
                    "the prop is defined at " + prop.get().definedAt() + "; rename one of them");
            return Optional.empty();
        }
        return Optional.of(definition(field, what));
    }

    private GroupDefinition definition(Field field, String what) {
        List<TextNode> all = List.of();
        List<TextNode> except = List.of();
        if (field.value() instanceof ObjectNode) {
            Fields fields = Fields.of(field.value(), GROUP, what, problems).orElseThrow();
            all = fields.given(ALL).orElse(List.of());
            except = fields.given(EXCEPT).orElse(List.of());
            fields.node(ALL).ifPresent(node -> reportIfEmpty(node, what));
        } else {
            all = addresses(field.value(), what);
        }
        return new GroupDefinition(field.name(), field.nameLocation(), all, except);
    }

    private List<TextNode> addresses(Node value, String what) {
        reportIfEmpty(value, what);
        List<TextNode> texts = new ArrayList<>();
        Expected.texts(value, what, problems)
                .orElse(List.of())
                .forEach(item ->
                        Expected.text(item, "an address of " + what, problems).ifPresent(texts::add));
        return texts;
    }

    private void reportIfEmpty(Node value, String what) {
        if (value instanceof ListNode list && list.items().isEmpty()) {
            problems.error(value.location(), what + " is empty", "name props, parts or groups in it, or remove it");
        }
    }
}
