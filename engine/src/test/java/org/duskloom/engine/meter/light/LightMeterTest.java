package org.duskloom.engine.meter.light;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import org.duskloom.engine.frame.FrameList;
import org.duskloom.engine.frame.FramePixels;
import org.duskloom.engine.frame.FrameRun;
import org.duskloom.engine.frame.FrameSource;
import org.duskloom.engine.frame.RunInfo;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.meter.MeterSink;
import org.duskloom.engine.time.FrameRate;
import org.duskloom.engine.time.FrameSpan;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is counted of pixels, of props and of the whole, and what is told of use. Worked out by hand. */
class LightMeterTest {
    private static final int WHITE = Flickers.WHITE;

    /** Lights that take turns leave the mean as it is; each of them flashes all the same. */
    @Test
    void seesLightsThatTakeTurns() throws IOException {
        LightMeter meter = LightMeter.ofAnyArea();
        List<int[]> frames = new ArrayList<>();
        for (int frame = 0; frame < 40; frame++) {
            boolean on = frame / 2 % 2 == 0;
            frames.add(new int[] {0, on ? WHITE : 0, on ? 0 : WHITE});
        }
        FlashFigures found = Flickers.play(meter, 20, Flickers.props(1, 2), frames);

        assertThat(found.general().most()).isEqualTo(10);
        assertThat(found.general().place()).isEqualTo(new FlashPlace(OptionalInt.of(1), OptionalInt.of(0)));
        assertThat(found.general().pixelsOver()).isEqualTo(2);
        assertThat(found.props().get(0).general().most()).isZero();
        assertThat(found.props().get(0).general().passesEverywhere()).isTrue();
        assertThat(found.props().get(1).general().pixelsOver()).isEqualTo(2);
        assertThat(found.passes()).isFalse();
    }

    /** A meter may be used for one run after another: the joint of the second one counts, too. */
    @Test
    void looksAtTheJointOfEachRun() throws IOException {
        List<int[]> frames = new ArrayList<>();
        for (int frame = 0; frame < 20; frame++) {
            frames.add(new int[] {frame % 4 < 2 ? WHITE : 0});
        }
        FlashCount alone = Flickers.play(LightMeter.ofAnyArea(), 20, Flickers.props(1), frames)
                .general();
        LightMeter meter = LightMeter.ofAnyArea();
        Flickers.play(meter, 20, Flickers.props(1), frames.subList(0, 1));

        assertThat(Flickers.play(meter, 20, Flickers.props(1), frames).general())
                .isEqualTo(alone);
        assertThat(alone.most()).isEqualTo(10);
    }

    /** Five pixels that flash once a second each, one after the other, are five flashes of the prop. */
    @Test
    void seesFlashesThatGoRound() throws IOException {
        LightMeter meter = LightMeter.ofAnyArea();
        List<int[]> frames = new ArrayList<>();
        for (int frame = 0; frame < 60; frame++) {
            int[] colors = new int[5];
            if (frame % 4 < 2) {
                colors[frame / 4 % 5] = WHITE;
            }
            frames.add(colors);
        }
        FlashCount found = Flickers.play(meter, 20, Flickers.props(5), frames).general();

        assertThat(found.most()).isEqualTo(10);
        assertThat(found.place()).isEqualTo(new FlashPlace(OptionalInt.of(0), OptionalInt.empty()));
        assertThat(found.pixelsOver()).isEqualTo(5);
    }

    /** The same flash in two props that stand dark for each other counts for the whole as well. */
    @Test
    void addsUpProps() throws IOException {
        LightMeter meter = LightMeter.ofAnyArea();
        List<int[]> frames = new ArrayList<>();
        for (int frame = 0; frame < 80; frame++) {
            boolean on = frame % 10 == 0;
            boolean first = frame / 10 % 2 == 0;
            frames.add(new int[] {on && first ? WHITE : 0, on && !first ? WHITE : 0});
        }
        FlashFigures found = Flickers.play(meter, 40, Flickers.props(1, 1), frames);

        assertThat(found.props().get(0).general().most()).isEqualTo(4);
        assertThat(found.general().most()).isEqualTo(8);
        assertThat(found.general().place()).isEqualTo(new FlashPlace(OptionalInt.empty(), OptionalInt.empty()));
    }

