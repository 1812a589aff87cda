package org.duskloom.engine.report.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import org.duskloom.engine.meter.light.FlashCount;
import org.duskloom.engine.meter.light.FlashFigures;
import org.duskloom.engine.meter.light.FlashPlace;
import org.duskloom.engine.meter.light.FlashRule;
import org.duskloom.engine.meter.light.LightHue;
import org.duskloom.engine.meter.light.PropUse;
import org.duskloom.engine.meter.light.UseFigures;
import org.duskloom.engine.report.CueUse;
import org.duskloom.engine.report.LightReport;
import org.duskloom.engine.report.NeverLit;
import org.duskloom.engine.report.Report;
import org.duskloom.engine.report.Reported;
import org.duskloom.engine.report.SlowDown;
import org.duskloom.engine.report.WorstSecond;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What eyes get, told of figures that are put together by hand: 60 frames at 20 a second. */
class LightSectionTest {
    private static final String HOSTILE = "<script>alert(1)</script> \" onload='x' &amp;";
    private static final FlashPlace NOWHERE = new FlashPlace(OptionalInt.empty(), OptionalInt.empty());
    private static final FlashCount CALM = new FlashCount(FlashRule.GENERAL, 0, NOWHERE, 0, false, 0, 0, 0);
    private static final FlashCount WILD = new FlashCount(
            FlashRule.GENERAL, 10, new FlashPlace(OptionalInt.of(0), OptionalInt.of(1)), 30, false, 9, 3, 0);

    @TempDir
    private Path folder;

    private Report show;

    @BeforeEach
    void readShow() throws IOException {
        show = Reported.of(folder, "").report();
    }

    private static PropUse prop(String name, double mean, int[] neverLit, float... columns) {
        return new PropUse(name, 4, 1 - mean, mean, neverLit, columns);
    }

    private static UseFigures use(PropUse... props) {
        return new UseFigures(List.of(props), List.of());
    }

    private static LightReport light(FlashCount general, List<FlashFigures.PropFlashes> flashes, UseFigures use) {
        return new LightReport(
                new FlashFigures(OptionalDouble.empty(), general, CALM, flashes),
                new WorstSecond(general, List.of(), List.of(), List.of()),
                use,
                List.of(),
                List.of());
    }

    private Page page(LightReport light, Consumer<LightSection> write) {
        Html html = new Html();
        write.accept(new LightSection(show, light, html));
        assertThat(html.toString()).doesNotContain("NaN", "Infinity");
        return Page.ofPiece(html);
    }

    /** Where nothing changes there is no moment and no place of it, and no worst second to show. */
    @Test
    void aCalmShowHasNoWorstSecond() {
        Page page = page(light(CALM, List.of(), use(prop("gate", 0, new int[0], 0))), LightSection::flashes);

        assertThat(page.rows()).contains(List.of("light", "0", "6", "", "", "0", "0"));
        assertThat(page.elements("figure")).isEmpty();
        assertThat(page.elements("details")).isEmpty();
        assertThat(page.texts("p").get(0)).startsWith("Nothing flashes more than three times");
    }

    /** Ten changes are more than the six of three flashes (WCAG 2.2, technique G19). Frame 30 is at 1.5 s. */
    @Test
    void tellsWhenAndWhereItFlashesTooOften() {
        Page page = page(light(WILD, List.of(), use(prop("gate", 0.5, new int[0], 1))), LightSection::flashes);

        assertThat(page.rows())
                .contains(List.of("light", "10", "6", "1.5\u00a0s", "pixel 2 of gate", "3", "9"))
                .contains(List.of("saturated red", "0", "6", "", "", "0", "0"));
        assertThat(page.texts("p").get(0)).startsWith("\u2717 It flashes too often.");
    }

    /** Props that do not change at all are left out; six changes pass, seven do not. */
    @Test
    void listsFlashesByProp() {
        List<FlashFigures.PropFlashes> props = List.of(
                new FlashFigures.PropFlashes("calm", CALM, CALM),
                new FlashFigures.PropFlashes("gate", changes(6), CALM),
                new FlashFigures.PropFlashes("post", CALM, changes(7)));

        assertThat(page(light(CALM, props, use()), LightSection::flashes).rows())
                .containsSubsequence(
                        List.of("gate", "6", "0", "2", "at most three flashes"),
                        List.of("post", "0", "7", "2", "\u2717 more than three"))
                .noneMatch(row -> row.get(0).equals("calm"));
    }

    private static FlashCount changes(int most) {
        return new FlashCount(FlashRule.GENERAL, most, NOWHERE, 0, false, most, 2, 0);
    }

    @Test
    void showsMomentsAndAdviceOfTheWorstSecond() {
        SlowDown slow = new SlowDown("flood", Optional.of("every"), "2f", "3.34f");
        LightReport light = new LightReport(
                new FlashFigures(OptionalDouble.empty(), WILD, CALM, List.of()),
                new WorstSecond(
                        WILD, List.of("flood"), List.of(slow), List.of(new WorstSecond.Moment(31, new byte[] {1, 2}))),
                use(prop("gate", 1, new int[0], 1)),
                List.of(),
                List.of());

        Page page = page(light, LightSection::flashes);

        assertThat(page.elements("img")).singleElement().satisfies(picture -> {
            assertThat(picture.getAttribute("alt")).isEqualTo("The display at 1.55\u00a0s");
            // RFC 4648, section 4: octets 1 and 2 are AQI=.
            assertThat(picture.getAttribute("src")).isEqualTo("data:image/png;base64,AQI=");
        });
        assertThat(page.texts("li"))
                .last()
                .isEqualTo("In flood: \"every\" is 2f; at least 3.34f if that is what flashes.");
    }

