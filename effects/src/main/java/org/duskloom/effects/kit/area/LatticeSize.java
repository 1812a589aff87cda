package org.duskloom.effects.kit.area;

/**
 * Along which sides, and how finely, a picture is filtered for lights of a footprint. Where a box is longer than a pixel, three
 * lattice pixels go into it; looking light up between them widens the box, so a narrower box is taken for the filter, such that
 * both together have the variance of the box: <i>filter² = box² − 2·pixel²</i> (a box of length b has the variance b²/12,
 * a straight line from pixel to pixel p²/6).
 */
record LatticeSize(BoxFilter.Side across, BoxFilter.Side down) {
    private static final double PIXELS_OF_A_BOX = 3;

    /**
     * The size for a footprint.
     *
     * @param coarsest least length of a lattice pixel, in pixels of the picture, where memory would not suffice; 1 else
     */
    static LatticeSize of(Reel reel, double boxWidth, double boxHeight, double coarsest) {
        return new LatticeSize(side(reel.width(), boxWidth, coarsest), side(reel.height(), boxHeight, coarsest));
    }

    private static BoxFilter.Side side(int length, double box, double coarsest) {
        if (box <= 1 && coarsest <= 1) {
            return BoxFilter.Side.unchanged(length);
        }
        double wanted = box <= 1 ? coarsest : Math.max(coarsest, box / PIXELS_OF_A_BOX);
        int count = Math.max(1, (int) Math.ceil(length / wanted));
        double pixel = (double) length / count;
        return new BoxFilter.Side(count, Math.sqrt(Math.max(pixel * pixel, box * box - 2 * pixel * pixel)));
    }

    long pixels() {
        return (long) across.count() * down.count();
    }

    Lattice lattice(LightImage image, boolean repeats) {
        return Lattice.of(BoxFilter.filter(image, across, down, repeats), repeats);
    }
}
