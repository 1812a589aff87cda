package org.duskloom.engine.shard;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.duskloom.engine.document.CsvStyle;
import org.duskloom.engine.file.IfExists;
import org.duskloom.engine.format.FrameOutputs;
import org.duskloom.engine.format.Origin;
import org.duskloom.engine.format.OutputFolder;
import org.duskloom.engine.format.OutputKind;
import org.duskloom.engine.format.OutputRegistry;
import org.duskloom.engine.format.PortsKind;
import org.duskloom.engine.format.RgbKind;
import org.duskloom.engine.frame.FrameList;
import org.duskloom.engine.frame.FramePixels;
import org.duskloom.engine.frame.FrameReader;
import org.duskloom.engine.frame.FrameRun;
import org.duskloom.engine.frame.FrameSource;
import org.duskloom.engine.frame.Progress;
import org.duskloom.engine.frame.RunInfo;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.map.Prop;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.time.FrameRate;
import org.duskloom.engine.time.FrameSpan;
import org.duskloom.engine.wire.Link;
import org.duskloom.engine.wire.Packing;
import org.duskloom.engine.wire.Port;
import org.duskloom.engine.wire.PortMap;
import org.duskloom.engine.wire.Ports;
import org.duskloom.engine.wire.Signal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Shards with the bytes of ports: a folder of files that belong together, and a table that all shards have alike. */
class JoinedPortsTest {
    private static final Location PLACE = Location.ofFile("display.json");
    private static final int PIXELS = 4;
    private static final int FRAMES = 24;

    @TempDir
    private Path folder;

    private final Problems problems = new Problems();

    private static PortMap wiring(String second) {
        double[] zeros = new double[PIXELS];
        Positions places = new Positions(zeros, zeros, zeros);
        PixelMap map = new PixelMap(List.of(new Prop("fence", 0, PIXELS, List.of(), PLACE)), places, places);
        return new PortMap(new Ports(List.of(port("left", 1, 0), port(second, 2, 2))), map);
    }

    private static Port port(String name, int universe, int first) {
        Link link = new Link("fence", 0, IntStream.range(first, first + 2).toArray(), PLACE);
        return new Port(name, List.of(link), Signal.USUAL, new Packing(universe, 1, true), PLACE);
    }

    private static OutputKind ports(String second) {
        return ports(second, CsvStyle.COMMAS);
    }

    private static OutputKind ports(String second, CsvStyle style) {
        return new PortsKind(() -> wiring(second), style);
    }

    private static final OutputRegistry KINDS = new OutputRegistry(List.of(new RgbKind(), ports("right")));

    private record Ramp() implements FrameSource {
        @Override
        public RunInfo info() {
            return RunInfo.ofWhole("ramp", FrameRate.of(40), FRAMES, FramePixels.unnamed(PIXELS));
        }

        @Override
        public FrameReader reader() {
            return (frame, rgb, offset) -> {
                for (int i = 0; i < 3 * PIXELS; i++) {
                    rgb[offset + i] = (byte) (11 * frame + 5 * i);
                }
            };
        }
    }

    private Path render(String name, long from, long end, OutputKind... kinds) throws Exception {
        FrameRun run = new FrameRun(new Ramp(), FrameList.of(new FrameSpan(from, end)), 1);
        Files.createDirectories(folder.resolve(name));
        OutputFolder into = new OutputFolder(folder.resolve(name), IfExists.REFUSE, target -> {});
        try (FrameOutputs outputs = new FrameOutputs(into, List.of(kinds), run.info(), new Origin("9.9", List.of()))) {
            run.into(outputs.sinks(), Progress.SILENT);
            outputs.publish();
        }
        return folder.resolve(name);
    }

    private Optional<Shards> together(Path... folders) {
        List<Shard> shards = new ArrayList<>();
        for (Path each : folders) {
            Shard.in(each, problems).ifPresent(shards::add);
        }
        return Shards.of(shards, KINDS, problems);
    }

    private boolean join(Shards shards) throws IOException {
        Files.createDirectories(folder.resolve("joined"));
        OutputFolder into = new OutputFolder(folder.resolve("joined"), IfExists.REFUSE, target -> {});
        try (Join join = new Join(shards, KINDS, into, problems)) {
            return join.run(Progress.SILENT);
        }
    }

    private List<String> namesIn(Path within) throws IOException {
        try (var files = Files.walk(within)) {
            return files.filter(Files::isRegularFile)
                    .map(file -> within.relativize(file).toString())
                    .sorted()
                    .toList();
        }
    }

    private List<String> told() {
        return problems.inFileOrder().stream()
                .map(problem -> problem.toString().replace(folder + "/", ""))
                .toList();
    }

    /** The dither of a byte goes by the number of its frame, so pieces are what one run writes there. */
    @Test
    void theBytesOfPortsFollowEachOther() throws Exception {
        OutputKind[] kinds = {new RgbKind(), ports("right")};
        Path whole = render("whole", 0, FRAMES, kinds);
        Shards shards = together(render("b", 7, FRAMES, kinds), render("a", 0, 7, kinds))
                .orElseThrow();
        assertThat(join(shards)).isTrue();
        assertThat(told()).isEmpty();
        Path joined = folder.resolve("joined");
        assertThat(namesIn(joined))
                .isEqualTo(namesIn(whole))
                .containsExactly("frames.json", "frames.rgb", "patch.csv", "ports/left.bin", "ports/right.bin");
        for (String name : namesIn(whole)) {
            assertThat(joined.resolve(name)).hasSameBinaryContentAs(whole.resolve(name));
        }
    }

