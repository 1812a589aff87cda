package org.duskloom.effects.festoon;

import java.util.Arrays;
import org.duskloom.effects.kit.Dial;
import org.duskloom.effects.kit.Projection;
import org.duskloom.effects.kit.SharePlane;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.CueTime;
import org.duskloom.engine.effect.Settings;
import org.duskloom.engine.geometry.Degrees;

/**
 * How far each pixel hangs from the nearest row of the festoon of its member, and where along that.
 *
 * <p>Where {@code swags}, {@code sag}, {@code rise}, {@code height}, {@code rows}, {@code row-gap} or {@code toward}
 * move, this is measured anew in each frame, at 24 to 38 ns a pixel, 20 to 31 times a sweep: the place on a catenary
 * nearest to a point has no closed form, so each pixel near the light tries the straight pieces round it. A table of
 * distances would be as large as the canvas and new in each frame.
 */
final class Hanging implements SharePlane {
    /** The distance of pixels that no light reaches. */
    private static final float FAR = 1e6f;

    private static final double NOTHING = 1e-9;

    private final Canvas canvas;
    private final Dial swags;
    private final Dial sag;
    private final Dial rise;
    private final Dial height;
    private final Dial rows;
    private final Dial rowGap;
    private final Dial toward;
    private final Dial thickness;
    private final Swag swag = new Swag();

    private final double[] along;
    private final double[] up;
    /** Of each member: least along, least up, greatest along, greatest up. */
    private final double[] extents;
    /** Of each member: how wide a swag is, and how many of them a unit is. */
    private final double[] spans;

    private final double[] perUnit;
    /** How high up the first end of a row is. */
    private final double[] ends;

    /** How near a row must be to each pixel, and which pixels a row may reach. */
    private final double[] within;

    private final int[] near;

    private double turnedDegrees = Double.NaN;

    private final float[] distances;
    private final float[] shares;

    private Hanging(Canvas canvas, Settings settings) {
        this.canvas = canvas;
        swags = Dial.of(settings, Festoon.SWAGS);
        sag = Dial.of(settings, Festoon.SAG);
        rise = Dial.of(settings, Festoon.RISE);
        height = Dial.of(settings, Festoon.HEIGHT);
        rows = Dial.of(settings, Festoon.ROWS);
        rowGap = Dial.of(settings, Festoon.ROW_GAP);
        toward = Dial.of(settings, Projection.TOWARD);
        thickness = Dial.of(settings, Festoon.THICKNESS);
        along = new double[canvas.pixelCount()];
        up = new double[canvas.pixelCount()];
        extents = new double[4 * canvas.memberCount()];
        spans = new double[canvas.memberCount()];
        perUnit = new double[canvas.memberCount()];
        ends = new double[canvas.memberCount()];
        within = new double[canvas.pixelCount()];
        near = new int[canvas.pixelCount() + 1];
        distances = new float[canvas.pixelCount()];
        shares = new float[canvas.pixelCount()];
        measure(new CueTime(), thickness.ceiling() / 2);
    }

    static Hanging of(Canvas canvas, Settings settings) {
        return new Hanging(canvas, settings);
    }

    @Override
    public boolean isConstant() {
        return swags.isConstant()
                && sag.isConstant()
                && rise.isConstant()
                && height.isConstant()
                && rows.isConstant()
                && rowGap.isConstant()
                && toward.isConstant();
    }

    @Override
    public void begin(CueTime time) {
        if (!isConstant()) {
            measure(time, thickness.at(time) / 2);
        }
    }

    /** Of each pixel, in canvas units; something great if no light reaches it. */
    float[] distances() {
        return distances;
    }

    /** The share of the length of the festoon that lies before the place nearest to each pixel. */
    @Override
    public float[] shares() {
        return shares;
    }

    private void measure(CueTime time, double reach) {
        swag.hang(rise.at(time), sag.at(time));
        turn(toward.at(time));
        int count = (int) swags.at(time);
        int rowCount = (int) rows.at(time);
        for (int member = 0; member < spans.length; member++) {
            spans[member] = (extents[4 * member + 2] - extents[4 * member]) / count;
            // Pixels of a member without a span are near every row: no comparison with what is no number holds.
            perUnit[member] = spans[member] > NOTHING ? 1 / spans[member] : Double.NaN;
        }
        double firstEnd = height.at(time);
        double gap = rowGap.at(time);
        Arrays.fill(distances, FAR);
        Arrays.fill(shares, 0);
        Arrays.fill(within, reach);
        for (int row = 0; row < rowCount; row++) {
            placeEnds(firstEnd - row * gap);
            int nearCount = findNear(count, reach);
            for (int i = 0; i < nearCount; i++) {
                hang(near[i], count);
            }
        }
    }

