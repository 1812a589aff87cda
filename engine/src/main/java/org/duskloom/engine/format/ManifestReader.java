package org.duskloom.engine.format;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.function.Function;
import org.duskloom.engine.document.Fields;
import org.duskloom.engine.document.ListNode;
import org.duskloom.engine.document.Node;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.frame.FrameList;
import org.duskloom.engine.frame.FramePixels;
import org.duskloom.engine.frame.PropSpan;
import org.duskloom.engine.frame.RunInfo;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.text.Quoted;
import org.duskloom.engine.time.FrameRate;
import org.duskloom.engine.time.FrameSpan;

/** Reads a {@link FrameManifest} back, and believes nothing of it that it can check. */
final class ManifestReader {
    /** More frames than two years have at a thousand frames a second. */
    private static final long MOST_FRAMES = 1L << 36;

    /** As many pixels as fit into an array of bytes. */
    private static final int MOST_PIXELS = (Integer.MAX_VALUE - 8) / 3;

    private static final long MOST_BYTES = 1L << 53;
    private static final String SHA256 = "[0-9a-f]{64}";

    private final Fields fields;
    private final Problems problems;

    private ManifestReader(Fields fields, Problems problems) {
        this.fields = fields;
        this.problems = problems;
    }

    /**
     * A manifest with the places of what is compared with the frames.
     *
     * @param manifest as read
     * @param atFrames where the number of frames stands
     * @param atDigest where the digest of the frames stands
     * @param atFiles where the list of files stands
     */
    record Located(FrameManifest manifest, Location atFrames, Location atDigest, Location atFiles) {}

    /** The manifest; nothing if an error was added. */
    static Optional<Located> read(Node root, Problems problems) {
        return Fields.of(root, "a description of frames", problems)
                .flatMap(fields -> new ManifestReader(fields, problems).located());
    }

    private Optional<Located> located() {
        int errorsBefore = problems.errorCount();
        if (!isOfThisFormat()) {
            return Optional.empty();
        }
        requireAll();
        String title = fields.text("title").orElse("");
        Optional<FrameRate> rate = fields.fields("rate").flatMap(this::rate);
        OptionalLong pixels = fields.whole("pixels", 1, MOST_PIXELS);
        fields.choice("order", List.of(FrameManifest.ORDER));
        fields.choice("encoding", List.of(FrameManifest.ENCODING));
        Optional<String> digest = digest(fields, "sha256");
        Optional<FrameSpan> span = span();
        OptionalLong showFrames = fields.whole("showFrames", 0, MOST_FRAMES);
        List<WrittenFile> files = items("files", "a file", this::file);
        List<PropSpan> props = items("props", "a prop", this::prop);
        Origin origin = new Origin(fields.text("version").orElse(""), items("inputs", "an input", this::input));
        fields.finish();
        if (problems.errorCount() > errorsBefore) {
            return Optional.empty();
        }
        boolean sound = isWithin(span.orElseThrow(), showFrames.getAsLong())
                && isCovered(props, (int) pixels.getAsLong())
                && isBearable(span.orElseThrow(), pixels.getAsLong());
        if (!sound) {
            return Optional.empty();
        }
        RunInfo run = new RunInfo(
                title,
                rate.orElseThrow(),
                FrameList.of(span.orElseThrow()),
                showFrames.getAsLong(),
                new FramePixels((int) pixels.getAsLong(), props, Optional.empty()),
                List.of());
        FrameManifest manifest = new FrameManifest(run, digest.orElseThrow(), files, origin);
        return Optional.of(
                new Located(manifest, fields.location("frames"), fields.location("sha256"), fields.location("files")));
    }

    /** A file of another kind would make an error of each of its fields. */
    private boolean isOfThisFormat() {
        if (!fields.require("duskloom")) {
            return false;
        }
        Optional<TextNode> format = fields.textNode("duskloom");
        if (format.isPresent() && !format.get().value().equals(FrameManifest.FORMAT)) {
            problems.error(
                    format.get().location(),
                    "this is no description of frames: \"duskloom\" is "
                            + Quoted.of(format.get().value()),
                    "allowed: \"" + FrameManifest.FORMAT + "\"");
            return false;
        }
        return format.isPresent();
    }

    private void requireAll() {
        fields.require("version", "title", "rate", "frames", "pixels", "order", "encoding", "sha256");
        fields.require("firstFrame", "showFrames", "files", "props", "inputs");
    }

    private Optional<FrameRate> rate(Fields rate) {
        rate.require("num", "den");
        OptionalLong numerator = rate.whole("num", 1, Integer.MAX_VALUE);
        OptionalLong denominator = rate.whole("den", 1, Integer.MAX_VALUE);
        rate.finish();
        if (numerator.isEmpty() || denominator.isEmpty()) {
            return Optional.empty();
        }
        if (numerator.getAsLong() > FrameRate.FASTEST * denominator.getAsLong()) {
            problems.error(
                    rate.location(),
                    numerator.getAsLong() + "/" + denominator.getAsLong() + " frames per second are too many",
                    "allowed: at most " + FrameRate.FASTEST);
            return Optional.empty();
        }
        return Optional.of(new FrameRate((int) numerator.getAsLong(), (int) denominator.getAsLong()));
    }

