package org.duskloom.engine.timeline;

import org.duskloom.engine.color.ColorMix;
import org.duskloom.engine.document.DeclaredField;
import org.duskloom.engine.document.DeclaredObject;
import org.duskloom.engine.document.ListNode;
import org.duskloom.engine.document.Node;
import org.duskloom.engine.document.ValueKind;

/** What a value may hold that moves over the cue. */
public final class KeyFields {
    /** The keys, one at least. */
    public static final DeclaredField<ListNode> KEYS = DeclaredField.required(
            "keys",
            ValueKind.Items.some(
                    ValueKind.Own.of("`[time, value]` or `[time, value, easing]`"),
                    "such as [[\"0s\", 0], [\"2s\", 1]]"),
            "values and when they hold, times from the start of the cue, earlier ones first; the easing is the way to the"
                    + " key from the one before");

    /** In which space colours move. */
    public static final DeclaredField<ColorMix> MIX = DeclaredField.of(
            "mix", PaletteFields.MIX.kind(), ColorMix.OKLAB, "in which space a colour goes to the next");

    /** A number that moves. */
    public static final DeclaredObject NUMBER = DeclaredObject.of("moving number", KEYS);

    /** A colour or a palette that moves. */
    public static final DeclaredObject COLOR = DeclaredObject.of("moving colour", KEYS, MIX);

    private KeyFields() {}

    /** A colour or a palette that may move. */
    public static ValueKind<Node> movingColor(ValueKind<?> still) {
        return ValueKind.Own.of(still.phrase() + ", or object: " + COLOR.name(), still, new ValueKind.Nested(COLOR));
    }

    /** A number that may move. */
    public static ValueKind<Node> moving(ValueKind<?> still) {
        return ValueKind.Own.of(still.phrase() + ", or object: " + NUMBER.name(), still, new ValueKind.Nested(NUMBER));
    }
}
