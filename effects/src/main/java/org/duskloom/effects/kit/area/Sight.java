package org.duskloom.effects.kit.area;

import org.duskloom.effects.kit.Motion;
import org.duskloom.engine.effect.CueTime;
import org.duskloom.engine.effect.Patch;

/** How the lights of one member see the picture at an instant. For one thread. */
final class Sight {
    /** 1.5 * 2^23: a sum with it keeps no digits behind the point. */
    private static final float ROUNDER = 12_582_912f;

    private final MovingLight light;
    private final LightField field;
    private final LatticeStack stack;
    private final LatticeStack.Need need;
    private final Pose pose = new Pose();
    private final Mapping mapping = new Mapping();

    private float xOfRight;
    private float xOfUp;
    private float xOfMiddle;
    private float yOfRight;
    private float yOfUp;
    private float yOfMiddle;
    private float cellsAcross;
    private float cellsDown;
    private float steepX;
    private float steepY;
    private int level;
    private float nextLevel;

    Sight(MovingLight light, int member) {
        this.light = light;
        field = light.field(member);
        stack = light.stack(member);
        need = light.need(member);
    }

    void begin(CueTime time) {
        Placing placing = light.placing();
        placing.pose(time, field, pose);
        mapping.set(placing, field, pose);
        setShares(light.style().repeats());
        double across = Footprint.cellsAcross(placing, field, pose);
        double down = Footprint.cellsDown(placing, field, pose);
        cellsAcross = (float) across;
        cellsDown = (float) down;
        boolean sharp = light.style().sharp();
        steepX = sharp ? (float) Math.max(1, across / light.reel().width()) : 1;
        steepY = sharp ? (float) Math.max(1, down / light.reel().height()) : 1;
        double exactLevel = need.level(pose.zoom());
        level = (int) exactLevel;
        nextLevel = (float) (exactLevel - level);
    }

    private void setShares(boolean repeats) {
        double side = field.longerSide();
        xOfRight = (float) (mapping.xOfRight() * side);
        xOfUp = (float) (mapping.xOfUp() * side);
        xOfMiddle = (float) (repeats ? Motion.fraction(mapping.xOfMiddle()) : mapping.xOfMiddle());
        yOfRight = (float) (mapping.yOfRight() * side);
        yOfUp = (float) (mapping.yOfUp() * side);
        yOfMiddle = (float) (repeats ? Motion.fraction(mapping.yOfMiddle()) : mapping.yOfMiddle());
    }

    void sharesOfWidth(float[] right, float[] up, int from, int to, float[] shares) {
        plane(right, up, xOfRight, xOfUp, xOfMiddle, from, to, shares);
    }

    void sharesOfHeight(float[] right, float[] up, int from, int to, float[] shares) {
        plane(right, up, yOfRight, yOfUp, yOfMiddle, from, to, shares);
    }

    private static void plane(float[] x, float[] y, float ofX, float ofY, float c, int from, int to, float[] target) {
        for (int i = from; i < to; i++) {
            target[i] = x[i] * ofX + y[i] * ofY + c;
        }
    }

    /** How much of each cell lies on the picture, 0 to 1. */
    void coverage(float[] x, float[] y, int from, int to, float[] covered) {
        coverage(x, cellsAcross, Math.min(1, cellsAcross), from, to, covered);
        timesCoverage(y, cellsDown, Math.min(1, cellsDown), from, to, covered);
    }

    private static void coverage(float[] shares, float cells, float most, int from, int to, float[] covered) {
        for (int i = from; i < to; i++) {
            float inside = Math.min(shares[i], 1f - shares[i]) * cells + 0.5f;
            covered[i] = Math.min(most, Math.max(0f, inside));
        }
    }

    private static void timesCoverage(float[] shares, float cells, float most, int from, int to, float[] covered) {
        for (int i = from; i < to; i++) {
            float inside = Math.min(shares[i], 1f - shares[i]) * cells + 0.5f;
            covered[i] *= Math.min(most, Math.max(0f, inside));
        }
    }

    /** Paints what is seen at places in the picture, in shares of its sides from 0 to 1, which may be changed. */
    void lookUp(int image, float[] x, float[] y, int from, int to, Patch patch) {
        if (steepX > 1) {
            steepen(x, light.reel().width(), steepX, from, to);
        }
        if (steepY > 1) {
            steepen(y, light.reel().height(), steepY, from, to);
        }
        stack.lattice(image, level).paint(x, y, from, to, patch);
        if (nextLevel > 0) {
            stack.lattice(image, level + 1).mixIn(x, y, nextLevel, from, to, patch);
        }
    }

    /** Moves places toward the middle of their pixel, so that one pixel passes into the next within a light's cell. */
    private static void steepen(float[] shares, float pixels, float steepness, int from, int to) {
        float pixel = 1 / pixels;
        for (int i = from; i < to; i++) {
            float place = shares[i] * pixels;
            float edge = (place + ROUNDER) - ROUNDER;
            float fromEdge = Math.min(0.5f, Math.max(-0.5f, (place - edge) * steepness));
            shares[i] = Math.min(1f, (edge + fromEdge) * pixel);
        }
    }
}
