package org.duskloom.cli;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.BiFunction;
import java.util.function.BinaryOperator;
import java.util.function.Consumer;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Function;
import java.util.function.IntFunction;
import java.util.function.IntUnaryOperator;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.function.ToDoubleFunction;
import java.util.function.ToLongFunction;
import java.util.stream.IntStream;

/** Lambdas of every kind that has to be told apart when they are written as classes, and records of all types. */
final class LambdaSamples implements Callable<List<String>> {
    private final List<Object> said = new ArrayList<>();

    /** What they give, with or without the JVM's help. */
    @Override
    public List<String> call() throws Exception {
        captured(3, 1L << 40, 0.1, 0.7f, 'd', (byte) -7, "daisy");
        references();
        numbers();
        leftToTheJvm();
        said.add(once() == once());
        said.add(Petals.inAFace().get());
        said.add(new Petals() {}.byItself().get());
        new Bed("rose").tell();
        records();
        return said.stream().map(String::valueOf).toList();
    }

    private static Supplier<String> once() {
        return () -> "once";
    }

    private void captured(int few, long many, double part, float share, char letter, byte code, String name) {
        Supplier<String> all = () -> name + few + many + part + share + letter + code;
        BiFunction<String, Long, String> more = (more1, more2) -> more1 + more2 + part + said.size();
        said.add(all.get());
        said.add(more.apply(name, many));
    }

    private void references() throws Exception {
        Function<String, Integer> length = String::length;
        Function<List<?>, Integer> size = List::size;
        Function<String, StringBuilder> made = StringBuilder::new;
        IntFunction<int[]> row = int[]::new;
        Supplier<String> bound = "pond"::trim;
        Consumer<Object> added = said::add;
        Consumer<String> left = LambdaSamples::half;
        Predicate<Object> text = String.class::isInstance;
        BinaryOperator<Integer> larger = Math::max;
        Farther<String> farther = (one, two) -> one.compareTo(two) > 0 ? one : two;
        Function<Integer, String> hidden = this::hidden;
        Callable<Object> thrown = () -> {
            throw new InterruptedException("dew");
        };
        added.accept(length.apply("lily") + size.apply(List.of(1, 2)));
        added.accept(made.apply("moss").reverse());
        added.accept(row.apply(5).length + bound.get() + text.test("") + larger.apply(4, 9));
        added.accept(farther.of("fern", "iris") + hidden.apply(6));
        left.accept("8");
        try {
            thrown.call();
        } catch (InterruptedException e) {
            added.accept(e.getMessage());
        }
    }

    private void numbers() {
        IntUnaryOperator next = Math::incrementExact;
        DoubleUnaryOperator root = Math::sqrt;
        ToDoubleFunction<Double> plain = Double::doubleValue;
        Function<Integer, Integer> twice = LambdaSamples::twice;
        Function<Integer, Long> wide = number -> number + (1L << 33);
        Predicate<Integer> even = number -> number % 2 == 0;
        said.add(next.applyAsInt(41) + root.applyAsDouble(2) + plain.applyAsDouble(0.25));
        said.add(twice.apply(21) + wide.apply(1));
        said.add(IntStream.range(0, 6).boxed().filter(even).map(twice).toList());
    }

    /** A number that becomes wider on the way, and two interfaces at once. */
    private void leftToTheJvm() {
        ToLongFunction<Integer> wider = Integer::intValue;
        Runnable both = (Runnable & Serializable) () -> said.add("both");
        both.run();
        said.add(wider.applyAsLong(12));
    }

    private void records() {
        List<Object> all = new ArrayList<>(List.of(
                new Many(true, (byte) 1, 'c', (short) 2, 3, 1L << 35, 0.5f, 0.25, "a", new int[0]),
                new Many(false, (byte) -1, 'C', (short) -2, -3, -(1L << 35), -0.5f, -0.25, null, null),
                new Alone(Double.NaN),
                new Alone(0.0),
                new Alone(-0.0),
                new Alone(0.0),
                new Alone(Double.NaN),
                new Thin(Float.NaN, 2),
                new Thin(Float.NaN, 2),
                new Thin(0f, 2),
                new Thin(-0f, 2),
                new Thin(0f, 1L << 32 | 2),
                new None(),
                new None(),
                new Text("a", List.of("b")),
                new Text("a", List.of("b")),
                new Text("a", List.of()),
                new Text(null, List.of()),
                "a"));
        // A number for an array is another one in each run, and so is not asked for here.
        said.add(all.stream().skip(1).map(Object::hashCode).toList());
        for (Object one : all) {
            said.add(all.stream().map(one::equals).toList());
        }
        said.add(all.get(2).equals(null));
        said.add(Arrays.asList(all.get(3), all.get(14)));
    }

    private String hidden(int count) {
        return "hidden " + count;
    }

    private static int twice(int number) {
        return 2 * number;
    }

    private static double half(String number) {
        return Double.parseDouble(number) / 2;
    }

    /** Knows its type no closer than as something that is compared. */
    private interface Farther<T extends Comparable<T>> {
        T of(T one, T two);
    }

    private interface Petals {
        static Supplier<String> inAFace() {
            return () -> "in an interface";
        }

        default Supplier<String> byItself() {
            return () -> "by " + getClass().isAnonymousClass();
        }
    }

    private final class Bed {
        private final String flower;

        Bed(String flower) {
            this.flower = flower;
        }

        private void tell() {
            List.of(1, 2).forEach(number -> said.add(number + flower + hidden(number)));
        }
    }

    private record Many(
            boolean truth,
            byte code,
            char letter,
            short step,
            int number,
            long large,
            float part,
            double exact,
            String text,
            int[] row) {}

    private record Alone(double part) {}

    private record Thin(float part, long large) {}

    private record None() {}

    private record Text(String text, List<String> more) {}
}
