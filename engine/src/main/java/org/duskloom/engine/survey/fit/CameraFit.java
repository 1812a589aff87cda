package org.duskloom.engine.survey.fit;

import org.duskloom.engine.map.Positions;

/**
 * Fits a camera to places and where they are seen, by least squares of the distances in the picture: Levenberg's and
 * Marquardt's damped steps (K. Levenberg, Quarterly of Applied Mathematics 2:164-168, 1944; D. W. Marquardt, SIAM
 * Journal 11:431-441, 1963). What the places do not decide, such as the focal length where all of them lie in a plane
 * that is seen from the front, stays near what is usual.
 */
final class CameraFit {
    /** Usual, and how far from that it may be: nearness, middle of the picture to the right and down, bend. */
    private static final double[] USUAL = {0.4, 0, 0, 0};

    private static final double[] SPREAD = {0.4, 0.3, 0.3, 0.05};
    private static final int FIRST_HELD = 6;
    private static final double STEP = 1e-6;
    private static final double LEAST_GAIN = 1e-9;

    private final Positions stage;
    private final Positions picture;
    private final int[] which;

    /** @param which the places that count */
    CameraFit(Positions stage, Positions picture, int[] which) {
        this.stage = stage;
        this.picture = picture;
        this.which = which.clone();
    }

    /** The squared distances in the picture of all that count. */
    double[] squares(Camera camera) {
        double[] squares = new double[which.length];
        double[] at = new double[2];
        for (int i = 0; i < which.length; i++) {
            squares[i] = square(camera, which[i], at);
        }
        return squares;
    }

    /**
     * The camera that fits best, from one that fits nearly.
     *
     * @param weights of the places that count
     * @param sigma the error of a measured coordinate, by which what is usual is weighed
     * @param looseness how far from what is usual it may be, by how far it may be in the end
     * @param steps how many steps at most
     */
    Camera fitted(Camera start, double[] weights, double sigma, double looseness, int steps) {
        Camera camera = start;
        double cost = cost(camera, weights, sigma, looseness);
        double damping = 1e-3;
        for (int step = 0; step < steps; step++) {
            NormalEquations equations = equations(camera, weights, sigma, looseness);
            Camera next = camera.stepped(equations.solution(damping));
            double nextCost = cost(next, weights, sigma, looseness);
            if (nextCost < cost) {
                boolean isStill = cost - nextCost < LEAST_GAIN * cost;
                camera = next;
                cost = nextCost;
                damping = Math.max(damping / 10, 1e-9);
                if (isStill) {
                    return camera;
                }
            } else if (damping > 1e8) {
                return camera;
            } else {
                damping *= 10;
            }
        }
        return camera;
    }

    /** The standard deviations of the camera's numbers, in the order of its steps. */
    double[] errors(Camera camera, double[] weights, double sigma) {
        return equations(camera, weights, sigma, 1).errors();
    }

    private double cost(Camera camera, double[] weights, double sigma, double looseness) {
        double sum = 0;
        double[] at = new double[2];
        for (int i = 0; i < which.length; i++) {
            if (weights[i] > 0) {
                sum += weights[i] * square(camera, which[i], at);
            }
        }
        double[] held = camera.held();
        double usual = 0;
        for (int i = 0; i < held.length; i++) {
            double off = (held[i] - USUAL[i]) / (looseness * SPREAD[i]);
            usual += off * off;
        }
        return Double.isNaN(sum) ? Double.POSITIVE_INFINITY : sum / (sigma * sigma) + usual;
    }

    private NormalEquations equations(Camera camera, double[] weights, double sigma, double looseness) {
        NormalEquations equations = new NormalEquations(Camera.PARAMETERS);
        Camera[] stepped = new Camera[Camera.PARAMETERS];
        for (int k = 0; k < stepped.length; k++) {
            double[] step = new double[stepped.length];
            step[k] = STEP;
            stepped[k] = camera.stepped(step);
        }
        double[] at = new double[2];
        double[] moved = new double[2];
        double[] slopesX = new double[stepped.length];
        double[] slopesY = new double[stepped.length];
        for (int i = 0; i < which.length; i++) {
            int pixel = which[i];
            double weight = weights[i] / (sigma * sigma);
            if (weight > 0) {
                camera.see(stage.x(pixel), stage.y(pixel), stage.z(pixel), at);
                for (int k = 0; k < stepped.length; k++) {
                    stepped[k].see(stage.x(pixel), stage.y(pixel), stage.z(pixel), moved);
                    slopesX[k] = (moved[0] - at[0]) / STEP;
                    slopesY[k] = (moved[1] - at[1]) / STEP;
                }
                equations.add(slopesX, picture.x(pixel) - at[0], weight);
                equations.add(slopesY, picture.y(pixel) - at[1], weight);
            }
        }
        double[] held = camera.held();
        for (int i = 0; i < held.length; i++) {
            double[] slope = new double[Camera.PARAMETERS];
            slope[FIRST_HELD + i] = 1 / (looseness * SPREAD[i]);
            equations.add(slope, (USUAL[i] - held[i]) * slope[FIRST_HELD + i], 1);
        }
        return equations;
    }

    private double square(Camera camera, int pixel, double[] at) {
        camera.see(stage.x(pixel), stage.y(pixel), stage.z(pixel), at);
        double dx = picture.x(pixel) - at[0];
        double dy = picture.y(pixel) - at[1];
        double square = dx * dx + dy * dy;
        return Double.isNaN(square) ? Double.POSITIVE_INFINITY : square;
    }
}
