package org.duskloom.cli;

/** {@code pile} by the page of meanings, light by light; the easing of each run is linear. */
record RecomputedPile(RecomputedLight look) {

    double[][] light() {
        int lights = (int) look.number("lights", 12);
        double hold = look.number("hold", 0.1);
        double v = look.passed();
        if (then("stay")) {
            double within = Math.min(1, Math.max(0, look.forward()));
            v = look.isReversed() ? 1 - within : within;
        }
        boolean leaving =
                (then("back") || then("through")) && Math.floorMod((long) Math.floor(look.forward()), 2L) == 1;
        double q = Math.min(1, v / (1 - hold));
        double filled = leaving ? 1 - q : q;
        boolean mirrored = leaving && then("through");
        double[][] light = new double[look.canvas().pixels().length][4];
        double sumOfWays = 0;
        for (int m = 0; m < lights; m++) {
            sumOfWays += way(m, lights);
        }
        double begun = 0;
        for (int m = 0; m < lights; m++) {
            double time = look.word("steady", "speed").equals("speed") ? way(m, lights) / sumOfWays : 1.0 / lights;
            double x = (filled - begun) / time;
            begun += time;
            if (x <= 0) {
                continue;
            }
            double low = 1 - way(m, lights) * Math.min(1, x);
            cover(light, mirrored ? 1 - low - 1.0 / lights : low, mirrored ? lights - 1 - m : m, lights);
        }
        return light;
    }

    private boolean then(String word) {
        return look.word("then", "again").equals(word);
    }

    private static double way(int m, int lights) {
        return 1 - (double) m / lights;
    }

    /** Adds what a light that begins at a place covers of every pixel. */
    private void cover(double[][] light, double low, int number, int lights) {
        int count = look.canvas().count();
        boolean byLight = look.word("along", "order").equals("light");
        for (int i = 0; i < light.length; i++) {
            double position = look.canvas().position()[i];
            double fromGround = look.word("ground", "start").equals("end") ? count - 1 - position : position;
            double covered = Math.min(low + 1.0 / lights, (fromGround + 1) / count) - Math.max(low, fromGround / count);
            double level = Math.max(0, covered) * count;
            double place = byLight ? (double) number / (lights - 1) : (fromGround + 0.5) / count;
            double[] color = look.lit(place, level);
            for (int channel = 0; channel < 4; channel++) {
                light[i][channel] += color[channel];
            }
        }
    }
}
