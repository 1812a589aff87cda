package org.duskloom.engine.format;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.duskloom.engine.document.JsonText;
import org.duskloom.engine.file.StagedFile;
import org.duskloom.engine.frame.PropSpan;
import org.duskloom.engine.time.FrameRate;

/**
 * What is known about a file of raw frames: a reader needs it to make sense of the bytes, and to see whether they are
 * whole and made from the inputs it expects. Written as JSON, {@code frames/1}.
 *
 * @param rate frames per second
 * @param frames how many frames the file holds
 * @param pixels how many pixels a frame has
 * @param sha256Hex SHA-256 of the file, in lower-case hexadecimal
 * @param firstFrame the number of the file's first frame in the timeline, from 0
 * @param props the props, in wiring order
 * @param inputs the files that the frames were made from
 */
public record FrameManifest(
        FrameRate rate,
        long frames,
        int pixels,
        String sha256Hex,
        long firstFrame,
        List<PropSpan> props,
        List<InputFile> inputs) {

    /**
     * One file that was read.
     *
     * @param file its name as the user would type it
     * @param sha256Hex SHA-256 of its bytes, in lower-case hexadecimal
     */
    public record InputFile(String file, String sha256Hex) {}

    public FrameManifest {
        props = List.copyOf(props);
        inputs = List.copyOf(inputs);
    }

    /** The manifest as JSON text, fields in a fixed order, ending with a line feed. */
    public String json() {
        JsonText text = new JsonText();
        text.field("duskloom", "frames/1");
        text.field("rate", JsonText.object("num", rate.numerator(), "den", rate.denominator()));
        text.field("frames", frames);
        text.field("pixels", pixels);
        text.field("order", "RGB");
        text.field("encoding", "srgb");
        text.field("sha256", sha256Hex);
        text.field("firstFrame", firstFrame);
        text.field("props", props.stream().map(FrameManifest::inline).toList());
        text.field("inputs", inputs.stream().map(FrameManifest::inline).toList());
        return text.end();
    }

    /**
     * Writes the manifest and finishes the file.
     *
     * @throws IOException if that fails; the file is then abandoned
     */
    public void writeTo(StagedFile file) throws IOException {
        try (file) {
            byte[] bytes = json().getBytes(StandardCharsets.UTF_8);
            file.write(bytes, 0, bytes.length);
            file.finish();
        }
    }

    private static JsonText.Inline inline(PropSpan prop) {
        return JsonText.object("name", prop.name(), "first", prop.firstPixel(), "count", prop.pixelCount());
    }

    private static JsonText.Inline inline(InputFile input) {
        return JsonText.object("file", input.file(), "sha256", input.sha256Hex());
    }
}
