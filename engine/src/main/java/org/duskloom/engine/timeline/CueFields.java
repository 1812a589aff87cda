package org.duskloom.engine.timeline;

import java.util.ArrayList;
import java.util.List;
import org.duskloom.engine.color.BlendMode;
import org.duskloom.engine.document.DeclaredField;
import org.duskloom.engine.document.DeclaredObject;
import org.duskloom.engine.document.Field;
import org.duskloom.engine.document.Fields;
import org.duskloom.engine.document.Node;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.document.ValueKind;

/** What a cue, a look and the objects in them may hold. */
final class CueFields {
    private static final ValueKind<Double> SHARE = new ValueKind.Number("", 0, 1);

    static final DeclaredField<Node> AT = DeclaredField.written(
            "at",
            Values.TIME,
            "\"0s\"",
            "when it starts, from the start of the show; with a sign from the end of the cue before in the list: `\"+1s\"`;"
                    + " from a cue or a marker: `\"@rise\"`, `\"@rise.end-500ms\"`");
    static final DeclaredField<Node> FOR = DeclaredField.optional(
            "for", Values.TIME, "to the end of the show, or of its scene", "how long it lasts; this or `until`");
    static final DeclaredField<Node> UNTIL = DeclaredField.optional(
            "until",
            Values.TIME,
            "to the end of the show, or of its scene",
            "when it ends; this or `for`; from a cue or a marker too, but without a sign");
    static final ValueKind.Texts ADDRESSES = new ValueKind.Texts("address");
    static final DeclaredField<Node> ON = DeclaredField.optional(
            "on",
            ValueKind.Own.of(
                    ADDRESSES.phrase() + "; beside `scene`: object; for each name in the scene: " + ADDRESSES.phrase(),
                    ADDRESSES,
                    new ValueKind.Named("name in the scene", ADDRESSES)),
            "required, but beside `scene`: on what the scene says",
            "what it is seen on, in this order; beside `scene` what is played on instead of the names in the scene");

    /** The effect, whose settings hang on it. */
    static final DeclaredField<TextNode> EFFECT = DeclaredField.optional(
            "effect", new ValueKind.Text("name of an effect"), "the look's", "what is seen; this or `look`, or both");

    /** The settings, which the effect declares. */
    static final DeclaredField<List<Field>> WITH = DeclaredField.optional(
            "with",
            new ValueKind.Named("setting", ValueKind.Own.of("what the effect says")),
            "the defaults of the effect",
            "settings of the effect; beside a look they win over the look's");

    static final DeclaredField<TextNode> SCENE = DeclaredField.optional(
            "scene",
            new ValueKind.Text("name of a scene"),
            "",
            "the scene that is played instead of an effect, cut where the cue ends");
    static final DeclaredField<TextNode> LOOK = DeclaredField.optional(
            "look", new ValueKind.Text("name of a look"), "", "the look whose fields hold where the cue has none");
    static final DeclaredField<Spread> SPREAD = DeclaredField.of(
            "spread",
            Word.kind(Spread.class),
            Spread.WHOLE,
            "`\"whole\"`: one canvas round all members together; `\"each\"`: one for every member");
    static final DeclaredField<Axes> AXES = DeclaredField.of(
            "axes",
            Word.kind(Axes.class),
            Axes.STAGE,
            "`\"stage\"`: up is up however a prop hangs; `\"own\"`: the look turns with the prop; `\"outward\"`: its right"
                    + " points away from the middle of the prop, for parts; these two need `\"spread\": \"each\"`");
    static final DeclaredField<Fit> FIT = DeclaredField.of(
            "fit",
            Word.kind(Fit.class),
            Fit.CONTAIN,
            "how the canvas is scaled: `\"contain\"`: its longer half-side is 1; `\"stretch\"`: both are;"
                    + " `\"none\"`: it keeps the units of the display, from its middle");
    static final DeclaredField<PixelOrder> ORDER = DeclaredField.of(
            "order",
            Word.kind(PixelOrder.class),
            PixelOrder.WIRING,
            "along what an effect runs that runs along pixels; `\"around\"`: clockwise round every member from its top, as"
                    + " the audience sees it; `\"members\"`: each member lights as one step");
    static final DeclaredField<BlendMode> BLEND = DeclaredField.of(
            "blend",
            ValueKind.Choice.of(List.of(BlendMode.values()), BlendMode::word),
            BlendMode.NORMAL,
            "how it is mixed with the cues before it in its layer, in linear light, in the words of W3C Compositing"
                    + " and Blending");
    static final DeclaredField<TextNode> NAME = DeclaredField.optional(
            "name",
            new ValueKind.Text("name"),
            "",
            "what times count from, and what keeps its random choices whatever is moved; else they hang on its layer,"
                    + " effect and start, and where `at` has a sign on how many such cues are before it");

    /** How much of a cue is seen. */
    static final DeclaredField<Node> OPACITY = DeclaredField.written(
            "opacity", KeyFields.moving(SHARE), "1", "how much of the cue is seen: 0 nothing, 1 all");

