package org.duskloom.engine.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.assertj.core.data.Offset;
import org.duskloom.engine.document.FlagNode;
import org.duskloom.engine.document.Inputs;
import org.duskloom.engine.document.ListNode;
import org.duskloom.engine.document.Node;
import org.duskloom.engine.document.NumberNode;
import org.duskloom.engine.document.ObjectNode;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.meter.light.FlashCount;
import org.duskloom.engine.meter.light.FlashFigures;
import org.duskloom.engine.meter.light.FlashPlace;
import org.duskloom.engine.meter.light.FlashRule;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What programs read of a report; figures worked out on paper. */
class ReportJsonTest {
    private static final Offset<Double> MILLIONTH = within(1e-6);

    @TempDir
    private Path folder;

    private Report report;

    @BeforeEach
    void gather() throws IOException {
        report = Reported.of(
                        folder,
                        Reported.KIND + Reported.ports(Reported.FENCE, Reported.POST) + ", " + Reported.supply(0.1))
                .report();
    }

    @Test
    void saysWhatItIsAbout() throws IOException {
        Node json = json(report);
        assertThat(text(json, "/title")).isEqualTo("Fence");
        assertThat(number(json, "/rate/num")).isEqualTo(20);
        assertThat(number(json, "/rate/den")).isEqualTo(1);
        assertThat(number(json, "/frames")).isEqualTo(60);
        assertThat(number(json, "/pixels")).isEqualTo(6);
        assertThat(number(json, "/seconds")).isEqualTo(3);
        assertThat(flag(json, "/everythingOn")).isFalse();
        assertThat(number(json, "/copperCelsius")).isEqualTo(20);
        assertThat(texts(json, "/caution")).isEqualTo(Caution.LINES);
        assertThat(texts(json, "/assumed")).isEqualTo(report.assumptions());
    }

    /** 0.08 A of 0.1 A may flow and 125 mA do; 75 of 120 mA of light are 0.625, so 0.62. */
    @Test
    void saysWhatIsTooMuch() throws IOException {
        Node json = json(report);
        Node shed = find(json, "/supplies/0").orElseThrow();
        assertThat(number(shed, "/share")).isCloseTo(1.25, MILLIONTH);
        assertThat(number(shed, "/marginAmps")).isCloseTo(-0.045, MILLIONTH);
        assertThat(number(shed, "/everythingOnAmps")).isCloseTo(0.155, MILLIONTH);
        assertThat(texts(shed, "/peakCues")).containsExactly("flood");
        assertThat(flag(json, "/caps/0/kept")).isFalse();
        assertThat(flag(json, "/caps/0/possible")).isTrue();
        assertThat(text(json, "/caps/0/ports/0/port")).isEqualTo("left");
        assertThat(number(json, "/caps/0/ports/0/cap")).isEqualTo(0.62);
    }

    /**
     * The leads of 2 m of 1.5 mm2 resist 8/3 units each, there and back, and each of four segments of 0.5 mm2
     * 4: of 64/3 in all. What a pixel draws comes from both ends in the ratio of what lies between: of the
     * first pixel 7/8 from the first feed, of each next one 3/16 less. So 1 mA and four times 31 mA are 51.25
     * mA of the first feed. That drops more than 2 mV in its lead, so with 11.999 V needed no pixel has enough.
     */
    @Test
    void saysWhatALineGets() throws IOException {
        String kind = Reported.KIND.replace("11.99", "11.999");
        Node json = json(
                Reported.of(folder, kind + Reported.ports(Reported.FENCE, Reported.POST) + ", " + Reported.supply(0.1))
                        .report());
        Node left = find(json, "/ports/0").orElseThrow();
        assertThat(number(left, "/pixels")).isEqualTo(5);
        assertThat(number(left, "/tooLow")).isEqualTo(5);
        assertThat(number(left, "/feeds/0/pixel")).isEqualTo(1);
        assertThat(number(left, "/feeds/0/peakAmps")).isCloseTo(0.05125, MILLIONTH);
        assertThat(number(left, "/feeds/0/everythingOnAmps")).isCloseTo(0.0775, MILLIONTH);
        assertThat(number(left, "/feeds/1/pixel")).isEqualTo(5);
        assertThat(number(left, "/feeds/1/peakAmps")).isCloseTo(0.07375, MILLIONTH);
        assertThat(find(json, "/ports/1/feeds")).isEmpty();
    }

    /** What flows through one of several feeds hangs on the line: without it the feeds are listed all the same. */
    @Test
    void listsFeedsWithoutALineToo() throws IOException {
        String port = Reported.FENCE.replace(", \"line\": {\"mm2\": 0.5, \"pitch\": 1000}", "");
        Node left = find(
                        json(Reported.of(folder, Reported.KIND + Reported.ports(port) + ", " + Reported.supply(0.1))
                                .report()),
                        "/ports/0")
                .orElseThrow();
        assertThat(find(left, "/leastVolts")).isEmpty();
        assertThat(number(left, "/feeds/0/pixel")).isEqualTo(1);
        assertThat(find(left, "/feeds/0/peakAmps")).isEmpty();
        assertThat(number(left, "/feeds/1/pixel")).isEqualTo(5);
        String single = Reported.supply(0.1).replaceAll("\"at\": \\[1, 5\\]", "\"at\": [1]");
        Node fed = find(
                        json(Reported.of(folder, Reported.KIND + Reported.ports(port) + ", " + single)
                                .report()),
                        "/ports/0")
                .orElseThrow();
        assertThat(number(fed, "/feeds/0/peakAmps")).isCloseTo(0.125, MILLIONTH);
        assertThat(number(fed, "/feeds/0/everythingOnAmps")).isCloseTo(0.155, MILLIONTH);
    }

