package org.duskloom.engine.map;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntUnaryOperator;
import org.duskloom.engine.problem.TextFormatException;

/** Gathers the parts of one prop from the part cells of its pixels. */
final class PartCollector {
    private final Branch root = new Branch("");

    /** A part that is wrong as a whole: its path, what is wrong, and the row where it first stands. */
    record Fault(String path, String message, int rowStart) {}

    /** Adds the pixel to the parts that the entries name and to all parts round them. */
    void add(List<PartCell> entries, int number, int rowStart) throws TextFormatException {
        for (PartCell entry : entries) {
            Branch branch = root;
            for (String name : entry.path()) {
                branch = branch.children.computeIfAbsent(name, Branch::new);
                branch.add(number, rowStart);
            }
            if (entry.rank() > 0 && !branch.rankLast(entry.rank())) {
                throw new TextFormatException(
                        "\"" + String.join("/", entry.path()) + "\" stands twice with a rank", "one rank is enough");
            }
        }
    }

    /**
     * The parts.
     *
     * @param indexOf pixel index within the prop, from 0, by pixel number
     * @param faults where wrong ranks go; the part is then in rising order
     */
    List<Part> build(IntUnaryOperator indexOf, List<Fault> faults) {
        return root.buildChildren("", indexOf, faults);
    }

    /** One part while it grows. */
    private static final class Branch {
        private final String name;
        private final Map<String, Branch> children = new LinkedHashMap<>();
        private int[] numbers = new int[8];
        private int[] ranks = new int[8];
        private int size;
        private int firstRowStart;

        Branch(String name) {
            this.name = name;
        }

        void add(int number, int rowStart) {
            if (size > 0 && numbers[size - 1] == number) {
                return;
            }
            if (size == numbers.length) {
                numbers = Arrays.copyOf(numbers, size * 2);
                ranks = Arrays.copyOf(ranks, size * 2);
            }
            firstRowStart = size == 0 ? rowStart : firstRowStart;
            numbers[size++] = number;
        }

        boolean rankLast(int rank) {
            boolean first = ranks[size - 1] == 0;
            ranks[size - 1] = first ? rank : ranks[size - 1];
            return first;
        }

        List<Part> buildChildren(String prefix, IntUnaryOperator indexOf, List<Fault> faults) {
            List<Part> parts = new ArrayList<>(children.size());
            for (Branch child : children.values()) {
                parts.add(child.build(prefix + child.name, indexOf, faults));
            }
            return parts;
        }

        private Part build(String path, IntUnaryOperator indexOf, List<Fault> faults) {
            long[] keys = new long[size];
            boolean ranked = isRanked();
            for (int i = 0; i < size; i++) {
                keys[i] = (long) (ranked ? ranks[i] : numbers[i]) << 32 | numbers[i];
            }
            Arrays.sort(keys);
            if (ranked && !areRanks(keys)) {
                String message = "the ranks of part \"" + path + "\" are not 1 to " + size + ", one for each pixel";
                faults.add(new Fault(path, message, firstRowStart));
            }
            int[] pixels = distinctPixels(keys, indexOf);
            return new Part(name, pixels, buildChildren(path + "/", indexOf, faults));
        }

        private boolean isRanked() {
            for (int i = 0; i < size; i++) {
                if (ranks[i] > 0) {
                    return true;
                }
            }
            return false;
        }

        /** A pixel that two rows claim, which is reported elsewhere, is taken once. */
        private static int[] distinctPixels(long[] keys, IntUnaryOperator indexOf) {
            BitSet taken = new BitSet();
            int[] pixels = new int[keys.length];
            int count = 0;
            for (long key : keys) {
                int pixel = indexOf.applyAsInt((int) key);
                if (!taken.get(pixel)) {
                    taken.set(pixel);
                    pixels[count++] = pixel;
                }
            }
            return Arrays.copyOf(pixels, count);
        }

        private static boolean areRanks(long[] sortedKeys) {
            for (int i = 0; i < sortedKeys.length; i++) {
                if (sortedKeys[i] >>> 32 != i + 1) {
                    return false;
                }
            }
            return true;
        }
    }
}
