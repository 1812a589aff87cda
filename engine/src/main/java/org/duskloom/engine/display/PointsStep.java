package org.duskloom.engine.display;

import java.util.List;
import java.util.Optional;
import org.duskloom.engine.document.DeclaredField;
import org.duskloom.engine.document.Node;
import org.duskloom.engine.problem.Problems;

/** {@code points}: a list of places, {@code [x, y]} or {@code [x, y, z]} each, one for every pixel in wiring order. */
record PointsStep(List<Point> points) implements Step {
    static final DeclaredField<Node> FIELD =
            DeclaredField.optional("points", PointList.places(1), "", "one pixel at each place");

    PointsStep {
        points = List.copyOf(points);
    }

    static Optional<Step> read(Node list, Problems problems) {
        return PointList.read(list, "\"" + FIELD.name() + "\"", 1, problems).map(PointsStep::new);
    }

    @Override
    public long pixelCount() {
        return points.size();
    }

    @Override
    public void lay(Strand strand) {
        points.forEach(strand::add);
    }
}
