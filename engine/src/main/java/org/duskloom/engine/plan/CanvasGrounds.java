package org.duskloom.engine.plan;

import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.duskloom.engine.group.Member;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.timeline.Axes;
import org.duskloom.engine.timeline.Layout;
import org.duskloom.engine.timeline.PixelOrder;
import org.duskloom.engine.timeline.Spread;

/**
 * The grounds that a cue's canvases are laid over: one for each member, or one for all. A ground has its pixels in the
 * cue's order of wiring, a bounding box, and places along the order. Where one ground lies round all members, it counts
 * as the only one.
 */
final class CanvasGrounds {
    private final PixelMap map;
    private final Layout layout;
    private final List<Member> members;
    private final List<int[]> pixels;

    CanvasGrounds(PixelMap map, Layout layout, List<Member> members) {
        this.map = map;
        this.layout = layout;
        this.members = members;
        this.pixels = layout.spread() == Spread.EACH
                ? members.stream().map(Member::pixels).toList()
                : List.of(joined(members));
    }

    /** Whether one ground lies round all members. */
    boolean isWhole() {
        return layout.spread() == Spread.WHOLE;
    }

    /** How many grounds there are. */
    int count() {
        return pixels.size();
    }

    /** The global pixel indices of a ground, in its own order; none twice. */
    int[] pixels(int ground) {
        return pixels.get(ground);
    }

    /** The name that the random choices of a ground hang on; empty for the whole. */
    String name(int ground) {
        return layout.spread() == Spread.EACH ? members.get(ground).name() : "";
    }

    /** The member that is the ground; only with a canvas for each. */
    Member member(int ground) {
        return members.get(ground);
    }

    /** All members of the cue, in order. */
    List<Member> members() {
        return members;
    }

    /** The coordinates in which the cue measures. */
    Positions positions() {
        return layout.axes() == Axes.OWN ? map.own() : map.stage();
    }

    /** The bounding box of a ground, in the axes of the cue. */
    Box box(int ground) {
        return Box.round(pixels(ground), positions());
    }

    /** The centres of the grounds' bounding boxes on the stage. */
    Positions stageCentres() {
        List<Box> boxes =
                pixels.stream().map(each -> Box.round(each, map.stage())).toList();
        return new Positions(
                boxes.stream().mapToDouble(Box::centreX).toArray(),
                boxes.stream().mapToDouble(Box::centreY).toArray(),
                boxes.stream().mapToDouble(Box::centreZ).toArray());
    }

    /** Where the pixels of a ground stand along the order of the cue. */
    OrderPlaces places(int ground) {
        if (layout.order() != PixelOrder.MEMBERS) {
            return OrderPlaces.along(layout.order(), pixels(ground), positions(), box(ground));
        }
        if (layout.spread() == Spread.EACH) {
            return OrderPlaces.step(pixels(ground).length, ground, count());
        }
        Map<Integer, Integer> memberOf = new HashMap<>();
        for (int k = 0; k < members.size(); k++) {
            for (int pixel : members.get(k).pixels()) {
                memberOf.putIfAbsent(pixel, k);
            }
        }
        int[] all = pixels(ground);
        double[] position = new double[all.length];
        for (int i = 0; i < all.length; i++) {
            position[i] = memberOf.get(all[i]);
        }
        return new OrderPlaces(position, members.size());
    }

    private int[] joined(List<Member> all) {
        BitSet seen = new BitSet(map.pixelCount());
        int[] joined = new int[all.stream().mapToInt(Member::pixelCount).sum()];
        int count = 0;
        for (Member member : all) {
            for (int pixel : member.pixels()) {
                if (!seen.get(pixel)) {
                    seen.set(pixel);
                    joined[count++] = pixel;
                }
            }
        }
        return Arrays.copyOf(joined, count);
    }
}
