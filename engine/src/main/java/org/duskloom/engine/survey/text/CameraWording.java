package org.duskloom.engine.survey.text;

import java.util.ArrayList;
import java.util.List;
import org.duskloom.engine.survey.CameraStand;

/** Says in words where a photo was taken from. */
final class CameraWording {
    /** As near to it as anybody stands. */
    private static final double STRAIGHT_DEGREES = 0.5;

    /** Who stands farther aside sees what hangs nearer or farther in another place. */
    private static final double ASIDE_DEGREES = 5;

    private final Wording wording;

    CameraWording(Wording wording) {
        this.wording = wording;
    }

    List<String> lines(CameraStand camera) {
        List<String> lines = new ArrayList<>();
        lines.add("taken from " + aside(camera) + above(camera) + distance(camera));
        if (Math.abs(camera.asideDegrees()) > ASIDE_DEGREES) {
            lines.add("depth is taken as described: what hangs nearer or farther seems moved aside");
        }
        return lines;
    }

    private String aside(CameraStand camera) {
        double aside = camera.asideDegrees();
        if (Math.abs(aside) < STRAIGHT_DEGREES) {
            return "straight ahead";
        }
        return wording.degrees(Math.abs(aside)) + (aside > 0 ? " to the right" : " to the left");
    }

    private String above(CameraStand camera) {
        double above = camera.aboveDegrees();
        if (Math.abs(above) < STRAIGHT_DEGREES) {
            return "";
        }
        return " and " + wording.degrees(Math.abs(above)) + (above > 0 ? " above" : " below") + " the middle";
    }

    private String distance(CameraStand camera) {
        if (camera.distance().isEmpty()) {
            return "; how far away, a picture of something so flat does not tell";
        }
        return ", " + wording.length(camera.distance().getAsDouble()) + " away, with a focal length of "
                + Wording.number(camera.focalLength().orElseThrow(), 0) + " units of the picture and a lens bend of "
                + Wording.number(camera.lensBend().orElseThrow(), 3);
    }
}