    /** A table that is as long but says something else: one of the shards is of other lines. */
    @Test
    void aTableThatDiffersIsTold() throws Exception {
        OutputKind[] kinds = {new RgbKind(), ports("right")};
        Path first = render("a", 0, 7, kinds);
        Path second = render("b", 7, FRAMES, kinds);
        Path patch = second.resolve("patch.csv");
        Files.writeString(patch, Files.readString(patch).replace("fence,3", "fence,9"));
        assertThat(join(together(first, second).orElseThrow())).isFalse();
        assertThat(told()).singleElement().asString().contains("b/patch.csv").contains("it is not the same as ");
        assertThat(namesIn(folder.resolve("joined"))).as("nothing is final").isEmpty();
    }

    /** A table has no style of its own: it is the one that all shards were rendered with. */
    @Test
    void tablesWithSemicolonsAreJoined() throws Exception {
        OutputKind[] kinds = {new RgbKind(), ports("right", CsvStyle.SEMICOLONS)};
        Path whole = render("whole", 0, FRAMES, kinds);
        assertThat(join(together(render("a", 0, 7, kinds), render("b", 7, FRAMES, kinds))
                        .orElseThrow()))
                .isTrue();
        assertThat(folder.resolve("joined/patch.csv")).hasSameBinaryContentAs(whole.resolve("patch.csv"));
    }

    @Test
    void shardsWithTablesOfTwoStylesAreToldApart() throws Exception {
        Path first = render("a", 0, 7, new RgbKind(), ports("right"));
        Path second = render("b", 7, FRAMES, new RgbKind(), ports("right", CsvStyle.SEMICOLONS));
        assertThat(together(first, second)).isEmpty();
        assertThat(together(second, first)).isEmpty();
        assertThat(told()).hasSize(2);
        assertThat(told().get(0))
                .startsWith("a/frames.json: error: it was rendered without --semicolons, and ")
                .endsWith("b with --semicolons; render all shards alike");
        assertThat(told().get(1))
                .startsWith("b/frames.json: error: it was rendered with --semicolons, and ")
                .endsWith("a without --semicolons; render all shards alike");
    }

    /** The command that makes what is missing makes what fits. */
    @Test
    void missingFramesAreRenderedInTheSameStyle() throws Exception {
        assertThat(together(render("a", 0, 7, new RgbKind(), ports("right", CsvStyle.SEMICOLONS))))
                .isEmpty();
        assertThat(told()).singleElement().asString().endsWith("--frames 7..24 --as rgb,ports --semicolons");
    }

    /** A port of another name is another file. */
    @Test
    void shardsOfOtherPortsAreToldApart() throws Exception {
        Path first = render("a", 0, 7, new RgbKind(), ports("right"));
        Path second = render("b", 7, FRAMES, new RgbKind(), ports("other"));
        assertThat(together(first, second)).isEmpty();
        assertThat(told()).isNotEmpty().allSatisfy(line -> assertThat(line).startsWith("b/frames.json"));
    }

    /** The digest of a manifest is one of frames: bytes of ports alone do not tell it. */
    @Test
    void portsAloneCannotBeJoined() throws Exception {
        Path first = render("a", 0, 7, ports("right"));
        Path second = render("b", 7, FRAMES, ports("right"));
        assertThat(together(first, second)).isEmpty();
        assertThat(told())
                .singleElement()
                .asString()
                .contains("the shards hold no frames as they are")
                .contains("--as rgb,ports");
    }

    /** What nobody knows cannot be put together, as when a shard was made by a later version. */
    @Test
    void unknownFilesCannotBeJoined() throws Exception {
        Path only = render("a", 0, FRAMES, new RgbKind(), ports("right"));
        OutputRegistry fewer = new OutputRegistry(List.of(new RgbKind()));
        List<Shard> shards = List.of(Shard.in(only, problems).orElseThrow());
        assertThat(Shards.of(shards, fewer, problems)).isEmpty();
        assertThat(told())
                .hasSize(3)
                .allSatisfy(line -> assertThat(line).contains("is nothing that can be put together from shards"));
    }

    /** One shard that has all is a whole as well. */
    @Test
    void aSingleShardMayBeTheWhole() throws Exception {
        Path only = render("a", 0, FRAMES, new RgbKind(), ports("right"));
        Shards shards = together(only).orElseThrow();
        assertThat(shards.frameCount()).isEqualTo(FRAMES);
        assertThat(shards.bytes()).isEqualTo(2L * FRAMES * 3 * PIXELS + Files.size(only.resolve("patch.csv")));
        assertThat(join(shards)).isTrue();
        assertThat(folder.resolve("joined/frames.rgb")).hasSameBinaryContentAs(only.resolve("frames.rgb"));
    }
}
