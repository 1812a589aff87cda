package org.duskloom.effects.chase;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.assertj.core.data.Offset;
import org.duskloom.effects.Look;
import org.duskloom.effects.kit.Dial;
import org.duskloom.effects.kit.Ramp;
import org.duskloom.engine.color.ColorMix;
import org.duskloom.engine.effect.CueTime;
import org.duskloom.engine.effect.NumberKey;
import org.duskloom.engine.effect.NumberSetting;
import org.duskloom.engine.effect.NumberTrack;
import org.duskloom.engine.effect.Patch;
import org.duskloom.engine.effect.Settings;
import org.duskloom.engine.time.Easing;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A tail of red at its head and blue at its end, mixed in linear light. */
class TailTest {
    private static final Offset<Float> ROUNDING = within(2e-5f);
    private static final Ramp RED_TO_BLUE = Ramp.of(Look.evenly(ColorMix.LINEAR, "red", "blue"));

    /**
     * So far behind the head, as a share p of the length of the tail, the light is 1 - fade · p, red 1 - p of it and
     * blue p of it. From the end of the tail on there is none.
     */
    @ParameterizedTest
    @CsvSource({
        "0.5, 1, 0, 1, 1",
        "0.5, 1, 0.125, 0.75, 0.5625",
        "0.5, 1, 0.25, 0.5, 0.25",
        "0.5, 0, 0.25, 1, 0.5",
        "0.5, 0.5, 0.25, 0.75, 0.375",
        "0.5, 0.5, 0.5, 0, 0",
        "0.5, 0, 0.49999997, 1, 0",
        "0.5, 0, 0.9, 0, 0",
        "1, 0.5, 0.5, 0.75, 0.375",
        "1, 0, 0.99999994, 1, 0",
        "0, 0, 0, 0, 0"
    })
    void fadesBehindItsHead(double length, double fade, float behind, float alpha, float red) {
        Patch patch = painted(constant(length), constant(fade), 0, behind);
        assertThat(patch.alpha[0]).isCloseTo(alpha, ROUNDING);
        assertThat(patch.red[0]).isCloseTo(red, ROUNDING);
        assertThat(patch.blue[0]).isCloseTo(alpha - red, ROUNDING);
        assertThat(patch.green[0]).isZero();
    }

    /** A tail that grows from nothing to a whole gap in 4 s is a quarter of it after 1 s: 1/8 behind is its middle. */
    @Test
    void followsALengthThatMoves() {
        NumberTrack growing =
                NumberTrack.keyed(List.of(new NumberKey(0, 0, Easing.LINEAR), new NumberKey(4, 1, Easing.LINEAR)));
        Patch patch = painted(growing, constant(1), 1, 0.125f, 0.25f);
        assertThat(patch.alpha[0]).isCloseTo(0.5f, ROUNDING);
        assertThat(patch.alpha[1]).isZero();
    }

    private static Patch painted(NumberTrack length, NumberTrack fade, double second, float... behind) {
        Tail tail = new Tail(RED_TO_BLUE, dial("length", length), dial("fade", fade));
        tail.begin(new CueTime().set(second, 100));
        Patch patch = new Patch();
        patch.reset(0, behind.length);
        System.arraycopy(behind, 0, patch.first, 0, behind.length);
        tail.paint(patch);
        patch.fill();
        return patch;
    }

    private static NumberTrack constant(double value) {
        return NumberTrack.constant(value);
    }

    private static Dial dial(String name, NumberTrack track) {
        NumberSetting setting = NumberSetting.of(name, "", 0, 1, 0.5, "a number");
        return Dial.of(Settings.of(Map.of(setting, track)), setting);
    }
}
