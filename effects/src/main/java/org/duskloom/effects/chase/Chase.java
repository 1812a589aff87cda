package org.duskloom.effects.chase;

import java.util.List;
import java.util.stream.Stream;
import org.duskloom.effects.kit.Dial;
import org.duskloom.effects.kit.Motion;
import org.duskloom.effects.kit.PaletteDial;
import org.duskloom.effects.kit.Repeats;
import org.duskloom.effects.kit.SharePlane;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.Effect;
import org.duskloom.engine.effect.Kernel;
import org.duskloom.engine.effect.NumberSetting;
import org.duskloom.engine.effect.PaletteSetting;
import org.duskloom.engine.effect.Setting;
import org.duskloom.engine.effect.SettingException;
import org.duskloom.engine.effect.Settings;

/**
 * Lights running along the order. With count the number of steps of the pixel's member:
 *
 * <pre>
 * s = (position + 0.5) / count
 * u = frac(heads · (φ − s))                         how far behind its head, in gaps from head to head
 * colour = palette(u / tail) · (1 − fade · u / tail)   where u &lt; tail, else nothing
 * </pre>
 *
 * <p>One pass is the whole order. Settings: {@code palette} (from the head to the end of the tail); {@code heads}
 * (whole, 1 to 1000, default 1); {@code tail} (in gaps, 0 to 1, default 0.5); {@code fade} (0 to 1, default 1; 0 makes
 * a block of even light); those of {@link Motion}.
 */
public final class Chase implements Effect {
    static final PaletteSetting PALETTE =
            PaletteSetting.of("palette", "colours from the head to the end of the tail", "white");
    static final NumberSetting HEADS = NumberSetting.whole("heads", "lights", 1, 1000, 1, "how many lights run");
    static final NumberSetting TAIL =
            NumberSetting.of("tail", "gaps", 0, 1, 0.5, "how long each light is; 1 reaches to the head of the next");
    static final NumberSetting FADE = NumberSetting.of(
            "fade", "share", 0, 1, 1, "how much light the tail loses toward its end; 0 makes an even block");

    private static final List<Setting<?>> SETTINGS = Stream.of(List.of(PALETTE, HEADS, TAIL, FADE), Motion.SETTINGS)
            .<Setting<?>>flatMap(List::stream)
            .toList();

    /** For the service loader. */
    public Chase() {}

    @Override
    public String name() {
        return "chase";
    }

    @Override
    public String summary() {
        return "lights running along the order";
    }

    @Override
    public String formula() {
        return "s = (position + 0.5) / count; u = frac(heads * (passes gone by - s));"
                + " palette at u / tail, times 1 - fade * u / tail, where u < tail";
    }

    @Override
    public List<Setting<?>> settings() {
        return SETTINGS;
    }

    @Override
    public boolean usesOrder() {
        return true;
    }

    @Override
    public Kernel prepare(Settings settings, Canvas canvas) throws SettingException {
        SharePlane places = SharePlane.fixed(places(canvas));
        Motion motion = Motion.of(settings);
        PaletteDial palette = PaletteDial.of(settings, PALETTE);
        Dial heads = Dial.of(settings, HEADS);
        Dial tail = Dial.of(settings, TAIL);
        Dial fade = Dial.of(settings, FADE);
        Repeats first = Repeats.falling(places, heads);
        return () -> new ChaseBrush(
                first.isConstant() ? first : Repeats.falling(places, heads),
                heads,
                motion,
                new Tail(palette.open(), tail, fade));
    }

    /** The middle of each pixel's step along the order of its member, in (0, 1). */
    private static float[] places(Canvas canvas) {
        float[] places = new float[canvas.pixelCount()];
        for (int pixel = 0; pixel < places.length; pixel++) {
            int count = canvas.stepCount(canvas.memberOf()[pixel]);
            places[pixel] = (float) ((canvas.position()[pixel] + 0.5) / count);
        }
        return places;
    }
}
