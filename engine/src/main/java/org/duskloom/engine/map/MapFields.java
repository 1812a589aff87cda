package org.duskloom.engine.map;

import org.duskloom.engine.document.DeclaredField;
import org.duskloom.engine.document.DeclaredObject;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.document.ValueKind;

/** The columns of a pixel map and of the pixels of a shape. */
public final class MapFields {
    /** A place along one axis, in the unit of the file. */
    public static final ValueKind.Number COORDINATE =
            new ValueKind.Number("", -MapReader.MAX_COORDINATE, MapReader.MAX_COORDINATE);

    static final ValueKind.Whole PIXEL_NUMBER = new ValueKind.Whole("", 1, PixelMap.MAX_PIXELS);

    /** Which prop a pixel is of. */
    public static final DeclaredField<TextNode> PROP =
            DeclaredField.required("prop", new ValueKind.Text("name"), "the prop that the pixel is of");

    /** Which pixel of its prop it is. */
    public static final DeclaredField<Long> PIXEL =
            DeclaredField.required("pixel", PIXEL_NUMBER, "its number in the prop or shape, from 1, in wiring order");

    /** Where it is: to the right. */
    public static final DeclaredField<Double> X = DeclaredField.required("x", COORDINATE, "to the audience's right");

    /** Where it is: up. */
    public static final DeclaredField<Double> Y = DeclaredField.required("y", COORDINATE, "up");

    /** Where it is: toward the audience. */
    public static final DeclaredField<Double> Z = DeclaredField.of("z", COORDINATE, 0.0, "toward the audience");

    /** The parts that it belongs to. */
    public static final DeclaredField<TextNode> PART = DeclaredField.optional(
            "part",
            new ValueKind.Text("paths of parts"),
            "no part",
            "the parts that it belongs to, with `;` between them and `/` between a part and one inside it; `top#3` is the"
                    + " third pixel of `top`");

    static final DeclaredField<Double> OWN_X = DeclaredField.optional(
            "ownx", COORDINATE, "as on the stage", "to the right in the prop's own axes; together with `owny`");
    static final DeclaredField<Double> OWN_Y =
            DeclaredField.optional("owny", COORDINATE, "as on the stage", "up in the prop's own axes");
    static final DeclaredField<Double> OWN_Z = DeclaredField.optional(
            "ownz", COORDINATE, "as on the stage, 0 beside `ownx`", "out of the prop in its own axes");

    /** A row of a pixel map. */
    public static final DeclaredObject MAP =
            DeclaredObject.of("pixel map", PROP, PIXEL, X, Y, Z, PART, OWN_X, OWN_Y, OWN_Z);

    /** A row of the pixels of a shape. */
    public static final DeclaredObject SHAPE = DeclaredObject.of("pixels of a shape", PIXEL, X, Y, Z, PART);

    private MapFields() {}
}
