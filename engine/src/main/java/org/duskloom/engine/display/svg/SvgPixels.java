package org.duskloom.engine.display.svg;

import java.util.List;
import java.util.TreeMap;
import org.duskloom.engine.problem.Location;

/**
 * The pixels of a drawing in wiring order.
 *
 * @param x to the right of the zero point, in millimetres
 * @param y up from the zero point, in millimetres
 * @param places where their circles stand in the file
 * @param parts the pixels of every part by its path, from 0, in wiring order
 */
public record SvgPixels(double[] x, double[] y, List<Location> places, TreeMap<String, int[]> parts) {
    public SvgPixels {
        places = List.copyOf(places);
    }

    /** How many there are, one at least. */
    public int count() {
        return x.length;
    }
}
