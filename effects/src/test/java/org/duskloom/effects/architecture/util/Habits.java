package org.duskloom.effects.architecture.util;

import java.util.Random;
import org.duskloom.engine.plan.Plan;

/** Breaks every rule. */
public final class Habits {
    private Habits() {}

    static double sine(double x) {
        return Math.sin(x);
    }

    static int chance() {
        return new Random(7).nextInt();
    }

    static long frames(Plan plan) {
        return plan.frameCount();
    }
}