    /** All rows have one scale, the most of any: a half is 12 of 24 high beside a whole. */
    @Test
    void propsAreDrawnOnOneScale() {
        Page page = page(
                light(
                        CALM,
                        List.of(),
                        use(prop("gate", 0.1, new int[0], 0.1f, 0.2f), prop("post", 0.4, new int[0], 0.4f, 0))),
                LightSection::lightOverTime);

        assertThat(page.ofClass("path", "light", "d"))
                .containsExactly("M0 24V18.0H1V12.0H2V24Z", "M0 24V0.0H1V24.0H2V24Z");
        assertThat(page.texts("p").get(0)).contains("to 3\u00a0s on the right", "a row is 40\u00a0% of white");
    }

    @Test
    void aDarkShowHasNoColoursAndNoLight() {
        LightReport dark = light(CALM, List.of(), use(prop("gate", 0, new int[] {0, 1, 2, 3}, 0, 0)));

        assertThat(page(dark, LightSection::lightOverTime).texts("p").get(0)).contains("is 0\u00a0% of white");
        Page use = page(dark, LightSection::use);
        assertThat(use.rows()).contains(List.of("gate", "4", "100\u00a0% of the time", "0\u00a0%", "4"));
        assertThat(use.texts("h3")).isEmpty();
    }

    /** A mask paints nothing; colours and layers are shares of all light and of the whole show. */
    @Test
    void tellsColoursCuesAndLayers() {
        LightReport light = new LightReport(
                new FlashFigures(OptionalDouble.empty(), CALM, CALM, List.of()),
                new WorstSecond(CALM, List.of(), List.of(), List.of()),
                new UseFigures(List.of(), List.of(new UseFigures.HueShare(LightHue.WHITE, 0.75))),
                List.of(new NeverLit("gate", 2, "part low")),
                List.of(
                        new CueUse("ground", "glow", false, 0.5, 0.25),
                        new CueUse("ground", "shine", false, 0.3, 0.5),
                        new CueUse("stencil", "gaps", true, 0.8, 1)));

        Page page = page(light, LightSection::use);

        assertThat(page.rows())
                .contains(List.of("white", "75\u00a0%"))
                .contains(List.of("glow", "ground", "50\u00a0%", "25\u00a0%"))
                .contains(List.of("gaps", "stencil", "80\u00a0% let through", "100\u00a0%"))
                // 0.5 * 0.25 + 0.3 * 0.5 = 0.275
                .contains(List.of("ground", "28\u00a0%"))
                .contains(List.of("stencil", "none of its own: it gates others"));
        assertThat(page.texts("p")).contains("Never lit of gate: part low.");
    }

    /** 60 props and 120 cues at most, with the number of the rest. */
    @Test
    void longTablesEndWithHowManyMoreThereAre() {
        PropUse[] props = IntStream.range(0, 61)
                .mapToObj(i -> prop("gate-" + i, 0.5, new int[0], 1))
                .toArray(PropUse[]::new);
        LightReport some = light(CALM, List.of(), use(props));
        LightReport light = new LightReport(
                some.flashes(),
                some.worst(),
                some.use(),
                List.of(),
                Collections.nCopies(122, new CueUse("ground", "glow", false, 0.5, 0.25)));

        Page use = page(light, LightSection::use);

        assertThat(use.rows()).noneMatch(row -> row.get(0).equals("gate-60"));
        assertThat(use.rows().stream().filter(row -> row.get(0).equals("glow"))).hasSize(120);
        assertThat(use.texts("p"))
                .contains("And 1 more prop; the tables of --csv have them all.")
                .contains("And 2 more cues; the tables of --csv have them all.");
        assertThat(page(light, LightSection::lightOverTime).elements("svg")).hasSize(60);
    }

    /** Names stand as they are, in words, in tables and in what is read aloud; none becomes markup. */
    @Test
    void namesAreNoMarkup() {
        LightReport light = new LightReport(
                new FlashFigures(
                        OptionalDouble.empty(), WILD, CALM, List.of(new FlashFigures.PropFlashes(HOSTILE, WILD, CALM))),
                new WorstSecond(WILD, List.of(HOSTILE), List.of(), List.of()),
                use(prop(HOSTILE, 1, new int[] {0}, 1)),
                List.of(new NeverLit(HOSTILE, 1, "part " + HOSTILE)),
                List.of(new CueUse(HOSTILE, HOSTILE, false, 1, 1)));

        Page page = page(light, section -> {
            section.flashes();
            section.lightOverTime();
            section.use();
        });

        assertThat(page.elements("script")).isEmpty();
        assertThat(page.elements("svg")).singleElement().satisfies(svg -> {
            assertThat(svg.hasAttribute("onload")).isFalse();
            assertThat(svg.getAttribute("aria-label")).isEqualTo(HOSTILE + ": mean light 100\u00a0%");
        });
        assertThat(page.texts("figcaption")).singleElement().asString().endsWith("cues there: " + HOSTILE + ".");
        assertThat(page.texts("span")).containsExactly(HOSTILE);
        assertThat(page.texts("th").stream().filter(HOSTILE::equals)).hasSize(4);
        assertThat(page.texts("td")).contains("pixel 2 of " + HOSTILE, HOSTILE);
        assertThat(page.texts("p")).contains("Never lit of " + HOSTILE + ": part " + HOSTILE + ".");
    }
}
