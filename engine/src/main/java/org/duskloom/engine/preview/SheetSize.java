package org.duskloom.engine.preview;

import java.util.Locale;
import org.duskloom.engine.file.OutputRefusedException;

/** The largest picture that is made. It is held in memory, and few programs open a larger one. */
final class SheetSize {
    static final long LARGEST_DOTS = 100_000_000;

    /** A panel takes more memory than its share of the picture while its light is added up. */
    static final long LARGEST_PANEL_DOTS = 10_000_000;

    private SheetSize() {}

    /** @throws OutputRefusedException if a panel would be too large */
    static void refuseLargePanel(int width, int height) throws OutputRefusedException {
        if ((long) width * height > LARGEST_PANEL_DOTS) {
            throw new OutputRefusedException(String.format(
                    Locale.ROOT,
                    "a panel would be %d by %d dots, and at most %d million are made; choose a smaller width, or smaller pixels",
                    width,
                    height,
                    LARGEST_PANEL_DOTS / 1_000_000));
        }
    }

    /**
     * @param advice what would make it smaller
     * @throws OutputRefusedException if the picture would be too large
     */
    static void refuseTooLarge(String picture, long width, long height, String advice) throws OutputRefusedException {
        if (height > 0 && width > LARGEST_DOTS / height) {
            throw new OutputRefusedException(String.format(
                    Locale.ROOT,
                    "%s would be %d by %d dots, and at most %d million are made; %s",
                    picture,
                    width,
                    height,
                    LARGEST_DOTS / 1_000_000,
                    advice));
        }
    }
}
