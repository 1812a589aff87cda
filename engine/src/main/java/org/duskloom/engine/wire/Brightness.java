package org.duskloom.engine.wire;

import java.util.Objects;

/**
 * How bright a port's lights may become, and which white they show.
 *
 * @param red factor for red light, 0 to 1
 * @param green factor for green light, 0 to 1
 * @param blue factor for blue light, 0 to 1
 * @param cap factor for all light, that of white lights too, 0 to 1
 */
public record Brightness(double red, double green, double blue, double cap) {
    /** Everything as it is. */
    public static final Brightness FULL = new Brightness(1, 1, 1, 1);

    /**
     * @throws IllegalArgumentException if a factor is outside [0, 1]
     */
    public Brightness {
        for (double factor : new double[] {red, green, blue, cap}) {
            if (!(factor >= 0 && factor <= 1)) {
                throw new IllegalArgumentException("a factor of brightness is " + factor);
            }
        }
    }

    /** The factor for the light of one colour. */
    double factor(Channel channel) {
        return switch (Objects.requireNonNull(channel)) {
            case RED -> red * cap;
            case GREEN -> green * cap;
            case BLUE -> blue * cap;
            case WHITE -> cap;
        };
    }
}