    private Optional<FrameSpan> span() {
        OptionalLong first = fields.whole("firstFrame", 0, MOST_FRAMES);
        OptionalLong count = fields.whole("frames", 1, MOST_FRAMES);
        return first.isEmpty() || count.isEmpty()
                ? Optional.empty()
                : Optional.of(new FrameSpan(first.getAsLong(), first.getAsLong() + count.getAsLong()));
    }

    private Optional<String> digest(Fields holder, String name) {
        Optional<TextNode> digest = holder.textNode(name);
        if (digest.isPresent() && !digest.get().value().matches(SHA256)) {
            problems.error(
                    digest.get().location(),
                    Quoted.of(digest.get().value()) + " is no SHA-256",
                    "it has 64 digits, 0 to 9 and a to f");
            return Optional.empty();
        }
        return digest.map(TextNode::value);
    }

    /** What every item of a list is bound to; those with errors are left out. */
    private <T> List<T> items(String name, String what, Function<Fields, Optional<T>> binding) {
        List<T> bound = new ArrayList<>();
        for (Node item : fields.list(name).map(ListNode::items).orElse(List.of())) {
            Fields.of(item, what, problems).flatMap(binding).ifPresent(bound::add);
        }
        return bound;
    }

    private Optional<WrittenFile> file(Fields item) {
        item.require("file", "bytes");
        Optional<TextNode> name = item.textNode("file").filter(this::isInside);
        OptionalLong bytes = item.whole("bytes", 0, MOST_BYTES);
        item.finish();
        return name.isEmpty() || bytes.isEmpty()
                ? Optional.empty()
                : Optional.of(new WrittenFile(name.get().value(), bytes.getAsLong()));
    }

    /** Frames stand beside their manifest; it must not lead a reader to other places. */
    private boolean isInside(TextNode name) {
        boolean inside = name.value().matches("[^\\\\/:]+(/[^\\\\/:]+)*/?")
                && !Set.of(name.value().split("/")).contains("..");
        if (!inside) {
            problems.error(
                    name.location(),
                    Quoted.of(name.value()) + " is not the name of a file beside this one",
                    "write it without .. and as seen from here");
        }
        return inside;
    }

    private Optional<PropSpan> prop(Fields item) {
        item.require("name", "first", "count");
        Optional<String> name = item.text("name");
        OptionalLong first = item.whole("first", 0, MOST_PIXELS);
        OptionalLong count = item.whole("count", 1, MOST_PIXELS);
        item.finish();
        return name.isEmpty() || first.isEmpty() || count.isEmpty()
                ? Optional.empty()
                : Optional.of(new PropSpan(name.get(), (int) first.getAsLong(), (int) count.getAsLong()));
    }

    private Optional<Origin.Input> input(Fields item) {
        item.require("file", "sha256");
        Optional<String> file = item.text("file");
        Optional<String> digest = digest(item, "sha256");
        item.finish();
        return file.isEmpty() || digest.isEmpty()
                ? Optional.empty()
                : Optional.of(new Origin.Input(file.get(), digest.get()));
    }

    private boolean isWithin(FrameSpan span, long showFrames) {
        if (span.endFrameExclusive() > showFrames) {
            problems.error(
                    fields.location("showFrames"),
                    "frames " + span + " are not in a show of " + showFrames + " frames",
                    "\"firstFrame\" and \"frames\" add up to at most \"showFrames\"");
            return false;
        }
        return true;
    }

    /** Props follow each other without a gap and have all pixels between them, each under a name of its own. */
    private boolean isCovered(List<PropSpan> props, int pixels) {
        Set<String> names = new HashSet<>();
        long next = 0;
        for (PropSpan prop : props) {
            if (prop.firstPixel() != next) {
                return refuseProps(Quoted.of(prop.name()) + " begins at pixel " + prop.firstPixel()
                        + ", and the props before it have " + next);
            }
            if (!names.add(prop.name())) {
                return refuseProps("two props are called " + Quoted.of(prop.name()));
            }
            next += prop.pixelCount();
        }
        return next == pixels || refuseProps("the props have " + next + " pixels, and a frame has " + pixels);
    }

    private boolean refuseProps(String message) {
        problems.error(fields.location("props"), message, "props follow each other and have all pixels of a frame");
        return false;
    }

    private boolean isBearable(FrameSpan span, long pixels) {
        if (span.count() > MOST_BYTES / (3 * pixels)) {
            problems.error(
                    fields.location("frames"),
                    span.count() + " frames of " + pixels + " pixels are more than a file can hold",
                    "");
            return false;
        }
        return true;
    }
}
