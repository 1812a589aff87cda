package org.duskloom.engine.locate;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.duskloom.engine.find.FindRun;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.map.Prop;
import org.duskloom.engine.problem.Location;

/**
 * Photos of square lights of 2 x 2 dots, eight in a row, without noise: first those of a run, in order, then whatever
 * is done to them. Names count from 1.
 */
final class DotPictures implements Pictures {
    static final IntToDoubleFunction DARK = pixel -> 0;
    static final IntToDoubleFunction LIT = pixel -> 1;

    /** Linear light of a light that is lit; half of it is burnt out in no picture. */
    static final double LIGHT = 0.5;

    /** By picture, then by pixel: how much of its light is lit. */
    final List<IntToDoubleFunction> shots = new ArrayList<>();

    final PictureSize size;
    private final FindRun run;

    DotPictures(FindRun run) {
        this.run = run;
        this.size = new PictureSize(112, 24 + 12 * ((run.code().pixelCount() + 7) / 8));
        IntStream.range(0, run.pictures().size()).mapToObj(this::step).forEach(shots::add);
    }

    /** What is lit in one of the run's pictures. */
    IntToDoubleFunction step(int picture) {
        return pixel -> run.isLit(run.pictures().get(picture), pixel) ? 1 : 0;
    }

    DotPictures set(int picture, IntToDoubleFunction shot) {
        shots.set(picture, shot);
        return this;
    }

    /** The left one of a light's dots. */
    static int left(int pixel) {
        return 8 + 12 * (pixel % 8) + pixel % 3;
    }

    /** The upper one of a light's dots. */
    static int top(int pixel) {
        return 10 + 12 * (pixel / 8) + pixel * 3 % 4;
    }

    @Override
    public int count() {
        return shots.size();
    }

    @Override
    public String name(int picture) {
        return "p" + (picture + 1);
    }

    @Override
    public PictureSize size(int picture) {
        return size;
    }

    @Override
    public void read(int picture, byte[] codes) {
        Arrays.fill(codes, (byte) 0);
        for (int pixel = 0; pixel < run.code().pixelCount(); pixel++) {
            byte code = code(LIGHT * shots.get(picture).applyAsDouble(pixel));
            for (int dot = 0; dot < 4; dot++) {
                codes[(top(pixel) + dot / 2) * size.width() + left(pixel) + dot % 2] = code;
            }
        }
    }

    /** IEC 61966-2-1. */
    static byte code(double light) {
        double code = light <= 0.0031308 ? 12.92 * light : 1.055 * Math.pow(light, 1 / 2.4) - 0.055;
        return (byte) Math.round(255 * Math.min(1, code));
    }

    Plane plane(int picture) {
        Plane plane = new Plane(size);
        read(picture, plane.codes);
        return plane;
    }

    /** What the pictures after the first two say, in the order in which they are. */
    Readings readings() throws Exception {
        Reference reference = Reference.of(size, plane(0), plane(1), run.code().pixelCount());
        List<int[]> shown = IntStream.range(2, count())
                .mapToObj(picture -> new int[] {picture})
                .toList();
        return Readings.read(reference, shown, this, new Plane(size));
    }

    RoundPictures known() {
        return new RoundPictures(run, 0, this::name);
    }

    /** All pixels on one wire of one prop, a unit apart. */
    static PixelMap map(int pixels) {
        double[] x = IntStream.range(0, pixels).asDoubleStream().toArray();
        Positions places = new Positions(x, new double[pixels], new double[pixels]);
        return new PixelMap(List.of(new Prop("hedge", 0, pixels, List.of(), Location.ofFile("test"))), places, places);
    }

    /** What is said of pictures: the picture, what is wrong with it, and what to do. */
    static String said(PicturesRefusedException refused) {
        return (refused.picture().isEmpty() ? "" : refused.picture() + " ") + refused.getMessage() + "; "
                + refused.hint();
    }
}
