package org.duskloom.engine.meter.light;

import java.util.HashMap;
import java.util.Map;
import org.duskloom.engine.map.Positions;

/**
 * The largest area that flashes within any field of view of ten degrees (WCAG 2.2, "general flash and red flash
 * thresholds": no more than 0.006 steradian, a quarter of such a field). All pixels are taken to hang at one distance
 * in front of the audience. A pixel counts as a square as wide as its nearest neighbour is away, {@value #LEAST_SIDE}
 * to {@value #MOST_SIDE} metres, a choice of our own: dots fill a face only where they are dense.
 *
 * <p>Fields are tried on a grid with a quarter of their radius between them, each so much wider that every field lies
 * in one of them. So what is found is never too little; it is too much by 39 % of the area at most.
 */
final class TenDegreeField implements FlashField {
    private static final double ALLOWED_STERADIAN = 0.006;
    private static final double HALF_FIELD_DEGREES = 5;
    private static final double LEAST_SIDE = 0.01;
    private static final double MOST_SIDE = 0.1;
    private static final int STEPS_OF_RADIUS = 4;

    private final double[] x;
    private final double[] y;
    private final double[] area;
    private final double allowedArea;
    private final double step;
    private final double reach;
    private double mostArea;

    /**
     * A field.
     *
     * @param stage where the pixels hang
     * @param metresPerUnit how long a unit of these places is
     * @param metres from how far they are seen, above 0
     */
    TenDegreeField(Positions stage, double metresPerUnit, double metres) {
        int count = stage.size();
        x = new double[count];
        y = new double[count];
        for (int i = 0; i < count; i++) {
            x[i] = stage.x(i) * metresPerUnit;
            y[i] = stage.y(i) * metresPerUnit;
        }
        double[] side = PixelSpacing.nearest(x, y, MOST_SIDE);
        area = new double[count];
        for (int i = 0; i < count; i++) {
            area[i] = Math.max(LEAST_SIDE, side[i]) * Math.max(LEAST_SIDE, side[i]);
        }
        allowedArea = ALLOWED_STERADIAN * metres * metres;
        double radius = metres * StrictMath.tan(StrictMath.toRadians(HALF_FIELD_DEGREES));
        step = radius / STEPS_OF_RADIUS;
        reach = radius + step * StrictMath.sqrt(0.5);
    }

    @Override
    public void look(int[] pixels, int count) {
        double all = 0;
        for (int i = 0; i < count; i++) {
            all += area[pixels[i]];
        }
        if (all > mostArea) {
            // What is allowed all together is allowed in any field.
            mostArea = Math.max(mostArea, all <= allowedArea ? all : densest(pixels, count));
        }
    }

    private double densest(int[] pixels, int count) {
        Map<Long, double[]> fields = new HashMap<>();
        double most = 0;
        for (int i = 0; i < count; i++) {
            int pixel = pixels[i];
            long firstColumn = (long) Math.ceil((x[pixel] - reach) / step);
            for (long column = firstColumn; column * step <= x[pixel] + reach; column++) {
                double dx = column * step - x[pixel];
                double half = Math.sqrt(Math.max(0, reach * reach - dx * dx));
                for (long row = (long) Math.ceil((y[pixel] - half) / step); row * step <= y[pixel] + half; row++) {
                    double[] sum = fields.computeIfAbsent(column << 32 ^ row & 0xFFFFFFFFL, key -> new double[1]);
                    sum[0] += area[pixel];
                    most = Math.max(most, sum[0]);
                }
            }
        }
        return most;
    }

    @Override
    public double mostShare() {
        return mostArea / allowedArea;
    }
}
