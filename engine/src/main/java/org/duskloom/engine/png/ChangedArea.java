package org.duskloom.engine.png;

import java.util.Arrays;

/**
 * The smallest rectangle that holds every dot in which two pictures differ; one dot where they do not, as an animation
 * has no empty frame.
 */
record ChangedArea(int left, int top, int width, int height) {

    /** Compares two pictures of the same size, red, green and blue of each dot from an offset on. */
    static ChangedArea between(byte[] one, int oneAt, byte[] other, int otherAt, int width, int height) {
        int rowBytes = 3 * width;
        int left = rowBytes;
        int right = -1;
        int top = -1;
        int bottom = -1;
        for (int y = 0; y < height; y++) {
            int a = oneAt + y * rowBytes;
            int b = otherAt + y * rowBytes;
            int first = Arrays.mismatch(one, a, a + rowBytes, other, b, b + rowBytes);
            if (first >= 0) {
                int last = rowBytes - 1;
                while (one[a + last] == other[b + last]) {
                    last--;
                }
                left = Math.min(left, first);
                right = Math.max(right, last);
                top = top < 0 ? y : top;
                bottom = y;
            }
        }
        return top < 0
                ? new ChangedArea(0, 0, 1, 1)
                : new ChangedArea(left / 3, top, right / 3 - left / 3 + 1, bottom - top + 1);
    }
}
