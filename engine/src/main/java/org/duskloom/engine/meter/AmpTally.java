package org.duskloom.engine.meter;

import org.duskloom.engine.frame.RunInfo;

/**
 * Currents of a run, one a frame, as figures. The 99th percentile is counted in {@value #STEPS} equal steps from 0 to
 * what flows with everything on, so that what is said is never too low, and too high by less than one such step.
 */
final class AmpTally {
    private static final int STEPS = 10_000;
    private static final double PERCENTILE = 0.99;
    private static final int MOST_COLUMNS = 600;

    private final double fullAmps;
    private final long[] framesByStep = new long[STEPS + 1];
    private double sum;
    private long frames;
    private double peak = -1;
    private long peakFrame;
    private long firstFrame;
    private long frameCount = 1;
    private double[] columns = new double[1];

    /** @param fullAmps what flows with everything on */
    AmpTally(double fullAmps) {
        this.fullAmps = fullAmps;
    }

    void begin(RunInfo run) {
        firstFrame = run.frames().first();
        frameCount = run.frames().last() + 1 - firstFrame;
        columns = new double[(int) Math.min(MOST_COLUMNS, frameCount)];
    }

    void add(long frame, double amps) {
        sum += amps;
        frames++;
        if (amps > peak) {
            peak = amps;
            peakFrame = frame;
        }
        framesByStep[step(amps)]++;
        int column = (int) ((frame - firstFrame) * columns.length / frameCount);
        columns[column] = Math.max(columns[column], amps);
    }

    private int step(double amps) {
        return fullAmps > 0 ? (int) Math.min(STEPS, Math.ceil(amps / fullAmps * STEPS)) : 0;
    }

    AmpFigures figures() {
        return new AmpFigures(frames == 0 ? 0 : sum / frames, percentile(), Math.max(0, peak), peakFrame, columns);
    }

    private double percentile() {
        long wanted = (long) Math.ceil(PERCENTILE * frames);
        long seen = 0;
        for (int step = 0; step <= STEPS; step++) {
            seen += framesByStep[step];
            if (seen >= wanted) {
                return Math.min(Math.max(0, peak), fullAmps * step / STEPS);
            }
        }
        return Math.max(0, peak);
    }
}
