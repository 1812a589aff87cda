package org.duskloom.engine.timeline;

import java.util.List;
import org.duskloom.engine.color.BlendMode;
import org.duskloom.engine.document.DeclaredField;
import org.duskloom.engine.document.DeclaredObject;
import org.duskloom.engine.document.Field;
import org.duskloom.engine.document.ListNode;
import org.duskloom.engine.document.Node;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.document.ValueKind;
import org.duskloom.engine.group.GroupReader;
import org.duskloom.engine.time.FrameRate;

/** What a timeline and its layers may hold. */
public final class TimelineFields {
    private static final long LARGEST_SEED = (1L << 53) - 1;

    static final DeclaredField<TextNode> LAYER_NAME = DeclaredField.optional(
            "name",
            new ValueKind.Text("name"),
            "its number",
            "the layer's name, which the random choices of its cues hang on");
    static final DeclaredField<BlendMode> BLEND = DeclaredField.of(
            "blend",
            CueFields.BLEND.kind(),
            BlendMode.NORMAL,
            "how it is mixed with the layers under it, in linear light; not of a mask");
    static final DeclaredField<Double> LAYER_OPACITY = DeclaredField.of(
            "opacity", new ValueKind.Number("", 0, 1), 1.0, "how much of the layer is seen: 0 nothing, 1 all");
    static final DeclaredField<Boolean> MASK = DeclaredField.of(
            "mask",
            new ValueKind.Flag(),
            false,
            "true: the layer is not seen itself; its brightness says how much is left of the layers under it");
    static final DeclaredField<ListNode> CUES = DeclaredField.required(
            "cues",
            ValueKind.Items.any(new ValueKind.Nested(CueFields.CUE)),
            "the cues; later ones are painted over earlier ones");

    /** The effect of a cue or a look: for who knows the effects that there are. */
    public static final DeclaredField<TextNode> EFFECT = CueFields.EFFECT;

    /** The settings of the effect of a cue or a look. */
    public static final DeclaredField<List<Field>> WITH = CueFields.WITH;

    static final DeclaredObject LAYER = DeclaredObject.of("layer", LAYER_NAME, BLEND, LAYER_OPACITY, MASK, CUES);

    static final DeclaredField<String> FORMAT = ValueKind.Format.field(TimelineReader.FORMAT);
    static final DeclaredField<TextNode> TITLE =
            DeclaredField.optional("title", new ValueKind.Text("text"), "no title", "what the show is called");

    /** Read by whoever finds the files. */
    public static final DeclaredField<TextNode> DISPLAY =
            DeclaredField.optional("display", new ValueKind.Text("file"), "", "the display it is played on");

    /** Read by whoever finds the files. */
    public static final DeclaredField<TextNode> MAP = DeclaredField.optional(
            "map", new ValueKind.Text("file"), "", "the pixel map it is played on, instead of a display");

    static final DeclaredField<Node> GROUPS = DeclaredField.optional(
            "groups", GroupReader.GROUPS, "no groups", "groups by name; only beside a map, a display has its own");
    static final DeclaredField<Node> RATE = DeclaredField.written(
            "rate",
            ValueKind.Own.of(
                    "frames per second, a whole number up to " + FrameRate.FASTEST
                            + " or a ratio such as `\"30000/1001\"`",
                    new ValueKind.Whole("frames per second", 1, FrameRate.FASTEST),
                    new ValueKind.Text("ratio")),
            "40",
            "how many frames a second has");
    static final DeclaredField<Node> LENGTH =
            DeclaredField.required("length", Values.TIME, "how long the show is; in beats: until which beat");
    static final DeclaredField<Long> SEED = DeclaredField.of(
            "seed",
            new ValueKind.Whole("", -LARGEST_SEED, LARGEST_SEED),
            0L,
            "another number gives other random choices");
    static final DeclaredField<List<Field>> PALETTES = DeclaredField.optional(
            "palettes",
            new ValueKind.Named("palette", PaletteFields.KIND),
            "no palettes",
            "colours by name, such as `{\"dusk\": [\"#1b2a6b\", \"#ff9e5e\"]}`");
    static final DeclaredField<List<Field>> LOOKS = DeclaredField.optional(
            "looks",
            new ValueKind.Named("look", new ValueKind.Nested(CueFields.LOOK_OBJECT)),
            "no looks",
            "fields of cues by name, to be used by many cues");
    public static final DeclaredField<ListNode> LAYERS = DeclaredField.required(
            "layers", ValueKind.Items.any(new ValueKind.Nested(LAYER)), "the layers, from the bottom up");

    static final DeclaredField<Node> SCENE_LENGTH =
            DeclaredField.required("length", Values.TIME, "how long the scene is");
    static final DeclaredField<Boolean> SAME =
            DeclaredField.of("same", new ValueKind.Flag(), false, "true: every play makes the same random choices");
    static final DeclaredObject SCENE = DeclaredObject.of("scene", SCENE_LENGTH, SAME, LAYERS);
    static final DeclaredField<List<Field>> SCENES = DeclaredField.optional(
            "scenes",
            new ValueKind.Named("scene", new ValueKind.Nested(SCENE)),
            "no scenes",
            "pieces of timeline by name, which cues play; times in them count from the start of the cue");

    /** The whole file. */
    public static final DeclaredObject TIMELINE = DeclaredObject.of(
                    "timeline",
                    FORMAT,
                    DeclaredField.SCHEMA,
                    TITLE,
                    DISPLAY,
                    MAP,
                    GROUPS,
                    RATE,
                    LENGTH,
                    SEED,
                    MusicFields.SOUND,
                    MusicFields.BEATS,
                    MusicFields.MARKERS,
                    PALETTES,
                    LOOKS,
                    SCENES,
                    LAYERS)
            .needsOne("name one of them, such as \"map\": \"map.csv\"", DISPLAY, MAP);

    private TimelineFields() {}
}
