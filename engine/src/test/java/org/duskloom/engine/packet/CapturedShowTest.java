package org.duskloom.engine.packet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.UUID;
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
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.time.FrameRate;
import org.duskloom.engine.time.FrameSpan;
import org.duskloom.engine.wire.Link;
import org.duskloom.engine.wire.Packing;
import org.duskloom.engine.wire.Port;
import org.duskloom.engine.wire.PortMap;
import org.duskloom.engine.wire.Ports;
import org.duskloom.engine.wire.Signal;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A capture of 20 frames, read back: 200 pixels in two universes, all of frame n full where n is odd, else black. */
class CapturedShowTest {
    private static final int PIXELS = 200;
    private static final int FRAMES = 20;
    /** The offsets of Table 4-1 of ANSI E1.31-2018 stand behind the 16 bytes of a record and the 42 of its headers. */
    private static final int PACKET = 24 + 16 + 42;

    private static final StreamSource SOURCE =
            new StreamSource(UUID.fromString("00112233-4455-6677-8899-aabbccddeeff"), "garden of Zoë", 150, 0);
    private static final RunInfo RUN = RunInfo.ofWhole("garden", FrameRate.of(40), FRAMES, FramePixels.unnamed(PIXELS));

    @TempDir
    private Path folder;

    private Path file;
    private byte[] whole;
    private final Problems problems = new Problems();

    private record Blinking() implements FrameSource {
        @Override
        public RunInfo info() {
            return RUN;
        }

        @Override
        public FrameReader reader() {
            return (frame, rgb, offset) ->
                    Arrays.fill(rgb, offset, offset + 3 * PIXELS, (byte) (frame % 2 == 1 ? 255 : 0));
        }
    }

    private static PortMap wiring() {
        double[] x = new double[PIXELS];
        int[] chain = new int[PIXELS];
        Arrays.setAll(x, i -> i);
        Arrays.setAll(chain, i -> i);
        Positions places = new Positions(x, new double[PIXELS], new double[PIXELS]);
        Location place = Location.ofFile("display.json");
        PixelMap map = new PixelMap(List.of(new Prop("fence", 0, PIXELS, List.of(), place)), places, places);
        Port port = new Port(
                "left", List.of(new Link("fence", 0, chain, place)), Signal.USUAL, new Packing(7, 1, true), place);
        return new PortMap(new Ports(List.of(port)), map);
    }

    @BeforeEach
    void capture() throws IOException, InterruptedException {
        file = folder.resolve("packets.pcap");
        whole = captured(new FrameSpan(0, FRAMES), file);
    }

    private static byte[] captured(FrameSpan span, Path into) throws IOException, InterruptedException {
        PacketsKind kind = new PacketsKind(CapturedShowTest::wiring, () -> SOURCE);
        FrameRun run = new FrameRun(new Blinking(), FrameList.of(span), 1);
        try (FrameSink sink = kind.into(StagedFile.open(into, IfExists.REPLACE))) {
            run.into(sink, Progress.SILENT);
        }
        return Files.readAllBytes(into);
    }

    private boolean opens(byte[] bytes) throws IOException {
        Files.write(file, bytes);
        Optional<CapturedShow> show = CapturedShow.open(file, RUN, problems);
        if (show.isPresent()) {
            show.get().close();
        }
        return show.isPresent();
    }

    private String told() {
        return problems.inFileOrder().toString();
    }

    @Test
    void whoSentItIsReadBack() throws IOException {
        try (CapturedShow show = CapturedShow.open(file, RUN, problems).orElseThrow()) {
            assertThat(show.source()).isEqualTo(SOURCE);
        }
        assertThat(problems.hasErrors()).isFalse();
    }

    /** In any order: 510 slots of the first universe and 90 of the second, which are 200 pixels of three. */
    @Test
    void framesAreReadInAnyOrder() throws IOException {
        try (CapturedShow show = CapturedShow.open(file, RUN, problems).orElseThrow()) {
            List<DataPacket> packets = show.packets(show.source());
            assertThat(packets).extracting(packet -> packet.length() - 126).containsExactly(510, 90);
            for (long frame : new long[] {3, 0, 19, 18, 1, 1, 2}) {
                show.read(frame, packets);
                byte expected = (byte) (frame % 2 == 1 ? 255 : 0);
                for (DataPacket packet : packets) {
                    byte[] slots = Arrays.copyOfRange(packet.bytes(), packet.firstSlotAt(), packet.firstSlotAt() + 90);
                    assertThat(slots).as("frame %s", frame).containsOnly(expected);
                }
            }
            assertThat(packets.get(0).bytes()[114]).isEqualTo((byte) 7);
            assertThat(packets.get(1).bytes()[114]).isEqualTo((byte) 8);
        }
    }

