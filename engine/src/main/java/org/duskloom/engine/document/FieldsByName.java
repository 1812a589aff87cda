package org.duskloom.engine.document;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Finds fields by their names: few are gone through, which is as fast, of many a table is made. The list may grow at
 * its end. Not safe for use by several threads.
 */
final class FieldsByName {
    private static final int FEW = 12;

    private final List<Field> fields;
    /** Null until there are many. */
    private Map<String, Field> byName;

    /** @param fields each name once */
    FieldsByName(List<Field> fields) {
        this.fields = fields;
    }

    /** The field of that name, or null. */
    Field find(String name) {
        return fields.size() > FEW ? findInTable(name) : findAmongFew(name);
    }

    private Field findInTable(String name) {
        byName = byName == null ? new HashMap<>() : byName;
        for (int i = byName.size(); i < fields.size(); i++) {
            byName.put(fields.get(i).name(), fields.get(i));
        }
        return byName.get(name);
    }

    private Field findAmongFew(String name) {
        for (int i = 0; i < fields.size(); i++) {
            if (fields.get(i).name().equals(name)) {
                return fields.get(i);
            }
        }
        return null;
    }
}
