package org.duskloom.engine.survey;

import java.util.Objects;
import java.util.Optional;

/**
 * A reading that fits the measurements as well as the preferred one.
 *
 * @param reading the reading
 * @param mostApart the largest distance between the two places of a pixel, in the display's unit
 * @param test which measurement would tell the two apart; nothing if they put every pixel too near to the same place
 */
public record Rival(Reading reading, double mostApart, Optional<Test> test) {
    public Rival {
        Objects.requireNonNull(reading, "reading");
        Objects.requireNonNull(test, "test");
    }

    /**
     * A measurement that tells two readings apart.
     *
     * @param pixel the pixel to measure, from 0 within its prop
     * @param distance how far apart the two readings put it
     * @param preferredX where the preferred reading puts it on the stage
     * @param preferredY the same, up
     * @param preferredZ the same, toward the audience
     * @param rivalX where the rival puts it
     * @param rivalY the same, up
     * @param rivalZ the same, toward the audience
     */
    public record Test(
            int pixel,
            double distance,
            double preferredX,
            double preferredY,
            double preferredZ,
            double rivalX,
            double rivalY,
            double rivalZ) {}
}
