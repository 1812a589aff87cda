package org.duskloom.engine.plan;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.TreeSet;
import org.duskloom.engine.digest.Fingerprint;
import org.duskloom.engine.digest.FingerprintWriter;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.group.Member;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.map.Prop;
import org.duskloom.engine.show.Show;
import org.duskloom.engine.time.ExactTime;
import org.duskloom.engine.timeline.Layout;

/** Where a cue is painted: one for all cues that have their members and their layout in common. */
final class CueGeometry {
    private final List<Member> members;
    private final List<Member> undirected;
    private final List<Area> areas;
    private final boolean overlapping;
    private final BitSet pixels = new BitSet();
    private final PixelMap map;
    private final LazyFingerprint places = new LazyFingerprint();
    private final LazyFingerprint order = new LazyFingerprint();
    private final LazyFingerprint names = new LazyFingerprint();

    private CueGeometry(PixelMap map, CanvasGrounds grounds, List<Area> areas, boolean overlapping) {
        this.members = grounds.members();
        this.undirected = grounds.undirected();
        this.areas = List.copyOf(areas);
        this.overlapping = overlapping;
        areas.forEach(area -> Arrays.stream(area.built().stagePixels()).forEach(pixels::set));
        this.map = map;
    }

    /**
     * A canvas with its place on the stage.
     *
     * @param built the canvas, without random keys
     * @param runs where its pixels lie
     * @param names of its members
     * @param lag how much later than the cue it starts
     */
    record Area(CanvasBuilder.Built built, PixelRuns runs, List<String> names, ExactTime lag) {}

    /**
     * The geometry of some members.
     *
     * @param start of the cue: how much later members start may hang on it
     * @throws ArithmeticException if the start of a member cannot be counted exactly
     */
    static CueGeometry of(Show show, Layout layout, List<Member> members, ExactTime start) {
        CanvasGrounds grounds = new CanvasGrounds(show.map(), layout, members);
        CanvasBuilder builder = new CanvasBuilder(show, layout, grounds);
        List<ExactTime> lags = StaggerPlan.lags(layout, grounds, start);
        PaintOrder order = PaintOrder.of(grounds, lags, show.map().pixelCount());
        List<Area> areas = order.canvases().stream()
                .map(together -> {
                    CanvasBuilder.Built built = builder.build(together.grounds());
                    return new Area(
                            built,
                            new PixelRuns(built.stagePixels(), show.map().pixelCount()),
                            together.grounds().stream().map(grounds::name).toList(),
                            together.lag());
                })
                .toList();
        return new CueGeometry(show.map(), grounds, areas, order.isOverlapping());
    }

    /** What is painted on, in the order of the cue. */
    List<Member> members() {
        return members;
    }

    /** The members that axes should turn outward, but that lie round the middle of their prop. */
    List<Member> undirected() {
        return undirected;
    }

    /** All pixels of its canvases, by their numbers on the stage. */
    BitSet pixels() {
        return pixels;
    }

    /** Its canvases, in the order of painting. */
    List<Area> areas() {
        return areas;
    }

    /** Whether a pixel is in more than one of them. */
    boolean isOverlapping() {
        return overlapping;
    }

    /** Which pixels there are, where each lies on its canvas, and when each canvas starts. */
    Fingerprint places() {
        return places.madeBy(() -> new FingerprintWriter("places/1")
                .list(areas, (parts, area) -> addPlaces(area, parts))
                .finish());
    }

    /** Where each pixel stands along the order. */
    Fingerprint order() {
        return order.madeBy(() -> new FingerprintWriter("order/1")
                .list(areas, (parts, area) -> addOrder(area.built().canvas(), parts))
                .finish());
    }

    /** What the members and props are called, and which pixels of the props there are: what random choices hang on. */
    Fingerprint names() {
        return names.madeBy(() -> new FingerprintWriter("names/1")
                .list(areas, (parts, area) -> addNames(area, parts))
                .finish());
    }

    private static void addPlaces(Area area, FingerprintWriter parts) {
        Canvas canvas = area.built().canvas();
        parts.value(area.lag()).wholes(area.built().stagePixels()).wholes(canvas.memberOf());
        parts.numbers(canvas.x()).numbers(canvas.y()).numbers(canvas.z());
    }

    private static void addOrder(Canvas canvas, FingerprintWriter parts) {
        parts.numbers(canvas.position()).whole(canvas.memberCount());
        for (int member = 0; member < canvas.memberCount(); member++) {
            parts.whole(canvas.stepCount(member));
        }
    }

    private void addNames(Area area, FingerprintWriter parts) {
        parts.list(area.names(), FingerprintWriter::text);
        TreeSet<Integer> props = new TreeSet<>();
        for (int pixel : area.built().stagePixels()) {
            props.add(map.propIndexOf(pixel));
        }
        parts.list(props, (list, index) -> {
            Prop prop = map.props().get(index);
            list.text(prop.name()).whole(prop.firstPixel());
        });
    }
}
