package org.duskloom.engine.report;

import java.util.Objects;

/**
 * A line of what to buy and to cut.
 *
 * @param group what sort of thing it is: {@code "pixels"}, {@code "supply wire"}
 * @param item which of them
 * @param count how many or how much
 * @param unit of the count: {@code "pieces"} or {@code "m"}
 * @param note what the count rests on; may be empty
 */
public record PartLine(String group, String item, double count, String unit, String note) {
    /** Things that are counted. */
    static final String PIECES = "pieces";

    /** Things that are cut. */
    static final String METRES = "m";

    public PartLine {
        Objects.requireNonNull(group, "group");
        Objects.requireNonNull(item, "item");
        Objects.requireNonNull(unit, "unit");
        Objects.requireNonNull(note, "note");
    }

    /** The count for reading, metres to a tenth: rounded up, as too little cannot be made longer. */
    public double enough() {
        return unit.equals(METRES) ? Math.ceil(10 * count - 1e-9) / 10 : Math.rint(count);
    }
}
