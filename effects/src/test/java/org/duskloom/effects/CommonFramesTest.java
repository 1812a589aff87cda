package org.duskloom.effects;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.duskloom.engine.effect.ColorSetting;
import org.duskloom.engine.effect.Effect;
import org.duskloom.engine.effect.EffectRegistry;
import org.duskloom.engine.effect.FileSetting;
import org.duskloom.engine.effect.NumberSetting;
import org.duskloom.engine.effect.PaletteSetting;
import org.duskloom.engine.effect.Setting;
import org.duskloom.engine.effect.TextSetting;
import org.duskloom.engine.plan.Plan;
import org.duskloom.engine.plan.PlanCompiler;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.render.FramePainter;
import org.duskloom.engine.show.Show;
import org.duskloom.engine.show.ShowReader;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A frame is a function of its instant: frame n at one rate and frame 2n at twice the rate lie at the same one and are
 * the same bytes, whatever moves, fades, repeats or starts late.
 */
class CommonFramesTest {
    private static final Path GARDEN = Path.of("..", "demos", "garden", "show.json");
    private static final Path EVENING = Path.of("..", "demos", "evening", "show.json");

    @TempDir
    Path folder;

    /** Every effect with everything that can be keyed keyed, on each member with a stagger and on the whole. */
    @ParameterizedTest
    @CsvSource({"20, 40", "30, 60", "'\"30000/1001\"', '\"60000/1001\"'"})
    void everyEffectAgreesWithItselfAtTwiceTheRate(String slow, String fast) throws IOException {
        Files.writeString(folder.resolve("map.csv"), map());
        for (Effect effect : EffectRegistry.installed().effects()) {
            String show = show(effect);
            assertAgree(effect.name(), plan(show, slow, folder), plan(show, fast, folder), 1);
        }
    }

    /**
     * The garden and the evening play every effect, with looks, opacities, stagger by place and layers that are
     * blended.
     */
    @ParameterizedTest
    @CsvSource({"20, 40", "30, 60"})
    void theGardenAgreesWithItselfAtTwiceTheRate(String slow, String fast) throws IOException {
        String show = Files.readString(GARDEN).replace("\"rate\": 40,", "\"rate\": RATE,");
        for (String used : List.of("display.json", "bee.png")) {
            Files.copy(GARDEN.resolveSibling(used), folder.resolve(used));
        }
        String both = show + Files.readString(EVENING);
        assertThat(EffectRegistry.installed().names())
                .allSatisfy(name -> assertThat(both).contains("\"effect\": \"" + name + "\""));
        assertAgree("garden", plan(show, slow, folder), plan(show, fast, folder), 7);
    }

    /** The evening counts beats of music that is not quite steady, and follows its sound. */
    @ParameterizedTest
    @CsvSource({"20, 40", "30, 60"})
    void theEveningAgreesWithItselfAtTwiceTheRate(String slow, String fast) throws IOException {
        String show = Files.readString(EVENING)
                .replace("\"rate\": 40,", "\"rate\": RATE,")
                .replace("../garden/display.json", "display.json");
        Files.copy(GARDEN.resolveSibling("display.json"), folder.resolve("display.json"));
        for (String used : List.of("evening.wav", "evening.txt")) {
            Files.copy(EVENING.resolveSibling(used), folder.resolve(used));
        }
        assertAgree("evening", plan(show, slow, folder), plan(show, fast, folder), 7);
    }

    private static void assertAgree(String name, Plan slow, Plan fast, int step) {
        FramePainter slowPainter = new FramePainter(slow);
        FramePainter fastPainter = new FramePainter(fast);
        byte[] wanted = new byte[3 * slow.pixelCount()];
        byte[] found = new byte[wanted.length];
        int lit = 0;
        for (long frame = 0; frame < slow.frameCount(); frame += step) {
            slowPainter.render(frame, wanted, 0);
            fastPainter.render(2 * frame, found, 0);
            assertThat(Arrays.equals(found, wanted))
                    .as("%s, frame %s", name, frame)
                    .isTrue();
            lit += Arrays.equals(wanted, new byte[wanted.length]) ? 0 : 1;
        }
        assertThat(lit).as(name).isGreaterThan((int) (slow.frameCount() / step / 2));
    }

    private static Plan plan(String show, String rate, Path folder) throws IOException {
        Path file = Files.writeString(folder.resolve("show.json"), show.replace("RATE", rate));
        Problems problems = new Problems();
        Show read = ShowReader.read(file, problems).orElseThrow(() -> new AssertionError(problems.inFileOrder()));
        return PlanCompiler.compile(read, EffectRegistry.installed(), problems)
                .orElseThrow(() -> new AssertionError(problems.inFileOrder()));
    }

