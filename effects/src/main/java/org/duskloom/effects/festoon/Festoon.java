package org.duskloom.effects.festoon;

import java.util.List;
import java.util.stream.Stream;
import org.duskloom.effects.kit.Dial;
import org.duskloom.effects.kit.Motion;
import org.duskloom.effects.kit.PaletteDial;
import org.duskloom.effects.kit.Projection;
import org.duskloom.effects.kit.Repeats;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.Effect;
import org.duskloom.engine.effect.Kernel;
import org.duskloom.engine.effect.NumberSetting;
import org.duskloom.engine.effect.PaletteSetting;
import org.duskloom.engine.effect.Setting;
import org.duskloom.engine.effect.SettingException;
import org.duskloom.engine.effect.Settings;

/**
 * Swags hung between points. The extent of the member along {@code toward} is cut into equal spans, in each of which a
 * chain hangs with its ends at {@code height}: a {@link Catenary}. Further {@code rows} of the same hang {@code
 * row-gap} under each other. With d the pixel's distance from the nearest point of the chains, in canvas units, and s
 * the share of the whole length of that row that lies before that point:
 *
 * <pre>
 * u = frac(bands · s − φ)
 * colour = palette(u) · band(d + thickness / 2, thickness, soft)
 * </pre>
 *
 * <p>One pass moves the colours by one band. Chains hang down where {@code toward} is 0; the picture turns with it.
 * Settings: {@code palette}; {@code bands} (how often the palette lies along the whole festoon, 0 to 1000, default 1);
 * {@code swags} (whole, 1 to 100, default 1); {@code sag} (how far each hangs through in its middle, in spans, 0 to 2,
 * default 0.3); {@code rise} (how much higher the second end of each is than its first, in spans, -2 to 2, default 0);
 * {@code height} (of the first end, share of the member's own height, -2 to 3, default 0.75); {@code rows} (whole, 1 to
 * 100, default 1); {@code row-gap} (how far each row hangs under the one before, share of the member's own height, 0 to
 * 3, default 0.25); {@code thickness} (canvas units, 0 to 2, default 0.2); {@code soft} (share of the thickness that
 * each edge takes, 0 to 0.5, default 0.25); {@code toward} (degrees, default 0); those of {@link Motion}.
 */
public final class Festoon implements Effect {
    static final PaletteSetting PALETTE =
            PaletteSetting.of("palette", "colours along the festoon, from its first end", "white");
    static final NumberSetting BANDS =
            NumberSetting.of("bands", "bands", 0, 1000, 1, "how often the palette lies along the whole festoon");
    static final NumberSetting SWAGS =
            NumberSetting.whole("swags", "swags", 1, 100, 1, "how many hang side by side across a member");
    static final NumberSetting SAG =
            NumberSetting.of("sag", "spans", 0, 2, 0.3, "how far each swag hangs through; 0 is a straight line");
    static final NumberSetting RISE = NumberSetting.of(
            "rise", "spans", -2, 2, 0, "how much higher the second end of each swag is than its first");
    static final NumberSetting HEIGHT = NumberSetting.of(
            "height", "share of the height", -2, 3, 0.75, "how high up the member the first end is; 1 is the top");
    static final NumberSetting ROWS =
            NumberSetting.whole("rows", "rows", 1, 100, 1, "how many garlands hang under each other");
    static final NumberSetting ROW_GAP = NumberSetting.of(
            "row-gap", "share of the height", 0, 3, 0.25, "how far each row hangs under the one before");
    static final NumberSetting THICKNESS = NumberSetting.of(
            "thickness", "canvas units", 0, 2, 0.2, "how thick the light is; 1 is half the longer side");
    static final NumberSetting SOFT = NumberSetting.of(
            "soft", "share of the thickness", 0, 0.5, 0.25, "how much of the thickness each soft edge takes");

    private static final List<Setting<?>> SETTINGS = Stream.of(
                    List.of(
                            PALETTE,
                            BANDS,
                            SWAGS,
                            SAG,
                            RISE,
                            HEIGHT,
                            ROWS,
                            ROW_GAP,
                            THICKNESS,
                            SOFT,
                            Projection.TOWARD),
                    Motion.SETTINGS)
            .<Setting<?>>flatMap(List::stream)
            .toList();

    /** For the service loader. */
    public Festoon() {}

    @Override
    public String name() {
        return "festoon";
    }

    @Override
    public String summary() {
        return "swags hung between points";
    }

    @Override
    public String formula() {
        return "rows of catenaries with the given sag; s = share of the length of a row before the point nearest to the pixel;"
                + " palette at frac(bands * s - passes gone by) within thickness, softened at both edges";
    }

    @Override
    public List<Setting<?>> settings() {
        return SETTINGS;
    }

    @Override
    public Kernel prepare(Settings settings, Canvas canvas) throws SettingException {
        Motion motion = Motion.of(settings);
        PaletteDial palette = PaletteDial.of(settings, PALETTE);
        Dial bands = Dial.of(settings, BANDS);
        Dial thickness = Dial.of(settings, THICKNESS);
        Dial soft = Dial.of(settings, SOFT);
        Hanging first = Hanging.of(canvas, settings);
        Repeats firstBands = Repeats.rising(first, bands);
        return () -> {
            Hanging hanging = first.isConstant() ? first : Hanging.of(canvas, settings);
            Repeats repeats = firstBands.isConstant() ? firstBands : Repeats.rising(hanging, bands);
            return new FestoonBrush(hanging, repeats, motion, thickness, soft, palette.open());
        };
    }
}
