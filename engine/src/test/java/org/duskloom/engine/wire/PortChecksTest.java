package org.duskloom.engine.wire;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.duskloom.engine.document.Inputs;
import org.duskloom.engine.map.Maps;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.time.FrameRate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PortChecksTest {
    private final Problems problems = new Problems();

    private static PixelMap props(int count) {
        StringBuilder csv = new StringBuilder("prop,pixel,x,y\n");
        for (int prop = 1; prop <= count; prop++) {
            csv.append("bed-" + prop + ",1,0," + prop + "\nbed-" + prop + ",2,1," + prop + "\n");
        }
        return Maps.map(csv.toString());
    }

    private static Link link(int... pixels) {
        return new Link("bed", 0, pixels, Lines.PLACE);
    }

    private List<String> loose(PixelMap map, Port... ports) {
        PortChecks.warnOfLoosePixels(new Ports(List.of(ports)), map, problems);
        return Inputs.shown(problems);
    }

    @Test
    void saysNothingWhereEverythingIsWiredOrNothing() {
        assertThat(loose(props(3))).as("a display without ports").isEmpty();
        Port all = Lines.port("a", Signal.USUAL, 1, 1, link(0, 1, 2), Lines.dark(3), link(3));
        assertThat(loose(props(2), all)).isEmpty();
    }

    @Test
    void namesPropsWithPixelsOnNoPort() {
        Port left = Lines.port("a", Signal.USUAL, 1, 1, link(0));
        Port right = Lines.port("b", Signal.USUAL, 2, 1, link(4));
        assertThat(loose(props(3), left, right))
                .singleElement()
                .asString()
                .startsWith("map.csv:2:1: warning: pixels on no port: \"bed-1\" (1 of 2), \"bed-2\" (2 of 2), \"bed-3\""
                        + " (1 of 2)")
                .endsWith("they stay dark; put them into a \"chain\"");
    }

    @Test
    void namesFiveOfMany() {
        Port one = Lines.port("a", Signal.USUAL, 1, 1, link(0, 1));
        assertThat(loose(props(9), one))
                .singleElement()
                .asString()
                .contains("\"bed-6\" (2 of 2) and of 3 more props")
                .doesNotContain("bed-7");
    }

    private List<String> lines(int pixels, String colors, int rate) {
        Port port = Lines.port("arch", Lines.plain(colors, 8), 1, 1, Lines.pixels(0, pixels));
        PortChecks.warnOfLongLines(new Ports(List.of(port)), FrameRate.of(rate), problems);
        return Inputs.shown(problems);
    }

    /**
     * At 800 kbit/s a bit lasts 1.25 us (data sheet WS2811 V1.4), three colours 30 us, four 40 us; with a pause of 280
     * us (WS2812B-V5) 1/40 s has room for 24720 / 30 = 824 pixels, or 618 with white, 1/20 s for 1657.
     */
    @ParameterizedTest
    @CsvSource({
        "824, RGB, 40, 0",
        "825, RGB, 40, 1",
        "618, RGBW, 40, 0",
        "619, RGBW, 40, 1",
        "1657, RGB, 20, 0",
        "1658, RGB, 20, 1"
    })
    void warnsOfLinesThatAreTooLongForTheRate(int pixels, String colors, int rate, int warnings) {
        assertThat(lines(pixels, colors, rate)).hasSize(warnings);
    }

    /** 1000 pixels take 30.28 ms, which is 33.03 times a second: rounded down, as 33.1 would be too many. */
    @Test
    void saysWhatTheLineCanDo() {
        assertThat(lines(1000, "RGB", 40))
                .singleElement()
                .asString()
                .contains(
                        "port \"arch\" has 1000 pixels, and a data line of 800 kbit/s carries 824 at 40 frames a second")
                .contains("1000 pixels take 33.0 frames a second at most");
    }
}
