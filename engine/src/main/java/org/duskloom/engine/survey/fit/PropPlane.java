package org.duskloom.engine.survey.fit;

import org.duskloom.engine.map.Positions;
import org.duskloom.engine.map.Prop;
import org.joml.Vector3d;

/**
 * The plane that the pixels of a prop are described in, by which a picture that shows no depth tells where on the stage
 * they are, whatever order they are wired in. Pixels on a line are taken to be in the plane through it that faces the
 * audience most; those of a prop that is no plane, or one that the camera sees from its edge, each at its own depth.
 */
final class PropPlane {
    /** Thinner than that, by its size, a prop is flat. */
    private static final double FLAT = 0.01;

    /** The cosine to the ray below which a plane is seen from its edge. */
    private static final double EDGE = 0.15;

    /** The cosine from which on two directions are one. */
    private static final double SAME = 0.999;

    private final Camera camera;
    private final Positions stage;
    private final int firstPixel;
    private final int pixelCount;
    private final Vector3d on;
    private final Vector3d normal;
    private final boolean isUsed;

    PropPlane(Camera camera, Positions stage, Prop prop) {
        this.camera = camera;
        this.stage = stage;
        this.firstPixel = prop.firstPixel();
        this.pixelCount = prop.pixelCount();
        Moments moments = new Moments();
        for (int i = firstPixel; i < firstPixel + prop.pixelCount(); i++) {
            moments.add(stage.x(i), stage.y(i), stage.z(i), stage.x(i), stage.y(i), stage.z(i));
        }
        Svd3 spread = Svd3.of(moments.aboutMeans().cross());
        this.on = new Vector3d(moments.fromMean());
        double least = FLAT * FLAT * spread.first();
        this.normal = spread.second() > least ? spread.v().getColumn(2, new Vector3d()) : facing(spread);
        this.isUsed = spread.third() <= least && Math.abs(normal.dot(camera.towardEye(on))) > EDGE;
    }

    /**
     * Whether a place is cut alike by both; of props that are no plane, the depth of their middle counts.
     *
     * @param most how far apart they may be
     */
    boolean isSameAs(PropPlane other, double most) {
        double apart = normal.dot(on.sub(other.on, new Vector3d()));
        return Math.abs(normal.dot(other.normal)) > SAME && Math.abs(apart) <= most;
    }

    /**
     * Where on the stage a pixel of the prop is that is seen there.
     *
     * @param pixel from 0; more than the prop has are as deep as its last, where depth is that of the pixel
     */
    Vector3d place(int pixel, double pictureX, double pictureY) {
        if (isUsed) {
            return camera.onPlane(pictureX, pictureY, normal, on);
        }
        int at = firstPixel + Math.min(pixel, pixelCount - 1);
        Vector3d described = new Vector3d(stage.x(at), stage.y(at), stage.z(at));
        return camera.onPlane(pictureX, pictureY, new Vector3d(0, 0, 1), described);
    }

    /** The normal at right angles to a line that is nearest to the direction toward the audience. */
    private static Vector3d facing(Svd3 spread) {
        Vector3d toward = new Vector3d(0, 0, 1);
        Vector3d along = spread.v().getColumn(0, new Vector3d());
        if (!(spread.first() > 0)) {
            return toward;
        }
        Vector3d facing = toward.sub(along.mul(along.dot(toward)));
        double length = Math.sqrt(facing.dot(facing));
        return length > FLAT ? facing.div(length) : new Vector3d(0, 1, 0);
    }
}
