package org.duskloom.effects.assign;

import java.util.Locale;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/**
 * What the pairing of two sets takes: the exact way, and the way of large sets. For sizes where both can be had, prints
 * how much longer than the least the total of the second is.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 2, time = 1)
@Measurement(iterations = 3, time = 1)
public class PairingBenchmark {
    private static final int MOST_COMPARED = 2000;

    /** How many points there are in the larger set. */
    @Param({"200", "400", "1000", "2000", "10000", "50000"})
    public int many;

    /** How many there are in the smaller set, as a share. */
    @Param({"1", "0.7"})
    public double fewShare;

    /** Where they lie. */
    @Param({"disc", "grid", "heaps", "space"})
    public String shape;

    private Points from;
    private Points to;
    private int[] dealt;

    /** Lays the points out. */
    @Setup
    public void layOut() {
        int few = (int) (many * fewShare);
        CommonFrame frame = CommonFrame.of(points(many, 1), points(few, 2));
        from = frame.placed(points(many, 1));
        to = CommonFrame.turnedALittle(frame.placed(points(few, 2)));
    }

    private Points points(int count, int seed) {
        return switch (shape) {
            case "disc" -> Clouds.disc(count, 1.0 / seed, seed);
            case "grid" -> seed == 1 ? Clouds.ring(count, 1) : Clouds.grid(count, -0.6, 1.3);
            case "heaps" -> Clouds.heaps(count, seed);
            default -> Clouds.box(count, seed);
        };
    }

    /** The way of sets up to {@link EvenPairing#MOST_EXACT}. */
    @Benchmark
    public int[] exact() {
        if (many > MOST_COMPARED) {
            throw new IllegalStateException("that would take too long");
        }
        return ExactPairing.partners(from, to);
    }

    /** The way of larger sets. */
    @Benchmark
    public int[] large() {
        dealt = PairingSweeps.shortened(from, to, GroupPairing.partners(from, to));
        return dealt;
    }

    /** Prints how good it is. */
    @TearDown
    public void compare() {
        if (dealt != null && many <= MOST_COMPARED) {
            double share = total(dealt) / total(ExactPairing.partners(from, to));
            System.out.printf(Locale.ROOT, "total: %.4f of the least%n", share);
        }
    }

    private double total(int[] partners) {
        return new Pairs(IntStream.range(0, many).toArray(), partners).totalSquaredDistance(from, to);
    }
}
