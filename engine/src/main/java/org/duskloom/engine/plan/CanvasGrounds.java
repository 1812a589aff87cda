package org.duskloom.engine.plan;

import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.duskloom.engine.group.Member;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.map.Positions;
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
    private final List<GroundAxes> axes;
    private final List<Member> undirected;

    CanvasGrounds(PixelMap map, Layout layout, List<Member> members) {
        this.map = map;
        this.layout = layout;
        this.members = members;
        this.pixels = layout.spread() == Spread.EACH
                ? members.stream().map(Member::pixels).toList()
                : List.of(joined(members));
        OutwardAxes outward = new OutwardAxes(map);
        this.axes = IntStream.range(0, pixels.size())
                .mapToObj(ground -> switch (layout.axes()) {
                    case STAGE -> GroundAxes.of(map.stage());
                    case OWN -> GroundAxes.of(map.own());
                    case OUTWARD -> outward.of(members.get(ground));
                })
                .toList();
        this.undirected = List.copyOf(outward.undirected());
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

    /** What the members are parts of. */
    PixelMap map() {
        return map;
    }

    /** All members of the cue, in order. */
    List<Member> members() {
        return members;
    }

    /** The axes along which the cue measures on a ground. */
    GroundAxes axes(int ground) {
        return axes.get(ground);
    }

    /** The members that axes should turn outward, but that lie round the middle of their prop. */
    List<Member> undirected() {
        return undirected;
    }

    /** The bounding box of a ground, in the axes of the cue. */
    Box box(int ground) {
        return Box.round(pixels(ground), axes(ground));
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
        return switch (layout.order()) {
            case MEMBERS -> memberSteps(ground);
            case AROUND -> around(ground);
            default -> OrderPlaces.along(layout.order(), pixels(ground), axes(ground), box(ground));
        };
    }

    private OrderPlaces memberSteps(int ground) {
        if (!isWhole()) {
            return OrderPlaces.step(pixels(ground).length, ground, count());
        }
        double[] position = Arrays.stream(owners()).asDoubleStream().toArray();
        return new OrderPlaces(position, members.size());
    }

    /** Member after member, each clockwise from its top on the stage. */
    private OrderPlaces around(int ground) {
        int[] all = pixels(ground);
        int[] owners = isWhole() ? owners() : new int[all.length];
        double[] position = new double[all.length];
        for (int start = 0, end = 0; start < all.length; start = end) {
            while (end < all.length && owners[end] == owners[start]) {
                end++;
            }
            Member member = members.get(isWhole() ? owners[start] : ground);
            GroundAxes stage = GroundAxes.of(map.stage());
            double[] ranks = OrderPlaces.along(
                            PixelOrder.CLOCKWISE,
                            Arrays.copyOfRange(all, start, end),
                            stage,
                            Box.round(member.pixels(), stage))
                    .position();
            for (int i = start; i < end; i++) {
                position[i] = start + ranks[i - start];
            }
        }
        return new OrderPlaces(position, all.length);
    }

    /** Of each pixel of the one ground round all, the first member that has it; rising. */
    private int[] owners() {
        Map<Integer, Integer> memberOf = new HashMap<>();
        for (int k = 0; k < members.size(); k++) {
            for (int pixel : members.get(k).pixels()) {
                memberOf.putIfAbsent(pixel, k);
            }
        }
        return Arrays.stream(pixels(0)).map(memberOf::get).toArray();
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
