package org.duskloom.engine.effect;

import java.util.List;
import org.duskloom.engine.text.Quoted;
import org.duskloom.engine.text.ShortestDecimal;

/** How effects show numbers and names in their messages. */
public final class Shown {
    private Shown() {}

    /** A number as people write it: 1 and not 1.0. */
    public static String number(double value) {
        return ShortestDecimal.of(value);
    }

    /** A text in double quotes, on one line, of bearable length. */
    public static String text(String text) {
        return Quoted.of(text);
    }

    /** The first of some names, and how many more there are. */
    public static String names(List<String> names) {
        return Quoted.few(names);
    }
}
