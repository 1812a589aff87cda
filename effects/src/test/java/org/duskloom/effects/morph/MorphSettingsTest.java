package org.duskloom.effects.morph;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.duskloom.effects.Canvases;
import org.duskloom.effects.Look;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.EffectRegistry;
import org.duskloom.engine.effect.SettingException;
import org.duskloom.engine.plan.Plan;
import org.duskloom.engine.plan.PlanCompiler;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.render.FramePainter;
import org.duskloom.engine.show.Show;
import org.duskloom.engine.show.ShowReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MorphSettingsTest {
    /** Two daisies and a fence: pixels 0 and 1, 2 and 3, 4 and 5. */
    private static final String MAP = """
            prop,pixel,x,y,part
            daisy-1,1,0,0,inner
            daisy-1,2,0,100,rim
            daisy-2,1,400,0,inner
            daisy-2,2,400,100,rim
            fence,1,900,0,
            fence,2,900,100,
            """;

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"from", "to"})
    void saysWhichPartIsMissingAndWhichMayBeMeant(String setting) {
        SettingException e = refused(Look.of("morph").with(setting, "frist-half"), Canvases.of(Canvases.row(5)));
        assertThat(e.setting()).isEqualTo(setting);
        assertThat(e).hasMessage("there is no part \"frist-half\"");
        assertThat(e.hint()).isEqualTo("did you mean \"first-half\"?");
    }

    @Test
    void countsTheMembersThatLackAPart() {
        Canvas canvas = new Canvases()
                .member("a", Canvases.row(3))
                .part("rim", 0)
                .member("b", Canvases.row(3))
                .member("c", Canvases.row(2))
                .build();
        SettingException e = refused(Look.of("morph").with("to", "rim"), canvas);
        assertThat(e).hasMessage("2 of 3 members have no part \"rim\": \"b\", \"c\"");
        assertThat(e.hint()).isEqualTo("allowed: first-half, second-half");
    }

    @Test
    void wantsBothParts() {
        SettingException e = refused(Look.of("morph").without("to"), Canvases.of(Canvases.row(5)));
        assertThat(e.setting()).isEqualTo("to");
        assertThat(e).hasMessage("\"to\" must name a part");
        assertThat(e.hint()).isEqualTo("allowed: first-half, second-half");
    }

    @Test
    void keepsMessagesOnOneLine() {
        assertThat(refused(Look.of("morph").with("from", "a\nb\u0007"), Canvases.of(Canvases.row(5))))
                .hasMessage("there is no part \"a\\u000ab\\u0007\"");
    }

    @Test
    void refusesAnEasingThatIsNone() {
        SettingException e = refused(Look.of("morph").with("easing", "ease-inn"), Canvases.of(Canvases.row(5)));
        assertThat(e.setting()).isEqualTo("easing");
        assertThat(e).hasMessageContaining("ease-inn");
        assertThat(e.hint()).contains("ease-in");
    }

    @Test
    void refusesTwoPaces() {
        Look look = Look.of("morph").seconds("every", 3).with("passes", 2);
        assertThat(refused(look, Canvases.of(Canvases.row(5))).setting()).isEqualTo("passes");
    }

    private static SettingException refused(Look look, Canvas canvas) {
        return catchThrowableOfType(SettingException.class, () -> look.on(canvas));
    }

    /**
     * In a show of one pass over two seconds: the first frame shows what the light comes from. On each daisy, from part
     * to part; on one canvas for all, from prop to prop, and from the parts of all to others.
     */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "'daisy-*' | each  | inner   | rim     | 101000",
                "'daisy-*' | each  | rim     | inner   | 010100",
                "'*'       | whole | daisy-1 | fence   | 110000",
                "'*'       | whole | fence   | daisy-* | 000011",
                "'*'       | whole | inner   | fence   | 101000",
                "'*'       | whole | daisy-2/rim | daisy-1/inner | 000100"
            })
    void lightsTheStartFirst(String on, String spread, String from, String to, String lit) throws IOException {
        Problems problems = new Problems();
        Show show = show(on, spread, from, to, problems);
        Plan plan =
                PlanCompiler.compile(show, EffectRegistry.installed(), problems).orElse(null);
        assertThat(problems.inFileOrder()).isEmpty();
        byte[] rgb = new byte[18];
        new FramePainter(plan).render(0, rgb, 0);

        for (int pixel = 0; pixel < 6; pixel++) {
            assertThat(rgb[3 * pixel] & 0xFF).isEqualTo(lit.charAt(pixel) == '1' ? 255 : 0);
        }
    }

    /**
     * The place in the file, what is wrong, and the nearest name: of a part, and of a prop where a prop may be named.
     */
    @Test
    void pointsAtTheWrongName() throws IOException {
        Problems problems = new Problems();
        PlanCompiler.compile(show("daisy-*", "each", "iner", "rim", problems), EffectRegistry.installed(), problems);
        PlanCompiler.compile(show("*", "whole", "fnce", "rim", problems), EffectRegistry.installed(), problems);

        assertThat(problems.inFileOrder())
                .extracting(problem -> problem.location().toString().replace(folder + "/", "") + ": "
                        + problem.message() + "; " + problem.hint())
                .containsExactly(
                        "show.json:3:38: morph: 2 of 2 members have no part \"iner\": \"daisy-1\", \"daisy-2\"; did you mean \"inner\"?",
                        "show.json:3:38: morph: there is no part \"fnce\"; did you mean \"fence\"?");
    }

    private Show show(String on, String spread, String from, String to, Problems problems) throws IOException {
        Files.writeString(folder.resolve("map.csv"), MAP);
        Path file = Files.writeString(folder.resolve("show.json"), """
                {"duskloom": "timeline/1", "map": "map.csv", "rate": 40, "length": "2s", "layers": [{"cues": [{"at": "0s", "for":
                 "2s", "on": "%s", "spread": "%s",
                 "effect": "morph", "with": {"from": "%s", "to": "%s", "passes": 1}}]}]}
                """.formatted(on, spread, from, to));
        return ShowReader.read(file, problems).orElseThrow();
    }
}
