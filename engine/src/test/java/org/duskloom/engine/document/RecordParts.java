package org.duskloom.engine.document;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;

/** The values that a record was made of, for tests that make it anew. */
public final class RecordParts {
    private RecordParts() {}

    /** The values, in order. */
    public static Object[] of(Record record) throws ReflectiveOperationException {
        RecordComponent[] components = record.getClass().getRecordComponents();
        Object[] values = new Object[components.length];
        for (int i = 0; i < values.length; i++) {
            components[i].getAccessor().setAccessible(true);
            values[i] = components[i].getAccessor().invoke(record);
        }
        return values;
    }

    /** A record of the same class. */
    public static Record made(Record like, Object[] values) throws ReflectiveOperationException {
        Class<?>[] types = Arrays.stream(like.getClass().getRecordComponents())
                .map(RecordComponent::getType)
                .toArray(Class<?>[]::new);
        Constructor<? extends Record> maker = like.getClass().getDeclaredConstructor(types);
        maker.setAccessible(true);
        return maker.newInstance(values);
    }

    /** Checks that it cannot be made without one of its values, but for those of these classes. */
    public static void assertNeedsAll(Record record, Class<?>... but) throws ReflectiveOperationException {
        RecordComponent[] components = record.getClass().getRecordComponents();
        for (int i = 0; i < components.length; i++) {
            Class<?> type = components[i].getType();
            if (!type.isPrimitive() && !List.of(but).contains(type)) {
                Object[] values = of(record);
                values[i] = null;
                assertThatThrownBy(() -> made(record, values))
                        .as("%s without %s", record.getClass().getSimpleName(), components[i].getName())
                        .isInstanceOf(InvocationTargetException.class)
                        .hasCauseInstanceOf(NullPointerException.class);
            }
        }
    }
}
