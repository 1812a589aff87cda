package org.duskloom.effects.kit.area;

import java.util.ArrayList;
import java.util.List;

/**
 * The pictures of a reel filtered for the lights of a member: where the picture zooms, in levels for cells each twice the one
 * before, of which the two nearest are mixed. Immutable once all pictures are added.
 */
final class LatticeStack {
    private static final double LN_2 = StrictMath.log(2);

    private final List<LatticeSize> sizes;
    private final Lattice[][] lattices;

    /**
     * What a stack serves for. Cells that differ by less than a sixteenth of an octave count as the same.
     *
     * @param cellWidth on the first level, in pixels of the picture
     * @param cellHeight on the first level
     * @param levels at least 1
     */
    record Key(double cellWidth, double cellHeight, int levels) {
        private static final int STEPS_OF_AN_OCTAVE = 8;

        private static Key of(double cellWidth, double cellHeight, double zoomRatio) {
            int levels = zoomRatio > 1 ? 1 + (int) Math.ceil(octaves(zoomRatio)) : 1;
            double least = levels > 1 ? 0 : 1;
            return new Key(Math.max(least, rounded(cellWidth)), Math.max(least, rounded(cellHeight)), levels);
        }

        private static double rounded(double cell) {
            return StrictMath.pow(2, Math.rint(octaves(cell) * STEPS_OF_AN_OCTAVE) / STEPS_OF_AN_OCTAVE);
        }
    }

    /**
     * What a member needs of a stack.
     *
     * @param key says which stack
     * @param firstZoom the zoom that the first level is made for: the greatest, or one at which the pixels of the picture are
     *     still no smaller than cells
     */
    record Need(Key key, double firstZoom) {
        /**
         * The need of a member.
         *
         * @param zoomed the footprint at the greatest zoom
         */
        static Need of(Footprint zoomed, double leastZoom, double greatestZoom) {
            double magnified = Math.min(1, Math.max(zoomed.cellWidth(), zoomed.cellHeight()));
            double firstZoom = greatestZoom * magnified;
            Key key = Key.of(zoomed.cellWidth() / magnified, zoomed.cellHeight() / magnified, firstZoom / leastZoom);
            return new Need(key, firstZoom);
        }

        /**
         * Which level serves at a zoom; the fraction says how much of the next one is mixed in. Mixing costs twice the time,
         * so it is done in the middle third between two levels only.
         */
        double level(double zoom) {
            double exact = Math.min(key.levels - 1.0, Math.max(0, octaves(firstZoom / zoom)));
            double level = Math.floor(exact);
            return level + Math.min(1, Math.max(0, 3 * (exact - level) - 1));
        }
    }

    LatticeStack(Key key, Reel reel, double coarsest) {
        sizes = sizes(key, reel, coarsest);
        lattices = new Lattice[reel.count()][];
    }

    private static List<LatticeSize> sizes(Key key, Reel reel, double coarsest) {
        List<LatticeSize> sizes = new ArrayList<>();
        double times = 1;
        for (int level = 0; level < key.levels; level++, times *= 2) {
            sizes.add(LatticeSize.of(reel, key.cellWidth * times, key.cellHeight * times, coarsest));
        }
        return sizes;
    }

    /** How many pixels all its lattices have. */
    static double pixels(Key key, Reel reel, double coarsest) {
        return (double) reel.count()
                * sizes(key, reel, coarsest).stream()
                        .mapToLong(LatticeSize::pixels)
                        .sum();
    }

    /** Filters a picture of the reel. */
    void add(int image, LightImage light, boolean repeats) {
        lattices[image] =
                sizes.stream().map(size -> size.lattice(light, repeats)).toArray(Lattice[]::new);
    }

    /** The lattice of a picture on a level. */
    Lattice lattice(int image, int level) {
        return lattices[image][level];
    }

    private static double octaves(double ratio) {
        return StrictMath.log(ratio) / LN_2;
    }
}
