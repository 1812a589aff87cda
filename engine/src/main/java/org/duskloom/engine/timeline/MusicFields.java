package org.duskloom.engine.timeline;

import org.duskloom.engine.document.DeclaredField;
import org.duskloom.engine.document.DeclaredObject;
import org.duskloom.engine.document.Fields;
import org.duskloom.engine.document.Node;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.document.ValueKind;

/** What a timeline may say of its music. */
final class MusicFields {
    static final DeclaredField<TextNode> SOUND_FILE =
            DeclaredField.required("file", new ValueKind.Text("file: WAV, AIFF, AU"), "the sound");
    static final DeclaredField<Node> SOUND_STARTS = DeclaredField.written(
            "starts",
            Values.TIME,
            "\"0s\"",
            "when it starts; with a minus it has been running for so long when the show starts; label tracks and"
                    + " `first` of `beats` count from here");

    /** The sound that the show is played to. */
    static final DeclaredObject SOUND_OBJECT = DeclaredObject.of("sound", SOUND_FILE, SOUND_STARTS);

    static final DeclaredField<Node> TEMPO = DeclaredField.required(
            "tempo",
            ValueKind.Own.of(
                    "number of beats per minute, 1 to 1,000, at most six decimals",
                    new ValueKind.Number("beats per minute", 1, 1000)),
            "how fast the music is");
    static final DeclaredField<Node> FIRST =
            DeclaredField.written("first", Values.TIME, "\"0s\"", "when its first beat is, which starts a bar");
    static final DeclaredField<Long> BAR =
            DeclaredField.of("bar", new ValueKind.Whole("beats", 1, 64), 4L, "how many beats a bar has");

    /** Beats that never change. */
    static final DeclaredObject BEATS_OBJECT = DeclaredObject.of("beats", TEMPO, FIRST, BAR);

    static final DeclaredField<Fields> SOUND = DeclaredField.optional(
            "sound",
            new ValueKind.Nested(SOUND_OBJECT),
            "no sound",
            "the sound that the show is played to, such as `{\"file\": \"evening.wav\"}`");
    static final DeclaredField<Node> BEATS = DeclaredField.optional(
            "beats",
            ValueKind.Own.of(
                    "object: beats, or label track", new ValueKind.Nested(BEATS_OBJECT), new ValueKind.Text("file")),
            "times cannot count beats",
            "where the beats of the music lie, such as `{\"tempo\": 128, \"first\": \"350ms\"}`, or the name of a label"
                    + " track with labels `beat` and `bar`");
    static final DeclaredField<Node> MARKERS = DeclaredField.optional(
            "markers",
            ValueKind.Own.of(
                    "object; for each name of a marker: time; or label track",
                    new ValueKind.Named("marker", Values.TIME),
                    new ValueKind.Text("file")),
            "no markers",
            "instants by name, such as `{\"chorus\": \"42.5s\"}`, from which times may count: `\"at\": \"@chorus+2b\"`; or the"
                    + " name of a label track, of which every label but `beat` and `bar` is a marker");

    private MusicFields() {}
}
