package org.duskloom.cli;

import java.util.List;
import java.util.Locale;
import org.duskloom.engine.display.Display;
import org.duskloom.engine.display.DisplayChecks;
import org.duskloom.engine.display.Shape;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.sheet.HoleOverlap;
import org.duskloom.engine.sheet.ScaledShape;
import org.duskloom.engine.sheet.SheetOptions;

/** What a person should know before drilling: an assumed unit, and holes that run into each other. */
final class SheetWarnings {
    private SheetWarnings() {}

    static Problems of(LoadedDisplay loaded, List<ScaledShape> shapes, SheetOptions options) {
        Problems problems = new Problems();
        Display display = loaded.display();
        DisplayChecks.warnOfUnits(
                display, "the sheets take", Location.ofFile(loaded.file().toString()), problems);
        for (ScaledShape scaled : shapes) {
            Shape shape = scaled.shape();
            String atScale = scaled.scale() == 1 ? "" : " at scale " + scaled.scaleText();
            HoleOverlap.of(scaled, display.units().millimetres(), options)
                    .ifPresent(overlap -> problems.warn(
                            shape.definedAt(),
                            "holes of shape \"" + shape.name() + "\"" + atScale + " overlap: pixels "
                                    + (overlap.first() + 1) + " and " + (overlap.second() + 1) + " are "
                                    + millimetres(overlap.distanceMm())
                                    + " mm apart, and a hole is " + millimetres(options.holeMm()) + " mm wide",
                            "check its lengths and the unit, or choose a smaller --hole"));
        }
        return problems;
    }

    private static String millimetres(double value) {
        return String.format(Locale.ROOT, "%.1f", value).replace(".0", "");
    }
}
