package org.duskloom.engine.survey.text;

import java.util.ArrayList;
import java.util.List;
import org.duskloom.engine.display.Units;
import org.duskloom.engine.survey.Overall;

/** Says in words what is wrong with all measurements alike, and what to do about it. */
final class OverallWording {
    private static final int FACTOR_DIGITS = 3;

    private OverallWording() {}

    static List<String> lines(Overall overall, Units units) {
        List<String> lines = new ArrayList<>();
        lines.add("");
        lines.add("everything is " + what(overall) + ": " + question(overall));
        lines.add("  " + remedy(overall, units) + ", and survey again");
        lines.add("  what follows is told as if that were done; entries to paste come then");
        return lines;
    }

    private static String what(Overall overall) {
        String mirrored = switch (overall.flip()) {
            case NONE -> "";
            case LEFT_RIGHT -> "mirrored, left and right change places";
            case TOP_BOTTOM -> "mirrored, top and bottom change places";
        };
        if (overall.factor() == 1) {
            return mirrored;
        }
        return size(overall.factor()) + " as large as described" + (mirrored.isEmpty() ? "" : ", and " + mirrored);
    }

    private static String size(double factor) {
        if (factor == 0.1) {
            return "a tenth";
        }
        if (factor == 0.01) {
            return "a hundredth";
        }
        return factor == 0.001 ? "a thousandth" : rounded(factor) + " times";
    }

    /** With three digits that count, however small it is. */
    private static String rounded(double factor) {
        int decimals = FACTOR_DIGITS;
        for (double size = factor; size < 1 && decimals < 9; size *= 10) {
            decimals++;
        }
        return Wording.number(factor, decimals - 1);
    }

    private static String question(Overall overall) {
        if (overall.cause() == Overall.Cause.PHOTO) {
            return "are these places in a photo?";
        }
        String behind = overall.flip() == Overall.Flip.LEFT_RIGHT ? "from behind" : "";
        String unit = overall.unit().map(name -> "in " + name).orElse("");
        if (overall.flip() == Overall.Flip.TOP_BOTTOM) {
            return "does y count down?";
        }
        return "was it measured " + unit + (unit.isEmpty() || behind.isEmpty() ? "" : ", ") + behind + "?";
    }

    private static String word(Units units) {
        return units == Units.INCHES ? "inches" : units.word();
    }

    private static String remedy(Overall overall, Units units) {
        if (overall.cause() == Overall.Cause.PHOTO) {
            return "then add --photo, with x and y only";
        }
        List<String> todo = new ArrayList<>();
        overall.unit().ifPresent(name -> todo.add("write the measurements in " + word(units) + " instead of " + name));
        switch (overall.flip()) {
            case NONE -> {}
            case LEFT_RIGHT ->
                todo.add("change the sign of every x" + (overall.isDepthFlipped() ? " and of every z" : ""));
            case TOP_BOTTOM -> todo.add("change the sign of every y, or add --photo if it is one");
        }
        return "if so, " + String.join(" and ", todo);
    }
}
