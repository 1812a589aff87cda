package org.duskloom.effects.morph;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.Effect;
import org.duskloom.engine.effect.FlagSetting;
import org.duskloom.engine.effect.Kernel;
import org.duskloom.engine.effect.PaletteSetting;
import org.duskloom.engine.effect.PaletteTrack;
import org.duskloom.engine.effect.Setting;
import org.duskloom.engine.effect.SettingException;
import org.duskloom.engine.effect.Settings;
import org.duskloom.engine.effect.TextSetting;

/**
 * Light moving from one part to another. In each member the pixels of {@code from} are paired with those of {@code to}
 * at least total squared distance, the smaller part used evenly ({@link org.duskloom.effects.assign.EvenPairing}); each
 * pair is a dot. With u = frac(φ), or 1 − |2u − 1| in its place where {@code back} is set:
 *
 * <pre>
 * p = easing(u)
 * place = start · (1 − p) + end · p
 * reach = size · spacing · (1 + (bulge − 1) · 4p(1 − p))
 * level of a pixel at distance d = (1 − d² / reach²)²      where d &lt; reach, else 0
 * colour = mix in OKLab, at p, of palette at (i + 0.5) / n and palette-to at (j + 0.5) / m
 * </pre>
 *
 * <p>The spacing is the median distance of a part's pixels from their nearest neighbours on the canvas, going from that
 * of the one part to that of the other as p does; i is the pixel's number within {@code from}, j the partner's within
 * {@code to}. Where the easing leaves [0, 1] dots go beyond their ends, but colour and reach do not. Where dots meet,
 * each channel has the greatest of their lights. At p = 0 every pixel of {@code from} shines fully, at p = 1 every
 * pixel of {@code to}, and with size 1 their neighbours are dark.
 *
 * <p>Palettes that move give each dot the two ends of its way anew in every frame.
 *
 * <p>A frame costs about as much as the number of dots times the number of pixels within reach of one; pixels at one
 * place all count. Settings: {@code from}, {@code to} (a part of each member; with one canvas for all, any address);
 * {@code palette} (along {@code from}); {@code palette-to} (along {@code to}; the same as {@code palette} if not set);
 * {@code size} (0 to 100, default 1); {@code bulge} (0 to 10, default 2); {@code easing} (CSS easing, default
 * ease-in-out); {@code back}; {@code only-parts} (no other pixels are lit on the way); those of {@link
 * org.duskloom.effects.kit.Motion}.
 */
public final class Morph implements Effect {
    private static final int LONGEST_ADDRESS = 500;

    private static final String PART = "a part of the members";

    static final TextSetting FROM =
            TextSetting.of("from", "part", PART, "", LONGEST_ADDRESS, "where the light comes from; must be set");
    static final TextSetting TO =
            TextSetting.of("to", "part", PART, "", LONGEST_ADDRESS, "where the light goes; must be set");
    static final PaletteSetting PALETTE = PaletteSetting.of("palette", "colours at the start, along from", "white");
    static final PaletteSetting PALETTE_TO =
            PaletteSetting.of("palette-to", "colours at the end, along to; if not set, those of palette", "white");
    static final FlagSetting ONLY_PARTS =
            FlagSetting.of("only-parts", "lights no pixels but those of the two parts on the way");

    private static final List<Setting<?>> SETTINGS = Stream.of(
                    List.of(FROM, TO, PALETTE, PALETTE_TO), DotSize.SETTINGS, Way.SETTINGS, List.of(ONLY_PARTS))
            .<Setting<?>>flatMap(List::stream)
            .toList();

    /** For the service loader. */
    public Morph() {}

    @Override
    public String name() {
        return "morph";
    }

    @Override
    public String summary() {
        return "light moving from one part to another";
    }

    @Override
    public String formula() {
        return "pixels of from and to paired at least total squared distance, each pair a dot; p = easing(u),"
                + " u = frac(passes gone by); a dot at p of its way lights pixels at distance d by"
                + " (1 - d^2 / reach^2)^2, reach = size * spacing * (1 + (bulge - 1) * 4p(1 - p))";
    }

    @Override
    public List<Setting<?>> settings() {
        return SETTINGS;
    }

    @Override
    public Kernel prepare(Settings settings, Canvas canvas) throws SettingException {
        Way way = Way.of(settings);
        DotSize size = DotSize.of(settings);
        MemberPixels members = MemberPixels.of(canvas);
        List<int[]> from = Parts.of(canvas, members.numbers(), settings, FROM);
        List<int[]> to = Parts.of(canvas, members.numbers(), settings, TO);
        PaletteTrack palette = settings.value(PALETTE);
        PaletteTrack paletteTo = settings.isGiven(PALETTE_TO) ? settings.value(PALETTE_TO) : palette;
        boolean onlyParts = settings.value(ONLY_PARTS);
        DotMaker maker = new DotMaker(canvas, palette, paletteTo);
        List<Legs> legs = new ArrayList<>();
        for (int k = 0; k < members.numbers().length; k++) {
            int[] lit =
                    onlyParts ? union(from.get(k), to.get(k)) : members.pixels().get(k);
            legs.add(new Legs(maker.dots(lit, from.get(k), to.get(k)), size));
        }
        Supplier<ColorWays> ways = maker.ways();
        return () -> new MorphBrush(legs, way, size, ways.get(), canvas.pixelCount());
    }

    private static int[] union(int[] from, int[] to) {
        return IntStream.concat(IntStream.of(from), IntStream.of(to)).distinct().toArray();
    }
}
