package org.duskloom.engine.sound.music;

/** What the song is like from each beat to the next: the mean level of each mel band, and the classes of pitch. */
final class BeatFeatures {
    private static final double FLOOR = 1e-7;

    private final double[][] bands;
    private final double[][] pitches;

    private BeatFeatures(double[][] bands, double[][] pitches) {
        this.bands = bands;
        this.pitches = pitches;
    }

    static BeatFeatures of(Spectra spectra, double[] beatFrames) {
        int count = beatFrames.length;
        double[][] bands = new double[count][MelBands.COUNT];
        double[][] pitches = new double[count][Spectra.PITCHES];
        double loudest = Float.MIN_NORMAL;
        for (int i = 0; i < count; i++) {
            int from = Math.max(0, (int) Math.round(beatFrames[i]));
            double next = i + 1 < count ? beatFrames[i + 1] : spectra.count();
            int to = Math.min(spectra.count(), Math.max(from + 1, (int) Math.round(next)));
            for (int n = from; n < to; n++) {
                for (int b = 0; b < MelBands.COUNT; b++) {
                    bands[i][b] += spectra.band(n, b) / (to - from);
                }
                for (int p = 0; p < Spectra.PITCHES; p++) {
                    pitches[i][p] += Math.sqrt(spectra.pitch(n, p)) / (to - from);
                }
            }
            for (double power : bands[i]) {
                loudest = Math.max(loudest, power);
            }
        }
        for (double[] row : bands) {
            for (int b = 0; b < row.length; b++) {
                row[b] = StrictMath.log(row[b] / loudest + FLOOR);
            }
        }
        centre(pitches);
        return new BeatFeatures(bands, pitches);
    }

    /** Takes from each row its own mean, so that unlike rows have an angle of more than a right one. */
    private static void centre(double[][] rows) {
        for (double[] row : rows) {
            double mean = 0;
            for (double value : row) {
                mean += value / row.length;
            }
            for (int i = 0; i < row.length; i++) {
                row[i] -= mean;
            }
        }
    }

    /** How other the harmony is on each beat than on the one before: 0 to 2. */
    double[] harmonicChange() {
        double[] change = new double[pitches.length];
        for (int i = 1; i < change.length; i++) {
            change[i] = 1 - cosine(pitches[i - 1], pitches[i]);
        }
        return change;
    }

    /** Rows for comparing beats: bands by their deviation over the song, and pitches. */
    double[][] rows() {
        double[][] rows = new double[bands.length][MelBands.COUNT + Spectra.PITCHES];
        for (int b = 0; b < MelBands.COUNT; b++) {
            double mean = 0;
            double square = 0;
            for (double[] row : bands) {
                mean += row[b] / bands.length;
                square += row[b] * row[b] / bands.length;
            }
            double deviation = Math.sqrt(Math.max(1e-3, square - mean * mean));
            for (int i = 0; i < bands.length; i++) {
                rows[i][b] = (bands[i][b] - mean) / deviation;
            }
        }
        for (int i = 0; i < rows.length; i++) {
            double size = Math.sqrt(dot(pitches[i], pitches[i]));
            for (int p = 0; p < Spectra.PITCHES; p++) {
                rows[i][MelBands.COUNT + p] = size > 0 ? pitches[i][p] / size : 0;
            }
        }
        return rows;
    }

    static double cosine(double[] a, double[] b) {
        double sizes = Math.sqrt(dot(a, a) * dot(b, b));
        return sizes > 0 ? dot(a, b) / sizes : 0;
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }
}