    /** A piece that does not end the show has no packets that say so; one that does has three for each universe. */
    @Test
    void piecesOfAShowAreReadToo() throws IOException, InterruptedException {
        captured(new FrameSpan(4, 9), file);
        RunInfo piece = RUN.only(FrameList.of(new FrameSpan(4, 9)));
        try (CapturedShow show = CapturedShow.open(file, piece, problems).orElseThrow()) {
            List<DataPacket> packets = show.packets(show.source());
            show.read(4, packets);
            assertThat(packets.get(0).bytes()[126]).isZero();
            show.read(1, packets);
            assertThat(packets.get(0).bytes()[126]).isEqualTo((byte) 255);
        }
        assertThat(CapturedShow.open(file, RUN, problems)).isEmpty();
        assertThat(told()).contains("20 frames of 2 universes have");
    }

    @Test
    void noFileIsSaidToBeMissing() throws IOException {
        assertThat(CapturedShow.open(folder.resolve("none.pcap"), RUN, problems))
                .isEmpty();
        assertThat(CapturedShow.open(folder, RUN, problems)).isEmpty();
        assertThat(problems.inFileOrder())
                .hasSize(2)
                .allMatch(problem -> problem.message().equals("there is no such file"));
    }

    /** Cut anywhere, or longer by a byte: it is told, and nothing is thrown. */
    @Test
    void anotherLengthIsRefused() throws IOException {
        for (int length = 0; length < whole.length; length += length < 1600 ? 1 : 997) {
            assertThat(opens(Arrays.copyOf(whole, length)))
                    .as("%s bytes", length)
                    .isFalse();
        }
        assertThat(opens(Arrays.copyOf(whole, whole.length + 1))).isFalse();
        assertThat(told()).contains("it was cut short or belongs to another rendering");
        assertThat(opens(whole)).isTrue();
    }

    /** What makes it no capture of ours: magic, identifier, universe 0 or 64,000, a length that no packet has. */
    @ParameterizedTest
    @CsvSource({
        "0, 0",
        "20, 7",
        "86, 0",
        "94, 0",
        "95, 1",
        "195, 250",
        "32, 0",
        "34, 200",
        "35, 128",
    })
    void anotherMakersFileIsRefused(int at, int value) throws IOException {
        byte[] bytes = whole.clone();
        bytes[at] = (byte) value;
        assertThat(opens(bytes)).isFalse();
        assertThat(told()).containsAnyOf("this is no capture of a show", "bytes, and 20 frames of");
    }

    @Test
    void universesOutOfRangeAreRefused() throws IOException {
        byte[] bytes = whole.clone();
        assertThat(bytes[PACKET + 114]).isEqualTo((byte) 7);
        bytes[PACKET + 114] = 0;
        assertThat(opens(bytes)).isFalse();
        bytes[PACKET + 113] = (byte) 0xFA;
        assertThat(opens(bytes)).isFalse();
        bytes[PACKET + 113] = (byte) 0xF9;
        bytes[PACKET + 114] = (byte) 0xFF;
        assertThat(opens(bytes)).as("universe 63,999").isTrue();
    }

    /** A priority that E1.31 does not have is the highest one; a name without an end is as long as its field. */
    @Test
    void oddFieldsOfTheSourceAreTakenAsFarAsTheyGo() throws IOException {
        byte[] bytes = whole.clone();
        bytes[PACKET + 108] = (byte) 255;
        Arrays.fill(bytes, PACKET + 44, PACKET + 108, (byte) 'x');
        Files.write(file, bytes);
        try (CapturedShow show = CapturedShow.open(file, RUN, problems).orElseThrow()) {
            assertThat(show.source().priority()).isEqualTo(200);
            assertThat(show.source().name()).isEqualTo("x".repeat(63));
        }
    }

    @Test
    void damageIsRefusedOrRead() throws IOException {
        Random random = new Random(7);
        int opened = 0;
        for (int i = 0; i < 500; i++) {
            byte[] bytes = whole.clone();
            for (int k = 0; k <= i % 5; k++) {
                bytes[random.nextInt(1000)] = (byte) random.nextInt();
            }
            Files.write(file, bytes);
            Optional<CapturedShow> show = CapturedShow.open(file, RUN, problems);
            if (show.isPresent()) {
                try (CapturedShow open = show.get()) {
                    open.read(FRAMES - 1, open.packets(open.source()));
                    opened++;
                }
            }
        }
        assertThat(opened).isBetween(1, 499);
    }

    @Test
    void aFileThatShrinksMeanwhileIsAFailure() throws IOException {
        try (CapturedShow show = CapturedShow.open(file, RUN, problems).orElseThrow()) {
            Files.write(file, Arrays.copyOf(whole, 2000));
            List<DataPacket> packets = show.packets(show.source());
            show.read(0, packets);
            assertThatThrownBy(() -> show.read(5, packets))
                    .isInstanceOf(IOException.class)
                    .hasMessage("the capture became shorter while it was read");
        }
    }
}
