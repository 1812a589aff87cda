package org.duskloom.engine.plan;

import java.util.Optional;
import org.duskloom.engine.document.Field;
import org.duskloom.engine.document.FlagNode;
import org.duskloom.engine.document.ListNode;
import org.duskloom.engine.document.Node;
import org.duskloom.engine.document.NumberNode;
import org.duskloom.engine.document.ObjectNode;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.effect.Effect;
import org.duskloom.engine.timeline.Cue;

/**
 * Settings that do not move, as they are written, but for where: they mean the same in every cue. A long show says few
 * such, each thousands of times.
 *
 * @param effect whose they are
 * @param written all of them, so that others have another text
 */
record PlainSettings(Effect effect, String written) {
    /** Those of a cue; nothing if one of them may move, or hangs on which play it is. */
    static Optional<PlainSettings> of(Effect effect, Cue cue) {
        StringBuilder text = new StringBuilder();
        boolean plain = cue.changes().isEmpty();
        for (Field field : cue.with()) {
            plain = plain && !KeyReader.isKeyed(field.value()) && !FollowReader.isFollowing(field.value());
            plain = plain && add(field, text);
        }
        return plain ? Optional.of(new PlainSettings(effect, text.toString())) : Optional.empty();
    }

    private static boolean add(Field field, StringBuilder text) {
        add('f', field.name(), text);
        return add(field.value(), text);
    }

    private static boolean add(Node node, StringBuilder text) {
        if (node instanceof TextNode word) {
            add('t', word.value(), text);
        } else if (node instanceof NumberNode number) {
            add('n', number.written(), text);
            // What changes from play to play may have another value than its text says.
            add('v', Long.toHexString(Double.doubleToRawLongBits(number.value())), text);
        } else if (node instanceof FlagNode flag) {
            add('b', String.valueOf(flag.value()), text);
        } else if (node instanceof ListNode list) {
            text.append('l').append(list.items().size()).append(':');
            return list.items().stream().allMatch(item -> add(item, text));
        } else if (node instanceof ObjectNode object) {
            text.append('o').append(object.fields().size()).append(':');
            return object.fields().stream().allMatch(field -> add(field, text));
        } else {
            return false;
        }
        return true;
    }

    private static void add(char kind, String value, StringBuilder text) {
        text.append(kind).append(value.length()).append(':').append(value);
    }
}
