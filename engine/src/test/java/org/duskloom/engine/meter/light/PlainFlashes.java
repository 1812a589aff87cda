package org.duskloom.engine.meter.light;

import java.util.ArrayList;
import java.util.List;
import org.duskloom.engine.color.Srgb;

/**
 * Flashes counted in the plainest way, for tests: of one light, in doubles, over lists, each rule as it is written
 * (WCAG 2.2 and 2.0, "general flash and red flash thresholds"). Colours are red, green and blue in linear light.
 */
final class PlainFlashes {
    private static final double MARGIN = 1e-6;

    private PlainFlashes() {}

    /** Linear light of sRGB codes. */
    static double[] linear(int code) {
        return new double[] {
            Srgb.decode((code >> 16) / 255.0),
            Srgb.decode((code >> 8 & 0xFF) / 255.0),
            Srgb.decode((code & 0xFF) / 255.0)
        };
    }

    /** At which frames the luminance has changed by a tenth from a peak or valley, the darker being below 0.8. */
    static List<Integer> general(List<double[]> colors) {
        List<Double> since = new ArrayList<>();
        List<Integer> changes = new ArrayList<>();
        int way = 0;
        for (int frame = 0; frame < colors.size(); frame++) {
            double[] c = colors.get(frame);
            double now = 0.2126 * c[0] + 0.7152 * c[1] + 0.0722 * c[2];
            since.add(now);
            double low = since.stream().mapToDouble(x -> x).min().orElseThrow();
            double high = since.stream().mapToDouble(x -> x).max().orElseThrow();
            boolean up = way <= 0 && now - low >= 0.1 - MARGIN && low < 0.8;
            boolean down = way >= 0 && high - now >= 0.1 - MARGIN && now < 0.8;
            if (up || down) {
                way = up ? 1 : -1;
                changes.add(frame);
                since.clear();
                since.add(now);
            }
        }
        return changes;
    }

    /** At which frames max(0, (R - G - B) * 320) has changed by more than 20, to or from a saturated red. */
    static List<Integer> olderRed(List<double[]> colors) {
        List<double[]> since = new ArrayList<>();
        List<Integer> changes = new ArrayList<>();
        int way = 0;
        for (int frame = 0; frame < colors.size(); frame++) {
            double[] now = colors.get(frame);
            since.add(now);
            double low = since.stream().mapToDouble(PlainFlashes::older).min().orElseThrow();
            double high = since.stream().mapToDouble(PlainFlashes::older).max().orElseThrow();
            boolean up = way <= 0 && older(now) - low > 20 && (isRed(now) || isRed(since, low));
            boolean down = way >= 0 && high - older(now) > 20 && (isRed(now) || isRed(since, high));
            if (up || down) {
                way = up ? 1 : -1;
                changes.add(frame);
                since.clear();
                since.add(now);
            }
        }
        return changes;
    }

    private static double older(double[] c) {
        return Math.max(0, (c[0] - c[1] - c[2]) * 320);
    }

    private static boolean isRed(List<double[]> colors, double value) {
        return colors.stream().anyMatch(c -> older(c) == value && isRed(c));
    }

    /** At which frames a colour is farther than 0.2 in u'v' from one since the last change and within the second. */
    static List<Integer> chromaticRed(List<double[]> colors, int framesOfSecond) {
        List<Integer> changes = new ArrayList<>();
        int changed = 0;
        for (int frame = 1; frame < colors.size(); frame++) {
            int oldest = Math.max(changed, frame - Math.max(1, framesOfSecond - 1));
            for (int before = oldest; before < frame && changed != frame; before++) {
                double[] one = colors.get(before);
                double[] other = colors.get(frame);
                if (isRed(one) != isRed(other) && distance(one, other) > 0.2) {
                    changed = frame;
                    changes.add(frame);
                }
            }
        }
        return changes;
    }

    private static boolean isBlack(double[] c) {
        return Math.max(c[0], Math.max(c[1], c[2])) < 1 / 256.0;
    }

    private static boolean isRed(double[] c) {
        return !isBlack(c) && c[0] >= 0.8 * (c[0] + c[1] + c[2]) - MARGIN;
    }

    private static double distance(double[] one, double[] other) {
        double[] a = chromaticity(one);
        double[] b = chromaticity(other);
        return Math.hypot(a[0] - b[0], a[1] - b[1]);
    }

    /** CIE 1976 u'v', by way of the matrix of WCAG 2.2. */
    static double[] chromaticity(double[] color) {
        double[] c = isBlack(color) ? new double[] {1, 1, 1} : color;
        double x = 0.4124564 * c[0] + 0.3575761 * c[1] + 0.1804375 * c[2];
        double y = 0.2126729 * c[0] + 0.7151522 * c[1] + 0.0721750 * c[2];
        double z = 0.0193339 * c[0] + 0.1191920 * c[1] + 0.9503041 * c[2];
        return new double[] {4 * x / (x + 15 * y + 3 * z), 9 * y / (x + 15 * y + 3 * z)};
    }

    /** The most changes in any half-open second. */
    static int worst(List<Integer> changes, int framesOfSecond) {
        int most = 0;
        for (int first : changes) {
            most = Math.max(most, (int) changes.stream()
                    .filter(frame -> frame >= first && frame < first + framesOfSecond)
                    .count());
        }
        return most;
    }
}
