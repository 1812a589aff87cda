package org.duskloom.engine.format;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.duskloom.engine.document.DeclaredField;
import org.duskloom.engine.document.DeclaredObject;
import org.duskloom.engine.document.Fields;
import org.duskloom.engine.document.ListNode;
import org.duskloom.engine.document.Node;
import org.duskloom.engine.document.ObjectNode;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.frame.FrameList;
import org.duskloom.engine.frame.FramePixels;
import org.duskloom.engine.frame.PropSpan;
import org.duskloom.engine.frame.RunInfo;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.text.Counted;
import org.duskloom.engine.text.Quoted;
import org.duskloom.engine.time.FrameRate;
import org.duskloom.engine.time.FrameSpan;

/** Reads a {@link FrameManifest} back, and believes nothing of it that it can check. */
final class ManifestReader {
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
        if (!isOfThisFormat(root, problems)) {
            return Optional.empty();
        }
        int errorsBefore = problems.errorCount();
        return Fields.of(root, ManifestFields.MANIFEST, "a description of frames", problems)
                .flatMap(fields -> new ManifestReader(fields, problems).located(errorsBefore));
    }

    private Optional<Located> located(int errorsBefore) {
        fields.given(ManifestFields.FORMAT);
        Optional<FrameRate> rate = fields.given(ManifestFields.RATE).flatMap(this::rate);
        Optional<Long> pixels = fields.given(ManifestFields.PIXELS);
        fields.given(ManifestFields.ORDER);
        fields.given(ManifestFields.ENCODING);
        Optional<String> digest = digest(fields, ManifestFields.SHA256);
        Optional<FrameSpan> span = span();
        Optional<Long> showFrames = fields.given(ManifestFields.SHOW_FRAMES);
        List<WrittenFile> files = items(ManifestFields.FILES, ManifestFields.FILE, "a file", this::file);
        List<PropSpan> props = items(ManifestFields.PROPS, ManifestFields.PROP, "a prop", this::prop);
        Origin origin = new Origin(
                text(fields, ManifestFields.VERSION),
                items(ManifestFields.INPUTS, ManifestFields.INPUT, "an input", this::input));
        String title = text(fields, ManifestFields.TITLE);
        // A number that is none was told when the JSON was read, and is missing here without a word.
        boolean lacking = Stream.of(rate, pixels, digest, span, showFrames).anyMatch(Optional::isEmpty);
        if (lacking || problems.errorCount() > errorsBefore) {
            return Optional.empty();
        }
        boolean sound = isWithin(span.orElseThrow(), showFrames.orElseThrow())
                && isCovered(props, pixels.orElseThrow().intValue())
                && isBearable(span.orElseThrow(), pixels.orElseThrow());
        if (!sound) {
            return Optional.empty();
        }
        RunInfo run = new RunInfo(
                title,
                rate.orElseThrow(),
                FrameList.of(span.orElseThrow()),
                showFrames.orElseThrow(),
                new FramePixels(pixels.orElseThrow().intValue(), props, Optional.empty()),
                List.of());
        FrameManifest manifest = new FrameManifest(run, digest.orElseThrow(), files, origin);
        return Optional.of(new Located(
                manifest,
                fields.location(ManifestFields.FRAMES),
                fields.location(ManifestFields.SHA256),
                fields.location(ManifestFields.FILES)));
    }

    /** A file of another kind would make an error of each of its fields. */
    private static boolean isOfThisFormat(Node root, Problems problems) {
        Node format = root instanceof ObjectNode object
                ? object.value(ManifestFields.FORMAT.name()).orElse(null)
                : null;
        if (!(format instanceof TextNode text) || text.value().equals(FrameManifest.FORMAT)) {
            return true;
        }
        problems.error(
                format.location(),
                "this is no description of frames: \"duskloom\" is " + Quoted.of(text.value()),
                "allowed: \"" + FrameManifest.FORMAT + "\"");
        return false;
    }

    private static String text(Fields holder, DeclaredField<TextNode> field) {
        return holder.given(field).map(TextNode::value).orElse("");
    }

    private Optional<FrameRate> rate(Fields rate) {
        Optional<Long> numerator = rate.given(ManifestFields.NUMERATOR);
        Optional<Long> denominator = rate.given(ManifestFields.DENOMINATOR);
        if (numerator.isEmpty() || denominator.isEmpty()) {
            return Optional.empty();
        }
        if (numerator.get() > FrameRate.FASTEST * denominator.get()) {
            problems.error(
                    rate.location(),
                    numerator.get() + "/" + denominator.get() + " frames per second are too many",
                    "allowed: at most " + FrameRate.FASTEST);
            return Optional.empty();
        }
        return Optional.of(
                new FrameRate(numerator.get().intValue(), denominator.get().intValue()));
    }

    private Optional<FrameSpan> span() {
        Optional<Long> first = fields.given(ManifestFields.FIRST_FRAME);
        Optional<Long> count = fields.given(ManifestFields.FRAMES);
        return first.isEmpty() || count.isEmpty()
                ? Optional.empty()
                : Optional.of(new FrameSpan(first.get(), first.get() + count.get()));
    }

    private Optional<String> digest(Fields holder, DeclaredField<TextNode> field) {
        Optional<TextNode> digest = holder.given(field);
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
    private <T> List<T> items(
            DeclaredField<ListNode> field, DeclaredObject item, String what, Function<Fields, Optional<T>> binding) {
        List<T> bound = new ArrayList<>();
        for (Node node : fields.given(field).map(ListNode::items).orElse(List.of())) {
            Fields.of(node, item, what, problems).flatMap(binding).ifPresent(bound::add);
        }
        return bound;
    }

    private Optional<WrittenFile> file(Fields item) {
        Optional<TextNode> name = item.given(ManifestFields.FILE_NAME).filter(this::isInside);
        Optional<Long> bytes = item.given(ManifestFields.FILE_BYTES);
        return name.isEmpty() || bytes.isEmpty()
                ? Optional.empty()
                : Optional.of(new WrittenFile(name.get().value(), bytes.get()));
    }

    /** Frames stand beside their manifest; it must not lead a reader to other places. */
    private boolean isInside(TextNode name) {
        boolean inside = name.value().matches("[^\\\\/:]+(/[^\\\\/:]+)*/?")
                && !List.of(name.value().split("/")).contains("..");
        if (!inside) {
            problems.error(
                    name.location(),
                    Quoted.of(name.value()) + " is not the name of a file beside this one",
                    "write it without .. and as seen from here");
        }
        return inside;
    }

    private Optional<PropSpan> prop(Fields item) {
        Optional<TextNode> name = item.given(ManifestFields.PROP_NAME);
        Optional<Long> first = item.given(ManifestFields.PROP_FIRST);
        Optional<Long> count = item.given(ManifestFields.PROP_COUNT);
        return name.isEmpty() || first.isEmpty() || count.isEmpty()
                ? Optional.empty()
                : Optional.of(new PropSpan(
                        name.get().value(), first.get().intValue(), count.get().intValue()));
    }

    private Optional<Origin.Input> input(Fields item) {
        Optional<TextNode> file = item.given(ManifestFields.INPUT_FILE);
        Optional<String> digest = digest(item, ManifestFields.INPUT_SHA256);
        return file.isEmpty() || digest.isEmpty()
                ? Optional.empty()
                : Optional.of(new Origin.Input(file.get().value(), digest.get()));
    }

    private boolean isWithin(FrameSpan span, long showFrames) {
        if (span.endFrameExclusive() > showFrames) {
            problems.error(
                    fields.location(ManifestFields.SHOW_FRAMES),
                    "frames " + span + " are not in a show of " + Counted.of(showFrames, "frame"),
                    "\"firstFrame\" and \"frames\" add up to at most \"showFrames\"");
            return false;
        }
        return true;
    }

    /**
     * Props follow each other without a gap and have all pixels between them, each under a name of its own; or none is
     * known.
     */
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
        return next == pixels
                || props.isEmpty()
                || refuseProps("the props have " + next + " pixels, and a frame has " + pixels);
    }

    private boolean refuseProps(String message) {
        problems.error(
                fields.location(ManifestFields.PROPS),
                message,
                "props follow each other and have all pixels of a frame");
        return false;
    }

    private boolean isBearable(FrameSpan span, long pixels) {
        if (span.count() > ManifestFields.MOST_BYTES / (3 * pixels)) {
            problems.error(
                    fields.location(ManifestFields.FRAMES),
                    Counted.of(span.count(), "frame") + " of " + Counted.of(pixels, "pixel")
                            + " are more than a file can hold",
                    "");
            return false;
        }
        return true;
    }
}
