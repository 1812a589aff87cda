package org.duskloom.engine.random;

/**
 * One cell of a {@link GradientNoise}: the gradients at its corners, which all points in it share. So whoever needs the
 * noise of many points, near ones after each other, looks few gradients up. For one thread.
 */
public final class NoiseCell {
    private GradientNoise noise;
    private double floorX;
    private double floorY;
    private long plane;

    private final Face near = new Face();
    private final Face next = new Face();

    /** Where the point lies in the cell, and how far its gradients have faded there. */
    private double inX;

    private double inY;
    private double fadeX;
    private double fadeY;

    /** A cell of no noise yet. */
    public NoiseCell() {}

    /**
     * Goes to a point.
     *
     * @param of the noise
     * @param wholeZ the plane below the point, or through it
     */
    public void go(GradientNoise of, double x, double y, long wholeZ) {
        double wholeX = Math.floor(x);
        double wholeY = Math.floor(y);
        if (wholeX != floorX || wholeY != floorY || wholeZ != plane || of != noise) {
            noise = of;
            floorX = wholeX;
            floorY = wholeY;
            plane = wholeZ;
            of.lookUp(wholeX, wholeY, wholeZ, near, next);
        }
        inX = x - wholeX;
        inY = y - wholeY;
        fadeX = GradientNoise.fade(inX);
        fadeY = GradientNoise.fade(inY);
    }

    /** Stores what the plane gives to the noise at the point, as {@link GradientNoise#plane} does. */
    public void near(int index, float[] values, float[] slopes) {
        values[index] = (float) near.value(inX, inY, fadeX, fadeY);
        slopes[index] = (float) near.slope(fadeX, fadeY);
    }

    /** Stores what the next plane gives. */
    public void next(int index, float[] values, float[] slopes) {
        values[index] = (float) next.value(inX, inY, fadeX, fadeY);
        slopes[index] = (float) next.slope(fadeX, fadeY);
    }

    /** The gradients at the corners of the cell in one plane of whole z. */
    static final class Face {
        private double lowLeftX;
        private double lowLeftY;
        private double lowRightX;
        private double lowRightY;
        private double highLeftX;
        private double highLeftY;
        private double highRightX;
        private double highRightY;
        private double lowLeftZ;
        private double highLeftZ;
        /** From the left corners to the right ones; exact, as all are whole numbers. */
        private double lowWayZ;

        private double highWayZ;

        /** Takes the gradients of four hashes. */
        void set(int lowLeft, int lowRight, int highLeft, int highRight) {
            double[] alongX = NoiseTable.GRADIENT_X;
            double[] alongY = NoiseTable.GRADIENT_Y;
            double[] alongZ = NoiseTable.GRADIENT_Z;
            lowLeftX = alongX[lowLeft & 15];
            lowLeftY = alongY[lowLeft & 15];
            lowRightX = alongX[lowRight & 15];
            lowRightY = alongY[lowRight & 15];
            highLeftX = alongX[highLeft & 15];
            highLeftY = alongY[highLeft & 15];
            highRightX = alongX[highRight & 15];
            highRightY = alongY[highRight & 15];
            lowLeftZ = alongZ[lowLeft & 15];
            highLeftZ = alongZ[highLeft & 15];
            lowWayZ = alongZ[lowRight & 15] - lowLeftZ;
            highWayZ = alongZ[highRight & 15] - highLeftZ;
        }

        /** The noise at the plane itself. */
        double value(double x, double y, double fadeX, double fadeY) {
            double lowLeft = lowLeftX * x + lowLeftY * y;
            double lowRight = lowRightX * (x - 1) + lowRightY * y;
            double highLeft = highLeftX * x + highLeftY * (y - 1);
            double highRight = highRightX * (x - 1) + highRightY * (y - 1);
            double low = lowLeft + fadeX * (lowRight - lowLeft);
            double high = highLeft + fadeX * (highRight - highLeft);
            return low + fadeY * (high - low);
        }

        /** How the noise grows along z. */
        double slope(double fadeX, double fadeY) {
            double low = lowLeftZ + fadeX * lowWayZ;
            double high = highLeftZ + fadeX * highWayZ;
            return low + fadeY * (high - low);
        }
    }
}
