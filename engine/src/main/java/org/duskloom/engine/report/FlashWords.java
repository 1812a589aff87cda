package org.duskloom.engine.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.duskloom.engine.meter.light.FlashCount;
import org.duskloom.engine.meter.light.FlashFigures;
import org.duskloom.engine.meter.light.FlashPlace;
import org.duskloom.engine.meter.light.FlashRule;
import org.duskloom.engine.meter.light.PropUse;
import org.duskloom.engine.preview.TimeLabel;
import org.duskloom.engine.text.Counted;

/** What is said of flashes, wherever it is said. */
public final class FlashWords {
    /** Stands beside every verdict. */
    public static final List<String> CAUTION = List.of(
            "Passing is no guarantee for anyone: the check knows the frames, not how bright and how near the lights are, nor"
                    + " who looks at them. Warn people of flashing light where they come in, and stop if anyone feels unwell.",
            "Counted by the general and red flash thresholds of WCAG 2.2 (W3C, success criterion 2.3.1): made for screens,"
                    + " they are the nearest published measure. Lights in the open may be far brighter than a screen. Where a"
                    + " law or the owner of the place asks for less, that counts.");

    private FlashWords() {}

    /** Whether it passes, in a line. */
    public static String verdict(FlashFigures flashes) {
        if (!flashes.passes()) {
            return "It flashes too often. Passing would be no guarantee either.";
        }
        boolean byArea = !flashes.general().passesEverywhere() || !flashes.red().passesEverywhere();
        String measure = byArea
                ? String.format(
                        Locale.ROOT,
                        "Seen from %.1f m and farther it stays within the limit of WCAG 2.2, by the small area that flashes.",
                        flashes.seenFromMetres().orElseThrow())
                : "Nothing flashes more than three times within a second.";
        return measure + " That is no guarantee.";
    }

    /** By which measure it is judged, in a sentence or two. */
    public static String measure(FlashFigures flashes) {
        String counted =
                "Two opposing changes are a flash; six changes in any second pass, seven do not. Pixels are counted one"
                        + " by one, and props and the whole display by their mean light too; a show that starts over at once when it"
                        + " ends is counted over the joint as well. ";
        return counted
                + (flashes.seenFromMetres().isPresent()
                        ? String.format(
                                Locale.ROOT,
                                "Seen from %.1f m, what flashes too often at the same time fills at most %.0f %% of the area that is"
                                        + " allowed within a field of ten degrees.",
                                flashes.seenFromMetres().getAsDouble(),
                                100
                                        * Math.max(
                                                flashes.general().fieldShare(),
                                                flashes.red().fieldShare()))
                        : "Nobody says from how far it is seen, so a single pixel that flashes too often is too much;"
                                + " --seen-from counts its area instead.");
    }

    /** {@code pixel 3 of daisy-1}, {@code daisy-1 as a whole}, {@code the whole display}. */
    public static String where(FlashPlace place, LightReport light) {
        if (place.prop().isEmpty()) {
            return "the whole display";
        }
        PropUse prop = light.use().props().get(place.prop().getAsInt());
        return place.pixel().isPresent()
                ? "pixel " + (place.pixel().getAsInt() + 1) + " of " + prop.prop()
                : prop.prop() + " as a whole";
    }

    /** When, where and in which cues it flashes most. */
    public static String worst(Report report, LightReport light) {
        WorstSecond worst = light.worst();
        FlashCount count = worst.count();
        return "The worst second begins at " + TimeLabel.of(report.secondsOf(count.firstFrame())) + ": "
                + Counted.of(count.most(), "change") + " of " + (count.rule() == FlashRule.RED ? "red" : "light")
                + " on "
                + where(count.place(), light)
                + (count.overJoint() ? ", as the show starts over at once when it ends" : "")
                + (worst.cues().isEmpty() ? "." : "; cues there: " + few(worst.cues()) + ".");
    }

    private static String few(List<String> names) {
        int most = 6;
        return String.join(", ", names.subList(0, Math.min(most, names.size())))
                + (names.size() > most ? " and " + (names.size() - most) + " more" : "");
    }

    /** What to slow down, a line for each cue; none where it passes everywhere. */
    public static List<String> advice(WorstSecond worst) {
        List<String> lines = new ArrayList<>();
        if (!worst.count().passesEverywhere()) {
            lines.add(String.format(
                    Locale.ROOT,
                    "To have no more than six changes, what flashes there is to be %.2f times as slow, or softer.",
                    Math.ceil(100 * worst.count().slowBy() - 1e-9) / 100));
        }
        for (SlowDown slow : worst.slowDowns()) {
            slow.setting()
                    .filter(setting -> !slow.better().isEmpty())
                    .ifPresent(setting -> lines.add("In " + slow.cue() + ": " + toWrite(setting, slow)));
        }
        return lines;
    }

    private static String toWrite(String setting, SlowDown slow) {
        if (setting.equals(SlowDown.REPEAT)) {
            return "its plays start every " + slow.written() + "; at least " + slow.better()
                    + " (\"every\" of its \"repeat\", or a longer \"for\") if that is what flashes.";
        }
        return "\"" + setting + "\" is " + slow.written() + "; " + (setting.equals("every") ? "at least " : "at most ")
                + slow.better() + " if that is what flashes.";
    }
}
