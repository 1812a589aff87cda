package org.duskloom.engine.camera;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.duskloom.engine.map.Positions;

/**
 * An evening with a camera in front of a display: what is there, where the camera stands, how good it is. Everything by
 * chance comes from the seed. Angles in degrees, lengths on the stage in the unit of the display, in pictures in
 * picture pixels.
 */
public final class Evening {
    final Positions lights;
    final long seed;
    final boolean[] dead;
    final boolean[] hidden;
    final List<Lamp> lamps = new ArrayList<>();
    final List<Mirror> mirrors = new ArrayList<>();
    double blur = 1.5;
    double peak = 0.8;
    double spread = 0.25;
    double bloom = 0.01;
    double ambient = 0.002;
    double noise = 3;
    double shake = 2;

    private double aside;
    private double distance;
    private double eyeHeight;
    private double roll;
    private double near;
    private double k1;
    private int width;
    private int height;

    /** An evening without lamps and windows, with nothing hidden: a camera straight before the display. */
    public Evening(Positions lights, long seed) {
        this.lights = lights;
        this.seed = seed;
        this.dead = new boolean[lights.size()];
        this.hidden = new boolean[lights.size()];
        double[] extent = extent();
        this.distance = 1.2 * Math.sqrt(extent[0] * extent[0] + extent[1] * extent[1] + extent[2] * extent[2]);
        this.eyeHeight = 0.15 * extent[1];
    }

    /**
     * As it mostly is: 25 degrees aside, a lens that bends, one in twenty lights hidden, a street lamp that stays and a
     * lamp that flickers.
     */
    public static Evening usual(Positions lights, long seed) {
        Evening evening = new Evening(lights, seed).aside(25).lens(-0.05).hideShare(0.05);
        double[] middle = evening.middle();
        double[] extent = evening.extent();
        double back = middle[2] - 0.5 * extent[2] - 0.05 * extent[0];
        double high = middle[1] + 0.55 * extent[1];
        return evening.lamp(new Lamp(new double[] {middle[0] - 0.3 * extent[0], high, back}, 6, false))
                .lamp(new Lamp(new double[] {middle[0] + 0.2 * extent[0], high, back}, 3, true));
    }

    /** How far the camera stands to the audience's right of straight ahead, round the middle of the display. */
    public Evening aside(double degrees) {
        aside = degrees;
        return this;
    }

    /** How far the camera is from the middle of the display, seen from above; 1.2 diagonals unless said. */
    public Evening distance(double units) {
        distance = units;
        return this;
    }

    /** How far the camera is above the middle of the display. */
    public Evening eyeHeight(double units) {
        eyeHeight = units;
        return this;
    }

    /** How far the camera is held askew. */
    public Evening roll(double degrees) {
        roll = degrees;
        return this;
    }

    /** The zoom: the median distance of a light that is seen to the nearest other one, in picture pixels. */
    public Evening near(double pixels) {
        near = pixels;
        return this;
    }

    /** The size of pictures. Unless said, they are as large as the display needs; the zoom fills them unless said. */
    public Evening size(int pictureWidth, int pictureHeight) {
        width = pictureWidth;
        height = pictureHeight;
        return this;
    }

    /** How the lens bends; see {@link Pinhole}. */
    public Evening lens(double bend) {
        k1 = bend;
        return this;
    }

    /** The standard deviation of a light's spot. */
    public Evening blur(double pixels) {
        blur = pixels;
        return this;
    }

    /** The level of a usual light's middle; 1 burns out. Lights differ by {@link #spread}. */
    public Evening peak(double level) {
        peak = level;
        return this;
    }

    /** How much brighter or fainter than usual a light may be, as a share. */
    public Evening spread(double share) {
        spread = share;
        return this;
    }

    /** How bright the wide glow round a light is, as a share of its middle. */
    public Evening bloom(double share) {
        bloom = share;
        return this;
    }

    /** The standard deviation of the sensor's noise, in codes of 255. */
    public Evening noise(double codes) {
        noise = codes;
        return this;
    }

