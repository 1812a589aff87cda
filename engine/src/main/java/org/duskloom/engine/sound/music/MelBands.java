package org.duskloom.engine.sound.music;

/**
 * Bands of equal width in mel, 2595 log10(1 + f/700) (O'Shaughnessy): triangles that overlap by half, so that every bin
 * between the middles of the first and the last counts once.
 */
final class MelBands {
    /** How many there are. */
    static final int COUNT = 40;

    private static final double LOWEST_HZ = 27.5;
    private static final double HIGHEST_HZ = 5_500;

    private final double[] centresHz = new double[COUNT];
    private final int[] bandBelow;
    private final double[] shareAbove;

    MelBands(int size, double rateHz) {
        double low = mel(LOWEST_HZ);
        double step = (mel(Math.min(HIGHEST_HZ, rateHz / 2)) - low) / (COUNT + 1);
        for (int i = 0; i < COUNT; i++) {
            centresHz[i] = hertz(low + (i + 1) * step);
        }
        this.bandBelow = new int[size / 2 + 1];
        this.shareAbove = new double[size / 2 + 1];
        for (int k = 0; k < bandBelow.length; k++) {
            double place = (mel(k * rateHz / size) - low) / step - 1;
            bandBelow[k] = (int) Math.floor(place);
            shareAbove[k] = place - bandBelow[k];
        }
    }

    static double mel(double hertz) {
        return 2595 * StrictMath.log10(1 + hertz / 700);
    }

    static double hertz(double mel) {
        return 700 * (StrictMath.pow(10, mel / 2595) - 1);
    }

    /** The middle of a band. */
    double centreHz(int band) {
        return centresHz[band];
    }

    /** Sums the power of bins into bands. */
    void sum(double[] power, double[] bands) {
        for (int i = 0; i < COUNT; i++) {
            bands[i] = 0;
        }
        for (int k = 0; k < power.length; k++) {
            int below = bandBelow[k];
            if (below >= 0 && below < COUNT) {
                bands[below] += (1 - shareAbove[k]) * power[k];
            }
            if (below >= -1 && below < COUNT - 1) {
                bands[below + 1] += shareAbove[k] * power[k];
            }
        }
    }
}
