package org.duskloom.effects.kit.area;

import org.duskloom.engine.effect.CueTime;

/** Where a picture lies on the field of a member, and how it moves. Immutable; asking for a pose allocates nothing. */
public interface Placing {
    /** Whether the pose is the same at all times. */
    boolean isStill();

    /** How wide the picture is at zoom 1, in canvas units; above 0. */
    double width(LightField field);

    /** How high the picture is at zoom 1, in canvas units; above 0. */
    double height(LightField field);

    /** The least and the greatest zoom: {@code [least, greatest]}, both above 0; going beyond costs but clearness. */
    double[] zoomRange(LightField field);

    /** Where in the picture its anchor is, about which it turns and zooms: a share of its width, from the left. */
    double anchorX();

    /** Where in the picture its anchor is: a share of its height, from the top. */
    double anchorY();

    /** Sets the pose at an instant. */
    void pose(CueTime time, LightField field, Pose pose);
}
