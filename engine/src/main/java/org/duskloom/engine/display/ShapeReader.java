package org.duskloom.engine.display;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeMap;
import org.duskloom.engine.display.svg.SvgPixels;
import org.duskloom.engine.display.svg.SvgReader;
import org.duskloom.engine.document.Expected;
import org.duskloom.engine.document.Field;
import org.duskloom.engine.document.Fields;
import org.duskloom.engine.document.ListNode;
import org.duskloom.engine.document.Node;
import org.duskloom.engine.document.NumberNode;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.map.MapReader;
import org.duskloom.engine.map.Names;
import org.duskloom.engine.map.Part;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.map.Prop;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.text.Counted;
import org.duskloom.engine.text.Quoted;

/** Reads the shapes of a display. */
final class ShapeReader {
    private static final String BOTH_OR_NEITHER =
            "give a list of steps in \"build\", or the name of a CSV or SVG file in \"pixels\"";

    private static final int MOST_STEPS_NAMED = 20;

    private final ShapeFiles files;
    private final Units units;
    private final Problems problems;
    private final Allowance allowance = new Allowance();

    /** @param units of the display: drawings have a size of their own */
    ShapeReader(ShapeFiles files, Units units, Problems problems) {
        this.files = files;
        this.units = units;
        this.problems = problems;
    }

    /**
     * A shape as far as it could be read.
     *
     * @param shape with one pixel at the zero point where none could be read
     * @param complete whether it has no errors, so that what it lacks is really not there
     */
    record ReadShape(Shape shape, boolean complete) {}

    /** Reads a shape under its name. */
    ReadShape read(Field field) {
        int errorsBefore = problems.errorCount();
        Optional<String> fault = Names.fault(field.name());
        fault.ifPresent(wrong ->
                problems.error(field.nameLocation(), "the shape name " + Quoted.of(field.name()) + " " + wrong));
        String what = "shape " + Quoted.of(field.name());
        ShapeDraft draft = new ShapeDraft(what, fault.isEmpty() ? field.name() : "shape", allowance, problems);
        List<Part> parts = Fields.of(field.value(), DisplayFields.SHAPE, what, problems)
                .map(fields -> bound(fields, draft))
                .orElse(List.of());
        Positions pixels = draft.positions();
        Shape shape = new Shape(field.name(), pixels, parts, draft.runs(), field.nameLocation());
        return new ReadShape(shape, problems.errorCount() == errorsBefore);
    }

    private List<Part> bound(Fields fields, ShapeDraft draft) {
        int errorsBefore = problems.errorCount();
        TreeMap<String, int[]> made = pixels(fields, draft);
        boolean complete = problems.errorCount() == errorsBefore;
        Optional<List<Field>> definitions = fields.given(DisplayFields.PARTS);
        int count = complete ? draft.pixelCount() : PixelMap.MAX_PIXELS;
        PartBook.Pixels pixels = new PartBook.Pixels(fields.what(), count, made, complete);
        List<Part> parts = new PartBook(pixels, allowance, problems).parts(definitions.orElse(List.of()));
        return complete ? parts : List.of();
    }

    /** Makes or loads the pixels; gives the parts that come with them. */
    private TreeMap<String, int[]> pixels(Fields fields, ShapeDraft draft) {
        Optional<ListNode> build = fields.given(DisplayFields.BUILD);
        Optional<Node> pixels = fields.given(DisplayFields.PIXELS);
        Optional<TextNode> along = fields.given(DisplayFields.ALONG);
        boolean isFile = pixels.isPresent() && pixels.get() instanceof TextNode;
        boolean isDrawing = isFile
                && ((TextNode) pixels.get()).value().toLowerCase(Locale.ROOT).endsWith(".svg");
        if (along.isPresent() && !isDrawing) {
            problems.error(
                    along.get().location(),
                    "\"along\" of " + fields.what() + " is for a drawing",
                    "name an SVG file in \"pixels\"");
        }
        if (fields.has(DisplayFields.BUILD)) {
            if (isFile) {
                problems.error(
                        pixels.get().location(),
                        fields.what() + " has both \"build\" and a file in \"pixels\"",
                        BOTH_OR_NEITHER);
            }
            int errorsBefore = problems.errorCount();
            build.ifPresent(steps -> build(steps, draft));
            if (pixels.isPresent() && !isFile && problems.errorCount() == errorsBefore) {
                checkCount(pixels.get(), fields, draft);
            }
            return draft.madeParts();
        }
        if (!isFile) {
            reportNoPixels(pixels, fields);
            return draft.madeParts();
        }
        TextNode file = (TextNode) pixels.get();
        return isDrawing ? draw(file, along, draft) : load(file, draft);
    }

    private void reportNoPixels(Optional<Node> pixels, Fields fields) {
        if (pixels.isEmpty()) {
            problems.error(fields.location(), fields.what() + " has neither \"build\" nor \"pixels\"", BOTH_OR_NEITHER);
        } else if (pixels.get() instanceof NumberNode) {
            problems.error(
                    pixels.get().location(),
                    "a number of pixels stands beside \"build\", which " + fields.what() + " has not",
                    BOTH_OR_NEITHER);
        } else {
            Expected.text(pixels.get(), "\"pixels\" of " + fields.what(), problems);
        }
    }

    /** The number of pixels that the steps must make, as a check on them. */
    private void checkCount(Node written, Fields fields, ShapeDraft draft) {
        String what = "\"pixels\" of " + fields.what();
        Optional<Long> wanted = DisplayFields.PIXEL_COUNT.read(written, what, problems);
        if (wanted.isPresent() && wanted.get() != draft.pixelCount()) {
            List<String> made = draft.runs().stream()
                    .map(run -> run.kind() + " " + run.pixelCount())
                    .toList();
            problems.error(
                    written.location(),
                    what + " is " + wanted.get() + ", but its steps make " + draft.pixelCount(),
                    String.join(", ", made.subList(0, Math.min(MOST_STEPS_NAMED, made.size())))
                            + (made.size() > MOST_STEPS_NAMED
                                    ? " and " + Counted.of(made.size() - MOST_STEPS_NAMED, "step") + " more"
                                    : ""));
        }
    }

    private TreeMap<String, int[]> draw(TextNode file, Optional<TextNode> along, ShapeDraft draft) {
        Optional<SvgPixels> pixels =
                files.text(file, problems).flatMap(source -> SvgReader.read(source, along, problems));
        boolean isAdded = pixels.isPresent() && draft.add(pixels.get(), units.millimetres(), file.location());
        return isAdded ? pixels.get().parts() : new TreeMap<>();
    }

    private void build(ListNode steps, ShapeDraft draft) {
        StepReader reader = new StepReader(problems);
        int number = 1;
        for (Node item : steps.items()) {
            reader.read(item, "step " + number++ + " of " + draft.what()).ifPresent(draft::add);
        }
    }

    private TreeMap<String, int[]> load(TextNode file, ShapeDraft draft) {
        Optional<PixelMap> map =
                files.text(file, problems).flatMap(source -> MapReader.readShape(source, draft.name(), problems));
        if (map.isEmpty() || !draft.add(map.get(), file.location())) {
            return new TreeMap<>();
        }
        List<Part> parts = new ArrayList<>();
        map.get().props().stream().map(Prop::parts).forEach(parts::addAll);
        return MadeParts.byPath(parts);
    }
}
