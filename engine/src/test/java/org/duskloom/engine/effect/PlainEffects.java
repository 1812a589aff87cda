package org.duskloom.engine.effect;

import java.util.List;
import java.util.stream.Stream;
import org.duskloom.engine.color.LinearColor;

/** Effects so simple that what they paint can be worked out on paper. */
public final class PlainEffects {
    static final ColorSetting COLOR = ColorSetting.of("color", "white", "the colour");

    private static final List<NumberSetting> LIGHT_SETTINGS = Stream.of("r", "g", "b", "a")
            .map(name -> NumberSetting.of(name, "share", 0, 1, 1, "how much of it"))
            .toList();

    /** One colour everywhere, which may move. */
    public static final Effect SOLID = new Plain("solid", List.of(COLOR), (settings, canvas) -> {
        ColorTrack track = settings.value(COLOR);
        return (pixel, seconds, length, rgba) -> {
            LinearColor color = track.at(seconds);
            float a = color.alpha();
            put(rgba, a * color.red(), a * color.green(), a * color.blue(), a);
        };
    });

    /** Linear light that does not move: red, green, blue and alpha, not premultiplied. */
    public static final Effect LIGHT = new Plain("light", LIGHT_SETTINGS, (settings, canvas) -> {
        double red = settings.value(LIGHT_SETTINGS.get(0)).at(0);
        double green = settings.value(LIGHT_SETTINGS.get(1)).at(0);
        double blue = settings.value(LIGHT_SETTINGS.get(2)).at(0);
        double alpha = settings.value(LIGHT_SETTINGS.get(3)).at(0);
        return (pixel, seconds, length, rgba) -> put(rgba, red * alpha, green * alpha, blue * alpha, alpha);
    });

    /** Red, green and blue from 0 to 1 as x, y and z go from -1 to 1. */
    public static final Effect PLACE = new Plain(
            "place",
            List.of(),
            (settings, canvas) -> (pixel, seconds, length, rgba) ->
                    put(rgba, share(canvas.x()[pixel]), share(canvas.y()[pixel]), share(canvas.z()[pixel]), 1));

    /** Red from 0 to 1 along the order, green by member, blue from the pixel's random key. */
    public static final Effect RANK =
            new Plain("rank", List.of(), (settings, canvas) -> (pixel, seconds, length, rgba) -> {
                int member = canvas.memberOf()[pixel];
                double along = (canvas.position()[pixel] + 0.5) / canvas.stepCount(member);
                put(rgba, along, (member + 0.5) / canvas.memberCount(), (canvas.pixelKey()[pixel] >>> 8) * 0x1p-24, 1);
            });

    /** Red is the fraction of the second, green the share of the cue that has passed, blue full. */
    public static final Effect CLOCK = new Plain(
            "clock",
            List.of(),
            (settings, canvas) -> (pixel, seconds, length, rgba) ->
                    put(rgba, seconds - Math.floor(seconds), Math.min(1, seconds / length), 1, 1));

    /** Everything at once: depends on place, order, key and time, with an alpha that does so too. */
    public static final Effect WEAVE =
            new Plain("weave", List.of(), (settings, canvas) -> (pixel, seconds, length, rgba) -> {
                double a = share(canvas.x()[pixel] * 0.9 + StrictMath.sin(3 * seconds + canvas.y()[pixel]) * 0.1);
                double red = share(StrictMath.sin(canvas.position()[pixel] + seconds));
                double green = share(StrictMath.cos(canvas.y()[pixel] * 3 - seconds));
                put(rgba, a * red, a * green, a * (canvas.pixelKey()[pixel] >>> 8) * 0x1p-24, a);
            });

    private PlainEffects() {}

    /** All of them. */
    public static EffectRegistry all() {
        return EffectRegistry.of(List.of(SOLID, LIGHT, PLACE, RANK, CLOCK, WEAVE));
    }

    private static double share(double value) {
        return Math.min(1, Math.max(0, (value + 1) / 2));
    }

    private static void put(float[] rgba, double red, double green, double blue, double alpha) {
        rgba[0] = (float) red;
        rgba[1] = (float) green;
        rgba[2] = (float) blue;
        rgba[3] = (float) alpha;
    }

    /** Gives the premultiplied colour of one pixel at one instant. */
    interface Shader {
        void shade(int pixel, double seconds, double lengthSeconds, float[] rgba);
    }

    /** Makes a shader for a canvas. */
    interface Preparation {
        Shader prepare(Settings settings, Canvas canvas);
    }

    private record Plain(String name, List<? extends Setting<?>> given, Preparation preparation) implements Effect {
        @Override
        public List<Setting<?>> settings() {
            return List.copyOf(given);
        }

        @Override
        public boolean usesChance() {
            return name.equals("rank") || name.equals("weave");
        }

        @Override
        public boolean usesOrder() {
            return name.equals("rank") || name.equals("weave");
        }

        @Override
        public String summary() {
            return name;
        }

        @Override
        public String formula() {
            return name;
        }

        @Override
        public Kernel prepare(Settings settings, Canvas canvas) {
            Shader shader = preparation.prepare(settings, canvas);
            return () -> new PlainBrush(shader);
        }
    }

    private static final class PlainBrush implements Brush {
        private final Shader shader;
        private final float[] rgba = new float[4];
        private double seconds;
        private double lengthSeconds;

        private PlainBrush(Shader shader) {
            this.shader = shader;
        }

        @Override
        public void begin(CueTime time) {
            seconds = time.seconds();
            lengthSeconds = time.lengthSeconds();
        }

        @Override
        public void paint(int firstPixel, Patch patch) {
            for (int cell = patch.from(); cell < patch.to(); cell++) {
                shader.shade(firstPixel + cell - patch.from(), seconds, lengthSeconds, rgba);
                patch.red[cell] = rgba[0];
                patch.green[cell] = rgba[1];
                patch.blue[cell] = rgba[2];
                patch.alpha[cell] = rgba[3];
            }
        }
    }
}
