package org.duskloom.engine.locate;

import java.util.Arrays;

/**
 * What the dark and the lit picture of a round say: which dots are near lights, how bright lights are, and how noisy
 * the pictures. Places are measured in the lit picture.
 */
final class Reference {
    /** How many standard deviations of the noise a dot must be brighter to be near a light. */
    private static final int CLEAR_OF_NOISE = 8;

    /** By how many codes a dot must be brighter in any case. */
    private static final double LEAST_CODES = 16;

    /** What is fainter than this share of a usual light is not near one. */
    private static final double LEAST_SHARE = 0.02;

    /** From this share on it would be the lights themselves that are left out. */
    private static final double MOST_SHARE = 0.2;

    /** So many dots are kept at most: each takes as many numbers as there are readings, 34 of 1,288 pixels. */
    private static final int MOST_KEPT = 2_000_000;

    /** How many dots more are kept on every side. */
    private static final int MARGIN = 2;

    private static final int STRIDE = 7;

    /** What is as bright as this share of a usual light without being lit belongs to a lamp. */
    private static final double LAMP = 0.25;

    /** So many dots round a lamp are not looked at where much depends on it. */
    private static final int LAMP_MARGIN = 6;

    final PictureSize size;
    final KeptDots dots;
    /** Linear light of the kept dots. */
    final float[] lit;

    final float[] dark;
    /** Which of them are in a lamp or at its rim, where the tripod's shaking is seen rather than lights. */
    final boolean[] nearLamp;

    /** The standard deviation of a code. */
    final double noiseCodes;
    /** The light of the middle of a usual light, above the dark. */
    final double usualPeak;

    /** How many spots there are that are brighter than what is round them. */
    final int peaks;

    private Reference(PictureSize size, KeptDots dots, Plane dark, Plane lit, double noiseCodes, Peaks peaks) {
        this.size = size;
        this.dots = dots;
        this.noiseCodes = noiseCodes;
        this.usualPeak = peaks.usual;
        this.peaks = peaks.count;
        this.lit = new float[dots.count()];
        this.dark = new float[dots.count()];
        this.nearLamp = new boolean[dots.count()];
        for (int i = 0; i < dots.count(); i++) {
            this.lit[i] = lit.light(dots.dot(i));
            this.dark[i] = dark.light(dots.dot(i));
            this.nearLamp[i] = isLampNear(dark, dots.x(i), dots.y(i));
        }
    }

    private boolean isLampNear(Plane dark, int x, int y) {
        for (int row = y - LAMP_MARGIN; row <= y + LAMP_MARGIN; row += 2) {
            for (int column = x - LAMP_MARGIN; column <= x + LAMP_MARGIN; column += 2) {
                boolean inside = row >= 0 && row < dark.height && column >= 0 && column < dark.width;
                if (inside && dark.light(row * dark.width + column) > LAMP * usualPeak) {
                    return true;
                }
            }
        }
        return false;
    }

    /**
     * The spots of a picture.
     *
     * @param count how many there are
     * @param usual the light of a usual one above the dark, 0 if there are none
     */
    private record Peaks(int count, double usual) {}

    /**
     * @param lights how many lights may be lit at most
     * @return nothing is kept if no light is seen
     */
    static Reference of(PictureSize size, Plane dark, Plane lit, int lights) {
        double noise = noise(dark, lit);
        double leastCodes = Math.max(LEAST_CODES, CLEAR_OF_NOISE * noise);
        Peaks peaks = peaks(dark, lit, leastCodes, lights);
        double share = LEAST_SHARE;
        KeptDots kept = kept(dark, lit, leastCodes, share * peaks.usual);
        // A bright wall behind the lights is lit by them in all of the picture.
        while (kept.count() > MOST_KEPT && share < MOST_SHARE) {
            share *= 1.5;
            kept = kept(dark, lit, leastCodes, share * peaks.usual);
        }
        return new Reference(size, kept, dark, lit, noise, peaks);
    }

