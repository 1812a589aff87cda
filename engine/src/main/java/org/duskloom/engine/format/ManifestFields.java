package org.duskloom.engine.format;

import java.util.List;
import java.util.function.Function;
import org.duskloom.engine.document.DeclaredField;
import org.duskloom.engine.document.DeclaredObject;
import org.duskloom.engine.document.Fields;
import org.duskloom.engine.document.ListNode;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.document.ValueKind;

/** What a description of frames holds. */
public final class ManifestFields {
    /** More frames than two years have at a thousand frames a second. */
    private static final long MOST_FRAMES = 1L << 36;

    /** As many pixels as fit into an array of bytes. */
    private static final int MOST_PIXELS = (Integer.MAX_VALUE - 8) / 3;

    static final long MOST_BYTES = (1L << 53) - 1;

    private static final ValueKind.Text SHA256_KIND = new ValueKind.Text("SHA-256, 64 hexadecimal digits");
    private static final ValueKind.Whole RATE_KIND = new ValueKind.Whole("", 1, Integer.MAX_VALUE);

    static final DeclaredField<String> FORMAT = ValueKind.Format.field(FrameManifest.FORMAT);
    static final DeclaredField<TextNode> VERSION = DeclaredField.required(
            "version", new ValueKind.Text("text"), "the version of the program that made the frames");
    static final DeclaredField<TextNode> TITLE =
            DeclaredField.required("title", new ValueKind.Text("text"), "what the show is called");

    static final DeclaredField<Long> NUMERATOR = DeclaredField.required("num", RATE_KIND, "frames per `den` seconds");
    static final DeclaredField<Long> DENOMINATOR =
            DeclaredField.required("den", RATE_KIND, "in how many seconds there are `num` frames");
    static final DeclaredField<Fields> RATE = DeclaredField.required(
            "rate",
            new ValueKind.Nested(DeclaredObject.of("rate", NUMERATOR, DENOMINATOR)),
            "frames per second, an exact ratio");

    static final DeclaredField<Long> FRAMES =
            DeclaredField.required("frames", new ValueKind.Whole("", 1, MOST_FRAMES), "how many frames there are");
    static final DeclaredField<Long> PIXELS =
            DeclaredField.required("pixels", new ValueKind.Whole("", 1, MOST_PIXELS), "how many pixels a frame has");
    static final DeclaredField<String> ORDER =
            DeclaredField.required("order", only(FrameManifest.ORDER), "which colour each byte of a pixel is");
    static final DeclaredField<String> ENCODING = DeclaredField.required(
            "encoding", only(FrameManifest.ENCODING), "what a byte means: the code of IEC 61966-2-1");
    static final DeclaredField<TextNode> SHA256 =
            DeclaredField.required("sha256", SHA256_KIND, "of the bytes of all frames, one after the other");
    static final DeclaredField<Long> FIRST_FRAME = DeclaredField.required(
            "firstFrame", new ValueKind.Whole("", 0, MOST_FRAMES), "the number of the first frame in the show, from 0");
    static final DeclaredField<Long> SHOW_FRAMES = DeclaredField.required(
            "showFrames", new ValueKind.Whole("", 0, MOST_FRAMES), "how many frames the whole show has");

    static final DeclaredField<TextNode> FILE_NAME =
            DeclaredField.required("file", new ValueKind.Text("file"), "its name, as seen from here");
    static final DeclaredField<Long> FILE_BYTES =
            DeclaredField.required("bytes", new ValueKind.Whole("bytes", 0, MOST_BYTES), "how long it is");
    static final DeclaredObject FILE = DeclaredObject.of("frame file", FILE_NAME, FILE_BYTES);
    static final DeclaredField<ListNode> FILES = DeclaredField.required(
            "files", ValueKind.Items.any(new ValueKind.Nested(FILE)), "the files that hold the frames, by name");

    static final DeclaredField<TextNode> PROP_NAME =
            DeclaredField.required("name", new ValueKind.Text("name"), "its name");
    static final DeclaredField<Long> PROP_FIRST = DeclaredField.required(
            "first", new ValueKind.Whole("", 0, MOST_PIXELS), "its first pixel in the frame, from 0");
    static final DeclaredField<Long> PROP_COUNT =
            DeclaredField.required("count", new ValueKind.Whole("", 1, MOST_PIXELS), "how many pixels it has");
    static final DeclaredObject PROP = DeclaredObject.of("frame prop", PROP_NAME, PROP_FIRST, PROP_COUNT);
    static final DeclaredField<ListNode> PROPS = DeclaredField.required(
            "props", ValueKind.Items.any(new ValueKind.Nested(PROP)), "the props, in wiring order");

    static final DeclaredField<TextNode> INPUT_FILE = DeclaredField.required(
            "file", new ValueKind.Text("file"), "its name, as seen from the folder of the first one");
    static final DeclaredField<TextNode> INPUT_SHA256 = DeclaredField.required("sha256", SHA256_KIND, "of its bytes");
    static final DeclaredObject INPUT = DeclaredObject.of("input", INPUT_FILE, INPUT_SHA256);
    static final DeclaredField<ListNode> INPUTS = DeclaredField.required(
            "inputs", ValueKind.Items.any(new ValueKind.Nested(INPUT)), "the files that the frames were made from");

    /** The whole file. */
    public static final DeclaredObject MANIFEST = DeclaredObject.of(
            "description of frames",
            FORMAT,
            DeclaredField.SCHEMA,
            VERSION,
            TITLE,
            RATE,
            FRAMES,
            PIXELS,
            ORDER,
            ENCODING,
            SHA256,
            FIRST_FRAME,
            SHOW_FRAMES,
            FILES,
            PROPS,
            INPUTS);

    private ManifestFields() {}

    private static ValueKind<String> only(String word) {
        return ValueKind.Choice.of(List.of(word), Function.identity());
    }
}
