package org.duskloom.engine.architecture.bad;

import java.nio.FloatBuffer;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.concurrent.ThreadLocalRandom;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.csv.CSVFormat;
import tools.jackson.core.JsonToken;

/** Each method whose name starts with {@code bad} breaks a rule; those that start with {@code good} break none. */
public final class Habits {
    private Habits() {}

    static double badSine(double x) {
        return Math.sin(x);
    }

    static DoubleUnaryOperator badCubeRoot() {
        return Math::cbrt;
    }

    static double badChance() {
        return Math.random();
    }

    static double goodMath(double x) {
        return Math.floor(StrictMath.sin(Math.PI * x)) + Math.sqrt(x);
    }

    static int badGenerator() {
        return new Random(7).nextInt();
    }

    static int badThreadGenerator() {
        return ThreadLocalRandom.current().nextInt();
    }

    static String badCase(String text) {
        return text.toLowerCase();
    }

    static List<String> badCases(List<String> texts) {
        return texts.stream().map(String::toUpperCase).toList();
    }

    static String badFormat(double x) {
        return String.format("%.1f", x);
    }

    static String badFormatted(double x) {
        return "%.1f".formatted(x);
    }

    static String goodFormat(double x) {
        return String.format(Locale.ROOT, "%.1f", x).toLowerCase(Locale.ROOT);
    }

    static void badPrint(String text) {
        System.out.println(text);
    }

    static void badTrace(Exception e) {
        e.printStackTrace();
    }

    static String goodLine() {
        return System.lineSeparator();
    }

    static JsonToken badJson() {
        return JsonToken.START_ARRAY;
    }

    static CSVFormat badCsv() {
        return CSVFormat.RFC4180;
    }

    static float badBuffer(FloatBuffer buffer) {
        return buffer.get(0);
    }
}
