package org.duskloom.engine.random;

/**
 * Many points of a {@link GradientNoise} at once, near ones after each other. Points in one cell have the gradients at
 * its corners in common, so these are looked up once, and the rest are short loops over plain arrays, which become
 * vector instructions. For one thread.
 */
public final class NoiseBlock {
    /** The most points at a time. */
    public static final int CAPACITY = 512;

    /** So few points of a cell take longer in loops than one by one. Chosen by measurement. */
    private static final int FEW = 12;

    /** So few points in all, likewise. */
    private static final int FEW_IN_ALL = 64;

    /** Where each point is; what {@link #compute} leaves is scratch. */
    public final double[] x = new double[CAPACITY];

    /** Likewise. */
    public final double[] y = new double[CAPACITY];

    /** The plane of whole z below each point, or through it. */
    public final long[] wholeZ = new long[CAPACITY];

    /** What the plane gives to the noise at each point, as {@link GradientNoise#plane} does. */
    public final float[] values = new float[CAPACITY];

    /** How this grows along z. */
    public final float[] slopes = new float[CAPACITY];

    /** What the next plane gives. */
    public final float[] nextValues = new float[CAPACITY];

    /** How this grows along z. */
    public final float[] nextSlopes = new float[CAPACITY];

    private final double[] wholeX = new double[CAPACITY];
    private final double[] wholeY = new double[CAPACITY];
    private final Points in = new Points(x, y, new double[CAPACITY], new double[CAPACITY]);
    private final double[] scratch = new double[CAPACITY];
    private final double[] exactValues = new double[CAPACITY];
    private final double[] exactSlopes = new double[CAPACITY];
    private final double[] exactNextValues = new double[CAPACITY];
    private final double[] exactNextSlopes = new double[CAPACITY];
    private final Face near = new Face();
    private final Face next = new Face();

    /** A block of no points yet. */
    public NoiseBlock() {}

    /** Computes what the two planes give to the first points. */
    public void compute(GradientNoise noise, int count) {
        if (count < FEW_IN_ALL) {
            computeOneByOne(noise, count);
        } else {
            computeByCells(noise, count);
        }
    }

    private void computeOneByOne(GradientNoise noise, int count) {
        for (int i = 0; i < count; i++) {
            wholeX[i] = Math.floor(x[i]);
            wholeY[i] = Math.floor(y[i]);
            if (i == 0 || wholeX[i] != wholeX[i - 1] || wholeY[i] != wholeY[i - 1] || wholeZ[i] != wholeZ[i - 1]) {
                noise.lookUp(wholeX[i], wholeY[i], wholeZ[i], near, next);
            }
            double inX = x[i] - wholeX[i];
            double inY = y[i] - wholeY[i];
            double fadeX = GradientNoise.fade(inX);
            double fadeY = GradientNoise.fade(inY);
            values[i] = (float) near.value(inX, inY, fadeX, fadeY);
            slopes[i] = (float) near.slope(fadeX, fadeY);
            nextValues[i] = (float) next.value(inX, inY, fadeX, fadeY);
            nextSlopes[i] = (float) next.slope(fadeX, fadeY);
        }
    }

    private void computeByCells(GradientNoise noise, int count) {
        split(x, wholeX, count);
        split(y, wholeY, count);
        fade(x, count, in.fadeX);
        fade(y, count, in.fadeY);
        for (int from = 0; from < count; ) {
            int to = endOfCell(from, count);
            noise.lookUp(wholeX[from], wholeY[from], wholeZ[from], near, next);
            computeCell(from, to);
            from = to;
        }
        narrow(count);
    }

    /** Of numbers their whole parts; what is left of them stays. */
    private static void split(double[] numbers, double[] wholes, int count) {
        for (int i = 0; i < count; i++) {
            double whole = Math.floor(numbers[i]);
            wholes[i] = whole;
            numbers[i] -= whole;
        }
    }

    private static void fade(double[] in, int count, double[] faded) {
        for (int i = 0; i < count; i++) {
            faded[i] = GradientNoise.fade(in[i]);
        }
    }