    /**
     * From 10 m no more than 0.006 * 10 * 10 = 0.6 square metres may flash within a field of ten degrees (WCAG 2.2). A
     * pixel 100 mm from its neighbours stands for 0.01: 60 of them are allowed, 64 in a square of 8 by 8 are too many,
     * and 64 in two squares that are 3 m apart are seen in two fields, as a field is 1.75 m wide.
     */
    @Test
    void measuresTheAreaOfAField() throws IOException {
        assertThat(square(10, 60, 0).passes()).isTrue();
        assertThat(square(10, 60, 0).general().fieldShare()).isCloseTo(1, within(1e-9));
        assertThat(square(10, 64, 0).passes()).isFalse();
        assertThat(square(10, 64, 0).general().fieldShare()).isCloseTo(64 / 60.0, within(1e-9));
        assertThat(square(10, 64, 3).passes()).isTrue();
        assertThat(square(11, 64, 0).passes()).isTrue();
        assertThat(square(9, 64, 0).passes()).isFalse();
    }

    /** The first half stands in rows of eight from 0, the other half beside it or so many metres away. */
    private static FlashFigures square(double metres, int count, double apart) throws IOException {
        double[] x = new double[count];
        double[] y = new double[count];
        for (int i = 0; i < count; i++) {
            x[i] = 100 * (i % 8) + (i >= count / 2 && apart > 0 ? 1000 * apart : 0);
            y[i] = 100 * (i / 8);
        }
        Positions stage = new Positions(x, y, new double[count]);
        LightMeter meter = LightMeter.seenFrom(stage, 0.001, metres);
        List<int[]> frames = new ArrayList<>();
        for (int color : Flickers.square(0, WHITE, 20, 10, 2)) {
            int[] colors = new int[count];
            Arrays.fill(colors, color);
            frames.add(colors);
        }
        return Flickers.play(meter, 20, Flickers.props(count), frames);
    }

    /** Of eight frames the first prop is dark in six; its second pixel always. Half of what it gives is red. */
    @Test
    void tellsUse() throws IOException {
        LightMeter meter = LightMeter.ofAnyArea();
        FramePixels pixels = Flickers.props(2, 1);
        List<int[]> frames = new ArrayList<>();
        for (int frame = 0; frame < 8; frame++) {
            int color = frame == 2 ? 0xFF0000 : frame == 3 ? 0x00FF00 : 0;
            frames.add(new int[] {color, 0, WHITE});
        }
        Flickers.play(meter, 4, pixels, frames);

        UseFigures use = meter.use();

        assertThat(use.props().get(0).darkShare()).isEqualTo(0.75);
        assertThat(use.props().get(0).neverLit()).containsExactly(1);
        assertThat(use.props().get(0).meanLight()).isCloseTo((0.2126 + 0.7152) / 16, within(1e-7));
        assertThat(use.props().get(1).darkShare()).isZero();
        assertThat(use.props().get(1).meanLight()).isCloseTo(1, within(1e-7));
        assertThat(use.props().get(1).columns()).hasSize(8).containsOnly(1);
        assertThat(use.neverLitCount()).isEqualTo(1);
        assertThat(use.hues())
                .extracting(UseFigures.HueShare::hue)
                .containsExactly(LightHue.WHITE, LightHue.RED, LightHue.GREEN);
        assertThat(use.hues().get(0).share()).isCloseTo(24 / 26.0, within(1e-9));
    }

