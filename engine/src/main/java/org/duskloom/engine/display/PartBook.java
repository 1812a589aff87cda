package org.duskloom.engine.display;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.duskloom.engine.document.Expected;
import org.duskloom.engine.document.Field;
import org.duskloom.engine.document.ListNode;
import org.duskloom.engine.document.Node;
import org.duskloom.engine.document.NumberNode;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.map.Part;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.NearestName;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.text.Quoted;

/**
 * Works out the parts that a shape's field {@code parts} defines: pixel ranges, or a list of parts whose pixels
 * follow each other, without repeats. A part that is only named at the beginning of others' paths has all their
 * pixels, in wiring order.
 */
final class PartBook {
    private static final int MAX_DEPTH = 64;
    private static final int MOST_SHOWN = 12;
    private static final String RANGES = "[0-9, -]+";

    private final Pixels pixels;
    private final Allowance allowance;
    private final Problems problems;
    private final TreeMap<String, Field> definitions = new TreeMap<>();
    private final Map<String, Optional<int[]>> resolved = new HashMap<>();
    private final Set<String> open = new LinkedHashSet<>();

    /**
     * What a shape has before its field {@code parts} is read.
     *
     * @param shape its name, for messages
     * @param count how many pixels
     * @param made the pixels of the parts that its steps or its file made, by path; with each path those round it
     * @param complete whether all of that could be read; if not, what is missing is no error
     */
    record Pixels(String shape, int count, TreeMap<String, int[]> made, boolean complete) {}

    PartBook(Pixels pixels, Allowance allowance, Problems problems) {
        this.pixels = pixels;
        this.allowance = allowance;
        this.problems = problems;
    }

    /** All parts of the shape: those made and those defined; without those that have errors. */
    List<Part> parts(List<Field> fields) {
        fields.forEach(this::enter);
        TreeMap<String, int[]> all = new TreeMap<>(pixels.made());
        for (Field field : List.copyOf(definitions.values())) {
            for (String path = field.name(); !path.isEmpty() && !all.containsKey(path); path = PartPath.parent(path)) {
                Optional<int[]> found = resolve(path, field.nameLocation());
                if (found.isPresent()) {
                    all.put(path, found.get());
                }
            }
        }
        return new PartTree(all, this::locationOf, problems).parts();
    }

    private void enter(Field field) {
        if (!PartPath.isSound(field.name(), field.nameLocation(), problems)) {
            return;
        }
        if (pixels.made().containsKey(field.name())) {
            problems.error(
                    field.nameLocation(),
                    "part " + Quoted.of(field.name()) + " of " + pixels.shape() + " is there already",
                    "the steps or the file of the shape make it; rename one of them");
            return;
        }
        definitions.put(field.name(), field);
    }

    private Location locationOf(String path) {
        Field field = definitions.get(path);
        return (field == null ? inside(path).firstEntry().getValue() : field).nameLocation();
    }

    private Optional<int[]> resolve(String path, Location asker) {
        if (pixels.made().containsKey(path)) {
            return Optional.of(pixels.made().get(path));
        }
        if (open.contains(path)) {
            reportCircle(path, asker);
            return Optional.empty();
        }
        if (!resolved.containsKey(path)) {
            if (open.size() >= MAX_DEPTH) {
                problems.error(asker, "parts are made of parts deeper than " + MAX_DEPTH, "write pixel ranges");
                return Optional.empty();
            }
            open.add(path);
            Field definition = definitions.get(path);
            Optional<int[]> found = definition == null ? union(path, asker) : defined(definition);
            open.remove(path);
            resolved.put(path, found.filter(taken -> isAllowed(taken.length, asker)));
        }
        return resolved.get(path);
    }

    private boolean isAllowed(int count, Location asker) {
        if (allowance.takePartPixels(count)) {
            return true;
        }
        problems.error(
                asker,
                "the parts of all shapes list more than " + Allowance.MOST_PART_PIXELS + " pixels",
                "make fewer");
        return false;
    }

