package org.duskloom.engine.plan;

import java.util.Arrays;
import java.util.BitSet;
import org.duskloom.engine.effect.Patch;

/**
 * Where the pixels of a canvas lie on the stage. The stage is cut into tiles of {@link Patch#CAPACITY} pixels in wiring
 * order; canvas pixels stand in the order of the stage, so those of a tile follow each other, and stretches without a
 * gap are runs.
 */
public final class PixelRuns {
    private final int[] canvasPixel;
    private final int[] cell;
    private final int[] length;
    private final int[] firstRunOfTile;
    private final int firstPixel;
    private final int endPixel;

    /**
     * The runs of a canvas.
     *
     * @param stagePixels global pixel indices of the canvas pixels, rising
     * @param stagePixelCount how many pixels the stage has
     */
    PixelRuns(int[] stagePixels, int stagePixelCount) {
        int tiles = tileCount(stagePixelCount);
        int[] pixel = new int[stagePixels.length];
        int[] runCell = new int[stagePixels.length];
        int[] runLength = new int[stagePixels.length];
        firstRunOfTile = new int[tiles + 1];
        int runs = 0;
        int tile = 0;
        for (int i = 0; i < stagePixels.length; i++) {
            int tileOfPixel = stagePixels[i] / Patch.CAPACITY;
            boolean goesOn = i > 0 && stagePixels[i] == stagePixels[i - 1] + 1 && tileOfPixel == tile;
            while (tile < tileOfPixel) {
                firstRunOfTile[++tile] = runs;
            }
            if (goesOn) {
                runLength[runs - 1]++;
            } else {
                pixel[runs] = i;
                runCell[runs] = stagePixels[i] % Patch.CAPACITY;
                runLength[runs++] = 1;
            }
        }
        Arrays.fill(firstRunOfTile, tile + 1, tiles + 1, runs);
        canvasPixel = Arrays.copyOf(pixel, runs);
        cell = Arrays.copyOf(runCell, runs);
        length = Arrays.copyOf(runLength, runs);
        firstPixel = stagePixels.length == 0 ? 0 : stagePixels[0];
        endPixel = stagePixels.length == 0 ? 0 : stagePixels[stagePixels.length - 1] + 1;
    }

    /** How many tiles a stage of so many pixels has. */
    public static int tileCount(int stagePixelCount) {
        return (stagePixelCount + Patch.CAPACITY - 1) / Patch.CAPACITY;
    }

    /** How many pixels there are in all runs. */
    int pixelCount() {
        return length.length == 0 ? 0 : canvasPixel[length.length - 1] + length[length.length - 1];
    }

    /** Whether any of these pixels of the stage is among them. */
    boolean hasOneOf(BitSet stagePixels) {
        for (int tile = 0; tile + 1 < firstRunOfTile.length; tile++) {
            for (int run = firstRun(tile); run < endRun(tile); run++) {
                int first = tile * Patch.CAPACITY + cell[run];
                int found = stagePixels.nextSetBit(first);
                if (found < 0) {
                    return false;
                }
                if (found < first + length[run]) {
                    return true;
                }
            }
        }
        return false;
    }

    /** The first of the pixels on the stage. */
    public int firstPixel() {
        return firstPixel;
    }

    /** The pixel after the last of them; not after the first where there are none. */
    public int endPixel() {
        return endPixel;
    }

    /** The first run in a tile. */
    public int firstRun(int tile) {
        return firstRunOfTile[tile];
    }

    /** The run after the last in a tile. */
    public int endRun(int tile) {
        return firstRunOfTile[tile + 1];
    }

    /** The canvas pixel that a run starts with. */
    public int canvasPixel(int run) {
        return canvasPixel[run];
    }

    /** The cell of the tile that a run starts in. */
    public int cell(int run) {
        return cell[run];
    }

    /** How many pixels a run has. */
    public int length(int run) {
        return length[run];
    }
}
