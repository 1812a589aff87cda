package org.duskloom.engine.format;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.duskloom.engine.document.CsvStyle;
import org.duskloom.engine.file.IfExists;
import org.duskloom.engine.frame.FrameList;
import org.duskloom.engine.frame.FramePixels;
import org.duskloom.engine.frame.FrameReader;
import org.duskloom.engine.frame.FrameRun;
import org.duskloom.engine.frame.FrameSink;
import org.duskloom.engine.frame.FrameSource;
import org.duskloom.engine.frame.Progress;
import org.duskloom.engine.frame.RunInfo;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.map.Prop;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.time.FrameRate;
import org.duskloom.engine.time.FrameSpan;
import org.duskloom.engine.wire.Link;
import org.duskloom.engine.wire.Packing;
import org.duskloom.engine.wire.Port;
import org.duskloom.engine.wire.PortEncoder;
import org.duskloom.engine.wire.PortMap;
import org.duskloom.engine.wire.Ports;
import org.duskloom.engine.wire.Signal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files of ports for five pixels on two lines. */
class PortsKindTest {
    private static final Location PLACE = Location.ofFile("display.json");
    private static final int FRAMES = 100;

    @TempDir
    private Path folder;

    private record MadeUp() implements FrameSource {
        @Override
        public RunInfo info() {
            return RunInfo.ofWhole("garden", FrameRate.of(40), FRAMES, FramePixels.unnamed(5));
        }

        @Override
        public FrameReader reader() {
            return (frame, rgb, offset) -> {
                for (int i = 0; i < 15; i++) {
                    rgb[offset + i] = (byte) (frame * 7 + i * 11);
                }
            };
        }
    }

    private static PortMap wiring() {
        double[] x = {0, 1, 2, 3, 4};
        Positions places = new Positions(x, new double[5], new double[5]);
        PixelMap map = new PixelMap(
                List.of(new Prop("daisy \"one\"", 0, 2, List.of(), PLACE), new Prop("fence", 2, 3, List.of(), PLACE)),
                places,
                places);
        Port left = new Port(
                "left",
                List.of(new Link("", -1, new int[] {-1}, PLACE), new Link("fence", 1, new int[] {4, 2}, PLACE)),
                Signal.USUAL,
                new Packing(3, 508, true),
                PLACE);
        Port right = new Port(
                "right",
                List.of(new Link("daisy \"one\"", 0, new int[] {0, 1}, PLACE)),
                Signal.USUAL,
                new Packing(9, 511, false),
                PLACE);
        return new PortMap(new Ports(List.of(left, right)), map);
    }

    private void write(FrameSpan span, String name, int threads) throws IOException, InterruptedException {
        write(span, name, threads, CsvStyle.COMMAS);
    }

    private void write(FrameSpan span, String name, int threads, CsvStyle style)
            throws IOException, InterruptedException {
        PortsKind kind = new PortsKind(PortsKindTest::wiring, style);
        FrameRun run = new FrameRun(new MadeUp(), FrameList.of(span), threads);
        try (OutputFolder out = new OutputFolder(folder.resolve(name), IfExists.REFUSE, target -> {});
                FrameSink sink = kind.open(out)) {
            run.into(sink, Progress.SILENT);
            out.publish();
            assertThat(((RecordedSink) sink).written())
                    .extracting(WrittenFile::file)
                    .containsExactly("ports/left.bin", "ports/right.bin", "patch.csv");
            assertThat(kind.bytes(run.info())).isEqualTo(span.count() * 15);
        }
    }

    @Test
    void holdsTheBytesOfEachPortFrameAfterFrame() throws IOException, InterruptedException {
        write(new FrameSpan(0, FRAMES), "out", 3);
        byte[] left = Files.readAllBytes(folder.resolve("out/ports/left.bin"));
        byte[] right = Files.readAllBytes(folder.resolve("out/ports/right.bin"));
        assertThat(left).hasSize(9 * FRAMES);
        assertThat(right).hasSize(6 * FRAMES);
        PortEncoder encoder = new PortEncoder(wiring().ports().ports().get(0), wiring().map());
        byte[] rgb = new byte[15];
        for (int frame = 0; frame < FRAMES; frame++) {
            int number = frame;
            IntStream.range(0, 15).forEach(i -> rgb[i] = (byte) (number * 7 + i * 11));
            byte[] expected = new byte[9];
            encoder.encode(frame, rgb, 0, expected, 0);
            assertThat(Arrays.copyOfRange(left, 9 * frame, 9 * frame + 9)).isEqualTo(expected);
            assertThat(Arrays.copyOf(expected, 3)).containsOnly(0);
        }
    }

    @Test
    void piecesFollowEachOther() throws IOException, InterruptedException {
        write(new FrameSpan(0, FRAMES), "whole", 2);
        write(new FrameSpan(0, 41), "1", 2);
        write(new FrameSpan(41, FRAMES), "2", 2);
        for (String name : List.of("ports/left.bin", "ports/right.bin")) {
            byte[] whole = Files.readAllBytes(folder.resolve("whole").resolve(name));
            byte[] first = Files.readAllBytes(folder.resolve("1").resolve(name));
            byte[] second = Files.readAllBytes(folder.resolve("2").resolve(name));
            assertThat(first).isEqualTo(Arrays.copyOf(whole, first.length));
            assertThat(second).isEqualTo(Arrays.copyOfRange(whole, first.length, whole.length));
        }
    }

    /** RFC 4180: lines end with CR LF, quotes are doubled. */
    @Test
    void patchTellsWherePixelsLie() throws IOException, InterruptedException {
        write(new FrameSpan(0, 1), "out", 1);
        assertThat(Files.readString(folder.resolve("out/patch.csv"))).isEqualTo("""
                port,prop,pixel,universe,slot,colors
                left,,,3,508,RGB
                left,fence,3,4,1,RGB
                left,fence,1,4,4,RGB
                right,"daisy ""one""\",1,9,511,RGB
                right,"daisy ""one""\",2,10,2,RGB
                """.replace("\n", "\r\n"));
    }

    /** For spreadsheets of countries with a decimal comma, with the mark by which they know UTF-8. */
    @Test
    void patchMayHaveSemicolons() throws IOException, InterruptedException {
        write(new FrameSpan(0, 1), "out", 1, CsvStyle.SEMICOLONS);
        assertThat(Files.readString(folder.resolve("out/patch.csv"))).isEqualTo("""
                \uFEFFport;prop;pixel;universe;slot;colors
                left;;;3;508;RGB
                left;fence;3;4;1;RGB
                left;fence;1;4;4;RGB
                right;"daisy ""one""\";1;9;511;RGB
                right;"daisy ""one""\";2;10;2;RGB
                """.replace("\n", "\r\n"));
    }
}