    private Optional<int[]> defined(Field field) {
        String what = "part " + Quoted.of(field.name());
        if (field.value() instanceof TextNode ranges) {
            return PixelRanges.read(ranges, what, pixels.count(), problems);
        }
        if (!(field.value() instanceof ListNode list)) {
            problems.error(
                    field.value().location(),
                    what + " must be pixel ranges or a list of parts, not "
                            + field.value().kind(),
                    "write it as \"1-6, 9, 14-10\" or [\"rim\", \"petals/1\"]");
            return Optional.empty();
        }
        if (list.items().isEmpty()) {
            problems.error(list.location(), what + " has no pixels", "name parts in it, or remove it");
        }
        return list.items().isEmpty() ? Optional.empty() : listed(list.items(), what);
    }

    private Optional<int[]> listed(List<Node> items, String what) {
        if (items.stream().anyMatch(this::isRange)) {
            reportRanges(items, what);
            return Optional.empty();
        }
        BitSet taken = new BitSet();
        IntStream.Builder union = IntStream.builder();
        boolean complete = true;
        for (Node item : items) {
            Optional<int[]> found = Expected.text(item, "an item of " + what, problems)
                    .flatMap(text -> resolve(text.value(), text.location()));
            complete &= found.isPresent();
            for (int pixel : found.orElse(new int[0])) {
                if (!taken.get(pixel)) {
                    taken.set(pixel);
                    union.add(pixel);
                }
            }
        }
        return complete ? Optional.of(union.build().toArray()) : Optional.empty();
    }

    /** Whether an item of a list of parts counts pixels; a part may be called 3. */
    private boolean isRange(Node item) {
        return item instanceof NumberNode
                || item instanceof TextNode text && text.value().matches(RANGES) && !isKnown(text.value());
    }

    private boolean isKnown(String path) {
        return pixels.made().containsKey(path)
                || definitions.containsKey(path)
                || !inside(path).isEmpty();
    }

    private void reportRanges(List<Node> items, String what) {
        List<String> written = items.stream()
                .map(item -> item instanceof NumberNode number
                        ? number.written()
                        : item instanceof TextNode text ? text.value() : "")
                .toList();
        boolean all = items.stream().allMatch(this::isRange) && items.size() <= MOST_SHOWN;
        problems.error(
                items.get(0).location(),
                what + " lists pixels one by one, but a list is for parts",
                all
                        ? "write the pixels in one text: " + Quoted.of(String.join(", ", written))
                        : "write the pixels in one text, such as \"1-6, 9\", as a part of its own");
    }

    /** The definitions of parts whose paths begin with this one. The character behind the slash is the digit 0. */
    private NavigableMap<String, Field> inside(String path) {
        return definitions.subMap(path + "/", true, path + "0", false);
    }

    /** The pixels of all parts inside. */
    private Optional<int[]> union(String path, Location asker) {
        List<String> inner = List.copyOf(inside(path).keySet());
        if (inner.isEmpty()) {
            reportUnknown(path, asker);
            return Optional.empty();
        }
        BitSet union = new BitSet();
        boolean complete = true;
        for (String each : inner) {
            Optional<int[]> found = resolve(each, asker);
            complete &= found.isPresent();
            Arrays.stream(found.orElse(new int[0])).forEach(union::set);
        }
        return complete ? Optional.of(union.stream().toArray()) : Optional.empty();
    }

    private void reportUnknown(String path, Location asker) {
        if (!pixels.complete()) {
            return;
        }
        problems.error(asker, "there is no part " + Quoted.of(path) + " in " + pixels.shape(), hint(path));
    }

    private String hint(String path) {
        if (path.indexOf('*') >= 0 || path.indexOf('?') >= 0) {
            return "patterns are for groups; name every part";
        }
        Set<String> known = new TreeSet<>(pixels.made().keySet());
        known.addAll(definitions.keySet());
        // Those that are being made would go in a circle.
        known.removeAll(open);
        return problems.errorCount() >= Problems.LIMIT ? "" : NearestName.hint(path, known);
    }

    private void reportCircle(String path, Location asker) {
        List<String> circle = new ArrayList<>(open);
        circle = new ArrayList<>(circle.subList(circle.indexOf(path), circle.size()));
        circle.add(path);
        problems.error(
                asker, "parts go in a circle: " + String.join(" -> ", circle), "write pixel ranges for one of them");
    }
}
