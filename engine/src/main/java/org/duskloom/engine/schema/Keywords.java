package org.duskloom.engine.schema;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.duskloom.engine.document.JsonText;

/** One schema: its keywords, in the order in which they are written. Values are those of {@link JsonText}. */
final class Keywords {
    private static final int LONGEST_LINE = 110;

    private final Map<String, Object> byName = new LinkedHashMap<>();

    /** Adds a keyword; one that stands there already is replaced. */
    Keywords with(String name, Object value) {
        byName.put(name, value);
        return this;
    }

    /** Adds all keywords of another schema. */
    Keywords with(Keywords others) {
        byName.putAll(others.byName);
        return this;
    }

    boolean has(String name) {
        return byName.containsKey(name);
    }

    Object value(String name) {
        return byName.get(name);
    }

    /** Whether there is no keyword, so that everything is allowed. */
    boolean allowsEverything() {
        return byName.isEmpty();
    }

    /** As a value of JSON: on one line where that is short. */
    Object json() {
        Object[] namesAndValues = byName.entrySet().stream()
                .flatMap(each -> Stream.of(each.getKey(), json(each.getValue())))
                .toArray();
        if (Stream.of(namesAndValues).noneMatch(Keywords::isLong)) {
            JsonText.Inline line = JsonText.object(namesAndValues);
            if (line.json().length() <= LONGEST_LINE) {
                return line;
            }
        }
        JsonText lines = new JsonText();
        for (int i = 0; i < namesAndValues.length; i += 2) {
            lines.field((String) namesAndValues[i], namesAndValues[i + 1]);
        }
        return lines;
    }

    private static boolean isLong(Object value) {
        return value instanceof JsonText
                || value instanceof List<?> list && list.stream().anyMatch(JsonText.class::isInstance);
    }

    private static Object json(Object value) {
        if (value instanceof Keywords schema) {
            return schema.json();
        }
        if (value instanceof List<?> list) {
            List<Object> items = new ArrayList<>();
            list.forEach(item -> items.add(json(item)));
            return items;
        }
        return value;
    }
}
