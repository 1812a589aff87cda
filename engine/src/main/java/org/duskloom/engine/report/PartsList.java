package org.duskloom.engine.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.duskloom.engine.display.Display;
import org.duskloom.engine.display.PlacedProp;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.text.Counted;
import org.duskloom.engine.text.ShortestDecimal;
import org.duskloom.engine.wire.Feed;
import org.duskloom.engine.wire.Lead;
import org.duskloom.engine.wire.Link;
import org.duskloom.engine.wire.Port;
import org.duskloom.engine.wire.PowerLine;
import org.duskloom.engine.wire.Supply;

/** What to buy and to cut for a display. */
final class PartsList {
    /** Wire is not pulled straight, and its ends are cut off: so much is added to what is measured from places. */
    private static final double ALLOWANCE = 1.1;

    private static final String FROM_PLACES = "from place to place, and a tenth more";

    private final Display display;
    private final double metresPerUnit;
    private final List<PartLine> lines = new ArrayList<>();

    private PartsList(Display display) {
        this.display = display;
        this.metresPerUnit = display.units().millimetres() / 1000;
    }

    static List<PartLine> of(Display display) {
        PartsList list = new PartsList(display);
        list.addPixels();
        list.addHoles();
        list.addDataLines();
        list.addPowerLines();
        list.addLeads();
        list.addOutputs();
        return List.copyOf(list.lines);
    }

    private void pieces(String group, String item, long count, String note) {
        lines.add(new PartLine(group, item, count, PartLine.PIECES, note));
    }

    private void metres(String group, String item, double metres, String note) {
        lines.add(new PartLine(group, item, metres, PartLine.METRES, note));
    }

    private void addPixels() {
        Map<String, long[]> byKind = new LinkedHashMap<>();
        for (Port port : display.ports().ports()) {
            String kind = port.kind().map(known -> known.name()).orElse("of no kind");
            long[] count = byKind.computeIfAbsent(kind, name -> new long[2]);
            count[0] += port.pixelCount();
            count[1] += port.chain().stream()
                    .filter(Link::isDark)
                    .mapToInt(Link::pixelCount)
                    .sum();
        }
        byKind.forEach((kind, count) ->
                pieces("pixels", kind, count[0], count[1] == 0 ? "" : count[1] + " of them stay dark on the line"));
        int loose = display.map().pixelCount() - display.ports().pixels().cardinality();
        if (loose > 0) {
            pieces("pixels", "on no port", loose, "");
        }
    }

    private void addHoles() {
        Map<String, int[]> byShape = new LinkedHashMap<>();
        for (PlacedProp prop : display.props()) {
            double scale = prop.placement().scale();
            String name = prop.shape().name() + (scale == 1 ? "" : " at " + ShortestDecimal.of(scale));
            int[] counts = byShape.computeIfAbsent(name, shape -> new int[2]);
            counts[0]++;
            counts[1] += prop.prop().pixelCount();
        }
        byShape.forEach((shape, counts) -> pieces(
                "holes",
                shape,
                counts[1],
                Counted.of(counts[0], "prop") + " of " + counts[1] / counts[0] + "; 'duskloom sheet' draws them"));
    }

    private void addDataLines() {
        for (Port port : display.ports().ports()) {
            boolean said = port.line().map(PowerLine::measured).orElse(false);
            double metres = said ? sum(port.line().get().segmentMetres()) : ALLOWANCE * wayOf(port);
            metres(
                    "data line",
                    "port " + port.name(),
                    metres,
                    (said ? "as the display says" : FROM_PLACES)
                            + "; without that from the controller to the first pixel");
        }
    }

    private static double sum(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum;
    }

    /** Over all pixels of a port whose places are known. */
    private double wayOf(Port port) {
        Positions stage = display.map().stage();
        double way = 0;
        int last = Link.DARK;
        for (int pixel : port.pixels()) {
            if (pixel != Link.DARK && last != Link.DARK) {
                way += stage.distance(last, pixel);
            }
            last = pixel == Link.DARK ? last : pixel;
        }
        return way * metresPerUnit;
    }

    private void addPowerLines() {
        Map<String, Double> bySize = new TreeMap<>();
        for (Port port : display.ports().ports()) {
            port.line()
                    .ifPresent(
                            line -> bySize.merge(line.conductor().name(), 2 * sum(line.segmentMetres()), Double::sum));
        }
        bySize.forEach((size, metres) -> metres("supply wire, from pixel to pixel", size, metres, "two wires"));
    }

    private void addLeads() {
        Map<String, double[]> bySize = new TreeMap<>();
        for (Supply supply : display.ports().supplies()) {
            for (Feed feed : supply.feeds()) {
                feed.lead().ifPresent(lead -> add(bySize, lead));
            }
        }
        bySize.forEach((size, sums) -> metres(
                "supply wire, leads",
                size,
                sums[0],
                "two wires, as the display says and a tenth more; " + Counted.of((long) sums[1], "lead")));
    }

    private static void add(Map<String, double[]> bySize, Lead lead) {
        double[] sums = bySize.computeIfAbsent(lead.conductor().name(), size -> new double[2]);
        sums[0] += ALLOWANCE * 2 * lead.metres();
        sums[1]++;
    }

    private void addOutputs() {
        if (!display.ports().isEmpty()) {
            pieces("ports", "data outputs", display.ports().ports().size(), "");
        }
        for (Supply supply : display.ports().supplies()) {
            pieces(
                    "supplies",
                    supply.name() + ": " + ShortestDecimal.of(supply.volts()) + " V, "
                            + ShortestDecimal.of(supply.amps()) + " A",
                    1,
                    "feeds " + Counted.of(supply.feeds().size(), "place"));
        }
    }
}
