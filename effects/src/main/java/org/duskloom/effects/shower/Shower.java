package org.duskloom.effects.shower;

import java.util.List;
import java.util.stream.Stream;
import org.duskloom.effects.kit.Motion;
import org.duskloom.effects.kit.PaletteDial;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.ChoiceSetting;
import org.duskloom.engine.effect.Effect;
import org.duskloom.engine.effect.Kernel;
import org.duskloom.engine.effect.NumberSetting;
import org.duskloom.engine.effect.PaletteSetting;
import org.duskloom.engine.effect.Setting;
import org.duskloom.engine.effect.SettingException;
import org.duskloom.engine.effect.Settings;

/**
 * Drops falling with tails. The member is cut into lanes along {@code toward}; a pixel's place along its lane is s, 0
 * to 1. Each lane has slots of 1/M passes, M being the greatest {@code density} rounded up to a whole number, at least
 * 1. Slot k holds a drop with probability density / M, decided and drawn by a hash of the member's key, the lane and k:
 *
 * <pre>
 * starts at T = (k + draw) / M,  falls with v = 1 / (1 + vary · draw)
 * head = v · (φ − T),  u = (head − s) / tail of the drop with the nearest head not behind the pixel
 * colour = palette · (1 − u) · side   where u &lt; 1, else nothing
 * </pre>
 *
 * <p>A drop with v = 1 crosses the member in one pass; at the start of the cue drops are already on their way. Side is
 * 1 within the middle {@code width} of the lane, 0 outside, with soft edges inside. With {@code reverse} the drops fall
 * the other way, their tails behind them. The palette is taken at u ({@code along: "tail"}) or drawn for each drop
 * ({@code "drop"}). The density counts as it is when the drop starts (with a moving phase: as if the phase had stayed).
 *
 * <p>Settings: {@code palette}; {@code along} (default {@code "tail"}); {@code lanes} (whole, 1 to 500, default 24);
 * {@code density} (drops that a lane has in one pass, on the average, 0 to 10, default 0.7); {@code tail} (share of the
 * way, 0 to 2, default 0.4); {@code vary} (share, 0 to 1, default 0.5); {@code width} (share of the lane, 0 to 1,
 * default 1); {@code soft} (share of the width, 0 to 0.5, default 0); {@code toward} (degrees, default 270); those of
 * {@link Motion}.
 */
public final class Shower implements Effect {
    static final PaletteSetting PALETTE =
            PaletteSetting.of("palette", "colours from the head to the end of the tail, or to draw from", "white");
    static final ChoiceSetting ALONG = ChoiceSetting.of(
            "along", "whether the palette runs along the tail or each drop draws one colour", "tail", "drop");
    static final NumberSetting LANES =
            NumberSetting.whole("lanes", "lanes", 1, 500, 24, "how many drops fit side by side");
    static final NumberSetting DENSITY = NumberSetting.of(
            "density", "drops per lane and pass", 0, 10, 0.7, "how many drops a lane has in one pass, on the average");
    static final NumberSetting TAIL =
            NumberSetting.of("tail", "share of the way", 0, 2, 0.4, "how long the tail of a drop is");
    static final NumberSetting VARY = NumberSetting.of(
            "vary", "share", 0, 1, 0.5, "how unlike the drops are: 1 lets the slowest take twice the time");
    static final NumberSetting WIDTH =
            NumberSetting.of("width", "share of the lane", 0, 1, 1, "how wide the light of a lane is");
    static final NumberSetting SOFT =
            NumberSetting.of("soft", "share of the width", 0, 0.5, 0, "how much of the width each soft edge takes");
    static final NumberSetting TOWARD = NumberSetting.of(
            "toward", "degrees", -36_000, 36_000, 270, "where drops fall: 0 is right, 90 up, 180 left, 270 down");

    private static final List<Setting<?>> SETTINGS = Stream.of(
                    List.of(PALETTE, ALONG, LANES, DENSITY, TAIL, VARY, WIDTH, SOFT, TOWARD), Motion.SETTINGS)
            .<Setting<?>>flatMap(List::stream)
            .toList();

    /** For the service loader. */
    public Shower() {}

    @Override
    public String name() {
        return "shower";
    }

    @Override
    public String summary() {
        return "drops falling with tails";
    }

    @Override
    public String formula() {
        return "lanes along toward; drops start at times drawn for each lane; u = (way of the drop - place along the"
                + " lane) / tail; palette at u, or one colour drawn for the drop, times 1 - u, where 0 <= u < 1";
    }

    @Override
    public boolean usesChance() {
        return true;
    }

    @Override
    public List<Setting<?>> settings() {
        return SETTINGS;
    }

    @Override
    public Kernel prepare(Settings settings, Canvas canvas) throws SettingException {
        Motion motion = Motion.of(settings);
        DropRule rule = DropRule.of(settings, motion);
        PaletteDial palette = PaletteDial.of(settings, PALETTE);
        boolean byDrop = settings.value(ALONG).equals("drop");
        Lanes first = Lanes.of(canvas, settings);
        return () -> {
            Lanes lanes = first.isConstant() ? first : Lanes.of(canvas, settings);
            return new ShowerBrush(lanes, new Drops(canvas, lanes, rule), rule, palette.open(), byDrop);
        };
    }
}
