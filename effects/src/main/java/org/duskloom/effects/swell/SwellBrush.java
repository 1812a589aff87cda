package org.duskloom.effects.swell;

import java.util.Arrays;
import org.duskloom.effects.kit.Dial;
import org.duskloom.effects.kit.Ramp;
import org.duskloom.engine.effect.Brush;
import org.duskloom.engine.effect.CueTime;
import org.duskloom.engine.effect.Patch;

/** Paints one colour of {@link Swell} everywhere. */
final class SwellBrush implements Brush {
    private final PulseClock clock;
    private final Envelope envelope;
    private final Dial low;
    private final SwellColors colors;
    private final Ramp ramp;

    private final float[] place = new float[1];
    private final float[] red = new float[1];
    private final float[] green = new float[1];
    private final float[] blue = new float[1];
    private final float[] alpha = new float[1];
    private float level;

    SwellBrush(PulseClock clock, Envelope envelope, Dial low, SwellColors colors, Ramp ramp) {
        this.clock = clock;
        this.envelope = envelope;
        this.low = low;
        this.colors = colors;
        this.ramp = ramp;
    }

    @Override
    public void begin(CueTime time) {
        double passed = clock.passed(time);
        double bright = clock.isOver(time) ? 0 : envelope.at(passed, time, clock.isReversed());
        double least = low.at(time);
        level = (float) (least + (1 - least) * bright);
        place[0] = colors.place(clock.pass(time), passed, bright);
        ramp.begin(time.seconds());
        ramp.fill(place, 0, 1, red, green, blue, alpha);
    }

    @Override
    public void paint(int firstPixel, Patch patch) {
        Arrays.fill(patch.red, patch.from(), patch.to(), red[0] * level);
        Arrays.fill(patch.green, patch.from(), patch.to(), green[0] * level);
        Arrays.fill(patch.blue, patch.from(), patch.to(), blue[0] * level);
        if (alpha[0] * level == 1) {
            patch.makeOpaque();
        } else {
            Arrays.fill(patch.alpha, patch.from(), patch.to(), alpha[0] * level);
        }
    }
}
