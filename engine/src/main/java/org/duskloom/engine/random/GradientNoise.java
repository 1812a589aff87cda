package org.duskloom.engine.random;

/**
 * Improved gradient noise in two and three dimensions (K. Perlin, "Improving Noise", SIGGRAPH 2002): smooth, 0 at every
 * whole point, with a period of 256 along each axis, and nearly always within [-1, 1]. Immutable.
 */
public final class GradientNoise {
    private static final int PERIOD_MASK = 255;

    private final int offsetX;
    private final int offsetY;
    private final int offsetZ;

    /**
     * The noise of a seed: the reference noise, moved by whole steps that the seed decides. Seed 0 does not move it.
     */
    public GradientNoise(long seed) {
        long offsets = SplitMix64.mix(seed);
        offsetX = (int) (offsets & PERIOD_MASK);
        offsetY = (int) (offsets >>> 8 & PERIOD_MASK);
        offsetZ = (int) (offsets >>> 16 & PERIOD_MASK);
    }

    /** The noise in the plane z = 0; the same as {@code at(x, y, 0)} at half the cost. The coordinates are finite. */
    public double at(double x, double y) {
        double floorX = Math.floor(x);
        double floorY = Math.floor(y);
        int latticeX = lattice(floorX, offsetX);
        int latticeY = lattice(floorY, offsetY);
        return slice(latticeX, latticeY, offsetZ, x - floorX, y - floorY, 0);
    }

    /** The noise in space. The coordinates are finite. */
    public double at(double x, double y, double z) {
        double floorX = Math.floor(x);
        double floorY = Math.floor(y);
        double floorZ = Math.floor(z);
        int latticeX = lattice(floorX, offsetX);
        int latticeY = lattice(floorY, offsetY);
        int latticeZ = lattice(floorZ, offsetZ);
        double near = slice(latticeX, latticeY, latticeZ, x - floorX, y - floorY, z - floorZ);
        double far = slice(latticeX, latticeY, latticeZ + 1, x - floorX, y - floorY, z - floorZ - 1);
        return between(fade(z - floorZ), near, far);
    }

    static double fade(double t) {
        return t * t * t * (t * (t * 6 - 15) + 10);
    }

    private static int lattice(double floor, int offset) {
        return (int) ((long) floor + offset & PERIOD_MASK);
    }

    /** What the four corners of one face of the cell give, z being measured from that face. */
    private static double slice(int latticeX, int latticeY, int latticeZ, double x, double y, double z) {
        int left = NoiseTable.permuted(latticeX) + latticeY;
        int right = NoiseTable.permuted(latticeX + 1) + latticeY;
        double fadeX = fade(x);
        double low = between(
                fadeX,
                corner(NoiseTable.permuted(left) + latticeZ, x, y, z),
                corner(NoiseTable.permuted(right) + latticeZ, x - 1, y, z));
        double high = between(
                fadeX,
                corner(NoiseTable.permuted(left + 1) + latticeZ, x, y - 1, z),
                corner(NoiseTable.permuted(right + 1) + latticeZ, x - 1, y - 1, z));
        return between(fade(y), low, high);
    }

    private static double corner(int index, double x, double y, double z) {
        return NoiseTable.gradient(NoiseTable.permuted(index), x, y, z);
    }

    private static double between(double share, double a, double b) {
        return a + share * (b - a);
    }
}
