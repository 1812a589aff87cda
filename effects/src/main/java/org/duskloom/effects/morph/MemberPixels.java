package org.duskloom.effects.morph;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.duskloom.engine.effect.Canvas;

/**
 * The pixels of each member of a canvas that has any.
 *
 * @param numbers the members
 * @param pixels their canvas pixels, rising
 */
record MemberPixels(int[] numbers, List<int[]> pixels) {
    static MemberPixels of(Canvas canvas) {
        int[] counts = new int[canvas.memberCount()];
        for (int member : canvas.memberOf()) {
            counts[member]++;
        }
        int[][] pixels = new int[counts.length][];
        Arrays.setAll(pixels, member -> new int[counts[member]]);
        for (int pixel = canvas.pixelCount() - 1; pixel >= 0; pixel--) {
            int member = canvas.memberOf()[pixel];
            pixels[member][--counts[member]] = pixel;
        }
        int[] numbers = IntStream.range(0, pixels.length)
                .filter(member -> pixels[member].length > 0)
                .toArray();
        return new MemberPixels(
                numbers, Arrays.stream(pixels).filter(one -> one.length > 0).toList());
    }
}
