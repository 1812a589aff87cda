package org.duskloom.effects.morph;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.assertj.core.data.Offset;
import org.duskloom.effects.Canvases;
import org.duskloom.effects.Look;
import org.duskloom.effects.Painting;
import org.duskloom.engine.color.ColorMix;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.SettingException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is seen of the dots. A pass takes 2 s in all of them. */
class MorphTest {
    private static final Offset<Float> ROUNDING = within(2e-6f);

    /** Five pixels at x = -1, -1/2, 0, 1/2, 1, all 1/2 apart; from the first to the last. */
    private static final Canvas ROW = new Canvases()
            .member("row", Canvases.row(5))
            .part("left", 0)
            .part("right", 4)
            .part("middle", 2)
            .build();

    /**
     * Size 1, half a unit: a dot on a pixel leaves its neighbours dark, since (1 - 1)² = 0. A quarter and three
     * quarters of the way it is on the next pixels.
     */
    @Test
    void travelsFromPixelToPixel() throws SettingException {
        Look look = leftToRight().with("bulge", 1);
        assertThat(Painting.of(look, ROW, 0).alpha()).containsExactly(1, 0, 0, 0, 0);
        assertThat(Painting.of(look, ROW, 0.5).alpha()).containsExactly(0, 1, 0, 0, 0);
        assertThat(Painting.of(look, ROW, 1).alpha()).containsExactly(0, 0, 1, 0, 0);
        assertThat(Painting.of(look, ROW, 1.5).alpha()).containsExactly(0, 0, 0, 1, 0);
    }

    /** At 1/4 s of 2 s the dot is at -3/4, half a spacing from two pixels: (1 - 1/4)² = 9/16. */
    @Test
    void lightsWhatItIsBetween() throws SettingException {
        assertThat(Painting.of(leftToRight().with("bulge", 1), ROW, 0.25).alpha())
                .containsExactly(0.5625f, 0.5625f, 0, 0, 0);
    }

    /** Size 3 reaches 3/2: levels 1, (1 - 1/9)² = 64/81, (1 - 4/9)² = 25/81, (1 - 1)² = 0. */
    @Test
    void reachesAsFarAsItsSize() throws SettingException {
        float[] alpha = Painting.of(leftToRight().with("size", 3), ROW, 0).alpha();
        assertThat(alpha).containsExactly(new float[] {1, 64 / 81f, 25 / 81f, 0, 0}, ROUNDING);
    }

    /**
     * Half way a bulge of 2 doubles the reach to 1: neighbours at 1/2 have (1 - 1/4)² = 9/16. At the ends nothing
     * swells.
     */
    @Test
    void swellsHalfWay() throws SettingException {
        assertThat(Painting.of(leftToRight(), ROW, 1).alpha()).containsExactly(0, 0.5625f, 1, 0.5625f, 0);
        assertThat(Painting.of(leftToRight(), ROW, 0).alpha()).containsExactly(1, 0, 0, 0, 0);
    }

    /** A dot without size lights the pixel it is on and no other. */
    @Test
    void mayHaveNoSize() throws SettingException {
        Look look = leftToRight().with("size", 0);
        assertThat(Painting.of(look, ROW, 0.5).alpha()).containsExactly(0, 1, 0, 0, 0);
        assertThat(Painting.of(look, ROW, 0.6).alpha()).containsOnly(0);
    }

    /**
     * Where the dot is a quarter through its pass, by W3C CSS Easing Functions Level 1: the curves of the words at
     * 0.25, solved to six digits. A pixel is there, and the reach is 1/100.
     */
    @ParameterizedTest
    @CsvSource({"linear,0.25", "ease,0.408511", "ease-in,0.093465", "ease-out,0.378138", "ease-in-out,0.129162"})
    void travelsUnderTheEasing(String easing, double progress) throws SettingException {
        double spacing = 0.01;
        double x = -1 + 2 * progress;
        Canvas canvas = new Canvases()
                .member(
                        "probes",
                        new double[] {-1, 0},
                        new double[] {-1, spacing},
                        new double[] {1, 0},
                        new double[] {1, spacing},
                        new double[] {x, 0},
                        new double[] {x + spacing, 0})
                .part("left", 0)
                .part("right", 2)
                .build();
        Look look = leftToRight().with("bulge", 1).with("easing", easing);

        float[] alpha = Painting.of(look, canvas, 0.5).alpha();
        assertThat(alpha[4]).isCloseTo(1, within(1e-6f));
        assertThat(alpha[5]).isCloseTo(0, within(1e-6f));
    }