    /**
     * From how much the two differ, as little changes at most of their dots. Where the glow of many lights is all over
     * the picture it does not, so that not more is believed than twice what neighbours differ by in the dark; JPEG
     * makes those more alike than noise is.
     */
    private static double noise(Plane dark, Plane lit) {
        int[] between = new int[256];
        int[] beside = new int[256];
        for (int y = 0; y < lit.height; y += STRIDE) {
            for (int x = y % STRIDE; x + 1 < lit.width; x += STRIDE) {
                int dot = y * lit.width + x;
                between[Math.abs(lit.code(dot) - dark.code(dot))]++;
                beside[Math.abs(dark.code(dot + 1) - dark.code(dot))]++;
            }
        }
        return Math.max(1, Math.min(deviation(between), 2 * deviation(beside)));
    }

    /**
     * The median of |a - b| is 0.954 standard deviations, for normal noise; a median of whole codes may be too low.
     *
     * @param counts how often two codes differ by so many
     */
    private static double deviation(int[] counts) {
        int all = Arrays.stream(counts).sum();
        int median = 0;
        for (int seen = counts[0]; 2 * seen < all; seen += counts[median]) {
            median++;
        }
        return (median + 0.5) / 0.954;
    }

    /** A usual one is the median of the brightest, as many as there may be lights. */
    private static Peaks peaks(Plane dark, Plane lit, double leastCodes, int lights) {
        float[] peaks = new float[1024];
        int count = 0;
        for (int y = 1; y < lit.height - 1; y++) {
            for (int x = 1; x < lit.width - 1; x++) {
                int dot = y * lit.width + x;
                if (lit.code(dot) - dark.code(dot) > leastCodes && isPeak(lit, dot)) {
                    if (count == peaks.length) {
                        peaks = Arrays.copyOf(peaks, 2 * count);
                    }
                    peaks[count++] = lit.light(dot) - dark.light(dot);
                }
            }
        }
        Arrays.sort(peaks, 0, count);
        int brightest = Math.min(count, lights);
        return new Peaks(count, count == 0 ? 0 : peaks[count - 1 - brightest / 2]);
    }

    /** Of a plateau of burnt-out dots any may be taken. */
    private static boolean isPeak(Plane plane, int dot) {
        int code = plane.code(dot);
        int width = plane.width;
        return code > plane.code(dot - 1)
                && code >= plane.code(dot + 1)
                && code > plane.code(dot - width)
                && code >= plane.code(dot + width)
                && code > plane.code(dot - width - 1)
                && code > plane.code(dot - width + 1)
                && code >= plane.code(dot + width - 1)
                && code >= plane.code(dot + width + 1);
    }

    private static KeptDots kept(Plane dark, Plane lit, double leastCodes, double leastLight) {
        int width = lit.width;
        int height = lit.height;
        // The rows above and below decide, too: a ring of rows of marks, each grown sideways by the margin.
        byte[][] marks = new byte[2 * MARGIN + 1][width];
        int[] found = new int[4096];
        int count = 0;
        for (int y = -MARGIN; y < height; y++) {
            if (y + MARGIN < height) {
                mark(dark, lit, y + MARGIN, leastCodes, leastLight, marks[(y + MARGIN) % marks.length]);
            } else {
                Arrays.fill(marks[(y + MARGIN) % marks.length], (byte) 0);
            }
            if (y < 0) {
                continue;
            }
            for (int x = 0; x < width; x++) {
                boolean near = false;
                for (byte[] row : marks) {
                    near |= row[x] != 0;
                }
                if (near) {
                    if (count == found.length) {
                        found = Arrays.copyOf(found, 2 * count);
                    }
                    found[count++] = y * width + x;
                }
            }
        }
        return new KeptDots(width, Arrays.copyOf(found, count));
    }

    private static void mark(Plane dark, Plane lit, int y, double leastCodes, double leastLight, byte[] marks) {
        Arrays.fill(marks, (byte) 0);
        int from = y * lit.width;
        for (int x = 0; x < lit.width; x++) {
            int dot = from + x;
            if (lit.code(dot) - dark.code(dot) > leastCodes && lit.light(dot) - dark.light(dot) > leastLight) {
                Arrays.fill(marks, Math.max(0, x - MARGIN), Math.min(lit.width, x + MARGIN + 1), (byte) 1);
            }
        }
    }

    /** The standard deviation of the light of a dot. */
    double noiseAt(double light) {
        return noiseCodes * Plane.lightPerCode(light);
    }
}