    /** How far a picture may be from where the first one was, each way. */
    public Evening shake(double pixels) {
        shake = pixels;
        return this;
    }

    /** Hides that share of the lights behind leaves; windows may still show them. */
    public Evening hideShare(double share) {
        Random random = new Random(seed * 31 + 7);
        for (int i = 0; i < hidden.length; i++) {
            hidden[i] |= random.nextDouble() < share;
        }
        return this;
    }

    /** Hides these lights. */
    public Evening hide(int... pixels) {
        Arrays.stream(pixels).forEach(pixel -> hidden[pixel] = true);
        return this;
    }

    /** These never light. */
    public Evening kill(int... pixels) {
        Arrays.stream(pixels).forEach(pixel -> dead[pixel] = true);
        return this;
    }

    public Evening lamp(Lamp lamp) {
        lamps.add(lamp);
        return this;
    }

    public Evening mirror(Mirror mirror) {
        mirrors.add(mirror);
        return this;
    }

    /** Three windows of a house behind the display, which face the audience. */
    public Evening windows(double reflectance) {
        double[] middle = middle();
        double[] extent = extent();
        double back = middle[2] - 0.5 * extent[2] - 0.12 * extent[0];
        for (int i = -1; i <= 1; i++) {
            mirror(Mirror.window(
                    middle[0] + 0.3 * i * extent[0],
                    middle[1] + 0.1 * extent[1],
                    back,
                    0.15 * extent[0],
                    0.5 * extent[1],
                    8 * i,
                    reflectance * (1 - 0.25 * Math.abs(i))));
        }
        return this;
    }

    /** Water under the display. */
    public Evening wetGround(double reflectance) {
        return mirror(Mirror.wetGround(middle()[1] - 0.52 * extent()[1], reflectance));
    }

    /** Sets the camera up. */
    public TestCamera camera() {
        return new TestCamera(this, pinhole());
    }

    private Pinhole pinhole() {
        double[] middle = middle();
        double[] eye = {
            middle[0] + distance * Math.sin(Math.toRadians(aside)),
            middle[1] + eyeHeight,
            middle[2] + distance * Math.cos(Math.toRadians(aside))
        };
        View unit = new View(lights, this::isSeen, Pinhole.looking(eye, middle, roll, 1, k1, 1, 1));
        double focal = near > 0
                ? near / unit.typicalDistance()
                : 0.46 * Math.min(width / unit.farthestAcross(), height / unit.farthestDown());
        if (!(focal > 0)) {
            throw new IllegalStateException("say near or size");
        }
        int wide = width > 0 ? width : (int) Math.ceil(2 * focal * unit.farthestAcross() + 80);
        int high = height > 0 ? height : (int) Math.ceil(2 * focal * unit.farthestDown() + 80);
        return Pinhole.looking(eye, middle, roll, focal, k1, wide, high);
    }

    private boolean isSeen(int pixel) {
        return !dead[pixel] && !hidden[pixel];
    }

    /** The middle of the display's box. */
    public double[] middle() {
        double[][] box = box();
        return new double[] {0.5 * (box[0][0] + box[1][0]), 0.5 * (box[0][1] + box[1][1]), 0.5 * (box[0][2] + box[1][2])
        };
    }

    /** How wide, high and deep the display is. */
    public double[] extent() {
        double[][] box = box();
        return new double[] {box[1][0] - box[0][0], box[1][1] - box[0][1], box[1][2] - box[0][2]};
    }

    private double[][] box() {
        double[] low = {lights.x(0), lights.y(0), lights.z(0)};
        double[] high = low.clone();
        for (int i = 1; i < lights.size(); i++) {
            double[] at = {lights.x(i), lights.y(i), lights.z(i)};
            for (int axis = 0; axis < 3; axis++) {
                low[axis] = Math.min(low[axis], at[axis]);
                high[axis] = Math.max(high[axis], at[axis]);
            }
        }
        return new double[][] {low, high};
    }
}
