package org.duskloom.engine.render;

import java.util.List;
import java.util.Random;
import java.util.function.DoubleBinaryOperator;

/**
 * Mixes a pixel of a random show by the general formula of W3C Compositing and Blending Level 1 in double precision,
 * one channel at a time, with none of the short cuts of the renderer.
 */
final class ReferencePainter {
    static final List<String> MODES = List.of(
            "normal",
            "multiply",
            "screen",
            "overlay",
            "darken",
            "lighten",
            "hard-light",
            "soft-light",
            "difference",
            "exclusion",
            "plus-lighter",
            "color-dodge",
            "color-burn");

    private ReferencePainter() {}

    /** Premultiplied light with its alpha. */
    record Light(double value, double alpha) {
        static final Light NONE = new Light(0, 0);

        Light times(double opacity) {
            return new Light(value * opacity, alpha * opacity);
        }
    }

    /** A cue: what it shows on each pixel; nothing where it is not. */
    record Paint(String part, double[] rgb, double alpha, double opacity, String blend) {
        static Paint random(Random random, int parts) {
            double[] rgb = {random.nextDouble(), random.nextDouble(), random.nextDouble()};
            double alpha = random.nextInt(3) == 0 ? 1 : random.nextDouble();
            double opacity = random.nextInt(3) == 0 ? 1 : random.nextDouble();
            return new Paint("p" + random.nextInt(parts), rgb, alpha, opacity, mode(random));
        }

        String json() {
            return """
                    {"on": "a/%s", "effect": "light", "opacity": %s, "blend": "%s",
                     "with": {"r": %s, "g": %s, "b": %s, "a": %s}}""".formatted(part, opacity, blend, rgb[0], rgb[1], rgb[2], alpha);
        }
    }

    static String mode(Random random) {
        return MODES.get(random.nextInt(MODES.size()));
    }

    static Light over(String mode, Light backdrop, Light source) {
        if (mode.equals("plus-lighter")) {
            return new Light(Math.min(1, backdrop.value + source.value), Math.min(1, backdrop.alpha + source.alpha));
        }
        double cs = source.alpha == 0 ? 0 : source.value / source.alpha;
        double cb = backdrop.alpha == 0 ? 0 : backdrop.value / backdrop.alpha;
        double mixed = (1 - backdrop.alpha) * cs + backdrop.alpha * blend(mode).applyAsDouble(cb, cs);
        return new Light(
                source.alpha * mixed + (1 - source.alpha) * backdrop.value,
                source.alpha + (1 - source.alpha) * backdrop.alpha);
    }

    private static DoubleBinaryOperator blend(String mode) {
        return switch (mode) {
            case "normal" -> (b, s) -> s;
            case "multiply" -> (b, s) -> b * s;
            case "screen" -> ReferencePainter::screen;
            case "overlay" -> (b, s) -> hardLight(s, b);
            case "darken" -> Math::min;
            case "lighten" -> Math::max;
            case "hard-light" -> ReferencePainter::hardLight;
            case "soft-light" -> ReferencePainter::softLight;
            case "difference" -> (b, s) -> Math.abs(b - s);
            case "exclusion" -> (b, s) -> b + s - 2 * b * s;
            case "color-dodge" -> (b, s) -> b == 0 ? 0 : s == 1 ? 1 : Math.min(1, b / (1 - s));
            case "color-burn" -> (b, s) -> b == 1 ? 1 : s == 0 ? 0 : 1 - Math.min(1, (1 - b) / s);
            default -> throw new IllegalArgumentException(mode);
        };
    }

    private static double screen(double b, double s) {
        return b + s - b * s;
    }

    private static double hardLight(double b, double s) {
        return s <= 0.5 ? b * 2 * s : screen(b, 2 * s - 1);
    }

    private static double softLight(double b, double s) {
        double d = b <= 0.25 ? ((16 * b - 12) * b + 4) * b : Math.sqrt(b);
        return s <= 0.5 ? b - (1 - 2 * s) * b * (1 - b) : b + (2 * s - 1) * (d - b);
    }
}
