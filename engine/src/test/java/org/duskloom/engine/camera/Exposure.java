package org.duskloom.engine.camera;

import java.util.ArrayList;
import java.util.List;

/**
 * When a picture was taken: what it sees of which steps.
 *
 * @param parts the steps, each with its share of the light; the shares add up to 1
 */
public record Exposure(List<Part> parts) {
    public Exposure {
        parts = List.copyOf(parts);
    }

    /** A step, and its share. */
    public record Part(int step, double share) {}

    /** A photo that sees one step. */
    public static Exposure of(int step) {
        return new Exposure(List.of(new Part(step, 1)));
    }

    /** A photo that sees so much of the next step already. */
    public static Exposure late(int step, double share) {
        return new Exposure(List.of(new Part(step, 1 - share), new Part(step + 1, share)));
    }

    /** A photo of every step. */
    public static List<Exposure> photos(int steps) {
        List<Exposure> photos = new ArrayList<>();
        for (int step = 0; step < steps; step++) {
            photos.add(of(step));
        }
        return photos;
    }

    /**
     * The pictures of a film.
     *
     * @param picturesPerSecond at what rate
     * @param shutter for how long each gathers light, in seconds
     * @param hold how long a step lasts, in seconds
     * @param from when the first picture begins, in seconds; 0 is where step 0 begins
     * @param to when there are no more
     */
    public static List<Exposure> film(double picturesPerSecond, double shutter, double hold, double from, double to) {
        List<Exposure> pictures = new ArrayList<>();
        for (int i = 0; from + i / picturesPerSecond < to; i++) {
            double opens = (from + i / picturesPerSecond) / hold;
            double closes = opens + shutter / hold;
            List<Part> parts = new ArrayList<>();
            for (int step = (int) Math.floor(opens); step < closes; step++) {
                double seen = Math.min(closes, step + 1) - Math.max(opens, step);
                parts.add(new Part(step, seen / (closes - opens)));
            }
            pictures.add(new Exposure(parts));
        }
        return pictures;
    }

    /** The light that a pixel gives to it. */
    double light(Lighting lighting, int pixel) {
        double light = 0;
        for (Part part : parts) {
            light += part.share() * lighting.light(part.step(), pixel);
        }
        return light;
    }
}
