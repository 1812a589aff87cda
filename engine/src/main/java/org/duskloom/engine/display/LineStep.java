package org.duskloom.engine.display;

import java.util.Optional;
import org.duskloom.engine.document.DeclaredField;
import org.duskloom.engine.document.DeclaredObject;
import org.duskloom.engine.document.Node;

/**
 * {@code line}: pixels evenly on a straight line, one at each end.
 */
record LineStep(int count, Point from, Point to) implements Step {
    static final DeclaredField<Node> FROM = DeclaredField.required("from", PointList.PLACE, "where the first pixel is");
    static final DeclaredField<Node> TO =
            DeclaredField.required("to", PointList.PLACE, "where the last pixel is, at another place");
    static final DeclaredField<Long> COUNT =
            StepFields.count("count", 2, MOST_PIXELS, "how many pixels, one at each end among them");
    static final DeclaredObject FIELDS = DeclaredObject.of("line", FROM, TO, COUNT);

    static Optional<Step> read(StepFields fields) {
        Point from = fields.point(FROM);
        Point to = fields.point(TO);
        int count = fields.count(COUNT);
        if (fields.sound() && from.distance(to) == 0) {
            fields.error(TO, "a line begins and ends at the same place", "for a single pixel use \"points\"");
        }
        return fields.finish(() -> new LineStep(count, from, to));
    }

    @Override
    public long pixelCount() {
        return count;
    }

    @Override
    public void lay(Strand strand) {
        for (int i = 0; i < count; i++) {
            strand.add(from.toward(to, i, count - 1));
        }
    }
}
