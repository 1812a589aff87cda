package org.duskloom.engine.packet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.UUID;
import java.util.stream.IntStream;
import org.duskloom.engine.file.IfExists;
import org.duskloom.engine.file.StagedFile;
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
import org.duskloom.engine.wire.PortMap;
import org.duskloom.engine.wire.Ports;
import org.duskloom.engine.wire.Signal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Captures of a made-up show: 200 pixels on one port, two universes. */
class PacketsKindTest {
    private static final int PIXELS = 200;
    private static final int FRAMES = 300;
    private static final int FRAME_BYTES = 58 + 126 + 510 + 58 + 126 + 90;
    private static final StreamSource SOURCE =
            new StreamSource(UUID.fromString("00112233-4455-6677-8899-aabbccddeeff"), "garden", 100, 0);

    @TempDir
    private Path folder;

    /** Frame n has the light (n + i) mod 256 in byte i. */
    private record MadeUp() implements FrameSource {
        @Override
        public RunInfo info() {
            return RunInfo.ofWhole("garden", FrameRate.of(40), FRAMES, FramePixels.unnamed(PIXELS));
        }

        @Override
        public FrameReader reader() {
            return (frame, rgb, offset) -> {
                for (int i = 0; i < 3 * PIXELS; i++) {
                    rgb[offset + i] = (byte) (frame + i);
                }
            };
        }
    }

    private static PortMap wiring() {
        double[] x = IntStream.range(0, PIXELS).asDoubleStream().toArray();
        Positions places = new Positions(x, new double[PIXELS], new double[PIXELS]);
        Location place = Location.ofFile("display.json");
        PixelMap map = new PixelMap(List.of(new Prop("fence", 0, PIXELS, List.of(), place)), places, places);
        Link link = new Link("fence", 0, IntStream.range(0, PIXELS).toArray(), place);
        Port port = new Port("left", List.of(link), Signal.USUAL, new Packing(7, 1, true), place);
        return new PortMap(new Ports(List.of(port)), map);
    }

    private byte[] capture(FrameSpan span, int threads) throws IOException, InterruptedException {
        PacketsKind kind = new PacketsKind(PacketsKindTest::wiring, () -> SOURCE);
        FrameRun run = new FrameRun(new MadeUp(), FrameList.of(span), threads);
        Path file = folder.resolve(span.firstFrame() + "-" + threads + ".pcap");
        try (FrameSink sink = kind.into(StagedFile.open(file, IfExists.REPLACE))) {
            run.into(sink, Progress.SILENT);
        }
        assertThat(Files.size(file)).isEqualTo(kind.bytes(run.info()));
        return Files.readAllBytes(file);
    }

    @Test
    void holdsEveryFrameOfEveryUniverse() throws IOException, InterruptedException {
        List<byte[]> packets = payloads(capture(new FrameSpan(0, FRAMES), 1));
        assertThat(packets).hasSize(2 * (FRAMES + 3));
        for (int i = 0; i < packets.size(); i++) {
            byte[] packet = packets.get(i);
            assertThat(packet[111]).isEqualTo((byte) (i / 2));
            assertThat(packet[114]).isEqualTo((byte) (7 + i % 2));
            assertThat(packet[112]).isEqualTo((byte) (i / 2 < FRAMES ? 0 : 0x40));
        }
    }

    /** Black and full light are not dithered: byte i of frame n is full where n + i is 255, modulo 256. */
    @Test
    void putsLightIntoItsSlot() throws IOException, InterruptedException {
        List<byte[]> packets = payloads(capture(new FrameSpan(0, FRAMES), 2));
        for (int frame = 0; frame < FRAMES; frame++) {
            for (int slot = (255 - frame & 0xFF); slot < 510; slot += 256) {
                assertThat(packets.get(2 * frame)[126 + slot]).isEqualTo((byte) 255);
                assertThat(packets.get(2 * frame)[126 + (slot + 1) % 256]).isZero();
            }
        }
    }

    @Test
    void isTheSameOnAnyNumberOfThreads() throws IOException, InterruptedException {
        byte[] one = capture(new FrameSpan(0, FRAMES), 1);
        assertThat(capture(new FrameSpan(0, FRAMES), 3)).isEqualTo(one);
    }

    /** A piece is a piece of the whole: headers, stamps, sequence numbers and the end of the stream. */
    @Test
    void piecesFollowEachOtherWithoutASeam() throws IOException, InterruptedException {
        byte[] whole = capture(new FrameSpan(0, FRAMES), 2);
        byte[] first = capture(new FrameSpan(0, 117), 2);
        byte[] second = capture(new FrameSpan(117, FRAMES), 2);
        assertThat(first).isEqualTo(Arrays.copyOf(whole, 24 + 117 * FRAME_BYTES));
        assertThat(Arrays.copyOfRange(second, 24, second.length))
                .isEqualTo(Arrays.copyOfRange(whole, first.length, whole.length));
    }

    /** Reads the file as the pcap draft describes it, apart from the code that wrote it. */
    private static List<byte[]> payloads(byte[] file) {
        ByteBuffer in = ByteBuffer.wrap(file).order(ByteOrder.LITTLE_ENDIAN);
        assertThat(in.getInt()).isEqualTo(0xA1B23C4D);
        in.position(24);
        List<byte[]> payloads = new ArrayList<>();
        while (in.hasRemaining()) {
            int record = payloads.size() / 2;
            assertThat(in.getInt()).isEqualTo(record / 40);
            assertThat(in.getInt()).isEqualTo(record % 40 * 25_000_000);
            byte[] frame = new byte[in.getInt()];
            assertThat(in.getInt()).isEqualTo(frame.length);
            in.get(frame);
            payloads.add(Arrays.copyOfRange(frame, 42, frame.length));
        }
        return payloads;
    }
}
