package org.duskloom.engine.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.duskloom.engine.group.Member;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.map.Prop;

/**
 * Axes for members whose right points from the middle of the prop to that of the member, in the axes in which the prop
 * is drawn: a look then runs out along every part, however the part points and the prop hangs. Middles are those of
 * bounding boxes. A member whose middle is that of its prop keeps the prop's own axes.
 */
final class OutwardAxes {
    private final PixelMap map;
    private final Map<Integer, Box> propBoxes = new HashMap<>();
    private final List<Member> undirected = new ArrayList<>();

    OutwardAxes(PixelMap map) {
        this.map = map;
    }

    GroundAxes of(Member member) {
        Box prop = propBoxes.computeIfAbsent(member.propIndex(), this::propBox);
        Box part = Box.round(member.pixels(), map.own());
        double x = part.centreX() - prop.centreX();
        double y = part.centreY() - prop.centreY();
        double distance = Math.sqrt(x * x + y * y);
        if (distance <= prop.samePlace()) {
            undirected.add(member);
            return GroundAxes.of(map.own());
        }
        return new GroundAxes(map.own(), x / distance, y / distance);
    }

    /** The members so far that have no direction. */
    List<Member> undirected() {
        return undirected;
    }

    private Box propBox(int index) {
        Prop prop = map.props().get(index);
        int[] pixels = IntStream.range(prop.firstPixel(), prop.firstPixel() + prop.pixelCount())
                .toArray();
        return Box.round(pixels, map.own());
    }
}