    /** The curve (.42, 0, .58, 1) is symmetric: half way at half time. It is the standard. */
    @Test
    void isHalfWayAtHalfTime() throws SettingException {
        Look look = leftToRight().without("easing").with("bulge", 1);
        assertThat(Painting.of(look, ROW, 1).alpha()[2]).isCloseTo(1, ROUNDING);
    }

    /**
     * Out beyond the start and the end by a curve that overshoots: from -1 the dot backs off, and nothing is lit there.
     */
    @Test
    void goesBeyondItsEndsWhereTheEasingDoes() throws SettingException {
        Look look = leftToRight().with("easing", "linear(0, -1, 2, 1)").with("bulge", 1);
        assertThat(Painting.of(look, ROW, 2 / 3.0).alpha()).containsOnly(0);
        assertThat(Painting.of(look, ROW, 4 / 3.0).alpha()).containsOnly(0);
        assertThat(Painting.of(look, ROW, 1).alpha()[2]).isCloseTo(1, ROUNDING);
    }

    /** Every pass begins anew; reversed, it begins at the end; a phase of half a pass is half a pass ahead. */
    @Test
    void repeats() throws SettingException {
        assertThat(Painting.of(leftToRight(), ROW, 2).alpha()).containsExactly(1, 0, 0, 0, 0);
        Look reversed = leftToRight().flag("reverse").with("bulge", 1);
        assertThat(Painting.of(reversed, ROW, 0).alpha()).containsExactly(0, 0, 0, 0, 1);
        assertThat(Painting.of(reversed, ROW, 0.5).alpha()).containsExactly(0, 0, 0, 1, 0);
        assertThat(Painting.of(reversed, ROW, 2).alpha()).containsExactly(0, 0, 0, 0, 1);
        Look ahead = leftToRight().with("phase", 0.5).with("bulge", 1);
        assertThat(Painting.of(ahead, ROW, 0).alpha()).containsExactly(0, 0, 1, 0, 0);
    }

    /** With back, half of a pass goes there and the other half back. */
    @Test
    void goesThereAndBack() throws SettingException {
        Look look = leftToRight().flag("back").with("bulge", 1);
        assertThat(Painting.of(look, ROW, 0).alpha()).containsExactly(1, 0, 0, 0, 0);
        assertThat(Painting.of(look, ROW, 0.5).alpha()).containsExactly(0, 0, 1, 0, 0);
        assertThat(Painting.of(look, ROW, 1).alpha()).containsExactly(0, 0, 0, 0, 1);
        assertThat(Painting.of(look, ROW, 1.75).alpha()).containsExactly(0, 1, 0, 0, 0);
    }

    @Test
    void lightsOnlyThePartsIfItShall() throws SettingException {
        Look look = leftToRight().with("to", "middle").with("bulge", 1);
        assertThat(Painting.of(look, ROW, 1).alpha()).containsExactly(0, 1, 0, 0, 0);
        // Now the nearest pixel that may be lit is 1 away: so far the light reaches, and (1 - 1/4)² = 9/16.
        assertThat(Painting.of(look.flag("only-parts"), ROW, 1).alpha()).containsExactly(0.5625f, 0, 0.5625f, 0, 0);
    }

    /**
     * Half way between black and white OKLab has the lightness 1/2, and its light is the cube of that, 1/8 (Ottosson
     * 2020: a grey's cube roots are its lightness).
     */
    @Test
    void mixesFromPaletteToPalette() throws SettingException {
        Look look = leftToRight().with("palette", one("black")).with("palette-to", one("white"));
        assertThat(Painting.of(look, ROW, 0).red()[0]).isCloseTo(0, ROUNDING);
        assertThat(Painting.of(look, ROW, 1).red()[2]).isCloseTo(0.125f, ROUNDING);
        assertThat(Painting.of(look, ROW, 1).alpha()[2]).isEqualTo(1);
        assertThat(Painting.of(look.flag("reverse"), ROW, 0).red()[4]).isCloseTo(1, ROUNDING);
    }

    /**
     * A transparent colour does not stain (CSS Color 4): half way from opaque red to nothing, half of red is left, as
     * red as before.
     */
    @Test
    void mixesTranslucentColors() throws SettingException {
        Look look = leftToRight().with("palette", one("red")).with("palette-to", one("#0000ff00"));
        Painting half = Painting.of(look, ROW, 1);
        assertThat(half.alpha()[2]).isCloseTo(0.5f, ROUNDING);
        assertThat(half.red()[2]).isCloseTo(0.5f, ROUNDING);
        assertThat(half.blue()[2]).isCloseTo(0, ROUNDING);
        assertThat(Painting.of(look.flag("reverse"), ROW, 0).alpha()).containsOnly(0);
    }

