package org.duskloom.effects.shower;

import java.util.Arrays;
import org.duskloom.effects.kit.Dial;
import org.duskloom.effects.kit.Motion;
import org.duskloom.effects.kit.Projection;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.CueTime;
import org.duskloom.engine.effect.Settings;

/**
 * Which lane each pixel lies in, how far along it, and how bright the lane is there. The outermost lanes of a member
 * have their middles on its outermost pixels. Only lanes with pixels are counted. A lane is cut into {@value #SECTIONS}
 * sections of equal length. Can be shared by threads if nothing in it moves.
 *
 * <p>A moving {@code toward} costs about 15 ns a pixel, six times the rest of the effect: both projections have their
 * ranges measured anew, and every pixel is put into its lane again.
 */
final class Lanes {
    static final int SECTIONS = 16;

    /** Pixels that differ by less than this share of a lane lie side by side. */
    private static final double ROUNDING = 1e-6;

    private final Canvas canvas;
    private final boolean reversed;
    private final Projection.View alongView;
    private final Projection.View acrossView;
    private final Dial laneCount;
    private final Dial width;
    private final Dial soft;
    private final boolean constant;

    private final int[] sectionOf;
    private final float[] along;
    private final float[] sides;
    /** The lane of each number in each member; -1 where no pixel lies. */
    private final int[] laneOfNumber;

    private final int[] memberOfLane;
    private final int[] numberOfLane;
    private int count;

    private Lanes(Canvas canvas, Settings settings) {
        this.canvas = canvas;
        Dial toward = Dial.of(settings, Shower.TOWARD);
        reversed = settings.value(Motion.REVERSE);
        alongView = Projection.of(canvas, toward).open();
        acrossView = Projection.across(canvas, toward).open();
        laneCount = Dial.of(settings, Shower.LANES);
        width = Dial.of(settings, Shower.WIDTH);
        soft = Dial.of(settings, Shower.SOFT);
        constant = toward.isConstant() && laneCount.isConstant() && width.isConstant() && soft.isConstant();
        sectionOf = new int[canvas.pixelCount()];
        along = new float[canvas.pixelCount()];
        sides = new float[canvas.pixelCount()];
        laneOfNumber = new int[canvas.memberCount() * (int) laneCount.ceiling()];
        int most = Math.min(sectionOf.length, laneOfNumber.length);
        memberOfLane = new int[most];
        numberOfLane = new int[most];
        measure(new CueTime());
    }

    static Lanes of(Canvas canvas, Settings settings) {
        return new Lanes(canvas, settings);
    }

    boolean isConstant() {
        return constant;
    }

    void begin(CueTime time) {
        if (!constant) {
            measure(time);
        }
    }

    /** How many lanes have pixels. */
    int count() {
        return count;
    }

    /** The most that {@link #count} can be. */
    int mostLanes() {
        return memberOfLane.length;
    }

    int memberOf(int lane) {
        return memberOfLane[lane];
    }

    /** The number of the lane within its member. */
    int numberOf(int lane) {
        return numberOfLane[lane];
    }

    /** The section of each pixel; those of lane k are numbered from k · {@value #SECTIONS}. */
    int[] sectionOf() {
        return sectionOf;
    }

    /** How far each pixel lies along its lane, 0 to 1. */
    float[] along() {
        return along;
    }

    /** How bright the lane is at each pixel, in [0, 1]. */
    float[] sides() {
        return sides;
    }

    private void measure(CueTime time) {
        alongView.begin(time);
        acrossView.begin(time);
        placeAlong();
        placeAcross((int) laneCount.at(time));
        light(width.floatAt(time), soft.floatAt(time));
    }

    private void placeAlong() {
        float[] shares = alongView.shares();
        for (int pixel = 0; pixel < along.length; pixel++) {
            along[pixel] = reversed ? 1 - shares[pixel] : shares[pixel];
        }
    }

    /** Leaves in {@code sides} how far each pixel lies from the middle of its lane, as a share of the lane. */
    private void placeAcross(int lanes) {
        Arrays.fill(laneOfNumber, -1);
        count = 0;
        float[] shares = acrossView.shares();
        for (int pixel = 0; pixel < sectionOf.length; pixel++) {
            double place = shares[pixel] * (lanes - 1.0) + 0.5;
            int number = (int) Math.floor(place + ROUNDING);
            sides[pixel] = (float) Math.abs(place - number - 0.5);
            int section = (int) Math.min(SECTIONS - 1, along[pixel] * SECTIONS);
            sectionOf[pixel] = lane(canvas.memberOf()[pixel], number, lanes) * SECTIONS + section;
        }
    }

    private int lane(int member, int number, int lanes) {
        int at = member * lanes + number;
        if (laneOfNumber[at] < 0) {
            memberOfLane[count] = member;
            numberOfLane[count] = number;
            laneOfNumber[at] = count++;
        }
        return laneOfNumber[at];
    }

    private void light(float widthNow, float softNow) {
        float edge = softNow * widthNow;
        for (int pixel = 0; pixel < sides.length; pixel++) {
            float inward = widthNow / 2 - sides[pixel] + (float) ROUNDING;
            float rise = edge > 0 ? Math.min(1, Math.max(0, inward / edge)) : inward > 0 ? 1 : 0;
            sides[pixel] = widthNow > 0 ? rise * rise * (3 - 2 * rise) : 0;
        }
    }
}
