package org.duskloom.engine.survey.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.duskloom.engine.display.Display;

/** Displays for tests, in millimetres. */
public final class Gardens {
    /** Of no symmetry: 12 pixels in a ring, 24 in a wider one, a stem of 5 that leans to the right. */
    public static final String DAISY = """
            "daisy": {"build": [
              {"ring": {"count": 12, "radius": 90, "start": 90, "direction": "clockwise"}},
              {"ring": {"count": 24, "radius": 150, "start": 90, "direction": "clockwise"}},
              {"line": {"count": 5, "from": [0, -170], "to": [30, -290]}}]}""";

    /** 12 pixels in a ring of 300 mm, 30 degrees apart; the first one on top. */
    public static final String RING =
            "\"ring\": {\"build\": [{\"ring\": {\"count\": 12, \"radius\": 150, \"start\": 90, \"direction\":"
                    + " \"clockwise\"}}]}";

    /** 20 pixels upward, 50 mm apart. */
    public static final String POST =
            "\"post\": {\"build\": [{\"line\": {\"count\": 20, \"from\": [0, 0], \"to\": [0, 950]}}]}";

    /** 1 pixel. */
    public static final String LAMP = "\"lamp\": {\"build\": [{\"points\": [[0, 0]]}]}";

    private final List<String> props = new ArrayList<>();

    /** A garden without props. */
    public Gardens() {}

    /** Adds a prop; the rest may be further fields, such as {@code "turn": 30}. */
    public Gardens prop(String name, String shape, double x, double y, String... rest) {
        StringBuilder json = new StringBuilder(String.format(
                Locale.ROOT, "{\"name\": \"%s\", \"shape\": \"%s\", \"at\": [%s, %s]", name, shape, x, y));
        for (String field : rest) {
            json.append(", ").append(field);
        }
        props.add(json.append('}').toString());
        return this;
    }

    public Display display() {
        return Built.display(String.join(",\n", DAISY, RING, POST, LAMP), String.join(",\n", props));
    }

    public Built built() {
        return new Built(display());
    }

    /** Six daisies in a row, 700 mm apart at a height of 2 m; those with even numbers are turned by 30 degrees. */
    public static Gardens daisies() {
        Gardens garden = new Gardens();
        for (int i = 1; i <= 6; i++) {
            String[] rest = i % 2 == 0 ? new String[] {"\"turn\": 30"} : new String[0];
            garden.prop("daisy-" + i, "daisy", 700 * i, 2000, rest);
        }
        return garden;
    }
}