    /** Nothing to nothing is nothing, and no division by zero. */
    @Test
    void mixesNothing() throws SettingException {
        Look look = leftToRight().with("palette", one("transparent"));
        for (double second : new double[] {0, 0.5, 1}) {
            assertThat(Painting.of(look, ROW, second).alpha()).containsOnly(0);
            assertThat(Painting.of(look, ROW, second).red()).containsOnly(0);
        }
    }

    /**
     * Along its part a palette lies from end to end: of four pixels the middles are at 1/8, 3/8, 5/8, 7/8. In linear
     * light from red to blue that is how much blue there is.
     */
    @Test
    void laysThePaletteAlongThePart() throws SettingException {
        Canvas canvas = new Canvases()
                .member("rows", Canvases.grid(4, 2))
                .part("top", 0, 1, 2, 3)
                .part("bottom", 7, 6, 5, 4)
                .build();
        Look look = Look.of("morph")
                .seconds("every", 2)
                .with("from", "top")
                .with("to", "bottom")
                .palette("red", "blue");
        float[] eighths = {1 / 8f, 3 / 8f, 5 / 8f, 7 / 8f};

        assertThat(Arrays.copyOf(Painting.of(look, canvas, 0).blue(), 4)).containsExactly(eighths, ROUNDING);
        float[] end = Painting.of(look.flag("reverse"), canvas, 0).blue();
        assertThat(new float[] {end[7], end[6], end[5], end[4]}).containsExactly(eighths, ROUNDING);
    }

    /**
     * A red dot on the first pixel and a blue one on the last, with a reach of 2: at distances 1/2, 1 and 3/2 their
     * levels are (1 - 1/16)² = 225/256, (1 - 1/4)² = 9/16 and (1 - 9/16)² = 49/256. Each channel has the greatest
     * light, alpha too.
     */
    @Test
    void showsTheGreatestLightWhereDotsMeet() throws SettingException {
        Canvas canvas =
                new Canvases().member("row", Canvases.row(5)).part("ends", 0, 4).build();
        Look look = Look.of("morph")
                .with("from", "ends")
                .with("to", "ends")
                .with("palette", Look.evenly(ColorMix.LINEAR, "red", "red", "blue", "blue"))
                .with("size", 4);
        Painting met = Painting.of(look, canvas, 0);

        assertThat(met.red()).containsExactly(new float[] {1, 225 / 256f, 9 / 16f, 49 / 256f, 0}, ROUNDING);
        assertThat(met.blue()).containsExactly(new float[] {0, 49 / 256f, 9 / 16f, 225 / 256f, 1}, ROUNDING);
        assertThat(met.green()).containsExactly(new float[5], ROUNDING);
        assertThat(met.alpha()).containsExactly(new float[] {1, 225 / 256f, 9 / 16f, 225 / 256f, 1}, ROUNDING);
    }

    /**
     * Twelve on a ring of radius 1/2 and 24 on one of radius 1, both about 1/4 apart: at the start exactly the one
     * shines, at the end exactly the other. The pixel in the middle stays dark.
     */
    @ParameterizedTest
    @CsvSource({"inner,rim", "rim,inner"})
    void leadsFromExactlyTheOnePartToExactlyTheOther(String from, String to) throws SettingException {
        Look look = Look.of("morph").seconds("every", 2).with("from", from).with("to", to);
        Canvas daisy = daisies(1);
        boolean out = from.equals("inner");

        float[] start = Painting.of(look, daisy, 0).alpha();
        float[] end = Painting.of(look.flag("reverse"), daisy, 0).alpha();
        for (int pixel = 0; pixel < 37; pixel++) {
            boolean inner = pixel < 12;
            boolean rim = pixel >= 12 && pixel < 36;
            assertThat(start[pixel]).isCloseTo((out ? inner : rim) ? 1 : 0, ROUNDING);
            assertThat(end[pixel]).isCloseTo((out ? rim : inner) ? 1 : 0, ROUNDING);
        }
    }

    /**
     * Each member has its dots to itself, although all lie at the same places of their canvases: all look like the
     * first.
     */
    @Test
    void keepsMembersApart() throws SettingException {
        Look look = Look.of("morph").with("from", "inner").with("to", "rim");
        float[] one = Painting.of(look, daisies(1), 0.7).alpha();
        float[] three = Painting.of(look, daisies(3), 0.7).alpha();
        for (int member = 0; member < 3; member++) {
            assertThat(Arrays.copyOfRange(three, 37 * member, 37 * member + 37)).containsExactly(one);
        }
    }

