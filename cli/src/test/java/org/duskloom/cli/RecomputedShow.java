package org.duskloom.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * A show of one cue, to be computed anew.
 *
 * @param axes the word for axes; with {@code outward} the show is played on parts
 * @param stagger the word that its members start by, or nothing
 * @param settings numbers, truths, and words as texts
 */
record RecomputedShow(
        String effect,
        String spread,
        String axes,
        String fit,
        String order,
        String stagger,
        Map<String, Object> settings) {
    private static final RecomputedPalette SMOOTH = new RecomputedPalette(false, 0x1b2a6b, 0xff9e5e, 0xfff1c1);
    private static final RecomputedPalette STEPS = new RecomputedPalette(true, 0xff2040, 0x20ff40, 0x2040ff);

    RecomputedPalette palette() {
        return settings.get("palette").equals("steps") ? STEPS : SMOOTH;
    }

    /** Whether it is played on the parts of the props, not on the props. */
    boolean onParts() {
        return axes.equals("outward") || stagger.equals("part") || stagger.equals("prop");
    }

    static Stream<RecomputedShow> all() {
        List<RecomputedShow> shows = new ArrayList<>();
        for (String fit : List.of("contain", "stretch", "none")) {
            for (String spread : List.of("whole", "each")) {
                shows.add(show("wash", spread, fit, "wiring", "toward", 37));
                shows.add(show("wash", spread, fit, "wiring", "from", "centre"));
                shows.add(show(
                        "sweep", spread, fit, "wiring", "bands", 2.3, "soft", 0.3, "toward", 201, "every", "1.37s"));
                shows.add(show("spin", spread, fit, "wiring", "arms", 4, "bend", 0.6, "soft", 0.4, "reverse", true));
                shows.add(show("spin", spread, fit, "wiring", "x", 0.3, "y", -0.2, "soft", 0.5, "along", "radius"));
                shows.add(show("radiate", spread, fit, "wiring", "bands", 1.7, "soft", 0.5, "x", 0.1, "every", "1.1s"));
            }
        }
        for (String order : List.of("wiring", "right", "up", "outward", "clockwise", "around", "members")) {
            for (String spread : List.of("whole", "each")) {
                shows.add(show(
                        "chase", spread, "contain", order, "heads", 2, "tail", 0.8, "phase", 0.013, "passes", 2.7));
                shows.add(show("pile", spread, "contain", order, "lights", 5, "every", "1.43s"));
            }
        }
        for (String then : List.of("again", "back", "through", "stay")) {
            for (boolean reverse : new boolean[] {false, true}) {
                shows.add(show(
                        "pile", "each", "contain", "wiring", "lights", 7, "along", "light", "then", then, "every",
                        "1.3s", "reverse", reverse));
                shows.add(show(
                        "pile", "whole", "contain", "wiring", "lights", 3, "ground", "end", "steady", "time", "then",
                        then, "every", "1.3s", "phase", -0.37, "reverse", reverse));
            }
        }
        for (String along : List.of("pass", "level", "turn")) {
            for (boolean reverse : new boolean[] {false, true}) {
                shows.add(show(
                        "swell", "whole", "contain", "wiring", "attack", 0.2, "hold", 0.3, "decay", 0.4, "easing",
                        "linear", "along", along, "low", 0.15, "every", "0.77s", "reverse", reverse));
            }
        }
        for (String spread : List.of("whole", "each")) {
            shows.add(festoon(
                    spread,
                    "contain",
                    "swags 4, rows 3, row-gap 0.3, height 1, toward 7, thickness 0.3, soft 0.4, bands 1.6"));
            shows.add(festoon(
                    spread, "stretch", "swags 2, rise 0.3, sag 0.2, rows 2, toward 25, thickness 0.6, soft 0.5"));
            shows.add(festoon(spread, "contain", "sag 0, thickness 0.9, soft 0.5"));
        }
        for (String by :
                List.of("members", "part", "prop", "right", "left", "up", "down", "outward", "inward", "clockwise")) {
            RecomputedShow plain = show("sweep", "each", "contain", "wiring", "soft", 0.4, "every", "1.37s");
            shows.add(new RecomputedShow("sweep", "each", "stage", "contain", "wiring", by, plain.settings()));
        }
        for (String order : List.of("right", "up", "around")) {
            RecomputedShow plain = show("chase", "each", "contain", order, "tail", 0.8, "phase", 0.013);
            shows.add(new RecomputedShow("chase", "each", "outward", "contain", order, "part", plain.settings()));
        }
        for (String fit : List.of("contain", "stretch", "none")) {
            RecomputedShow plain = show("sweep", "each", fit, "wiring", "soft", 0.4, "toward", 25, "every", "1.37s");
            shows.add(new RecomputedShow("sweep", "each", "outward", fit, "wiring", "", plain.settings()));
        }
        return shows.stream();
    }

    /** No pixel is as near to one place of a garland as to another here: which counts would be a matter of rounding. */
    private static RecomputedShow festoon(String spread, String fit, String numbers) {
        List<Object> settings = new ArrayList<>(List.of("every", "1.37s"));
        for (String number : numbers.split(", ")) {
            settings.add(number.split(" ")[0]);
            settings.add(Double.valueOf(number.split(" ")[1]));
        }
        return show("festoon", spread, fit, "wiring", settings.toArray());
    }

    private static RecomputedShow show(
            String effect, String spread, String fit, String order, Object... namesAndValues) {
        Map<String, Object> settings = new TreeMap<>();
        for (int i = 0; i < namesAndValues.length; i += 2) {
            settings.put((String) namesAndValues[i], namesAndValues[i + 1]);
        }
        boolean stepped = "turn".equals(settings.get("along"));
        settings.put("palette", stepped ? "steps" : "smooth");
        return new RecomputedShow(effect, spread, "stage", fit, order, "", settings);
    }
}
