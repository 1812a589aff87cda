package org.duskloom.engine.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.duskloom.engine.display.Display;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.text.Counted;
import org.duskloom.engine.wire.Link;
import org.duskloom.engine.wire.Port;
import org.duskloom.engine.wire.UniverseRun;

/**
 * The way of a port's data line over the stage.
 *
 * @param port the port
 * @param hops from prop to prop; pixels that stay dark have no place and are passed over
 * @param lengthMm how long all hops are together, straight, in millimetres
 */
record DataWay(Port port, List<Hop> hops, double lengthMm) {
    /** The longest line of words for the foot of a sheet, in characters. */
    private static final int LONGEST_LINE = 96;

    /**
     * A piece of line between two props.
     *
     * @param fromPixel global index of the last pixel before it
     * @param toPixel global index of the first pixel after it
     */
    record Hop(int fromPixel, int toPixel) {}

    DataWay {
        hops = List.copyOf(hops);
    }

    /** The ways of all ports of a display. */
    static List<DataWay> of(Display display) {
        return display.ports().ports().stream()
                .map(port -> of(port, display.map().stage(), display.units().millimetres()))
                .toList();
    }

    private static DataWay of(Port port, Positions stage, double millimetres) {
        List<Hop> hops = new ArrayList<>();
        double length = 0;
        Link last = null;
        for (Link link : port.chain()) {
            if (link.isDark()) {
                continue;
            }
            if (last != null) {
                Hop hop = new Hop(last.pixels()[last.pixelCount() - 1], link.pixels()[0]);
                hops.add(hop);
                length += millimetres * stage.distance(hop.fromPixel, hop.toPixel);
            }
            last = link;
        }
        return new DataWay(port, hops, length);
    }

    /** The first pixel that is not dark. */
    int firstPixel() {
        return port.chain().stream()
                .filter(link -> !link.isDark())
                .mapToInt(link -> link.pixels()[0])
                .findFirst()
                .orElse(-1);
    }

    /** What hangs on the port, in the order of the data, and how much that is: lines of bearable length. */
    List<String> words() {
        List<UniverseRun> runs = port.runs();
        int first = runs.get(0).universe();
        int last = runs.get(runs.size() - 1).universe();
        String summary = "port " + port.name() + ": " + Counted.of(port.pixelCount(), "pixel") + ", universe"
                + (first == last ? " " + first : "s " + first + " to " + last) + ", "
                + String.format(Locale.ROOT, "%.2f m", lengthMm / 1000) + " from prop to prop: ";
        List<String> names = port.chain().stream()
                .map(link -> link.isDark() ? link.pixelCount() + " dark" : link.name())
                .toList();
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder(summary);
        for (int i = 0; i < names.size(); i++) {
            String word = names.get(i) + (i < names.size() - 1 ? ", " : "");
            if (line.length() + word.length() > LONGEST_LINE) {
                lines.add(line.toString().stripTrailing());
                line = new StringBuilder("    ");
            }
            line.append(word);
        }
        lines.add(line.toString());
        return lines;
    }
}