    /** Two props of 40 pixels on spirals, each in two halves. */
    private static String map() {
        StringBuilder map = new StringBuilder("prop,pixel,x,y,part\n");
        for (int prop = 0; prop < 2; prop++) {
            for (int pixel = 1; pixel <= 40; pixel++) {
                double x = 300 * prop + pixel * StrictMath.cos(pixel * 0.4);
                double y = pixel * StrictMath.sin(pixel * 0.4);
                map.append(String.format(
                        Locale.ROOT,
                        "p%d,%d,%.2f,%.2f,%s%n",
                        prop,
                        pixel,
                        x,
                        y,
                        pixel <= 20 ? "first-half" : "second-half"));
            }
        }
        return map.toString();
    }

    private static String show(Effect effect) {
        String with = String.join(", ", settings(effect, false));
        String color = String.join(", ", settings(effect, true));
        return """
                {"duskloom": "timeline/1", "map": "map.csv", "rate": RATE, "length": "5s", "seed": 4,
                 "layers": [
                  {"name": "whole", "cues": [
                    {"on": ["p0", "p1"], "for": "1700ms", "effect": "%1$s", "with": {%2$s},
                     "repeat": {"count": 3, "every": "1650ms"}, "fade": {"in": "333ms", "out": "200ms", "easing": "ease-in"},
                     "opacity": {"keys": [["0s", 1], ["1.1s", 0.4, "ease-out"]]}}]},
                  {"name": "each", "blend": "screen", "opacity": 0.9, "cues": [
                    {"at": "70ms", "on": ["p0", "p1"], "spread": "each", "stagger": "130ms", "effect": "%1$s", "with": {%3$s}}]}
                 ]}
                """.formatted(effect.name(), with, color);
    }

    /**
     * Settings that move all they can; colours that are no palette stand by themselves where {@code plainColor} asks
     * for them.
     */
    private static List<String> settings(Effect effect, boolean plainColor) {
        boolean hasColor = effect.settings().stream().anyMatch(ColorSetting.class::isInstance);
        List<String> fields = new ArrayList<>();
        for (Setting<?> setting : effect.settings()) {
            String value = hasColor && plainColor ? setting instanceof ColorSetting ? COLOR_KEYS : "" : value(setting);
            if (!value.isEmpty()) {
                fields.add("\"" + setting.name() + "\": " + value);
            }
        }
        return fields;
    }

    private static final String COLOR_KEYS =
            "{\"keys\": [[\"100ms\", \"gold\"], [\"1.3s\", \"hotpink\", \"cubic-bezier(0.2, 1.4, 0.8, -0.3)\"]]}";
    private static final String PALETTE_KEYS =
            "{\"keys\": [[\"0s\", [\"navy\", \"red\", \"gold\"]], [\"777ms\", \"teal\"],"
                    + " [\"3s\", {\"stops\": [\"white\", \"rgb(20 60 200 / 0.4)\"], \"step\": true}, \"ease\"]], \"mix\": \"oklch\"}";

    private static String value(Setting<?> setting) {
        if (setting instanceof NumberSetting number) {
            String keys = "{\"keys\": [[\"0s\", %s], [\"1.3s\", %s, \"ease-in-out\"], [\"4s\", %s, \"steps(5)\"]]}";
            double low = Math.max(number.isWhole() ? 1 : 0.25, number.min());
            double high = Math.min(3, number.max());
            String standard = number.standardText();
            return setting.moves() ? String.format(keys, text(high), text(low), standard) : outlineThickness(setting);
        }
        if (setting instanceof PaletteSetting) {
            return PALETTE_KEYS;
        }
        if (setting instanceof FileSetting) {
            return setting.name().equals("file") ? "\"" + AnimationFile.path() + "\"" : "";
        }
        if (setting instanceof TextSetting) {
            return switch (setting.name()) {
                case "text" -> "\"Dusk\"";
                case "from" -> "\"first-half\"";
                case "to" -> "\"second-half\"";
                default -> "";
            };
        }
        return "";
    }

    private static String outlineThickness(Setting<?> setting) {
        return setting.name().equals("thickness") ? "1" : "";
    }

    private static String text(double value) {
        return value == Math.rint(value) ? String.valueOf((long) value) : String.valueOf(value);
    }
}
