package org.duskloom.engine.sheet;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * What the sheets of a display are called, without their endings: each name once, capitals or not, as not every file
 * system tells these apart.
 */
public final class SheetNames {
    private static final String STAGE = "stage";

    private final List<String> ofShapes = new ArrayList<>();
    private final Set<String> taken = new HashSet<>();

    /**
     * Gives names to the sheets of some shapes and to those of the stage. Shapes that are built as they are drawn come
     * first: their names are those that somebody chose.
     */
    public SheetNames(List<ScaledShape> shapes) {
        for (View view : View.values()) {
            take(stage(view));
        }
        String[] names = new String[shapes.size()];
        IntStream.range(0, names.length)
                .boxed()
                .sorted((a, b) -> Boolean.compare(
                        shapes.get(b).scale() == 1, shapes.get(a).scale() == 1))
                .forEach(place -> names[place] = free(shapes.get(place).sheetName()));
        ofShapes.addAll(List.of(names));
    }

    private String free(String wanted) {
        String name = wanted;
        for (int number = 2; !areFree(name); number++) {
            name = wanted + "-" + number;
        }
        for (View view : View.values()) {
            take(name + "-" + view.word());
        }
        return name;
    }

    private boolean areFree(String name) {
        for (View view : View.values()) {
            if (taken.contains((name + "-" + view.word()).toLowerCase(Locale.ROOT))) {
                return false;
            }
        }
        return true;
    }

    private void take(String name) {
        taken.add(name.toLowerCase(Locale.ROOT));
    }

    /** The sheet of a shape, counted as the shapes were given: {@code daisy-scale-0.9-front}. */
    public String shape(int place, View view) {
        return ofShapes.get(place) + "-" + view.word();
    }

    /** The sheet of the stage: {@code stage}, {@code stage-back}. */
    public String stage(View view) {
        return view == View.FRONT ? STAGE : STAGE + "-" + view.word();
    }
}
