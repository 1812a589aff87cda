package org.duskloom.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * A file with one thing wrong in it.
 *
 * @param how what was done, and where
 * @param tree the file
 */
record Damaged(String how, JsonNode tree) {
    private static final JsonNodeFactory MAKE = JsonNodeFactory.instance;

    /** What each value is replaced by: every type, out of every range. */
    private static final List<JsonNode> INSTEAD = List.of(
            MAKE.nullNode(),
            MAKE.booleanNode(true),
            MAKE.numberNode(-1_000_000_007),
            MAKE.numberNode(0.123456),
            MAKE.numberNode(1e14),
            MAKE.stringNode("no such thing"),
            MAKE.arrayNode(),
            MAKE.arrayNode().add(MAKE.objectNode()).add(1).add("a").add("b").add("c"),
            MAKE.objectNode(),
            MAKE.objectNode().set("keys", MAKE.numberNode(1)));

    /**
     * Every value in turn replaced by all that it may not be, left out, put twice; every object with a field too
     * many, of a name that it has not and of those that its like have.
     */
    static List<Damaged> all(JsonNode file, List<String> names) {
        List<Damaged> all = new ArrayList<>();
        visit(file, file, "", names, all);
        return all;
    }

    /** Three of them for each place, others for each: all of them, with {@code -Dschema.all=true}, take minutes. */
    private static List<JsonNode> instead(String at) {
        if (Boolean.getBoolean("schema.all")) {
            return INSTEAD;
        }
        int first = Math.floorMod(at.hashCode(), INSTEAD.size());
        return IntStream.of(first, first + 3, first + 6)
                .mapToObj(index -> INSTEAD.get(index % INSTEAD.size()))
                .toList();
    }

    private static void visit(JsonNode file, JsonNode node, String path, List<String> names, List<Damaged> all) {
        if (node instanceof ObjectNode object) {
            for (String name : List.copyOf(object.propertyNames())) {
                String at = path + "/" + name;
                JsonNode value = object.get(name);
                instead(at)
                        .forEach(other -> damage(file, at + " = " + other, all, object, each -> each.set(name, other)));
                damage(file, "without " + at, all, object, each -> each.remove(name));
                visit(file, value, at, names, all);
            }
            for (String name : names) {
                if (!object.has(name)) {
                    damage(file, path + " with " + name, all, object, each -> each.put(name, "1s"));
                }
            }
        } else if (node instanceof ArrayNode list) {
            for (int i = 0; i < list.size(); i++) {
                int index = i;
                String at = path + "/" + i;
                JsonNode value = list.get(i);
                instead(at)
                        .forEach(other -> damage(file, at + " = " + other, all, list, each -> each.set(index, other)));
                damage(file, "without " + at, all, list, each -> each.remove(index));
                damage(file, "twice " + at, all, list, each -> each.insert(index, value));
                visit(file, value, at, names, all);
            }
        }
    }

    /** Damages a node in place, keeps a copy of the whole file, and puts the node right again. */
    private static void damage(
            JsonNode file, String how, List<Damaged> all, ObjectNode node, Consumer<ObjectNode> harm) {
        Map<String, JsonNode> sound = new LinkedHashMap<>();
        node.properties().forEach(field -> sound.put(field.getKey(), field.getValue()));
        harm.accept(node);
        all.add(new Damaged(how, file.deepCopy()));
        node.removeAll();
        sound.forEach(node::set);
    }

    private static void damage(JsonNode file, String how, List<Damaged> all, ArrayNode node, Consumer<ArrayNode> harm) {
        List<JsonNode> sound = new ArrayList<>();
        node.forEach(sound::add);
        harm.accept(node);
        all.add(new Damaged(how, file.deepCopy()));
        node.removeAll();
        sound.forEach(node::add);
    }
}
