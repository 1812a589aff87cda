package org.duskloom.engine.display;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** The pixels that one step makes, in wiring order, and the numbered lines that they form. */
final class Strand {
    final double[] x;
    final double[] y;
    final double[] z;
    private final List<int[]> lines = new ArrayList<>();
    private int size;

    Strand(int pixels) {
        x = new double[pixels];
        y = new double[pixels];
        z = new double[pixels];
    }

    static Strand of(Step step) {
        Strand strand = new Strand((int) step.pixelCount());
        step.lay(strand);
        if (strand.size != strand.x.length) {
            throw new IllegalStateException(strand.size + " pixels instead of " + strand.x.length);
        }
        return strand;
    }

    /** Adds the next pixel. */
    void add(double nextX, double nextY, double nextZ) {
        // Adding zero makes one of the two zeros.
        x[size] = nextX + 0.0;
        y[size] = nextY + 0.0;
        z[size] = nextZ + 0.0;
        size++;
    }

    void add(Point point) {
        add(point.x(), point.y(), point.z());
    }

    /** How many pixels there are so far. */
    int size() {
        return size;
    }

    /** Makes the pixels since that one a line, which runs along the wire or against it. */
    void closeLine(int firstPixel, boolean againstTheWire) {
        int last = size - 1;
        lines.add(IntStream.rangeClosed(firstPixel, last)
                .map(pixel -> againstTheWire ? firstPixel + last - pixel : pixel)
                .toArray());
    }

    /** The lines in order, each with its pixels in order, indices within the strand. */
    List<int[]> lines() {
        return lines;
    }

    /** Whether a coordinate lies further out than that. */
    boolean reachesBeyond(double limit) {
        return IntStream.range(0, size)
                .anyMatch(i -> Math.abs(x[i]) > limit || Math.abs(y[i]) > limit || Math.abs(z[i]) > limit);
    }
}
