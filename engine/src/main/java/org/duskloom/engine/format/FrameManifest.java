package org.duskloom.engine.format;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.duskloom.engine.document.JsonReader;
import org.duskloom.engine.document.JsonText;
import org.duskloom.engine.document.SourceText;
import org.duskloom.engine.file.StagedFile;
import org.duskloom.engine.frame.PropSpan;
import org.duskloom.engine.frame.RunInfo;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;

/**
 * What is known about finished frames: a reader needs it to make sense of the bytes, and to see whether they are whole
 * and made from the inputs it expects. Written as JSON, {@code frames/1}.
 *
 * @param run what the frames are; they follow each other without a gap
 * @param sha256Hex SHA-256 of the bytes of all frames, frame after frame as in {@code frames.rgb}, in lower-case
 *     hexadecimal
 * @param files the files that hold them, in the order of their names
 * @param origin what they were made by and from
 */
public record FrameManifest(RunInfo run, String sha256Hex, List<WrittenFile> files, Origin origin) {
    /** The name of the file. */
    public static final String FILE = "frames.json";

    /** What the file says that it is. */
    static final String FORMAT = "frames/1";

    static final String ORDER = "RGB";
    static final String ENCODING = "srgb";

    public FrameManifest {
        Objects.requireNonNull(sha256Hex, "sha256Hex");
        Objects.requireNonNull(origin, "origin");
        files = List.copyOf(files);
        if (!run.frames().isSpan()) {
            throw new IllegalArgumentException(run.frames() + " leave frames out");
        }
    }

    /** Reads the manifest that stands in a folder; nothing if an error was added. */
    public static Optional<FrameManifest> in(Path folder, Problems problems) {
        Path file = folder.resolve(FILE);
        if (Files.isRegularFile(folder)) {
            Path inside = folder.toAbsolutePath().getParent();
            problems.error(
                    Location.ofFile(folder.toString()),
                    "this is a file, not a folder with " + FILE,
                    Files.exists(inside.resolve(FILE)) ? "give the folder in which it lies" : "");
            return Optional.empty();
        }
        return SourceText.read(file, file.toString(), problems)
                .flatMap(source -> JsonReader.read(source, problems))
                .flatMap(root -> ManifestReader.read(root, problems))
                .map(ManifestReader.Located::manifest);
    }

    /** The manifest as JSON text, fields in a fixed order, ending with a line feed. */
    public String json() {
        JsonText text = new JsonText();
        text.field(ManifestFields.FORMAT, FORMAT);
        text.field(ManifestFields.VERSION, origin.version());
        text.field(ManifestFields.TITLE, run.title());
        text.field(
                ManifestFields.RATE,
                JsonText.object(
                        ManifestFields.NUMERATOR, run.rate().numerator(),
                        ManifestFields.DENOMINATOR, run.rate().denominator()));
        text.field(ManifestFields.FRAMES, run.frames().count());
        text.field(ManifestFields.PIXELS, run.pixelCount());
        text.field(ManifestFields.ORDER, ORDER);
        text.field(ManifestFields.ENCODING, ENCODING);
        text.field(ManifestFields.SHA256, sha256Hex);
        text.field(ManifestFields.FIRST_FRAME, run.frames().first());
        text.field(ManifestFields.SHOW_FRAMES, run.showFrames());
        text.field(
                ManifestFields.FILES, files.stream().map(FrameManifest::inline).toList());
        text.field(
                ManifestFields.PROPS,
                run.pixels().props().stream().map(FrameManifest::inline).toList());
        text.field(
                ManifestFields.INPUTS,
                origin.inputs().stream().map(FrameManifest::inline).toList());
        return text.end();
    }

    /**
     * Writes the manifest and finishes the file.
     *
     * @throws IOException if that fails; the file is then abandoned
     */
    public void writeTo(StagedFile file) throws IOException {
        try (file) {
            file.writeWhole(json());
        }
    }

    private static JsonText.Inline inline(WrittenFile file) {
        return JsonText.object(ManifestFields.FILE_NAME, file.file(), ManifestFields.FILE_BYTES, file.bytes());
    }

    private static JsonText.Inline inline(PropSpan prop) {
        return JsonText.object(
                ManifestFields.PROP_NAME, prop.name(),
                ManifestFields.PROP_FIRST, prop.firstPixel(),
                ManifestFields.PROP_COUNT, prop.pixelCount());
    }

    private static JsonText.Inline inline(Origin.Input input) {
        return JsonText.object(ManifestFields.INPUT_FILE, input.file(), ManifestFields.INPUT_SHA256, input.sha256Hex());
    }
}
