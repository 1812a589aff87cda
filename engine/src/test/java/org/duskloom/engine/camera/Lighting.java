package org.duskloom.engine.camera;

/** What is lit when, in steps that each last as long. */
@FunctionalInterface
public interface Lighting {
    /**
     * How bright a pixel is in a step.
     *
     * @param step from 0; a film asks for steps before and after the run too
     * @param pixel by wiring order, from 0
     * @return from 0, which is off, to 1, which is as bright as it gets in the run; linear light
     */
    double light(int step, int pixel);
}
