package org.duskloom.engine.timeline;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.duskloom.engine.color.LinearColor;
import org.duskloom.engine.color.Palette;
import org.duskloom.engine.color.PaletteStop;
import org.duskloom.engine.color.PaletteStyle;
import org.duskloom.engine.document.Expected;
import org.duskloom.engine.document.Fields;
import org.duskloom.engine.document.ListNode;
import org.duskloom.engine.document.Node;
import org.duskloom.engine.document.ObjectNode;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.problem.Problems;

/**
 * Reads a palette: one colour, a list of stops, or an object of {@code stops}, {@code mix}, {@code step} and {@code
 * cyclic}. A stop is a colour or a pair of a colour and its position from 0 to 1; stops without a position lie evenly
 * between those that have one.
 */
public final class PaletteReader {
    private final String what;
    private final Problems problems;

    private PaletteReader(String what, Problems problems) {
        this.what = what;
        this.problems = problems;
    }

    /** Reads a palette; errors are added and give nothing. */
    public static Optional<Palette> read(Node node, String what, Problems problems) {
        PaletteReader reader = new PaletteReader(what, problems);
        if (node instanceof TextNode) {
            return Values.color(node, what, problems).map(color -> Palette.evenly(List.of(color), PaletteStyle.SMOOTH));
        }
        if (node instanceof ListNode list) {
            return reader.stops(list, what, PaletteStyle.SMOOTH);
        }
        if (node instanceof ObjectNode) {
            return Fields.of(node, PaletteFields.PALETTE, what, problems).flatMap(reader::styled);
        }
        problems.error(
                node.location(),
                what + " must be a colour, a list of colours or an object { }, not " + node.kind(),
                "such as [\"#1b2a6b\", \"#ff9e5e\"]");
        return Optional.empty();
    }

    private Optional<Palette> styled(Fields fields) {
        PaletteStyle style = new PaletteStyle(
                fields.value(PaletteFields.MIX), fields.value(PaletteFields.STEP), fields.value(PaletteFields.CYCLIC));
        return fields.node(PaletteFields.STOPS)
                .flatMap(stops -> stops(stops, fields.label(PaletteFields.STOPS), style));
    }

    private Optional<Palette> stops(Node node, String label, PaletteStyle style) {
        Optional<ListNode> list = PaletteFields.STOPS_KIND.read(node, label, problems);
        return list.flatMap(stops -> mixed(stops.items(), style));
    }

    private Optional<Palette> mixed(List<Node> items, PaletteStyle style) {
        int errorsBefore = problems.errorCount();
        List<LinearColor> colors = new ArrayList<>();
        StopPositions positions = new StopPositions(style, items.size());
        for (Node item : items) {
            color(item, positions).ifPresent(colors::add);
        }
        if (problems.errorCount() > errorsBefore) {
            return Optional.empty();
        }
        List<PaletteStop> stops = new ArrayList<>();
        for (int i = 0; i < colors.size(); i++) {
            stops.add(new PaletteStop(positions.at(i), colors.get(i)));
        }
        return Optional.of(Palette.of(stops, style));
    }

    private Optional<LinearColor> color(Node item, StopPositions positions) {
        if (!(item instanceof ListNode pair)) {
            positions.open();
            return Values.color(item, "a colour of " + what, problems);
        }
        if (pair.items().size() != 2) {
            problems.error(
                    item.location(),
                    "a stop of " + what + " has " + pair.items().size() + " instead of 2 values",
                    "write a colour and its position, such as [\"#ff9e5e\", 0.4]");
            return Optional.empty();
        }
        Node place = pair.items().get(1);
        Expected.number(place, "the position of a stop of " + what, 0, 1, problems)
                .ifPresent(position -> positions.place(position, place.location(), what, problems));
        return Values.color(pair.items().get(0), "a colour of " + what, problems);
    }
}
