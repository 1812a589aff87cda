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

    /**
     * What a plane of whole z gives to the noise on both sides of it. Of this the noise follows at any z for one sum,
     * so that whoever needs it at one (x, y) for many z saves most of the work: with f = z - floor(z),
     *
     * <pre>
     * at(x, y, z) = between(fade(f), value + slope · f, nextValue + nextSlope · (f - 1))
     * </pre>
     *
     * the first two numbers being those of the plane floor(z), the others those of the next plane. Here fade(f) = 6 f^5
     * - 15 f^4 + 10 f^3 and between(w, a, b) = a + w (b - a).
     *
     * @param index where in the two arrays the plane's value and slope at (x, y) are stored
     */
    public void plane(double x, double y, long wholeZ, int index, float[] values, float[] slopes) {
        double floorX = Math.floor(x);
        double floorY = Math.floor(y);
        double inX = x - floorX;
        double inY = y - floorY;
        int latticeZ = (int) (wholeZ + offsetZ & PERIOD_MASK);
        int left = NoiseTable.permuted(lattice(floorX, offsetX)) + lattice(floorY, offsetY);
        int right = NoiseTable.permuted(lattice(floorX, offsetX) + 1) + lattice(floorY, offsetY);
        int lowLeft = NoiseTable.permuted(NoiseTable.permuted(left) + latticeZ);
        int lowRight = NoiseTable.permuted(NoiseTable.permuted(right) + latticeZ);
        int highLeft = NoiseTable.permuted(NoiseTable.permuted(left + 1) + latticeZ);
        int highRight = NoiseTable.permuted(NoiseTable.permuted(right + 1) + latticeZ);
        double fadeX = fade(inX);
        double fadeY = fade(inY);
        values[index] = (float) between(
                fadeY,
                between(fadeX, flat(lowLeft, inX, inY), flat(lowRight, inX - 1, inY)),
                between(fadeX, flat(highLeft, inX, inY - 1), flat(highRight, inX - 1, inY - 1)));
        double[] alongZ = NoiseTable.GRADIENT_Z;
        slopes[index] = (float) between(
                fadeY,
                between(fadeX, alongZ[lowLeft & 15], alongZ[lowRight & 15]),
                between(fadeX, alongZ[highLeft & 15], alongZ[highRight & 15]));
    }

    /** Looks up the gradients of a cell, in the plane below and in the one above. */
    void lookUp(double floorX, double floorY, long wholeZ, NoiseBlock.Face near, NoiseBlock.Face next) {
        int left = NoiseTable.permuted(lattice(floorX, offsetX)) + lattice(floorY, offsetY);
        int right = NoiseTable.permuted(lattice(floorX, offsetX) + 1) + lattice(floorY, offsetY);
        int lowLeft = NoiseTable.permuted(left);
        int lowRight = NoiseTable.permuted(right);
        int highLeft = NoiseTable.permuted(left + 1);
        int highRight = NoiseTable.permuted(right + 1);
        set(near, lowLeft, lowRight, highLeft, highRight, (int) (wholeZ + offsetZ & PERIOD_MASK));
        set(next, lowLeft, lowRight, highLeft, highRight, (int) (wholeZ + 1 + offsetZ & PERIOD_MASK));
    }

    private static void set(
            NoiseBlock.Face face, int lowLeft, int lowRight, int highLeft, int highRight, int latticeZ) {
        face.set(
                NoiseTable.permuted(lowLeft + latticeZ),
                NoiseTable.permuted(lowRight + latticeZ),
                NoiseTable.permuted(highLeft + latticeZ),
                NoiseTable.permuted(highRight + latticeZ));
    }

    private static double flat(int hash, double x, double y) {
        return NoiseTable.GRADIENT_X[hash & 15] * x + NoiseTable.GRADIENT_Y[hash & 15] * y;
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
