package org.duskloom.effects;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.ThreadMXBean;
import java.io.IOException;
import java.io.InputStream;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.duskloom.engine.color.ColorMix;
import org.duskloom.engine.color.LinearColor;
import org.duskloom.engine.color.Palette;
import org.duskloom.engine.color.PaletteStyle;
import org.duskloom.engine.effect.Brush;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.CueTime;
import org.duskloom.engine.effect.EffectRegistry;
import org.duskloom.engine.effect.Kernel;
import org.duskloom.engine.effect.Patch;
import org.duskloom.engine.effect.SettingException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What the engine relies on, whatever the effect: see {@link Brush}. */
class EveryEffectTest {
    private static final double[] SECONDS = {0, 1 / 3.0, 0.025, 2, 1.999, 7.5, 1e5};
    private static final int PIXELS = 5000;
    private static final int PIXELS_OF_MANY_FRAMES = 500;
    private static final Palette TRANSLUCENT = Palette.evenly(
            List.of(Look.color("red"), Look.color("#00ff0080"), LinearColor.TRANSPARENT),
            new PaletteStyle(ColorMix.OKLAB, false, true));

    private static final Map<String, UnaryOperator<Look>> VARIANTS = new LinkedHashMap<>();

    static {
        VARIANTS.put("as it is", look -> look);
        VARIANTS.put(
                "three colours",
                look -> look.withIfThere("palette", Look.evenly(ColorMix.OKLAB, "navy", "red", "gold")));
        VARIANTS.put(
                "translucent, reversed",
                look -> look.withIfThere("palette", TRANSLUCENT).flagIfThere("reverse"));
        VARIANTS.put("all numbers moving", Look::movingAll);
        VARIANTS.put(
                "one colour moving", look -> look.movingColors(Look.color("gold"), Look.color("rgb(20 60 200 / 0.4)")));
        VARIANTS.put(
                "palettes and numbers moving",
                look -> look.movingAll()
                        .movingPalettes(
                                Look.evenly(ColorMix.OKLAB, "navy", "red", "gold"),
                                TRANSLUCENT,
                                Look.evenly(ColorMix.OKLCH, "teal", "plum")));
    }

    static Stream<Arguments> looks() {
        return EffectRegistry.installed().names().stream()
                .flatMap(name -> VARIANTS.keySet().stream().map(variant -> Arguments.of(name, variant)));
    }

    private static Look look(String name, String variant) {
        return VARIANTS.get(variant).apply(Look.of(name));
    }

    @Test
    void areInstalled() {
        assertThat(EffectRegistry.installed().names())
                .contains(
                        "chase", "drift", "festoon", "morph", "pile", "swell", "radiate", "shower", "spin", "sweep",
                        "twinkle", "wash");
    }

    /** The runnable jar has no modules and finds the effects by this file. */
    @Test
    void areInstalledOnTheClassPathToo() throws IOException {
        try (InputStream services =
                Look.class.getResourceAsStream("/META-INF/services/org.duskloom.engine.effect.Effect")) {
            String[] listed = new String(services.readAllBytes(), StandardCharsets.UTF_8).split("\n");
            assertThat(listed)
                    .containsExactlyInAnyOrder(EffectRegistry.installed().effects().stream()
                            .map(effect -> effect.getClass().getName())
                            .toArray(String[]::new));
        }
    }

    @ParameterizedTest(name = "{0}, {1}")
    @MethodSource("looks")
    void paintsPremultipliedLight(String name, String variant) throws SettingException {
        for (Canvas canvas : hostileCanvases()) {
            Brush brush = look(name, variant).on(canvas).open();
            for (double second : SECONDS) {
                Painting painting = Painting.of(brush, canvas, second, Patch.CAPACITY, 0);
                for (int i = 0; i < canvas.pixelCount(); i++) {
                    double alpha = painting.alpha()[i];
                    assertThat(alpha).isBetween(0.0, 1.0);
                    assertThat((double) painting.red()[i]).isBetween(0.0, alpha + 1e-6);
                    assertThat((double) painting.green()[i]).isBetween(0.0, alpha + 1e-6);
                    assertThat((double) painting.blue()[i]).isBetween(0.0, alpha + 1e-6);
                }
            }
        }
    }