    /** @param end where the first end of a row is, share of the member's height */
    private void placeEnds(double end) {
        for (int member = 0; member < ends.length; member++) {
            int at = 4 * member;
            ends[member] = extents[at + 1] + end * (extents[at + 3] - extents[at + 1]);
        }
    }

    /** Writes down the pixels that a row may reach, before any is hung, so that no branch depends on where they lie. */
    private int findNear(int count, double reach) {
        int[] memberOf = canvas.memberOf();
        int nearCount = 0;
        for (int pixel = 0; pixel < memberOf.length; pixel++) {
            int member = memberOf[pixel];
            double x = (along[pixel] - extents[4 * member]) * perUnit[member];
            double y = (up[pixel] - ends[member]) * perUnit[member];
            int own = Math.min(count - 1, (int) x);
            near[nearCount] = pixel;
            nearCount += swag.isFar(x - own, y - own * swag.rise(), reach * perUnit[member]) ? 0 : 1;
        }
        return nearCount;
    }

    /** Hangs a pixel on a row if that is nearer than those before. */
    private void hang(int pixel, int count) {
        int member = canvas.memberOf()[pixel];
        double span = spans[member];
        double above = up[pixel] - ends[member];
        if (!(span > NOTHING)) {
            distances[pixel] = (float) Math.min(distances[pixel], Math.abs(above));
            return;
        }
        double fromStart = along[pixel] - extents[4 * member];
        within[pixel] = span * hang(pixel, fromStart / span, above / span, count, within[pixel] / span, span);
    }

    /** Hangs a pixel on its own swag of a row or one of the two beside it. */
    private double hang(int pixel, double x, double y, int count, double reach, double span) {
        int own = (int) Math.min(count - 1, Math.floor(x));
        double nearest = hang(pixel, own, x, y, count, reach, span);
        if (own > 0) {
            nearest = hang(pixel, own - 1, x, y, count, nearest, span);
        }
        return own < count - 1 ? hang(pixel, own + 1, x, y, count, nearest, span) : nearest;
    }

    /** Hangs a pixel on a swag if it is within reach; gives what is within reach from then on. */
    private double hang(int pixel, int k, double x, double y, int count, double reach, double span) {
        if (swag.nearest(x - k, y - k * swag.rise(), reach)) {
            distances[pixel] = (float) (swag.distance() * span);
            shares[pixel] = Math.min(LAST, (float) ((k + swag.share()) / count));
        }
        return swag.distance();
    }

    private void turn(double towardDegrees) {
        if (towardDegrees == turnedDegrees) {
            return;
        }
        turnedDegrees = towardDegrees;
        double cosine = Degrees.cosine(towardDegrees);
        double sine = Degrees.sine(towardDegrees);
        double[] x = canvas.x();
        double[] y = canvas.y();
        for (int pixel = 0; pixel < along.length; pixel++) {
            along[pixel] = x[pixel] * cosine + y[pixel] * sine;
            up[pixel] = y[pixel] * cosine - x[pixel] * sine;
        }
        measureExtents();
    }

    private void measureExtents() {
        Arrays.fill(extents, Double.POSITIVE_INFINITY);
        for (int member = 0; member < canvas.memberCount(); member++) {
            Arrays.fill(extents, 4 * member + 2, 4 * member + 4, Double.NEGATIVE_INFINITY);
        }
        int[] memberOf = canvas.memberOf();
        for (int pixel = 0; pixel < along.length; pixel++) {
            int at = 4 * memberOf[pixel];
            double right = along[pixel];
            double above = up[pixel];
            // Hardly ever true, so cheaper than the functions for it.
            if (right < extents[at]) {
                extents[at] = right;
            }
            if (above < extents[at + 1]) {
                extents[at + 1] = above;
            }
            if (right > extents[at + 2]) {
                extents[at + 2] = right;
            }
            if (above > extents[at + 3]) {
                extents[at + 3] = above;
            }
        }
    }
}
