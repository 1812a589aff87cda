package org.duskloom.engine.camera;

import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Random;
import java.util.function.IntToDoubleFunction;

/** Takes pictures of an evening, and knows what is truly where in them. Not safe for use by several threads. */
public final class TestCamera {
    private static final double[] LIGHT = {1, 0.97, 0.9};
    private static final double[] LAMP = {1, 0.8, 0.5};

    private final Evening evening;
    private final Pinhole pinhole;
    private final List<Spot> direct = new ArrayList<>();
    private final List<Spot> reflected = new ArrayList<>();
    private final List<Spot> lamps = new ArrayList<>();
    private final Sensor sensor;

    TestCamera(Evening evening, Pinhole pinhole) {
        this.evening = evening;
        this.pinhole = pinhole;
        this.sensor = new Sensor(pinhole.width(), pinhole.height(), evening);
        Random random = new Random(evening.seed);
        for (int pixel = 0; pixel < evening.lights.size(); pixel++) {
            double strength = 1 + evening.spread * (2 * random.nextDouble() - 1);
            if (!evening.dead[pixel]) {
                add(pixel, strength);
            }
        }
        for (Lamp lamp : evening.lamps) {
            double[] at = pinhole.place(lamp.place()[0], lamp.place()[1], lamp.place()[2]);
            lamps.add(new Spot(lamps.size(), at[0], at[1], lamp.strength(), Lamp.WIDTH, Lamp.WIDTH));
        }
    }

    private void add(int pixel, double strength) {
        double[] light = {evening.lights.x(pixel), evening.lights.y(pixel), evening.lights.z(pixel)};
        if (!evening.hidden[pixel]) {
            double[] at = pinhole.place(light[0], light[1], light[2]);
            direct.add(new Spot(pixel, at[0], at[1], strength, 1, 1));
        }
        for (Mirror mirror : evening.mirrors) {
            double[] image = mirror.image(light, pinhole.eye());
            if (image.length > 0) {
                double[] at = pinhole.place(image[0], image[1], image[2]);
                double smeared = strength * mirror.reflectance() / mirror.roughness();
                reflected.add(new Spot(pixel, at[0], at[1], smeared, 1, mirror.roughness()));
            }
        }
    }

    /** The geometry. */
    public Pinhole pinhole() {
        return pinhole;
    }

    /**
     * Where a pixel is in a picture, seen or not: x and y.
     *
     * @param number which picture, from 0
     */
    public double[] place(int pixel, int number) {
        double[] at = pinhole.place(evening.lights.x(pixel), evening.lights.y(pixel), evening.lights.z(pixel));
        double[] shift = shift(number);
        return new double[] {at[0] + shift[0], at[1] + shift[1]};
    }

    /** Whether a light is neither dead nor hidden, and within the picture. */
    public boolean isVisible(int pixel) {
        double[] at = pinhole.place(evening.lights.x(pixel), evening.lights.y(pixel), evening.lights.z(pixel));
        return !evening.dead[pixel] && !evening.hidden[pixel] && pinhole.isInside(at[0], at[1]);
    }

    /** Where a pixel is reflected in the first picture, once for each mirror that shows it: x and y. */
    public List<double[]> reflections(int pixel) {
        double[] shift = shift(0);
        return reflected.stream()
                .filter(spot -> spot.source() == pixel && pinhole.isInside(spot.x(), spot.y()))
                .map(spot -> new double[] {spot.x() + shift[0], spot.y() + shift[1]})
                .toList();
    }

    /** The median distance of a light that is seen to the nearest other one. */
    public double near() {
        return new View(evening.lights, this::isVisible, pinhole).typicalDistance();
    }

    /** How far the hand on the tripod has moved the picture: to the right and down. */
    public double[] shift(int number) {
        Random random = random(number);
        return new double[] {
            evening.shake * (2 * random.nextDouble() - 1), evening.shake * (2 * random.nextDouble() - 1)
        };
    }

    /**
     * Takes a picture, in RGB.
     *
     * @param number which picture this is, from 0: decides noise, shaking and flickering
     */
    public BufferedImage picture(Lighting lighting, Exposure exposure, int number) {
        double[] shift = shift(number);
        sensor.darken();
        draw(lamps, shift, LAMP, lamp -> evening.lamps.get(lamp).flickers() ? flicker(number, lamp) : 1);
        draw(direct, shift, LIGHT, pixel -> exposure.light(lighting, pixel));
        draw(reflected, shift, LIGHT, pixel -> exposure.light(lighting, pixel));
        return sensor.read(random(number).nextLong());
    }

    /** Takes pictures one after the other. */
    public Iterable<BufferedImage> pictures(Lighting lighting, List<Exposure> exposures) {
        return () -> new Iterator<>() {
            private int next;

            @Override
            public boolean hasNext() {
                return next < exposures.size();
            }

            @Override
            public BufferedImage next() {
                return picture(lighting, exposures.get(next), next++);
            }
        };
    }

    private void draw(List<Spot> spots, double[] shift, double[] tint, IntToDoubleFunction light) {
        for (Spot spot : spots) {
            double level = light.applyAsDouble(spot.source()) * spot.strength() * evening.peak;
            if (level > 0) {
                sensor.light(spot, shift, level, tint);
            }
        }
    }

    private double flicker(int number, int lamp) {
        return new Random(evening.seed * 7919 + number * 131L + lamp).nextInt(1000) / 999.0;
    }

    private Random random(int number) {
        return new Random(evening.seed * 1_000_003 + number);
    }
}