    /** Two universes of 24 slots are packets of 150 bytes (ANSI E1.31), in 66 of Ethernet, IP and UDP. */
    @Test
    void saysWhatTravels() throws IOException {
        Node network = find(json(report), "/network").orElseThrow();
        assertThat(number(network, "/universes")).isEqualTo(2);
        assertThat(number(network, "/bitsPerSecond")).isEqualTo(20 * 8 * 2 * (150 + 66));
        assertThat(number(network, "/fullestSlots")).isEqualTo(24);
        assertThat(number(network, "/dmxSlots")).isEqualTo(512);
    }

    @Test
    void saysWhatIsSeen() throws IOException {
        Node json = json(report);
        assertThat(flag(json, "/flash/passes")).isTrue();
        assertThat(number(json, "/flash/slowBy")).isEqualTo(1);
        assertThat(find(json, "/flash/seenFromMetres")).isEmpty();
        assertThat(text(json, "/flash/noGuarantee")).contains("no guarantee");
        assertThat(number(json, "/use/0/darkShare")).isCloseTo(1 / 3.0, MILLIONTH);
        assertThat(text(json, "/cues/1/cue")).isEqualTo("flood");
        assertThat(text(json, "/layers/0/layer")).isEqualTo("ground");
        double shares = 0;
        for (Node color : ((ListNode) find(json, "/colors").orElseThrow()).items()) {
            shares += number(color, "/share");
        }
        assertThat(shares).isCloseTo(1, within(2e-6));
    }

    /**
     * Nine changes from frame 30 on, 1.5 s: by half too many; what does so fills less of the area than is
     * allowed.
     */
    @Test
    void saysWhatFlashes() throws IOException {
        FlashPlace post = new FlashPlace(OptionalInt.of(1), OptionalInt.of(0));
        FlashCount light = new FlashCount(FlashRule.GENERAL, 9, post, 30, true, 8, 5, 0.75);
        FlashCount red = new FlashCount(FlashRule.RED, 2, post, 0, false, 2, 0, 0);
        LightReport seen = report.light().orElseThrow();
        WorstSecond worst = new WorstSecond(light, List.of("flood"), List.of(), List.of());
        FlashFigures flashes = new FlashFigures(
                OptionalDouble.of(12.5), light, red, List.of(new FlashFigures.PropFlashes("post", light, red)));
        Node json = json(report.with(new LightReport(flashes, worst, seen.use(), List.of(), seen.cues())));

        Node flash = find(json, "/flash").orElseThrow();
        assertThat(flag(flash, "/passes")).isTrue();
        assertThat(number(flash, "/seenFromMetres")).isEqualTo(12.5);
        assertThat(number(flash, "/slowBy")).isEqualTo(1.5);
        assertThat(texts(flash, "/worstCues")).containsExactly("flood");
        assertThat(number(flash, "/general/most")).isEqualTo(9);
        assertThat(number(flash, "/general/mostOnce")).isEqualTo(8);
        assertThat(number(flash, "/general/at")).isEqualTo(1.5);
        assertThat(text(flash, "/general/where")).isEqualTo("pixel 1 of post");
        assertThat(flag(flash, "/general/overJoint")).isTrue();
        assertThat(number(flash, "/general/areaShare")).isEqualTo(0.75);
        assertThat(number(flash, "/red/most")).isEqualTo(2);
        assertThat(number(json, "/flashByProp/0/pixelsOver")).isEqualTo(5);
    }

    private static Node json(Report report) throws IOException {
        return Inputs.json(ReportJson.of(report));
    }

    /**
     * What stands behind a path of names and places such as {@code /ports/0/name} (RFC 6901); nothing if
     * nothing.
     */
    private static Optional<Node> find(Node from, String path) {
        Optional<Node> found = Optional.of(from);
        for (String step : path.substring(1).split("/")) {
            found = found.flatMap(node -> node instanceof ListNode list
                    ? list.items().stream().skip(Long.parseLong(step)).findFirst()
                    : ((ObjectNode) node).value(step));
        }
        return found;
    }

    private static double number(Node from, String path) {
        return ((NumberNode) find(from, path).orElseThrow()).value();
    }

    private static boolean flag(Node from, String path) {
        return ((FlagNode) find(from, path).orElseThrow()).value();
    }

    private static String text(Node from, String path) {
        return ((TextNode) find(from, path).orElseThrow()).value();
    }

    private static List<String> texts(Node from, String path) {
        return ((ListNode) find(from, path).orElseThrow())
                .items().stream().map(item -> ((TextNode) item).value()).toList();
    }
}
