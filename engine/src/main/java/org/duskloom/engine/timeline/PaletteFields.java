package org.duskloom.engine.timeline;

import java.util.List;
import org.duskloom.engine.color.ColorMix;
import org.duskloom.engine.document.DeclaredField;
import org.duskloom.engine.document.DeclaredObject;
import org.duskloom.engine.document.ListNode;
import org.duskloom.engine.document.ValueKind;

/** What a palette may hold. */
final class PaletteFields {
    private static final int MOST_STOPS = 256;
    static final ValueKind.Items STOPS_KIND = new ValueKind.Items(
            ValueKind.Own.of(
                    "colour, or `[colour, position]`",
                    new ValueKind.Text("colour"),
                    new ValueKind.Items(ValueKind.Own.of("colour and position from 0 to 1"), 2, 2, "")),
            1,
            MOST_STOPS,
            "such as [\"#1b2a6b\", \"#ff9e5e\"]");

    static final DeclaredField<ListNode> STOPS = DeclaredField.required(
            "stops",
            STOPS_KIND,
            "the colours; positions run from 0 to 1, and stops without one lie evenly between those that have one");
    static final DeclaredField<ColorMix> MIX = DeclaredField.of(
            "mix",
            ValueKind.Choice.of(List.of(ColorMix.OKLAB, ColorMix.OKLCH, ColorMix.LINEAR), ColorMix::word),
            ColorMix.OKLAB,
            "in which space colours between two stops are mixed");
    static final DeclaredField<Boolean> STEP = DeclaredField.of(
            "step", new ValueKind.Flag(), false, "true: each colour holds up to the next stop, without a blend");
    static final DeclaredField<Boolean> CYCLIC = DeclaredField.of(
            "cyclic", new ValueKind.Flag(), false, "true: behind the last stop the first follows again");

    static final DeclaredObject PALETTE = DeclaredObject.of("palette", STOPS, MIX, STEP, CYCLIC);

    /** A palette in any of its forms. */
    static final ValueKind.Own KIND = ValueKind.Own.of(
            "colour, list of stops, or object: palette",
            new ValueKind.Text("colour"),
            STOPS_KIND,
            new ValueKind.Nested(PALETTE));

    private PaletteFields() {}
}
