package org.duskloom.effects.pile;

import org.duskloom.engine.effect.Canvas;

/**
 * The steps of the order that the pixels stand on, counted from the ground.
 *
 * @param position from 0 to {@code count} less 1
 * @param count how many steps the pixel's member has
 * @param place the middle of the step along the order, from the ground, in (0, 1)
 */
record PileSteps(float[] position, float[] count, float[] place) {
    static PileSteps of(Canvas canvas, boolean fromTheEnd) {
        int pixels = canvas.pixelCount();
        PileSteps steps = new PileSteps(new float[pixels], new float[pixels], new float[pixels]);
        for (int pixel = 0; pixel < pixels; pixel++) {
            int count = canvas.stepCount(canvas.memberOf()[pixel]);
            double position = canvas.position()[pixel];
            double fromGround = fromTheEnd ? count - 1 - position : position;
            steps.position[pixel] = (float) fromGround;
            steps.count[pixel] = count;
            steps.place[pixel] = (float) ((fromGround + 0.5) / count);
        }
        return steps;
    }

    /**
     * How much of each step lies below a place along the order.
     *
     * @param level in [0, 1] afterwards; may be {@code count}
     */
    static void below(float[] position, float[] count, float place, int from, int to, float[] level) {
        for (int i = from; i < to; i++) {
            level[i] = Math.min(1f, Math.max(0f, place * count[i] - position[i]));
        }
    }

    /** How much of each step lies above it. */
    static void above(float[] position, float[] count, float place, int from, int to, float[] level) {
        for (int i = from; i < to; i++) {
            level[i] = 1f - Math.min(1f, Math.max(0f, place * count[i] - position[i]));
        }
    }

    /** Takes one plane from another. */
    static void subtract(float[] plane, int from, int to, float[] target) {
        for (int i = from; i < to; i++) {
            target[i] -= plane[i];
        }
    }
}
