package org.duskloom.engine.survey.fit;

import java.util.List;
import java.util.function.Consumer;

/** What is done to the second daisy, which is described at (1400, 2000) with a turn of 30, and what is found. */
public record HungDaisy(String name, Consumer<Built> hands, String found) {
    @Override
    public String toString() {
        return name;
    }

    public static List<HungDaisy> cases() {
        String daisy = "daisy-2";
        return List.of(
                new HungDaisy("as described", built -> {}, ""),
                new HungDaisy("quarter", built -> built.turn(daisy, 90, 1400, 2000), "quarter 90"),
                new HungDaisy("half", built -> built.turn(daisy, 180, 1400, 2000), "quarter 180"),
                new HungDaisy("three quarters", built -> built.turn(daisy, 270, 1400, 2000), "quarter -90"),
                new HungDaisy("turned", built -> built.turn(daisy, 17, 1400, 2000), "turned"),
                new HungDaisy("turned the other way", built -> built.turn(daisy, -165, 1400, 2000), "turned"),
                new HungDaisy("moved", built -> built.move(daisy, 40, -15), "moved"),
                new HungDaisy(
                        "turned and moved",
                        built -> built.turn(daisy, 40, 1400, 2000).move(daisy, 0, 60),
                        "turned moved"),
                new HungDaisy(
                        "a quarter about another point",
                        built -> built.turn(daisy, 90, 1400, 2400),
                        "quarter 90 moved"),
                // Mirrored in its own x: across the line through its middle that is turned by 30 degrees from upright.
                new HungDaisy(
                        "mirrored",
                        built -> built.turn(daisy, -30, 1400, 2000)
                                .mirrorX(daisy, 1400)
                                .turn(daisy, 30, 1400, 2000),
                        "mirrored X"),
                new HungDaisy(
                        "mirrored upside down",
                        built -> built.turn(daisy, -30, 1400, 2000)
                                .mirrorY(daisy, 2000)
                                .turn(daisy, 30, 1400, 2000),
                        "mirrored Y"),
                // A mirror image across the upright is the one across the own axis, turned back by twice 30 degrees.
                new HungDaisy("mirrored on the stage", built -> built.mirrorX(daisy, 1400), "mirrored X turned"),
                new HungDaisy("larger", built -> built.resize(daisy, 1.15, 1400, 2000), "resized"),
                new HungDaisy("from the other end", built -> built.reverse(daisy), "rewired FROM_OTHER_END"),
                new HungDaisy("from pixel 8", built -> built.start(daisy, 7), "rewired OTHER_START"),
                new HungDaisy(
                        "outer ring from its sixth pixel",
                        built -> built.rewire(daisy, i -> i >= 12 && i < 36 ? 12 + (i - 12 + 5) % 24 : i),
                        "rewired STRETCH_OTHER_START"),
                new HungDaisy(
                        "inner ring the other way round",
                        built -> built.rewire(daisy, i -> i < 12 ? (12 - i) % 12 : i),
                        "rewired STRETCH_OTHER_WAY"),
                new HungDaisy(
                        "quarter and other end",
                        built -> built.turn(daisy, 90, 1400, 2000).reverse(daisy),
                        "quarter 90 rewired FROM_OTHER_END"),
                new HungDaisy(
                        "turned, mirrored, moved and rewired",
                        built -> built.mirrorX(daisy, 1400)
                                .turn(daisy, 10, 1400, 2000)
                                .move(daisy, 50, 50)
                                .reverse(daisy),
                        "mirrored X turned moved rewired FROM_OTHER_END"),
                new HungDaisy(
                        "larger and moved",
                        built -> built.resize(daisy, 0.8, 1400, 2000).move(daisy, 70, 0),
                        "resized moved"));
    }
}