    /** Members with other parts elsewhere stay as they are when one is added. */
    @Test
    void doesNotLightOtherMembers() throws SettingException {
        Canvases two = new Canvases()
                .member("row", Canvases.row(5))
                .part("a", 0)
                .part("b", 4)
                .member("other row", Canvases.row(5))
                .part("a", 4)
                .part("b", 2);
        Look look = Look.of("morph")
                .seconds("every", 2)
                .with("from", "a")
                .with("to", "b")
                .with("bulge", 1)
                .with("easing", "linear");
        assertThat(Painting.of(look, two.build(), 0.5).alpha())
                .containsExactly(new float[] {0, 1, 0, 0, 0, 0, 0, 0, 0.5625f, 0.5625f}, ROUNDING);
    }

    /** Daisies as above with a pixel in the middle. */
    private static Canvas daisies(int count) {
        Canvases canvases = new Canvases();
        for (int daisy = 0; daisy < count; daisy++) {
            double[][] places = IntStream.range(0, 37)
                    .mapToObj(i -> i < 12 ? ring(i / 12.0, 0.5) : i < 36 ? ring((i - 12) / 24.0, 1) : ring(0, 0))
                    .toArray(double[][]::new);
            canvases.member("daisy-" + daisy, places)
                    .part("inner", IntStream.range(0, 12).toArray())
                    .part("rim", IntStream.range(12, 36).toArray());
        }
        return canvases.build();
    }

    private static double[] ring(double turns, double radius) {
        return new double[] {radius * Math.cos(2 * Math.PI * turns), radius * Math.sin(2 * Math.PI * turns)};
    }

    /** The same part at both ends: its pixels shine all the time. */
    @Test
    void staysWhereItIs() throws SettingException {
        Look look = leftToRight().with("to", "left");
        for (double second : new double[] {0, 0.3, 1, 1.7}) {
            assertThat(Painting.of(look.with("bulge", 1), ROW, second).alpha()).containsExactly(1, 0, 0, 0, 0);
        }
    }

    /** One pixel, or several at one place: there are no neighbours to measure by, and all are lit. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 40})
    void lightsPixelsAtOnePlace(int count) throws SettingException {
        double[][] places = new double[count][];
        Arrays.fill(places, new double[] {0.5, 0.5});
        Canvas canvas = Canvases.of(places);
        for (double second : new double[] {0, 0.4, 1, 1.9}) {
            assertThat(Painting.of(Look.of("morph"), canvas, second).alpha()).containsOnly(1);
        }
    }

    /** A picture is the same pixel by pixel, to the bit, if the canvas is turned by a quarter. */
    @Test
    void turnsWithTheCanvas() throws SettingException {
        double[][] places = Canvases.scattered(300);
        Painting before = Painting.of(Look.of("morph"), Canvases.of(places), 0.6);

        Canvas turned = Canvases.of(Canvases.moved(places, 0, -1, 1, 0));
        assertThat(Painting.of(Look.of("morph"), turned, 0.6).isSame(before)).isTrue();
    }

    /** Twice as large, it is the same to the bit; moved, it is the same but for rounding. */
    @ParameterizedTest
    @ValueSource(ints = {60, 900})
    void dependsOnPlacesAlone(int count) throws SettingException {
        double[][] places = Canvases.scattered(count);
        Painting before = Painting.of(Look.of("morph"), Canvases.of(places), 0.6);

        Canvas doubled = Canvases.of(Canvases.moved(places, 2, 0, 0, 2));
        assertThat(Painting.of(Look.of("morph"), doubled, 0.6).isSame(before)).isTrue();
        Canvas moved = Canvases.of(Arrays.stream(places)
                .map(place -> new double[] {place[0] + 0.3, place[1] - 0.7})
                .toArray(double[][]::new));
        assertThat(Painting.of(Look.of("morph"), moved, 0.6).alpha()).containsExactly(before.alpha(), within(1e-5f));
    }

    /** A part listed the other way round, or props wired so, show the same. */
    @ParameterizedTest
    @ValueSource(ints = {60, 900})
    void doesNotDependOnTheWiring(int count) throws SettingException {
        double[][] places = Canvases.scattered(count);
        int half = count / 2;
        double[][] otherwise = IntStream.range(0, count)
                .mapToObj(i -> places[i < half ? half - 1 - i : count - 1 - (i - half)])
                .toArray(double[][]::new);
        float[] before = Painting.of(Look.of("morph"), Canvases.of(places), 0.6).alpha();
        float[] after =
                Painting.of(Look.of("morph"), Canvases.of(otherwise), 0.6).alpha();
        for (int i = 0; i < count; i++) {
            assertThat(after[i < half ? half - 1 - i : count - 1 - (i - half)]).isEqualTo(before[i]);
        }
    }

    private static Look leftToRight() {
        return Look.of("morph")
                .seconds("every", 2)
                .with("from", "left")
                .with("to", "right")
                .with("easing", "linear");
    }

    private static Object one(String color) {
        return Look.evenly(ColorMix.OKLAB, color);
    }
}
