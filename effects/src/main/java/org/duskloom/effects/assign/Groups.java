package org.duskloom.effects.assign;

/**
 * Points gathered in groups of equal size, near ones together, by halving; and a rest, taken evenly from among all.
 */
final class Groups {
    private final Points points;
    private final int groupSize;
    private final int groupCount;
    /** The numbers of the points, group after group, then the rest. */
    private final int[] numbers;

    Groups(Points points, int groupSize, int groupCount) {
        this.points = points;
        this.groupSize = groupSize;
        this.groupCount = groupCount;
        numbers = restLast(points.count(), points.count() - groupSize * groupCount);
        gather(0, groupCount);
    }

    private static int[] restLast(int count, int rest) {
        int[] numbers = new int[count];
        int grouped = 0;
        int left = 0;
        for (int i = 0; i < count; i++) {
            boolean isRest = (long) (i + 1) * rest / count > (long) i * rest / count;
            numbers[isRest ? count - rest + left++ : grouped++] = i;
        }
        return numbers;
    }

    private void gather(int firstGroup, int endGroup) {
        if (endGroup - firstGroup < 2) {
            return;
        }
        int middle = (firstGroup + endGroup) >>> 1;
        int from = firstGroup * groupSize;
        int to = endGroup * groupSize;
        double[] values = points.along(points.longestAxis(numbers, from, to));
        Halving.split(numbers, from, middle * groupSize, to, values);
        gather(firstGroup, middle);
        gather(middle, endGroup);
    }

    /** The middle of each group. */
    Points middles() {
        return new Points(middles(points.x()), middles(points.y()), middles(points.z()));
    }

    private double[] middles(double[] values) {
        double[] middles = new double[groupCount];
        for (int i = 0; i < groupCount * groupSize; i++) {
            middles[i / groupSize] += values[numbers[i]] / groupSize;
        }
        return middles;
    }

    /** Copies the numbers of a group's points. */
    void copy(int group, int[] target, int at) {
        System.arraycopy(numbers, group * groupSize, target, at, groupSize);
    }

    /** Copies the numbers of the rest, to the end of the target. */
    void copyRest(int[] target) {
        int grouped = groupCount * groupSize;
        System.arraycopy(numbers, grouped, target, grouped, numbers.length - grouped);
    }
}