    static final DeclaredField<Node> FADE_IN =
            DeclaredField.written("in", Values.TIME, "\"0s\"", "how long it takes from the start to full");
    static final DeclaredField<Node> FADE_OUT =
            DeclaredField.written("out", Values.TIME, "\"0s\"", "how long it takes from full to the end");
    static final DeclaredField<Node> FADE_EASING =
            DeclaredField.written("easing", Values.EASING, "\"linear\"", "the course of coming; going mirrors it");
    static final DeclaredField<Fields> FADE = DeclaredField.optional(
            "fade",
            new ValueKind.Nested(DeclaredObject.of("fade", FADE_IN, FADE_OUT, FADE_EASING)),
            "there at once, gone at once",
            "how it comes and goes, such as `{\"in\": \"500ms\", \"out\": \"1s\", \"easing\": \"ease-in-out\"}`");

    static final DeclaredField<StaggerBy> STAGGER_BY = DeclaredField.of(
            "by",
            Word.kind(StaggerBy.class),
            StaggerBy.MEMBERS,
            "along what the starts are spread: from member to member, from part to part, the same of all props together, from"
                    + " prop to prop, or by the places of the members");
    static final DeclaredField<Node> STAGGER_TIME = DeclaredField.required(
            "time",
            Values.TIME,
            "by `\"members\"`, `\"part\"`, `\"prop\"`: the time from one to the next; by place: from the first member to the last");
    static final DeclaredObject STAGGER_OBJECT = DeclaredObject.of("stagger", STAGGER_BY, STAGGER_TIME);
    static final DeclaredField<Node> STAGGER = DeclaredField.optional(
            "stagger",
            ValueKind.Own.of(
                    "time, or object: stagger", new ValueKind.Text("time"), new ValueKind.Nested(STAGGER_OBJECT)),
            "all at once",
            "how much later each member starts than the one before; `{\"by\": \"right\", \"time\": \"2s\"}` is a wave that"
                    + " crosses the stage in that time; needs `\"spread\": \"each\"`, or `scene` and one name in `on`");

    static final DeclaredField<Long> REPEAT_COUNT =
            DeclaredField.optional("count", Repeat.COUNT_KIND, "", "how often it is played; this or `until`");
    static final DeclaredField<Node> REPEAT_UNTIL = DeclaredField.optional(
            "until", Values.TIME, "", "plays start before this instant, and the last is cut there; this or `count`");
    static final DeclaredField<Node> REPEAT_EVERY =
            DeclaredField.optional("every", Values.TIME, "one after the other", "the time from one start to the next");
    static final DeclaredField<List<Field>> REPEAT_CHANGE = DeclaredField.optional(
            "change",
            new ValueKind.Named(
                    "setting",
                    ValueKind.Own.of(
                            "number, or list of values",
                            new ValueKind.Number("", -Double.MAX_VALUE, Double.MAX_VALUE),
                            ValueKind.Items.any(ValueKind.Own.of("value of the setting")))),
            "nothing changes",
            "what changes from play to play: a number is added once more each time, of a list each play takes the next"
                    + " item");
    static final DeclaredObject REPEAT_OBJECT = DeclaredObject.of(
                    "repeat", REPEAT_COUNT, REPEAT_UNTIL, REPEAT_EVERY, REPEAT_CHANGE)
            .needsOne("such as {\"count\": 4}", REPEAT_COUNT, REPEAT_UNTIL);
    static final DeclaredField<Node> REPEAT = DeclaredField.optional(
            "repeat",
            ValueKind.Own.of(
                    "whole number, 1 to " + Repeat.MOST + ", or object: repeat",
                    Repeat.COUNT_KIND,
                    new ValueKind.Nested(REPEAT_OBJECT)),
            "played once",
            "how often it is played, such as `{\"count\": 4, \"every\": \"2s\", \"change\": {\"toward\": 90}}`");

    /** A cue. */
    static final DeclaredObject CUE = DeclaredObject.of(
                    "cue", AT, FOR, UNTIL, ON, EFFECT, WITH, LOOK, SCENE, SPREAD, AXES, FIT, ORDER, STAGGER, FADE,
                    OPACITY, BLEND, REPEAT, NAME)
            .allowsOne("leave one of them out", FOR, UNTIL);

    /** A look: what is seen, not where or when. */
    static final DeclaredObject LOOK_OBJECT =
            DeclaredObject.of("look", EFFECT, WITH, SPREAD, AXES, FIT, ORDER, STAGGER, FADE, OPACITY, BLEND);

    /** What only a cue with an effect has. */
    static final List<DeclaredField<?>> NOT_OF_SCENES = List.of(EFFECT, WITH, LOOK, SPREAD, AXES, FIT, ORDER);

    /** The names of the fields of a cue that a look must not have. */
    static final List<String> NOT_IN_LOOKS = notInLooks();

    private CueFields() {}

    private static List<String> notInLooks() {
        List<String> names = new ArrayList<>(CUE.names());
        names.removeAll(LOOK_OBJECT.names());
        return List.copyOf(names);
    }
}
