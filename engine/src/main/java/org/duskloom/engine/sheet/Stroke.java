package org.duskloom.engine.sheet;

import java.util.Objects;
import org.duskloom.engine.label.Area;
import org.duskloom.engine.label.LabelPlace;

/** Something on a sheet. Lengths in millimetres, colours as {@code 0xRRGGBB}. */
sealed interface Stroke {
    /** A disc, or a ring if {@code width} is above 0. */
    record Circle(double x, double y, double radius, double width, int color) implements Stroke {}

    /** A straight line. */
    record Line(double fromX, double fromY, double toX, double toY, double width, int color) implements Stroke {
        /** The line that leads from a label to what it names. */
        static Line of(LabelPlace.Leader leader, double width, int color) {
            return new Line(leader.fromX(), leader.fromY(), leader.toX(), leader.toY(), width, color);
        }
    }

    /** A filled triangle that points along the wire. */
    record Arrow(double x, double y, double directionX, double directionY, double size, int color) implements Stroke {}

    /**
     * A line of text; {@code x} is its left end and {@code y} the foot of its capitals, which are {@code height} high.
     */
    record Text(String words, double x, double y, double height, int color) implements Stroke {
        public Text {
            Objects.requireNonNull(words, "words");
        }

        /** How wide it is at the most, in either of the fonts it may be drawn in. */
        double width() {
            return width(words, height);
        }

        /** Where it stands. */
        Area area() {
            return new Area(x, y, x + width(), y + height);
        }

        static double width(String words, double height) {
            // The widest character that names are made of takes 6 of 7 rows in the dot font, and less in others.
            return words.length() * height * 6 / 7;
        }
    }
}
