package org.duskloom.engine.display;

import java.util.Arrays;
import java.util.List;
import org.duskloom.engine.document.DeclaredField;
import org.duskloom.engine.document.DeclaredObject;
import org.duskloom.engine.document.Field;
import org.duskloom.engine.document.ListNode;
import org.duskloom.engine.document.Node;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.document.ValueKind;
import org.duskloom.engine.group.GroupReader;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.wire.PortFields;
import org.duskloom.engine.wire.PowerFields;

/** What a display, its shapes and its props may hold. */
public final class DisplayFields {
    static final DeclaredField<ListNode> BUILD = DeclaredField.optional(
            "build",
            ValueKind.Items.some(new ValueKind.Nested(StepReader.STEP), "put steps in it"),
            "",
            "steps that make pixels in wiring order, one after the other; this or a file in `pixels`");
    static final ValueKind.Whole PIXEL_COUNT = new ValueKind.Whole("", 1, PixelMap.MAX_PIXELS);
    static final DeclaredField<Node> PIXELS = DeclaredField.optional(
            "pixels",
            ValueKind.Own.of("file, or whole number beside `build`", new ValueKind.Text("file"), PIXEL_COUNT),
            "",
            "a CSV with the columns `pixel,x,y` and, where wanted, `z` and `part`, in the shape's own axes, or an SVG drawing"
                    + " whose circles are the pixels; beside `build`, how many the steps must make");
    static final DeclaredField<TextNode> ALONG = DeclaredField.optional(
            "along",
            new ValueKind.Text("id of a path"),
            "in the order of the file",
            "beside a drawing: its circles are wired along this path");
    static final DeclaredField<List<Field>> PARTS = DeclaredField.optional(
            "parts",
            new ValueKind.Named(
                    "part",
                    ValueKind.Own.of(
                            "pixel ranges such as `\"1-6, 9, 14-10\"`, or list of parts",
                            new ValueKind.Text("pixel ranges"),
                            ValueKind.Items.some(new ValueKind.Text("path of a part"), "name parts in it"))),
            "only the parts that steps or the file make",
            "further parts by path; falling ranges run backwards, listed parts follow each other");

    static final DeclaredObject SHAPE = DeclaredObject.of("shape", BUILD, PIXELS, ALONG, PARTS);

    /** The name of a prop. */
    public static final DeclaredField<TextNode> NAME =
            DeclaredField.required("name", new ValueKind.Text("name"), "its name, which no other prop or group has");
    /** What a prop is built as. */
    public static final DeclaredField<TextNode> SHAPE_NAME =
            DeclaredField.required("shape", new ValueKind.Text("name of a shape"), "what is hung up");
    /** Where a prop hangs. */
    public static final DeclaredField<Node> AT =
            DeclaredField.required("at", PointList.PLACE, "where the zero point of the shape hangs");
    /** How a prop is mirrored. */
    public static final DeclaredField<Mirror> MIRROR = DeclaredField.optional(
            "mirror",
            ValueKind.Choice.of(List.of(Mirror.X, Mirror.Y), Mirror::word),
            "as drawn",
            "`\"x\"`: left and right change places; `\"y\"`: top and bottom do; first of all, the others follow in this"
                    + " order");
    /** How much larger than drawn a prop is. */
    public static final DeclaredField<Double> SCALE = DeclaredField.of(
            "scale", new ValueKind.Number("", 0.001, 1000), 1.0, "how many times as large as drawn it is built");
    /** How far a prop is turned. */
    public static final DeclaredField<Double> TURN = DeclaredField.of(
            "turn",
            StepFields.DEGREES,
            0.0,
            "about the axis toward the audience, counter-clockwise as the audience sees it");
    /** How far a prop leans. */
    public static final DeclaredField<Double> TILT = DeclaredField.of(
            "tilt", StepFields.DEGREES, 0.0, "about the axis to the right; above 0 the top comes toward the audience");
    /** How far a prop looks aside. */
    public static final DeclaredField<Double> YAW = DeclaredField.of(
            "yaw",
            StepFields.DEGREES,
            0.0,
            "about the upright axis; above 0 the right side goes away from the audience");
    /** Whether a prop is wired from its other end. */
    public static final DeclaredField<Boolean> REVERSE = DeclaredField.of(
            "reverse", new ValueKind.Flag(), false, "true: it is wired from the other end; parts keep their order");

    static final DeclaredObject PROP =
            DeclaredObject.of("prop", NAME, SHAPE_NAME, AT, MIRROR, SCALE, TURN, TILT, YAW, REVERSE);

    static final DeclaredField<String> FORMAT = ValueKind.Format.field(DisplayReader.FORMAT);
    static final DeclaredField<Units> UNITS = DeclaredField.of(
            "units",
            ValueKind.Choice.of(Arrays.asList(Units.values()), Units::word),
            Units.MILLIMETRES,
            "the unit of all lengths");
    public static final DeclaredField<List<Field>> SHAPES = DeclaredField.required(
            "shapes", new ValueKind.Named("shape", new ValueKind.Nested(SHAPE)), "what props are built as, drawn once");
    public static final DeclaredField<ListNode> PROPS = DeclaredField.required(
            "props",
            ValueKind.Items.some(new ValueKind.Nested(PROP), "put one prop in it at least"),
            "what hangs where, in wiring order");
    static final DeclaredField<Node> GROUPS =
            DeclaredField.optional("groups", GroupReader.GROUPS, "no groups", "groups by name");

    /** The whole file. */
    public static final DeclaredObject DISPLAY = DeclaredObject.of(
            "display",
            FORMAT,
            DeclaredField.SCHEMA,
            UNITS,
            SHAPES,
            PROPS,
            GROUPS,
            PowerFields.KINDS,
            PortFields.PORTS,
            PowerFields.SUPPLIES);

    private DisplayFields() {}
}
