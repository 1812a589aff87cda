package org.duskloom.engine.survey.fit;

import org.duskloom.engine.map.Positions;
import org.duskloom.engine.survey.fit.Camera.Frame;
import org.joml.Vector3d;

/**
 * A camera to begin with: one of a direction, which a similarity lays on the picture.
 *
 * @param camera the camera
 */
record CameraStart(Frame stageFrame, Frame pictureFrame, double[] axes, double nearness, Camera camera) {
    /**
     * A camera that looks at the middle of the display.
     *
     * @param aside degrees to the audience's right of straight ahead
     * @param above degrees above it
     */
    static CameraStart of(Frame stageFrame, Frame pictureFrame, double aside, double above, double nearness) {
        double cosAside = StrictMath.cos(StrictMath.toRadians(aside));
        double sinAside = StrictMath.sin(StrictMath.toRadians(aside));
        double cosAbove = StrictMath.cos(StrictMath.toRadians(above));
        double sinAbove = StrictMath.sin(StrictMath.toRadians(above));
        double[] axes = {
            cosAside,
            0,
            -sinAside, //
            -sinAbove * sinAside,
            cosAbove,
            -sinAbove * cosAside, //
            cosAbove * sinAside,
            sinAbove,
            cosAbove * cosAside
        };
        Camera camera = Camera.of(stageFrame, pictureFrame, axes, 0, 0, 1, nearness);
        return new CameraStart(stageFrame, pictureFrame, axes, nearness, camera);
    }

    /** Turned, moved and scaled in the picture so that most of the sample is seen where it was measured. */
    CameraStart laidOn(Positions stage, Positions picture, int[] sample) {
        double[] x = new double[stage.size()];
        double[] y = new double[stage.size()];
        double[] at = new double[2];
        for (int i : sample) {
            camera.see(stage.x(i), stage.y(i), stage.z(i), at);
            x[i] = at[0];
            y[i] = at[1];
        }
        LeastMedian laid = LeastMedian.of(new Positions(x, y, new double[x.length]), picture, sample);
        double scale = laid.similarity().scale();
        double cosine = laid.similarity().rotation().m00();
        double sine = laid.similarity().rotation().m01();
        double[] turned = axes.clone();
        for (int k = 0; k < 3; k++) {
            // The picture's y counts down: turned the other way round.
            turned[k] = cosine * axes[k] + sine * axes[3 + k];
            turned[3 + k] = cosine * axes[3 + k] - sine * axes[k];
        }
        double middleX = pictureFrame.x();
        double middleY = pictureFrame.y();
        Vector3d middle = laid.similarity().of(middleX, middleY, 0);
        double shiftX = (middle.x - middleX) / (scale * pictureFrame.size());
        double shiftY = -(middle.y - middleY) / (scale * pictureFrame.size());
        Camera start = Camera.of(stageFrame, pictureFrame, turned, shiftX, shiftY, scale, nearness);
        return new CameraStart(stageFrame, pictureFrame, turned, nearness, start);
    }
}
