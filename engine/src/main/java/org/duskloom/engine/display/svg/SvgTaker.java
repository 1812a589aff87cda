package org.duskloom.engine.display.svg;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import javax.xml.stream.XMLStreamReader;
import org.duskloom.engine.document.SourceText;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.map.Names;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.problem.TextFormatException;
import org.duskloom.engine.text.Quoted;
import org.joml.Matrix3x2d;
import org.joml.Vector2d;

/** Takes the elements of a drawing one by one, and remembers what becomes of them. */
final class SvgTaker {
    static final String PIXELS = "pixels";
    static final String ZERO = "zero";

    private static final long MOST_DISTANCES = 500_000_000L;

    private static final Set<String> LINES = Set.of("path", "line", "polyline", "polygon");
    private static final Set<String> HOLDERS = Set.of("g", "a");
    private static final Set<String> HARMLESS = Set.of("rect", "tspan", "set", "animate", "animateTransform");

    private final SourceText source;
    private final Optional<TextNode> along;
    private final Problems problems;
    private final Deque<Level> levels = new ArrayDeque<>();
    private final List<SvgCircle> circles = new ArrayList<>();
    private final Map<String, SvgLine> lines = new LinkedHashMap<>();
    private Vector2d zero = new Vector2d();
    private String namespace;
    private boolean hasChosenPixels;
    private final int errorsBefore;
    private boolean hasHiddenCircles;
    private boolean isWithoutSize;
    private Location pageLocation;

    /**
     * An element that is open.
     *
     * @param page from its places to millimetres on the page
     * @param part the path of the part that its circles belong to; empty for none
     * @param drawn whether what is in it may be drawn
     * @param visible whether it is, unless it says otherwise
     * @param chosen whether it is in the group of the pixels
     */
    private record Level(Matrix3x2d page, String part, boolean drawn, boolean visible, boolean chosen) {
        boolean isSeen() {
            return drawn && visible;
        }
    }

    SvgTaker(SourceText source, Optional<TextNode> along, Problems problems) {
        this.source = source;
        this.along = along;
        this.problems = problems;
        this.errorsBefore = problems.errorCount();
    }

    /** Whether elements of that namespace are none of the drawing. The first element says which is. */
    boolean isForeign(String uri) {
        return namespace != null && !namespace.equals(uri == null ? "" : uri);
    }

    void close() {
        levels.pop();
    }

    /** Takes an element that opens. What is wrong with it is an error. */
    void open(XMLStreamReader xml, Location at) {
        String word = xml.getLocalName();
        if (namespace == null) {
            namespace = xml.getNamespaceURI() == null ? "" : xml.getNamespaceURI();
            levels.push(new Level(page(xml, at), "", true, true, false));
            return;
        }
        Level level = inside(xml, word, at);
        levels.push(level);
        hasHiddenCircles |= word.equals("circle") && !level.isSeen();
        if (!level.drawn() && !isMark(of(xml, "id"))) {
            return;
        }
        try {
            take(xml, word, level, at);
        } catch (TextFormatException fault) {
            problems.error(at, "the " + word + ": " + fault.getMessage(), fault.hint());
        }
    }

    /** Whether it only says where something is, and may be hidden for that. */
    private boolean isMark(String id) {
        return id != null
                && (id.equals(ZERO) || along.isPresent() && along.get().value().equals(id));
    }

    private Matrix3x2d page(XMLStreamReader xml, Location at) {
        if (!xml.getLocalName().equals("svg")) {
            problems.error(
                    at, "this is no SVG drawing, but " + Quoted.of(xml.getLocalName()), "its outermost element is svg");
            return new Matrix3x2d();
        }
        try {
            if (of(xml, "transform") != null) {
                throw new TextFormatException(
                        "a transform of it is not understood", "give it to a group in the drawing");
            }
            isWithoutSize = !SvgPage.isOnPaper(of(xml, "width")) && !SvgPage.isOnPaper(of(xml, "height"));
            pageLocation = at;
            return SvgPage.millimetresFromUser(
                    of(xml, "width"), of(xml, "height"), of(xml, "viewBox"), of(xml, "preserveAspectRatio"));
        } catch (TextFormatException fault) {
            problems.error(at, "the drawing's page: " + fault.getMessage(), fault.hint());
            return new Matrix3x2d();
        }
    }

    private void warnOfNoSize() {
        if (isWithoutSize) {
            problems.warn(
                    pageLocation,
                    "the drawing's page has no size on paper, so that its unit is taken for 1/96 of an inch, 0.26 mm",
                    "give the page a size in mm, in the program that drew it; in the file: width=\"200mm\"");
        }
    }