    /** Names of primaries and secondaries, of what is pale, and of hues on both sides of red (HSL). */
    @Test
    void namesHues() {
        assertThat(LightHue.of(255, 0, 0)).isEqualTo(LightHue.RED);
        assertThat(LightHue.of(255, 0, 20)).isEqualTo(LightHue.RED);
        assertThat(LightHue.of(255, 128, 0)).isEqualTo(LightHue.ORANGE);
        assertThat(LightHue.of(255, 255, 0)).isEqualTo(LightHue.YELLOW);
        assertThat(LightHue.of(0, 255, 0)).isEqualTo(LightHue.GREEN);
        assertThat(LightHue.of(0, 255, 255)).isEqualTo(LightHue.CYAN);
        assertThat(LightHue.of(0, 0, 1)).isEqualTo(LightHue.BLUE);
        assertThat(LightHue.of(128, 0, 255)).isEqualTo(LightHue.VIOLET);
        assertThat(LightHue.of(255, 0, 255)).isEqualTo(LightHue.PINK);
        assertThat(LightHue.of(255, 230, 210)).isEqualTo(LightHue.WHITE);
    }

    /**
     * Six changes, all that are allowed: where they are the first of the light, what the end has left may add one, and
     * the show is looked at again until a second after the last of them, at frame 25; where others came before, one
     * second of it.
     */
    @ParameterizedTest
    @CsvSource({"0, 20, 246", "1, 20, 220", "7, 20, 220"})
    void looksAtTheJointAsFarAsItReaches(int flashesBefore, int framesPerSecond, int looks) throws IOException {
        int[] lengths = new int[2 * flashesBefore + 7];
        Arrays.fill(lengths, 10);
        Arrays.fill(lengths, 2 * flashesBefore + 1, lengths.length, 3);
        int held = Arrays.stream(lengths).sum();
        lengths[lengths.length - 1] += 200 - held;
        List<int[]> frames = Flickers.inTurn(0, WHITE, lengths).stream()
                .map(color -> new int[] {color})
                .toList();
        List<Integer> read = new ArrayList<>();
        LightMeter meter = LightMeter.ofAnyArea();

        FlashFigures found = Flickers.play(meter, framesPerSecond, FramePixels.unnamed(1), frames, read::add);

        assertThat(frames).hasSize(200);
        assertThat(found.general().most()).isEqualTo(6);
        assertThat(read).hasSize(looks);
    }

    /** As a sink does beside others that finish: who asks for the figures then waits for no frame. */
    @Test
    void looksAtTheJointWhereItIsFinished() throws IOException, InterruptedException {
        List<Integer> read = new ArrayList<>();
        List<int[]> frames = List.of(new int[] {0xFFFFFF}, new int[] {0}, new int[] {0xFFFFFF}, new int[] {0});
        FrameSource source = Flickers.source(4, FramePixels.unnamed(1), frames, read::add);
        LightMeter meter = LightMeter.ofAnyArea();
        new FrameRun(source, source.info().frames(), 1).into(new MeterSink(List.of(meter), source), (done, all) -> {});
        int looks = read.size();
        assertThat(looks).isGreaterThanOrEqualTo(2 * frames.size());
        meter.flashes();
        assertThat(read).hasSize(looks);
    }

    /** A run that is a part of a show has no joint. */
    @Test
    void joinsOnlyWholeShows() throws IOException {
        LightMeter meter = LightMeter.ofAnyArea();
        FramePixels pixels = FramePixels.unnamed(1);
        RunInfo whole = RunInfo.ofWhole("test", FrameRate.of(20), 40, pixels);
        meter.begin(whole.only(FrameList.of(new FrameSpan(20, 40))));
        for (int frame = 20; frame < 40; frame++) {
            byte code = (byte) (frame >= 36 && frame % 2 == 0 ? 255 : 0);
            meter.frame(frame, new byte[] {code, code, code}, 0);
        }

        meter.finish(Flickers.source(20, pixels, List.of(), frame -> {}));
        assertThat(meter.flashes().general().most()).isEqualTo(4);
        assertThat(meter.flashes().general().firstFrame()).isEqualTo(20);
    }
}
