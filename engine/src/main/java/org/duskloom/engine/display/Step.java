package org.duskloom.engine.display;

import org.duskloom.engine.map.PixelMap;

/** One step of a shape's build: some pixels in wiring order. */
sealed interface Step permits ArcStep, GridStep, HelixStep, LineStep, PointsStep, PolylineStep, RingStep, SpokesStep {
    /** The most pixels that one field may ask for; how many a shape may have in all is checked besides. */
    int MOST_PIXELS = PixelMap.MAX_PIXELS;

    /** The most rows, columns, spokes or turns of one step. */
    int MOST_LINES = 10_000;

    /** How many pixels it makes, at least 1; known before any is made. */
    long pixelCount();

    /** Makes the pixels. */
    void lay(Strand strand);
}