    private Level inside(XMLStreamReader xml, String word, Location at) {
        Level outer = levels.peek();
        SvgStyle style = new SvgStyle(xml);
        boolean drawn = outer.drawn() && !style.isTakenOut();
        boolean visible = style.isVisible().orElse(outer.visible());
        Matrix3x2d page = new Matrix3x2d(outer.page());
        try {
            style.refuseTransforms();
            page.mul(SvgTransform.parse(of(xml, "transform") == null ? "" : of(xml, "transform")));
        } catch (TextFormatException fault) {
            problems.error(at, "the " + word + ": " + fault.getMessage(), fault.hint());
        }
        String id = of(xml, "id");
        if (!word.equals("g") || id == null || id.equals(ZERO)) {
            return new Level(page, outer.part(), drawn, visible, outer.chosen());
        }
        if (id.equals(PIXELS)) {
            hasChosenPixels = true;
            return new Level(page, outer.part(), drawn, visible, true);
        }
        return new Level(page, part(outer.part(), id, at), drawn, visible, outer.chosen());
    }

    /**
     * Ids are unique in a file, so an inner group may repeat the path of the outer one: {@code petals/1} in {@code
     * petals}.
     */
    private String part(String outer, String id, Location at) {
        String path = outer.isEmpty() || id.startsWith(outer + "/") ? id : outer + "/" + id;
        for (String name : id.split("/", -1)) {
            Names.fault(name)
                    .ifPresent(fault -> problems.error(
                            at,
                            "the id " + Quoted.of(id) + " of a group would name a part, and " + Quoted.of(name) + " "
                                    + fault));
        }
        return path;
    }

    private void take(XMLStreamReader xml, String word, Level level, Location at) throws TextFormatException {
        boolean isZero = ZERO.equals(of(xml, "id"));
        if (word.equals("circle")) {
            Vector2d centre = level.page()
                    .transformPosition(new Vector2d(SvgLength.attribute(xml, "cx"), SvgLength.attribute(xml, "cy")));
            if (isZero) {
                zero = centre;
            } else if (!level.isSeen()) {
                return;
            } else if (circles.size() == PixelMap.MAX_PIXELS) {
                throw new TextFormatException(
                        "the drawing has more than " + PixelMap.MAX_PIXELS + " circles", "split it");
            } else if (of(xml, "r") == null || SvgLength.attribute(xml, "r") > 0) {
                circles.add(new SvgCircle(centre.x, centre.y, at, level.part(), level.chosen()));
            }
            return;
        }
        if (isZero) {
            zero = level.page().transformPosition(new Vector2d());
        }
        if (LINES.contains(word)) {
            takeLine(xml, word, level);
        } else if (word.equals("use")) {
            throw new TextFormatException(
                    "a copy that only points to what it is a copy of is not read", "make it an element of its own");
        } else if (word.equals("ellipse")) {
            throw new TextFormatException("an ellipse is not taken for a light", "draw a circle, or take it out");
        } else if (!HOLDERS.contains(word) && !HARMLESS.contains(word)) {
            throw new TextFormatException(
                    "this element is not understood", "take it out, or keep to svg, g, circle and path");
        }
    }

    private void takeLine(XMLStreamReader xml, String word, Level level) throws TextFormatException {
        String id = of(xml, "id");
        if (id == null) {
            return;
        }
        if (along.isEmpty() || !along.get().value().equals(id)) {
            lines.putIfAbsent(id, null);
            return;
        }
        lines.put(id, SvgLine.of(xml, word, level.page()));
    }

    /** The pixels in wiring order; nothing if there is no circle, or no path to follow. */
    Optional<SvgPixels> pixels() {
        List<SvgCircle> lit =
                hasChosenPixels ? circles.stream().filter(SvgCircle::chosen).toList() : circles;
        if (problems.errorCount() > errorsBefore) {
            // What is said to be wrong may be the very circle or path that is missing.
            return Optional.empty();
        }
        if (lit.isEmpty()) {
            problems.error(
                    source.end(),
                    (hasChosenPixels ? "the group \"" + PIXELS + "\" has no circle" : "the drawing has no circle")
                            + (hasHiddenCircles ? " that is seen" : ""),
                    hasHiddenCircles ? "show what is hidden, or draw one for each pixel" : "draw one for each pixel");
            return Optional.empty();
        }
        warnOfNoSize();
        if (along.isEmpty()) {
            return Optional.of(SvgCircle.pixels(lit, zero));
        }
        SvgLine line = lines.get(along.get().value());
        if (line == null) {
            String known = lines.keySet().stream().limit(20).map(Quoted::of).collect(Collectors.joining(", "));
            problems.error(
                    along.get().location(),
                    "the drawing has no path with the id "
                            + Quoted.of(along.get().value()),
                    known.isEmpty() ? "give the path an id" : "paths with ids: " + known);
            return Optional.empty();
        }
        if ((long) line.size() * lit.size() > MOST_DISTANCES) {
            problems.error(along.get().location(), "the path has too many points for so many circles", "simplify it");
            return Optional.empty();
        }
        return Optional.of(SvgCircle.pixels(line.inOrder(lit), zero));
    }

    private static String of(XMLStreamReader xml, String name) {
        return xml.getAttributeValue(null, name);
    }
}
