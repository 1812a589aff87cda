package org.duskloom.cli;

import java.util.Map;

/**
 * The light of effects by the page of meanings, section "Effects", in doubles; nothing of the program is used. Settings
 * are numbers, and words as texts.
 *
 * @param palette of opaque colours
 * @param seconds from the member's own start
 */
record RecomputedLight(
        Map<String, Object> settings,
        RecomputedPalette palette,
        RecomputedCanvas canvas,
        double seconds,
        double length) {

    /** Linear light of each pixel, multiplied by its level, and the level. */
    double[][] of(String effect) {
        return switch (effect) {
            case "wash" -> wash();
            case "sweep" -> bands(canvas.along(number("toward", 0)), number("bands", 1));
            case "radiate" -> bands(radii(), number("bands", 1));
            case "spin" -> spin();
            case "chase" -> chase();
            case "swell" -> swell();
            case "festoon" -> new RecomputedFestoon(this).light();
            case "pile" -> new RecomputedPile(this).light();
            default -> throw new IllegalArgumentException(effect);
        };
    }

    double number(String name, double otherwise) {
        return settings.get(name) instanceof Number given ? given.doubleValue() : otherwise;
    }

    String word(String name, String otherwise) {
        return settings.get(name) instanceof String given ? given : otherwise;
    }

    boolean isReversed() {
        return Boolean.TRUE.equals(settings.get("reverse"));
    }

    /** φ of "Time", without the sign of {@code reverse}. */
    double forward() {
        double passes = settings.containsKey("passes")
                ? seconds * number("passes", 1) / length
                : seconds / Double.parseDouble(word("every", "2s").replace("s", ""));
        return passes + number("phase", 0);
    }

    private double phi() {
        return isReversed() ? -forward() : forward();
    }

    /** v of "Time". */
    double passed() {
        return isReversed() ? 1 - frac(forward()) : frac(forward());
    }

    static double frac(double value) {
        return value - Math.floor(value);
    }

    static double smooth(double value) {
        double x = Math.min(1, Math.max(0, value));
        return x * x * (3 - 2 * x);
    }

    static double band(double u, double width, double soft) {
        if (u >= width) {
            return 0;
        }
        return soft > 0 ? smooth(Math.min(u, width - u) / (soft * width)) : 1;
    }

    private double[][] wash() {
        double[] share = word("from", "edge").equals("centre")
                ? canvas.share(i -> Math.hypot(canvas.x()[i], canvas.y()[i]))
                : canvas.along(number("toward", 0));
        double[][] light = new double[share.length][];
        for (int i = 0; i < light.length; i++) {
            light[i] = lit(share[i], 1);
        }
        return light;
    }

    private double radius(int i) {
        return Math.hypot(canvas.x()[i] - number("x", 0), canvas.y()[i] - number("y", 0));
    }

    private double[] radii() {
        double[] radii = new double[canvas.pixels().length];
        double most = 0;
        for (int i = 0; i < radii.length; i++) {
            radii[i] = radius(i);
            most = Math.max(most, radii[i]);
        }
        for (int i = 0; i < radii.length; i++) {
            radii[i] /= most;
        }
        return radii;
    }

    private double[][] bands(double[] s, double bands) {
        double[][] light = new double[s.length][];
        for (int i = 0; i < s.length; i++) {
            light[i] = across(frac(bands * s[i] - phi()), -1);
        }
        return light;
    }

    /** A band; its palette lies across it, or has one place where that is not below 0. */
    private double[] across(double u, double place) {
        double width = number("width", 0.5);
        return lit(place >= 0 ? place : Math.min(1, u / width), band(u, width, number("soft", 0)));
    }

    private double[][] spin() {
        double[] share = canvas.share(this::radius);
        boolean outward = word("along", "width").equals("radius");
        double[][] light = new double[share.length][];
        for (int i = 0; i < light.length; i++) {
            double turns = Math.atan2(canvas.y()[i] - number("y", 0), canvas.x()[i] - number("x", 0)) / (2 * Math.PI);
            double u = frac(number("arms", 3) * (turns - phi()) + number("bend", 0) * radius(i));
            light[i] = across(u, outward ? share[i] : -1);
        }
        return light;
    }

    private double[][] chase() {
        double tail = number("tail", 0.5);
        double[][] light = new double[canvas.pixels().length][];
        for (int i = 0; i < light.length; i++) {
            double s = (canvas.position()[i] + 0.5) / canvas.count();
            double u = frac(number("heads", 1) * (phi() - s));
            light[i] = u < tail ? lit(u / tail, 1 - number("fade", 1) * u / tail) : lit(0, 0);
        }
        return light;
    }

    private double[][] swell() {
        double v = passed();
        double attack = number("attack", 0.5);
        double hold = number("hold", 0);
        double decay = number("decay", 0.5);
        double e = v < attack
                ? v / attack
                : v < attack + hold ? 1 : v < attack + hold + decay ? 1 - (v - attack - hold) / decay : 0;
        double level = number("low", 0) + (1 - number("low", 0)) * e;
        double[] color = switch (word("along", "pass")) {
            case "pass" -> palette.at(v);
            case "level" -> palette.at(e);
            default ->
                palette.light((int)
                        Math.floorMod((long) (isReversed() ? -1 - Math.floor(forward()) : Math.floor(forward())), (long)
                                palette.codes().length));
        };
        double[][] light = new double[canvas.pixels().length][];
        for (int i = 0; i < light.length; i++) {
            light[i] = new double[] {color[0] * level, color[1] * level, color[2] * level, level};
        }
        return light;
    }

    /** Red, green, blue and alpha. */
    double[] lit(double place, double level) {
        double[] color = palette.at(place);
        return new double[] {color[0] * level, color[1] * level, color[2] * level, level};
    }
}
