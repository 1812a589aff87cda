package org.duskloom.engine.wire;

import java.util.List;
import org.duskloom.engine.document.DeclaredField;
import org.duskloom.engine.document.DeclaredObject;
import org.duskloom.engine.document.Field;
import org.duskloom.engine.document.Fields;
import org.duskloom.engine.document.ListNode;
import org.duskloom.engine.document.Node;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.document.ValueKind;

/** What kinds of pixels, supplies and wires may hold. */
public final class PowerFields {
    /** Above this a voltage is no longer taken for extra-low. */
    private static final double MOST_VOLTS = 60;

    private static final double LONGEST = 1e6;
    private static final double SHORTEST_PITCH = 0.001;
    private static final int THINNEST_GAUGE = 40;
    private static final int MOST_POINTS = 1000;
    private static final ValueKind.Number MILLIAMPS = new ValueKind.Number("milliamperes", 0, 1000);
    private static final ValueKind.Number VOLTS = new ValueKind.Number("volts", 1, MOST_VOLTS);
    private static final String SIZE_HINT = "its size stands in \"awg\" or in \"mm2\"";

    static final DeclaredField<Double> KIND_VOLTS =
            DeclaredField.required("volts", VOLTS, "what the pixels are made for");
    static final DeclaredField<ListNode> COLORS = DeclaredField.required(
            "milliamps",
            new ValueKind.Items(MILLIAMPS, 3, 4, ""),
            "what each colour draws while it is on, in the order of the port's `colors`");
    static final DeclaredField<Double> IDLE = DeclaredField.of(
            "idle", MILLIAMPS, PixelKind.USUAL_IDLE_MILLIAMPS, "what a pixel draws always, dark ones too");
    static final DeclaredField<Double> LEAST = DeclaredField.optional(
            "least", VOLTS, "not looked at", "with less a pixel is not promised to work; no more than `volts`");
    static final DeclaredField<Double> KILOBITS = DeclaredField.of(
            "kilobits",
            new ValueKind.Number("thousands in a second", 1, 100_000),
            DataLine.USUAL.kilobits(),
            "how fast bits run through the data line");
    static final DeclaredField<Node> RESET = DeclaredField.written(
            "reset",
            ValueKind.Own.of("time such as `\"280us\"`", new ValueKind.Text("time")),
            "\"280us\"",
            "the pause after a frame, in which the pixels show it");

    static final DeclaredObject KIND =
            DeclaredObject.of("kind of pixel", KIND_VOLTS, COLORS, IDLE, LEAST, KILOBITS, RESET);

    /** The kinds of pixels of a display. */
    public static final DeclaredField<List<Field>> KINDS = DeclaredField.optional(
            "kinds",
            new ValueKind.Named("kind", new ValueKind.Nested(KIND)),
            "the figures of common practice",
            "what the pixels of ports need, for `duskloom report`");

    static final DeclaredField<Long> AWG = DeclaredField.optional(
            "awg", new ValueKind.Whole("", 0, THINNEST_GAUGE), "", "the size of each wire as American wire gauge");
    static final DeclaredField<Double> MM2 = DeclaredField.optional(
            "mm2", new ValueKind.Number("square millimetres", 0.01, 1000), "", "the same as area of copper");
    static final DeclaredField<Double> PITCH = DeclaredField.optional(
            "pitch",
            new ValueKind.Number("units", SHORTEST_PITCH, LONGEST),
            "from place to place, and a tenth more",
            "how long one wire is from pixel to pixel");
    static final DeclaredField<Double> LENGTH = DeclaredField.required(
            "length",
            new ValueKind.Number("units", 0, LONGEST),
            "how long it is from the supply to the pixel, one way");

    static final DeclaredObject LINE =
            DeclaredObject.of("power line", AWG, MM2, PITCH).needsOne(SIZE_HINT, AWG, MM2);
    static final DeclaredObject LEAD =
            DeclaredObject.of("lead", AWG, MM2, LENGTH).needsOne(SIZE_HINT, AWG, MM2);

    static final DeclaredField<TextNode> PORT =
            DeclaredField.required("port", new ValueKind.Text("name of a port"), "whose line is fed");
    static final DeclaredField<ListNode> AT = DeclaredField.written(
            "at",
            new ValueKind.Items(
                    new ValueKind.Whole("", 1, Integer.MAX_VALUE),
                    1,
                    MOST_POINTS,
                    "name the pixels at which it is fed"),
            "[1]",
            "at which pixels of the chain, counted from 1");
    static final DeclaredField<Fields> FEED_LEAD = DeclaredField.optional(
            "lead",
            new ValueKind.Nested(LEAD),
            "nothing is lost on the way",
            "the cable from the supply to each of these pixels, of two wires");

    static final DeclaredObject FEED = DeclaredObject.of("feed", PORT, AT, FEED_LEAD);

    static final DeclaredField<TextNode> SUPPLY_NAME =
            DeclaredField.required("name", new ValueKind.Text("name"), "its name, which no other supply has");
    static final DeclaredField<Double> SUPPLY_VOLTS = DeclaredField.required("volts", VOLTS, "what it gives");
    static final DeclaredField<Double> AMPS = DeclaredField.required(
            "amps", new ValueKind.Number("amperes", 0.01, 10_000), "what it may give, as its label says");
    static final DeclaredField<Double> SHARE = DeclaredField.of(
            "share", new ValueKind.Number("", 0.01, 1), Supply.USUAL_SHARE, "how much of that is to be used");
    static final DeclaredField<ListNode> FEEDS = DeclaredField.required(
            "feeds",
            ValueKind.Items.some(new ValueKind.Nested(FEED), "say which ports it feeds"),
            "which ports it feeds, and where; a port has one supply");

    static final DeclaredObject SUPPLY = DeclaredObject.of("supply", SUPPLY_NAME, SUPPLY_VOLTS, AMPS, SHARE, FEEDS);

    /** The supplies of a display. */
    public static final DeclaredField<ListNode> SUPPLIES = DeclaredField.optional(
            "supplies",
            ValueKind.Items.some(new ValueKind.Nested(SUPPLY), "put a supply in it, or leave it out"),
            "no supplies",
            "power supplies with the ports that they feed, for `duskloom report`");

    private PowerFields() {}
}
