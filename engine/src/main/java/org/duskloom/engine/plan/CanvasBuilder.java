package org.duskloom.engine.plan;

import java.util.Arrays;
import java.util.List;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.show.Show;
import org.duskloom.engine.timeline.Fit;
import org.duskloom.engine.timeline.Layout;

/** Makes canvases out of grounds that share a clock. */
final class CanvasBuilder {
    private final Show show;
    private final Layout layout;
    private final CanvasGrounds grounds;

    CanvasBuilder(Show show, Layout layout, CanvasGrounds grounds) {
        this.show = show;
        this.layout = layout;
        this.grounds = grounds;
    }

    /**
     * A canvas with its place on the stage.
     *
     * @param canvas what the effect sees
     * @param stagePixels the global index of each canvas pixel, rising
     */
    record Built(Canvas canvas, int[] stagePixels) {}

    /** One canvas of some grounds, which have no pixel in common; without random keys. */
    Built build(List<Integer> together) {
        Sheet sheet = new Sheet(
                together.stream().mapToInt(f -> grounds.pixels(f).length).sum());
        int[] stepCount = new int[together.size()];
        for (int k = 0; k < stepCount.length; k++) {
            stepCount[k] = sheet.add(together.get(k), k);
        }
        sheet.sortByStage();
        Canvas canvas = Canvas.withoutKeys(
                new Canvas.Coordinates(sheet.x, sheet.y, sheet.z),
                sheet.memberOf,
                new Canvas.Order(sheet.position, stepCount),
                new CanvasParts(show, grounds, together, sheet.stagePixel, sheet.memberOf));
        return new Built(canvas, sheet.stagePixel);
    }

    /** The per-pixel values of a canvas while it is put together. */
    private final class Sheet {
        private int[] stagePixel;
        private int[] memberOf;
        private double[] x;
        private double[] y;
        private double[] z;
        private double[] position;
        private int size;

        private Sheet(int pixels) {
            stagePixel = new int[pixels];
            memberOf = new int[pixels];
            x = new double[pixels];
            y = new double[pixels];
            z = new double[pixels];
            position = new double[pixels];
        }

        /** Adds the pixels of a ground; gives how many steps its order has. */
        private int add(int ground, int member) {
            int[] pixels = grounds.pixels(ground);
            Box box = grounds.box(ground);
            GroundAxes from = grounds.axes(ground);
            OrderPlaces places = grounds.places(ground);
            for (int i = 0; i < pixels.length; i++, size++) {
                stagePixel[size] = pixels[i];
                memberOf[size] = member;
                x[size] = fitted(from.x(pixels[i]) - box.centreX(), box.halfX(), box);
                y[size] = fitted(from.y(pixels[i]) - box.centreY(), box.halfY(), box);
                z[size] = fitted(from.z(pixels[i]) - box.centreZ(), box.halfZ(), box);
                position[size] = places.position()[i];
            }
            return places.stepCount();
        }

        private double fitted(double fromCentre, double half, Box box) {
            double scale = switch (layout.fit()) {
                case CONTAIN -> box.longestHalf();
                case STRETCH -> half;
                case NONE -> 1;
            };
            return layout.fit() != Fit.NONE && half == 0 ? 0 : fromCentre / scale;
        }

        /** Mostly they come in this order: so do the pixels of a prop, and props as they are wired. */
        private void sortByStage() {
            if (isSortedByStage()) {
                return;
            }
            long[] keyed = new long[size];
            Arrays.setAll(keyed, i -> (long) stagePixel[i] << 32 | i);
            Arrays.sort(keyed);
            int[] order = Arrays.stream(keyed).mapToInt(key -> (int) key).toArray();
            stagePixel = picked(stagePixel, order);
            memberOf = picked(memberOf, order);
            x = picked(x, order);
            y = picked(y, order);
            z = picked(z, order);
            position = picked(position, order);
        }

        private boolean isSortedByStage() {
            for (int i = 1; i < size; i++) {
                if (stagePixel[i] < stagePixel[i - 1]) {
                    return false;
                }
            }
            return true;
        }

        private static int[] picked(int[] values, int[] order) {
            return Arrays.stream(order).map(i -> values[i]).toArray();
        }

        private static double[] picked(double[] values, int[] order) {
            return Arrays.stream(order).mapToDouble(i -> values[i]).toArray();
        }
    }
}
