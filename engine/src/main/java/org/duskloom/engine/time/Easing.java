package org.duskloom.engine.time;

import org.duskloom.engine.digest.Fingerprinted;
import org.duskloom.engine.problem.TextFormatException;

/**
 * A curve from progress to progress, after W3C CSS Easing Functions Level 1 and 2. Progress is clamped to [0, 1] first,
 * so no curve is extended beyond its ends; the output may leave [0, 1] where the curve does.
 */
public sealed interface Easing extends Fingerprinted permits CubicBezier, LinearStops, Steps, Unchanged {
    /** Progress as it is: the word {@code linear}. */
    Easing LINEAR = new Unchanged();

    /** Quick start, slow end: the word {@code ease}. */
    Easing EASE = new CubicBezier(0.25, 0.1, 0.25, 1);

    /** Slow start: the word {@code ease-in}. */
    Easing EASE_IN = new CubicBezier(0.42, 0, 1, 1);

    /** Slow end: the word {@code ease-out}. */
    Easing EASE_OUT = new CubicBezier(0, 0, 0.58, 1);

    /** Slow start and end: the word {@code ease-in-out}. */
    Easing EASE_IN_OUT = new CubicBezier(0.42, 0, 0.58, 1);

    /** The whole step at once at the start: the word {@code step-start}. */
    Easing STEP_START = new Steps(1, Steps.Jump.START);

    /** The whole step at once at the end: the word {@code step-end}. */
    Easing STEP_END = new Steps(1, Steps.Jump.END);

    /**
     * The eased progress.
     *
     * @param progress clamped to [0, 1]; NaN counts as 0
     */
    double at(double progress);

    /**
     * Reads a word or a function: {@code linear}, {@code ease}, {@code ease-in}, {@code ease-out}, {@code ease-in-out},
     * {@code step-start}, {@code step-end}, {@code cubic-bezier(x1, y1, x2, y2)}, {@code steps(count, position)} or
     * {@code linear(stop, stop, ...)}; in letters of any size.
     *
     * @throws TextFormatException if it is none of them, or if its values are not allowed
     */
    static Easing parse(String text) throws TextFormatException {
        return EasingText.parse(text);
    }

    /** Progress as every curve takes it: within [0, 1], and 0 for NaN. */
    static double clamped(double progress) {
        return progress > 0 ? Math.min(progress, 1) : 0;
    }
}
