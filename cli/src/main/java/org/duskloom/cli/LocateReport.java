package org.duskloom.cli;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import org.duskloom.engine.locate.Located;
import org.duskloom.engine.locate.Unseen;
import org.duskloom.engine.locate.Unseen.Reason;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.map.PixelSets;
import org.duskloom.engine.map.Prop;
import org.duskloom.engine.text.Counted;

/** What a person is told of pixels in pictures: how many were found, and which were not and why. */
final class LocateReport {
    private static final int WIDTH = 100;
    private static final double MANY_BURNT = 0.25;

    private final Located located;
    private final PixelMap map;
    private final boolean places;

    private LocateReport(Located located, PixelMap map, boolean places) {
        this.located = located;
        this.map = map;
        this.places = places;
    }

    /**
     * The text.
     *
     * @param picture the name of the picture whose places are told
     * @param places whether the display could say what stands off its prop
     */
    static String of(Located located, PixelMap map, String picture, boolean places) {
        LocateReport report = new LocateReport(located, map, places);
        StringBuilder text = new StringBuilder();
        text.append(located.seen().size() + " of " + Counted.of(map.pixelCount(), "pixel")
                + " found; the places are those in " + picture + ".\n");
        report.appendUnseen(text);
        report.appendBurnt(text);
        report.appendDoubts(text);
        return text.toString().replace("\n", System.lineSeparator());
    }

    private void appendUnseen(StringBuilder text) {
        if (located.unseen().isEmpty()) {
            return;
        }
        TextTable table = new TextTable(WIDTH, 1, 2);
        table.row("prop", "not found", "why, as it seems");
        List<Unseen> group = new ArrayList<>();
        for (Unseen unseen : located.unseen()) {
            if (!group.isEmpty() && !belongs(unseen, group.get(group.size() - 1))) {
                addRow(group, table);
                group.clear();
            }
            group.add(unseen);
        }
        addRow(group, table);
        text.append('\n').append(table.text().replace(System.lineSeparator(), "\n"));
    }

    /** Pixels of one prop that follow each other among those not found, for one reason, share a row. */
    private boolean belongs(Unseen unseen, Unseen before) {
        return map.propIndexOf(unseen.pixel()) == map.propIndexOf(before.pixel())
                && unseen.reason() == before.reason()
                && unseen.reason() != Reason.MELTED;
    }

    private void addRow(List<Unseen> group, TextTable table) {
        Prop prop = map.props().get(map.propIndexOf(group.get(0).pixel()));
        table.row(prop.name(), numbers(group, prop), why(group.get(0)));
    }

    private static String numbers(List<Unseen> group, Prop prop) {
        BitSet pixels = new BitSet();
        group.forEach(unseen -> pixels.set(unseen.pixel() - prop.firstPixel()));
        return PixelSets.ranges(pixels, Integer.MAX_VALUE);
    }

    private String why(Unseen unseen) {
        return switch (unseen.reason()) {
            case DARK -> "dark, or hidden";
            case MIRRORED -> "hidden: what says its number is too faint or too far off, a reflection";
            case MELTED ->
                "melted into " + address(unseen.beside()) + ": a larger picture, or --apart, tells them apart";
            case UNSURE -> "there is light, but its bits are unsure";
            case OUTSIDE -> "beyond the edge of the picture";
        };
    }

    private String address(int pixel) {
        Prop prop = map.props().get(map.propIndexOf(pixel));
        return prop.name() + " " + (pixel - prop.firstPixel() + 1);
    }

    private void appendBurnt(StringBuilder text) {
        if (located.burnt() > 0) {
            text.append('\n').append(Counted.of(located.burnt(), "light") + " burnt out in the middle");
            boolean many = located.burnt() > MANY_BURNT * located.seen().size();
            text.append(many ? ": a shorter exposure makes the places more exact.\n" : ".\n");
        }
    }

    private void appendDoubts(StringBuilder text) {
        if (!places) {
            text.append(
                    "\nWithout --display nothing tells the reflection of a hidden light from the light, if it is bright"
                            + " and near the wire's run: look at the picture for what stands off its prop.\n");
        }
    }
}
