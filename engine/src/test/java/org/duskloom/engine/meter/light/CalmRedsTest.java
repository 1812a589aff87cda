package org.duskloom.engine.meter.light;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import org.duskloom.engine.frame.FramePixels;
import org.junit.jupiter.api.Test;

/** Colours that {@link RedSwings} says need no look: whoever looks at them all the same finds no more. */
class CalmRedsTest {
    private static final int FRAMES = 400;
    private static final int SECOND = 40;

    /** Reds, oranges that just are and just are not saturated, pinks, dark reds, dull yellows, and others. */
    private static final int[] COLORS = {
        0x000000, 0xFF0000, 0xFF8800, 0xFF8900, 0xFF8C00, 0x470000, 0x460000, 0x300000, 0x1E0000, 0x0D0000, 0xDC143C,
        0xFF6347, 0xFFA500, 0xFF4040, 0xFF6060, 0x800000, 0xFFFFFF, 0x808080, 0x0000FF, 0x00FF00, 0xFF00FF, 0x804000,
        0x4E3A00, 0x4E4500, 0xA86B00, 0xE7BD3C
    };

    /** Colours that turn quickly, and such as are held for longer than the second that is kept. */
    @Test
    void whatNeedsNoLookChangesNothing() {
        SplittableRandom random = new SplittableRandom(320);
        int skipped = 0;
        for (int round = 0; round < 400; round++) {
            int palette = 2 + random.nextInt(COLORS.length - 1);
            PastColors past = new PastColors(SignalLayout.of(FramePixels.unnamed(1)), SECOND);
            RedSwings all = new RedSwings(2, past);
            RedSwings some = new RedSwings(2, past);
            int hold = 1 + round % 4 * 20;
            int[] used = random.ints(palette, 0, COLORS.length).toArray();
            int color = 0;
            for (int place = 0; place < FRAMES; place++) {
                color = random.nextInt(hold) == 0 ? COLORS[used[random.nextInt(palette)]] : color;
                byte[] rgb = {(byte) (color >> 16), (byte) (color >> 8), (byte) color};
                past.keep(place, rgb, 0);
                long light = CodeLight.of(rgb, 0);
                int excess = CodeLight.redExcess(light);
                boolean looked = some.mayChange(0, CodeLight.luminance(light), excess);
                int found = looked ? some.step(0, place, excess) : 0;
                assertThat(found).as("round %d, frame %d", round, place).isEqualTo(all.step(0, place, excess));
                skipped += looked ? 0 : 1;
            }
        }
        assertThat(skipped).as("colours that were not looked at").isGreaterThan(1000);
    }
}
