package org.duskloom.engine.plan;

import java.util.List;
import org.duskloom.engine.document.Field;
import org.duskloom.engine.document.ListNode;
import org.duskloom.engine.document.Node;
import org.duskloom.engine.document.ObjectNode;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.time.TimeText;
import org.duskloom.engine.timeline.KeyFields;

/** Finds settings whose keys count beats, so that their times hang on where the cue starts. */
final class BeatKeys {
    private BeatKeys() {}

    static boolean in(List<Field> settings) {
        return settings.stream().anyMatch(setting -> in(setting.value()));
    }

    private static boolean in(Node value) {
        return value instanceof ObjectNode object
                && object.value(KeyFields.KEYS.name()).orElse(null) instanceof ListNode keys
                && keys.items().stream().anyMatch(BeatKeys::isTimedByBeats);
    }

    private static boolean isTimedByBeats(Node key) {
        return key instanceof ListNode parts
                && !parts.items().isEmpty()
                && parts.items().get(0) instanceof TextNode time
                && TimeText.countsMusic(time.value());
    }
}
