package org.duskloom.effects.morph;

import java.util.List;
import org.duskloom.engine.color.LinearColor;

/** Ways between colours that do not move, block by block. Immutable. */
final class FixedWays implements ColorWays {
    private final WayBlock[] blocks;
    private final int count;

    /** The colours between which a way goes. */
    record Ends(LinearColor start, LinearColor end) {}

    FixedWays(List<Ends> ways) {
        count = ways.size();
        blocks = new WayBlock[(count + Colors.BLOCK - 1) / Colors.BLOCK];
        for (int block = 0; block < blocks.length; block++) {
            int first = block * Colors.BLOCK;
            blocks[block] = new WayBlock(ways.subList(first, Math.min(count, first + Colors.BLOCK)));
        }
    }

    @Override
    public int count() {
        return count;
    }

    @Override
    public void fill(double seconds, float share, Colors colors) {
        int first = 0;
        for (WayBlock block : blocks) {
            block.fill(share, colors);
            colors.put(first, block.count());
            first += block.count();
        }
    }
}