    /** All in one loop: none of these becomes vector instructions. */
    private void narrow(int count) {
        for (int i = 0; i < count; i++) {
            values[i] = (float) exactValues[i];
            slopes[i] = (float) exactSlopes[i];
            nextValues[i] = (float) exactNextValues[i];
            nextSlopes[i] = (float) exactNextSlopes[i];
        }
    }

    private int endOfCell(int from, int count) {
        double cellX = wholeX[from];
        double cellY = wholeY[from];
        long plane = wholeZ[from];
        int to = from + 1;
        while (to < count && wholeX[to] == cellX && wholeY[to] == cellY && wholeZ[to] == plane) {
            to++;
        }
        return to;
    }

    private void computeCell(int from, int to) {
        if (to - from < FEW) {
            for (int i = from; i < to; i++) {
                exactValues[i] = near.value(x[i], y[i], in.fadeX[i], in.fadeY[i]);
                exactSlopes[i] = near.slope(in.fadeX[i], in.fadeY[i]);
                exactNextValues[i] = next.value(x[i], y[i], in.fadeX[i], in.fadeY[i]);
                exactNextSlopes[i] = next.slope(in.fadeX[i], in.fadeY[i]);
            }
        } else {
            near.fillValues(in, from, to, scratch, exactValues);
            near.fillSlopes(in, from, to, exactSlopes);
            next.fillValues(in, from, to, scratch, exactNextValues);
            next.fillSlopes(in, from, to, exactNextSlopes);
        }
    }

    /** Where points lie in their cells, and how far gradients have faded there. */
    private record Points(double[] x, double[] y, double[] fadeX, double[] fadeY) {}

    /** The gradients at the corners of a cell in one plane of whole z. */
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
        private double value(double x, double y, double fadeX, double fadeY) {
            double lowLeft = lowLeftX * x + lowLeftY * y;
            double lowRight = lowRightX * (x - 1) + lowRightY * y;
            double highLeft = highLeftX * x + highLeftY * (y - 1);
            double highRight = highRightX * (x - 1) + highRightY * (y - 1);
            double low = lowLeft + fadeX * (lowRight - lowLeft);
            double high = highLeft + fadeX * (highRight - highLeft);
            return low + fadeY * (high - low);
        }

        /** How the noise grows along z. */
        private double slope(double fadeX, double fadeY) {
            double low = lowLeftZ + fadeX * lowWayZ;
            double high = highLeftZ + fadeX * highWayZ;
            return low + fadeY * (high - low);
        }

        /**
         * {@link #value} of some points.
         *
         * @param scratch a plane
         */
        private void fillValues(Points in, int from, int to, double[] scratch, double[] values) {
            fillEdge(in, lowLeftX, lowLeftY, lowRightX, lowRightY, 0, from, to, values);
            fillEdge(in, highLeftX, highLeftY, highRightX, highRightY, 1, from, to, scratch);
            between(in.fadeY, scratch, from, to, values);
        }

        /** What the left and the right corner give, below (0) or above (1); all in one loop becomes no vectors. */
        private static void fillEdge(
                Points in,
                double leftX,
                double leftY,
                double rightX,
                double rightY,
                double above,
                int from,
                int to,
                double[] edge) {
            double[] x = in.x;
            double[] y = in.y;
            double[] fadeX = in.fadeX;
            for (int i = from; i < to; i++) {
                double down = y[i] - above;
                double left = leftX * x[i] + leftY * down;
                double right = rightX * (x[i] - 1) + rightY * down;
                edge[i] = left + fadeX[i] * (right - left);
            }
        }

        private static void between(double[] share, double[] high, int from, int to, double[] low) {
            for (int i = from; i < to; i++) {
                low[i] += share[i] * (high[i] - low[i]);
            }
        }

        /** {@link #slope} of some points. */
        private void fillSlopes(Points in, int from, int to, double[] slopes) {
            double[] fadeX = in.fadeX;
            double[] fadeY = in.fadeY;
            double lowLeft = lowLeftZ;
            double lowWay = lowWayZ;
            double highLeft = highLeftZ;
            double highWay = highWayZ;
            for (int i = from; i < to; i++) {
                double low = lowLeft + fadeX[i] * lowWay;
                double high = highLeft + fadeX[i] * highWay;
                slopes[i] = low + fadeY[i] * (high - low);
            }
        }
    }
}
