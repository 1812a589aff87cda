package org.duskloom.engine.preview;

/**
 * A round mark, worked out once for every quarter of a dot in both directions, so that its place is not rounded to
 * whole dots of the picture.
 */
final class DotStamp {
    private static final int PHASES = 4;

    private final int reach;
    private final float[][] weights = new float[(PHASES + 1) * (PHASES + 1)][];

    /** How strong a mark is at a distance from its middle, in dots of the picture. */
    @FunctionalInterface
    private interface Profile {
        double at(double distance);
    }

    private DotStamp(double radius, Profile profile) {
        this.reach = (int) Math.ceil(radius);
        for (int phase = 0; phase < weights.length; phase++) {
            weights[phase] = draw(phase, profile);
        }
    }

    /** A disc with a smooth rim: how much of each dot it covers, 0 to 1. */
    static DotStamp disc(double radius) {
        return new DotStamp(radius + 0.5, distance -> Math.max(0, Math.min(1, radius + 0.5 - distance)));
    }

    /** Light that falls from {@code strength} in the middle to 0 at the radius, steeply first. */
    static DotStamp glow(double radius, double strength) {
        return new DotStamp(radius, distance -> {
            double left = Math.max(0, 1 - distance / radius);
            return strength * left * left * left;
        });
    }

    /** Dots from the middle to each side. */
    int reach() {
        return reach;
    }

    /** Dots along each side. */
    int side() {
        return 2 * reach + 1;
    }

    /**
     * The mark, row by row, for a middle that lies a fraction of a dot, 0 to below 1, right of and below a dot's
     * corner.
     */
    float[] weights(double fractionX, double fractionY) {
        int phaseX = (int) (fractionX * PHASES + 0.5);
        int phaseY = (int) (fractionY * PHASES + 0.5);
        return weights[phaseY * (PHASES + 1) + phaseX];
    }

    private float[] draw(int phase, Profile profile) {
        double middleX = reach + (double) (phase % (PHASES + 1)) / PHASES;
        double middleY = reach + (double) (phase / (PHASES + 1)) / PHASES;
        float[] drawn = new float[side() * side()];
        for (int i = 0; i < drawn.length; i++) {
            double dx = i % side() + 0.5 - middleX;
            double dy = i / side() + 0.5 - middleY;
            drawn[i] = (float) profile.at(Math.sqrt(dx * dx + dy * dy));
        }
        return drawn;
    }
}
