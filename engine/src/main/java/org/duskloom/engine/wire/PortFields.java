package org.duskloom.engine.wire;

import org.duskloom.engine.document.DeclaredField;
import org.duskloom.engine.document.DeclaredObject;
import org.duskloom.engine.document.Fields;
import org.duskloom.engine.document.ListNode;
import org.duskloom.engine.document.Node;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.document.ValueKind;

/** What a port may hold. */
public final class PortFields {
    static final int MOST_SKIPPED = 10_000;

    static final DeclaredField<Long> SKIP = DeclaredField.required(
            "skip",
            new ValueKind.Whole("pixels", 1, MOST_SKIPPED),
            "how many pixels on the line stay dark: repeaters, spares");
    static final DeclaredObject DARK = DeclaredObject.of("dark pixels", SKIP);

    static final DeclaredField<TextNode> NAME = DeclaredField.required(
            "name", new ValueKind.Text("name"), "its name, and that of its file; no other port has it");
    static final DeclaredField<ListNode> CHAIN = DeclaredField.required(
            "chain",
            ValueKind.Items.some(
                    ValueKind.Own.of(
                            "address, or object: " + DARK.name(),
                            new ValueKind.Text("address"),
                            new ValueKind.Nested(DARK)),
                    "name the props on the line, in the order in which the data run through them"),
            "what hangs on the data line, in the order in which the data run through it");
    static final DeclaredField<TextNode> COLORS = DeclaredField.written(
            "colors",
            new ValueKind.Text("letters R, G, B and, for a white light too, W"),
            "\"RGB\"",
            "the order of the colours on the line; a white light takes over what the three have in common");
    static final DeclaredField<Node> BITS = DeclaredField.written(
            "bits",
            ValueKind.Own.of("8 or 16", new ValueKind.Whole("", 8, 16)),
            "8",
            "of each colour; 16 with the most significant byte first");
    static final DeclaredField<Long> UNIVERSE = DeclaredField.optional(
            "universe",
            new ValueKind.Whole("", 1, UniverseRun.LAST_UNIVERSE),
            "the universe after the port before",
            "where its first pixel lies");
    static final DeclaredField<Long> SLOT = DeclaredField.of(
            "slot", new ValueKind.Whole("", 1, UniverseRun.SLOTS), 1L, "the slot of its first colour in that universe");
    static final DeclaredField<Boolean> WHOLE = DeclaredField.of(
            "whole",
            new ValueKind.Flag(),
            true,
            "true: no pixel straddles two universes, and slots at their ends stay unused");
    static final DeclaredField<Node> WHITE = DeclaredField.written(
            "white",
            ValueKind.Own.of(
                    "list of 3 numbers, 0 to 1", new ValueKind.Items(new ValueKind.Number("", 0, 1), 3, 3, "")),
            "[1, 1, 1]",
            "factors for red, green and blue light, so that the three together look white");
    static final DeclaredField<Double> CAP = DeclaredField.of(
            "cap", new ValueKind.Number("", 0, 1), 1.0, "a factor for all light, so that less current flows");
    static final DeclaredField<Node> CURVE = DeclaredField.written(
            "curve",
            CurveReader.CURVE,
            "\"linear\"",
            "`\"linear\"`: lights look as authored; `\"codes\"`: for receivers that bend sRGB codes themselves; a gamma");
    static final DeclaredField<Boolean> DITHER = DeclaredField.of(
            "dither",
            new ValueKind.Flag(),
            true,
            "true: levels between two bytes are shown by turns of the two; at 8 bits, and not for codes");

    static final DeclaredField<TextNode> KIND = DeclaredField.optional(
            "kind",
            new ValueKind.Text("name of a kind"),
            "5 V, 20 mA a colour, 1 mA idle: common practice, no source",
            "what its pixels need, from `kinds`");
    static final DeclaredField<Fields> LINE = DeclaredField.optional(
            "line",
            new ValueKind.Nested(PowerFields.LINE),
            "its voltage is not worked out",
            "the wire from pixel to pixel that carries the current");

    static final DeclaredObject PORT = DeclaredObject.of(
            "port", NAME, CHAIN, COLORS, BITS, UNIVERSE, SLOT, WHOLE, WHITE, CAP, CURVE, DITHER, KIND, LINE);

    /** The ports of a display. */
    public static final DeclaredField<ListNode> PORTS = DeclaredField.optional(
            "ports",
            ValueKind.Items.some(new ValueKind.Nested(PORT), "put a port in it, or leave it out"),
            "no ports",
            "data outputs with the props on their lines");

    private PortFields() {}
}