    /** None, one, two at one place, a row, a column, a tilted row whose ends differ by rounding only, and many. */
    private static List<Canvas> hostileCanvases() {
        double[][] row = Canvases.row(17);
        return List.of(
                Canvases.of(),
                Canvases.of(Canvases.row(1)),
                Canvases.of(new double[] {0.3, -0.2}, new double[] {0.3, -0.2}),
                Canvases.of(row),
                Canvases.of(Canvases.moved(row, 0, 1, 1, 0)),
                Canvases.of(Canvases.moved(row, 1e-17, 0, 1, 0)),
                new Canvases()
                        .member("a", Canvases.row(1))
                        .member("b", row)
                        .member("c", Canvases.scattered(30))
                        .build());
    }

    @ParameterizedTest(name = "{0}, {1}")
    @MethodSource("looks")
    void paintsTheSameBitsInAnySplit(String name, String variant) throws SettingException {
        Canvas canvas = Canvases.of(Canvases.scattered(PIXELS));
        Brush brush = look(name, variant).on(canvas).open();
        for (double second : SECONDS) {
            Painting whole = Painting.of(brush, canvas, second, Patch.CAPACITY, 0);
            assertThat(Painting.of(brush, canvas, second, 37, 5).isSame(whole)).isTrue();
            assertThat(Painting.of(brush, canvas, second, 1000, 11).isSame(whole))
                    .isTrue();
        }
    }

    /** Forward, backward, far away and twice the same: what a brush keeps must not show. */
    @ParameterizedTest(name = "{0}, {1}")
    @MethodSource("looks")
    void paintsTheSameBitsInAnyOrderOfFrames(String name, String variant) throws SettingException {
        Canvas canvas = Canvases.of(Canvases.scattered(400));
        Kernel kernel = look(name, variant).on(canvas);
        Brush used = kernel.open();
        double[] order = {0, 0.025, 0.05, 1.9, 2.1, 2.075, 0.3, 0.3, 5000, 5000.5, 4999.9, 0, 3, 1.5, 3.4};
        for (double second : order) {
            Painting fresh = Painting.of(kernel.open(), canvas, second, Patch.CAPACITY, 0);
            assertThat(Painting.of(used, canvas, second, Patch.CAPACITY, 0).isSame(fresh))
                    .as("at " + second)
                    .isTrue();
        }
    }

    /**
     * A thousand frames, of which most lie between the keys of what moves, may allocate less than a byte for each,
     * which leaves room for the measurement itself only.
     */
    @ParameterizedTest(name = "{0}, {1}")
    @MethodSource("looks")
    void allocatesNothingForAFrame(String name, String variant) throws SettingException {
        Canvas canvas = Canvases.of(Canvases.scattered(PIXELS_OF_MANY_FRAMES));
        Brush brush = look(name, variant).on(canvas).open();
        Patch patch = new Patch();
        CueTime time = new CueTime();
        paintFrames(brush, time, patch, 2000);
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();

        long before = threads.getThreadAllocatedBytes(Thread.currentThread().getId());
        paintFrames(brush, time, patch, 1000);
        long allocated = threads.getThreadAllocatedBytes(Thread.currentThread().getId()) - before;

        assertThat(allocated).isLessThan(1000);
    }

    private static void paintFrames(Brush brush, CueTime time, Patch patch, int frames) {
        for (int frame = 0; frame < frames; frame++) {
            brush.begin(time.set(frame / 300.0, 60));
            patch.reset(0, PIXELS_OF_MANY_FRAMES);
            brush.paint(0, patch);
            patch.fill();
        }
    }
}
