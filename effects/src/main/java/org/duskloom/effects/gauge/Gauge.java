package org.duskloom.effects.gauge;

import java.util.List;
import org.duskloom.effects.kit.Dial;
import org.duskloom.effects.kit.PaletteDial;
import org.duskloom.effects.kit.Polar;
import org.duskloom.effects.kit.Projection;
import org.duskloom.effects.kit.SharePlane;
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
 * Light that rises to a height. With s from 0 to 1 in each member, a the amount and w the width of the soft edge:
 *
 * <pre>
 * e = smooth((a · (1 + w) − s) / w)   where w &gt; 0
 *     1 where s &lt; a or a = 1, else 0  where w = 0
 * colour = palette · (low + (1 − low) · e)
 * </pre>
 *
 * <p>smooth is that of a soft edge: x²(3 − 2x), x first brought into 0 to 1. So nothing is lit where a is 0, and
 * everything where it is 1. s is the place along {@code toward}; with {@code from: "centre"} the distance from the
 * middle; with {@code from: "order"} the place along the order of the pixels, (position + 1/2) / count. The palette is
 * taken at s, or with {@code along: "amount"} at a.
 *
 * <p>Settings: {@code palette}; {@code along} ({@code "place"} or {@code "amount"}, default {@code "place"}); {@code
 * amount} (0 to 1, default 0.5); {@code soft} (0 to 1, default 0.1); {@code low} (0 to 1, default 0); {@code from}
 * (default {@code "edge"}); {@code toward} (degrees, default 90).
 */
public final class Gauge implements Effect {
    static final PaletteSetting PALETTE = PaletteSetting.of("palette", "colours from the foot to the top", "white");
    static final ChoiceSetting ALONG = ChoiceSetting.of(
            "along", "whether the palette runs along the way or all has the colour of the amount", "place", "amount");
    static final NumberSetting AMOUNT =
            NumberSetting.of("amount", "share of the way", 0, 1, 0.5, "how high the light is");
    static final NumberSetting SOFT =
            NumberSetting.of("soft", "share of the way", 0, 1, 0.1, "how wide the edge of the light is");
    static final NumberSetting LOW = NumberSetting.of("low", "share", 0, 1, 0, "how much light is left above");
    static final ChoiceSetting FROM = ChoiceSetting.of(
            "from",
            "where the light rises from: one edge, the middle, or the first pixel of the order",
            "edge",
            "centre",
            "order");
    static final NumberSetting TOWARD = NumberSetting.of(
            "toward", "degrees", -36_000, 36_000, 90, "where it rises to: 0 is right, 90 up, 180 left, 270 down");

    private static final List<Setting<?>> SETTINGS = List.of(PALETTE, ALONG, AMOUNT, SOFT, LOW, FROM, TOWARD);

    /** For the service loader. */
    public Gauge() {}

    @Override
    public String name() {
        return "gauge";
    }

    @Override
    public String summary() {
        return "light rising to a height";
    }

    @Override
    public String formula() {
        return "s = place along toward, distance from the centre, or place along the order, 0 to 1 in the member; lit where s <"
                + " amount, the edge soft wide; palette at s or at amount";
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
        String from = settings.value(FROM);
        if (!from.equals(FROM.standard()) && settings.isGiven(TOWARD)) {
            throw new SettingException(
                    "toward", "toward says nothing where from is \"" + from + "\"", "leave out one of the two");
        }
        PaletteDial palette = PaletteDial.of(settings, PALETTE);
        Edge edge = new Edge(Dial.of(settings, AMOUNT), Dial.of(settings, SOFT), Dial.of(settings, LOW));
        boolean byAmount = settings.value(ALONG).equals("amount");
        Projection projection = Projection.of(canvas, Dial.of(settings, TOWARD));
        SharePlane fixed = switch (from) {
            case "centre" -> SharePlane.fixed(Polar.radiiFromTheMiddle(canvas));
            case "order" -> SharePlane.fixed(placesInOrder(canvas));
            default -> null;
        };
        return () -> new GaugeBrush(fixed == null ? projection.open() : fixed, edge, palette.open(), byAmount);
    }

    private static float[] placesInOrder(Canvas canvas) {
        float[] places = new float[canvas.pixelCount()];
        for (int pixel = 0; pixel < places.length; pixel++) {
            places[pixel] = (float) ((canvas.position()[pixel] + 0.5) / canvas.stepCount(canvas.memberOf()[pixel]));
        }
        return places;
    }
}
