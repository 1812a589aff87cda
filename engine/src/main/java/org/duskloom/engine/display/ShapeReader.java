package org.duskloom.engine.display;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.duskloom.engine.document.Field;
import org.duskloom.engine.document.Fields;
import org.duskloom.engine.document.ListNode;
import org.duskloom.engine.document.Node;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.map.MapReader;
import org.duskloom.engine.map.Names;
import org.duskloom.engine.map.Part;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.map.Prop;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.text.Quoted;

/** Reads the shapes of a display. */
final class ShapeReader {
    private final ShapeFiles files;
    private final Problems problems;
    private final Allowance allowance = new Allowance();

    ShapeReader(ShapeFiles files, Problems problems) {
        this.files = files;
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
        Optional<TextNode> file = fields.given(DisplayFields.PIXELS);
        build.ifPresent(steps -> build(steps, draft));
        return build.isPresent() || file.isEmpty() ? draft.madeParts() : load(file.get(), draft);
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
