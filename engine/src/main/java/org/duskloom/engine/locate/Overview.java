package org.duskloom.engine.locate;

import java.io.IOException;
import java.util.Arrays;

/** A few dots of all pictures, evenly over them: enough to tell how much is lit in each. */
final class Overview {
    /** So many samples of all pictures together, one byte each, are kept at most. */
    private static final int MOST_SAMPLES = 48_000_000;

    /** A dot that is brighter by so many codes than it is at its darkest is lit by something. */
    private static final int LIT_CODES = 24;

    /**
     * In a run, every light is lit for half of the time. What is lit for much more is a lamp that flickers, or the rim
     * of one while the tripod shakes.
     */
    private static final double MOST_TIME = 0.7;

    private final byte[][] samples;
    private final int[] darkest;

    private Overview(byte[][] samples) {
        this.samples = samples;
        this.darkest = new int[samples[0].length];
        Arrays.fill(darkest, 255);
        for (byte[] picture : samples) {
            for (int i = 0; i < darkest.length; i++) {
                darkest[i] = Math.min(darkest[i], picture[i] & 0xFF);
            }
        }
        leaveOutLamps();
    }

    private void leaveOutLamps() {
        int[] times = new int[darkest.length];
        for (byte[] picture : samples) {
            for (int i = 0; i < times.length; i++) {
                times[i] += (picture[i] & 0xFF) - darkest[i] > LIT_CODES ? 1 : 0;
            }
        }
        for (int i = 0; i < times.length; i++) {
            if (times[i] > MOST_TIME * samples.length) {
                darkest[i] = 255;
            }
        }
    }

    /**
     * Reads all pictures.
     *
     * @param plane is written over
     */
    static Overview of(Pictures pictures, Plane plane) throws IOException, PicturesRefusedException {
        int count = pictures.count();
        int stride = 1;
        while ((long) count * (plane.width / stride + 1) * (plane.height / stride + 1) > MOST_SAMPLES) {
            stride++;
        }
        byte[][] samples = new byte[count][];
        for (int picture = 0; picture < count; picture++) {
            pictures.read(picture, plane.codes);
            samples[picture] = sampled(plane, stride);
        }
        return new Overview(samples);
    }

    private static byte[] sampled(Plane plane, int stride) {
        byte[] sampled = new byte[((plane.width - 1) / stride + 1) * ((plane.height - 1) / stride + 1)];
        int at = 0;
        for (int y = 0; y < plane.height; y += stride) {
            for (int x = 0; x < plane.width; x += stride) {
                sampled[at++] = plane.codes[y * plane.width + x];
            }
        }
        return sampled;
    }

    /**
     * Leaves out dots that are not brighter in pictures in which all lights are lit than in those in which none is.
     */
    void keepFollowing(int[] allLit, int[] noneLit) {
        for (int i = 0; i < darkest.length; i++) {
            if (darkest[i] < 255 && !(share(i, allLit) > 0.6 && share(i, noneLit) < 0.3)) {
                darkest[i] = 255;
            }
        }
    }

    /** In which share of some pictures a dot is lit. */
    private double share(int dot, int[] pictures) {
        int lit = 0;
        for (int picture : pictures) {
            lit += (samples[picture][dot] & 0xFF) - darkest[dot] > LIT_CODES ? 1 : 0;
        }
        return (double) lit / pictures.length;
    }

    int count() {
        return samples.length;
    }

    /** How many samples are lit in a picture. */
    int lit(int picture) {
        int lit = 0;
        for (int i = 0; i < darkest.length; i++) {
            lit += (samples[picture][i] & 0xFF) - darkest[i] > LIT_CODES ? 1 : 0;
        }
        return lit;
    }
}
