package org.duskloom.engine.survey.text;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.Collectors;
import org.duskloom.engine.display.Mirror;
import org.duskloom.engine.display.Units;
import org.duskloom.engine.survey.Change;
import org.duskloom.engine.survey.Wiring;

/** Says in words what was found out. Plain letters only, for every terminal. */
final class Wording {
    private final Units units;
    private final int lengthDecimals;

    Wording(Units units) {
        this.units = units;
        this.lengthDecimals = lengthDecimals(units);
    }

    /** Tenths of a millimetre, or about as much in other units. */
    static int lengthDecimals(Units units) {
        return switch (units) {
            case MILLIMETRES -> 1;
            case CENTIMETRES, INCHES -> 2;
            case METRES -> 4;
        };
    }

    /** A number with at most so many decimals, without zeros at its end. */
    static String number(double value, int decimals) {
        BigDecimal rounded = new BigDecimal(value).setScale(decimals, RoundingMode.HALF_EVEN);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    /** {@code 12.3 mm}. */
    String length(double value) {
        return number(value, lengthDecimals) + " " + units.word();
    }

    /** {@code (1200, 300.5)}, with z where it is not 0. */
    String place(double x, double y, double z) {
        String depth = number(z, lengthDecimals);
        return "(" + number(x, lengthDecimals) + ", " + number(y, lengthDecimals)
                + (depth.equals("0") ? "" : ", " + depth) + ")";
    }

    /** All changes of a reading, or that there is none. */
    String changes(List<Change> changes) {
        return changes.isEmpty()
                ? "as described"
                : changes.stream().map(this::change).collect(Collectors.joining("; "));
    }

    private String change(Change change) {
        if (change instanceof Change.Moved moved) {
            return "moved " + way(moved.dx(), moved.dy(), moved.dz()) + give(length(moved.error()));
        }
        if (change instanceof Change.TookThePlace took) {
            return "hangs where \"" + took.prop() + "\" is described"
                    + (took.takesTurn() ? ", and is turned like that one" : "");
        }
        if (change instanceof Change.Turned turned) {
            return turned.isQuarter() ? quarter(turned.degrees()) : "turned by " + turn(turned);
        }
        if (change instanceof Change.TurnedInSpace turned) {
            return "turned by " + degrees(turned.degrees()) + " out of its plane";
        }
        if (change instanceof Change.Mirrored mirrored) {
            return mirrored(mirrored.now());
        }
        if (change instanceof Change.Resized resized) {
            return number(resized.factor(), 3) + " times as large" + give(number(resized.error(), 3));
        }
        return change instanceof Change.Rewired rewired
                ? wiring(rewired.wiring())
                : "moved together with others, as said above";
    }

    /** {@code 40 mm to the right and 3 mm down}. */
    String way(double dx, double dy, double dz) {
        String depth = number(dz, lengthDecimals).equals("0") ? "" : ", " + side(dz, "forward", "back");
        return side(dx, "to the right", "to the left") + " and " + side(dy, "up", "down") + depth;
    }

    /** {@code 4.1 degrees clockwise}. */
    String turn(double degrees) {
        return degrees(Math.abs(degrees)) + (degrees < 0 ? " clockwise" : " counter-clockwise");
    }

    /** {@code upright}, {@code turned by 4.1 degrees clockwise}. */
    String askew(double degrees) {
        return number(degrees, 1).equals("0") ? "upright" : "turned by " + turn(degrees);
    }

    String degrees(double degrees) {
        return number(degrees, 1) + " degrees";
    }

    /** {@code (give or take 0.3 degrees)}: what measuring errors may make of it. */
    String give(String error) {
        return " (give or take " + error + ")";
    }

    private String turn(Change.Turned turned) {
        return turn(turned.degrees()) + give(degrees(turned.errorDegrees()));
    }

    private String side(double value, String positive, String negative) {
        return length(Math.abs(value)) + " " + (value < 0 ? negative : positive);
    }

    private static String quarter(double degrees) {
        if (Math.abs(degrees) > 135) {
            return "upside down: turned by 180 degrees";
        }
        return degrees > 0
                ? "a quarter turn to the left: 90 degrees counter-clockwise"
                : "a quarter turn to the right: 90 degrees clockwise";
    }

    private static String mirrored(Mirror now) {
        return switch (now) {
            case NONE -> "not mirrored";
            case X -> "mirrored: left and right change places";
            case Y -> "mirrored: top and bottom change places";
        };
    }

    private static String wiring(Wiring wiring) {
        int first = wiring.firstPixel() + 1;
        int last = wiring.firstPixel() + wiring.pixelCount();
        String start = "where pixel " + (first + wiring.start()) + " is described";
        return switch (wiring.kind()) {
            case AS_DESCRIBED -> "wired as described";
            case FROM_OTHER_END -> "wired from the other end";
            case OTHER_WAY -> "wired the other way round from the same first pixel";
            case OTHER_START -> "pixel 1 hangs " + start + ", and the others follow";
            case OTHER_WAY_AND_START -> "wired the other way round, and pixel 1 hangs " + start;
            case STRETCH_OTHER_START ->
                "of the pixels " + first + " to " + last + " the first hangs " + start + ", and the others follow";
            case STRETCH_OTHER_WAY ->
                "the pixels " + first + " to " + last + " are wired the other way round, and the first of them hangs "
                        + start;
        };
    }
}
