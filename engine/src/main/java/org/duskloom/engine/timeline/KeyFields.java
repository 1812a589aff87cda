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

    /** What a number follows. */
    public static final DeclaredField<Followed> FOLLOW = DeclaredField.required(
            "follow",
            Word.kind(Followed.class),
            "`\"all\"`: the loudness of the sound; `\"low\"`, `\"mid\"`, `\"high\"`: its tones under 150 Hz, between, over 2 kHz;"
                    + " `\"beat\"`: 1 on every beat, falling to 0 at the next");

    /** Its value at the level 0. */
    public static final DeclaredField<Node> FROM =
            DeclaredField.required("from", ValueKind.Own.of("number"), "its value where the level is 0");

    /** Its value at the level 1. */
    public static final DeclaredField<Node> TO =
            DeclaredField.required("to", ValueKind.Own.of("number"), "its value where the level is 1");

    /** Below which level there is nothing. */
    public static final DeclaredField<Double> FLOOR = DeclaredField.of(
            "floor",
            new ValueKind.Number("", 0, 0.99),
            0.0,
            "levels up to here count as 0, and those above are spread over 0 to 1: the higher, the more it moves; not of a beat");

    /** How fast the level rises. */
    public static final DeclaredField<Node> ATTACK = DeclaredField.written(
            "attack",
            Values.TIME,
            "\"20ms\"",
            "in what time it goes two thirds of the way up to a higher level; not of a beat");

    /** How fast the level falls. */
    public static final DeclaredField<Node> RELEASE = DeclaredField.written(
            "release",
            Values.TIME,
            "\"250ms\"",
            "in what time it goes two thirds of the way down to a lower level; not of a beat");

    /** A number that follows the music. */
    public static final DeclaredObject FOLLOWING =
            DeclaredObject.of("following number", FOLLOW, FROM, TO, FLOOR, ATTACK, RELEASE);

    /** A number that moves. */
    public static final DeclaredObject NUMBER = DeclaredObject.of("moving number", KEYS);

    /** A colour or a palette that moves. */
    public static final DeclaredObject COLOR = DeclaredObject.of("moving colour", KEYS, MIX);

    private KeyFields() {}

    /** A colour or a palette that may move. */
    public static ValueKind<Node> movingColor(ValueKind<?> still) {
        return ValueKind.Own.of(still.phrase() + ", or object: " + COLOR.name(), still, new ValueKind.Nested(COLOR));
    }

    /** A palette in any of its forms, one of the timeline by its name among them, that may move. */
    public static ValueKind<Node> movingPalette() {
        return movingColor(PaletteFields.KIND);
    }

    /** A number that may move. */
    public static ValueKind<Node> moving(ValueKind<?> still) {
        return ValueKind.Own.of(
                still.phrase() + ", or object: " + NUMBER.name() + ", or object: " + FOLLOWING.name(),
                still,
                new ValueKind.Nested(NUMBER),
                new ValueKind.Nested(FOLLOWING));
    }
}
