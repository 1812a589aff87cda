package org.duskloom.engine.format;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.duskloom.engine.file.Folders.namesIn;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.Random;
import java.util.zip.CRC32;
import org.duskloom.engine.file.IfExists;
import org.duskloom.engine.file.StagedFile;
import org.duskloom.engine.frame.FrameBatch;
import org.duskloom.engine.frame.FrameList;
import org.duskloom.engine.frame.FramePixels;
import org.duskloom.engine.frame.FrameSink;
import org.duskloom.engine.frame.RunInfo;
import org.duskloom.engine.time.FrameRate;
import org.duskloom.engine.time.FrameSpan;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files that are all frames, one after the other: {@code rgb} and {@code npy}. */
class PlainSinkTest {
    @TempDir
    private Path folder;

    /** Raw rgb24 has no header and no padding: the bytes 00 to 0B are two frames of 2 by 1 pixels. */
    @Test
    void rgbIsFrameAfterFrameWithoutAnythingElse() throws IOException {
        Path target = folder.resolve("frames.rgb");
        try (FrameSink sink = new RgbKind().into(StagedFile.open(target, IfExists.REFUSE))) {
            sink.begin(run(2, 40, 42));
            sink.frame(40, new byte[] {0, 1, 2, 3, 4, 5});
            sink.frame(41, new byte[] {6, 7, 8, 9, 10, 11});
            sink.finish();
            assertThat(((RecordedSink) sink).written()).containsExactly(new WrittenFile("frames.rgb", 12));
        }
        assertThat(target).hasBinaryContent(new byte[] {0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11});
        assertThat(new RgbKind().bytes(run(2, 40, 42))).isEqualTo(12);
    }

    /**
     * The header that numpy.lib.format of NumPy 2.4.6 writes for zeros((3840, 1288, 3), uint8): 128 bytes, CRC-32
     * b1951876.
     */
    @Test
    void npyHeaderIsThatOfNumPy() {
        byte[] header = NpyHeader.of(run(1288, 0, 3840));
        CRC32 crc = new CRC32();
        crc.update(header);
        assertThat(header).hasSize(128);
        assertThat(Long.toHexString(crc.getValue())).isEqualTo("b1951876");
    }

    /** NumPy Enhancement Proposal 1, for the shape (100, 50, 3), byte by byte. */
    @Test
    void npyHeaderIsAsDescribed() {
        byte[] header = NpyHeader.of(run(50, 7, 107));
        assertThat(Arrays.copyOf(header, 10)).isEqualTo(HexFormat.of().parseHex("934e554d505901007600"));
        assertThat(new String(header, 10, header.length - 10, StandardCharsets.US_ASCII))
                .startsWith("{'descr': '|u1', 'fortran_order': False, 'shape': (100, 50, 3), }   ")
                .endsWith(" \n")
                .hasSize(118);
    }

    /** Long shapes push the numbers to the next multiple of 64. */
    @Test
    void npyHeaderGrowsWithTheShape() {
        byte[] header = NpyHeader.of(run(700_000_000, 0, 1L << 36));
        assertThat(header.length % 64).isZero();
        assertThat(header[header.length - 1]).isEqualTo((byte) '\n');
    }

    /** A byte of channel c of pixel p in frame f stands at header + 3(P f + p) + c, as NumPy reads C order. */
    @Test
    void npyHasTheFramesBehindItsHeader() throws IOException {
        Path target = folder.resolve("frames.npy");
        RunInfo run = run(5, 0, 4);
        try (FrameSink sink = new NpyKind().into(StagedFile.open(target, IfExists.REFUSE))) {
            sink.begin(run);
            for (int frame = 0; frame < 4; frame++) {
                byte[] rgb = new byte[15];
                rgb[3 * 2 + 1] = (byte) (100 + frame);
                sink.frame(frame, rgb);
            }
            sink.finish();
        }
        byte[] whole = Files.readAllBytes(target);
        assertThat(whole).hasSize(128 + 60);
        assertThat(new NpyKind().bytes(run)).isEqualTo(whole.length);
        assertThat(whole[128 + 3 * (5 * 3 + 2) + 1]).isEqualTo((byte) 103);
        assertThat(whole[128 + 3 * 2 + 1]).isEqualTo((byte) 100);
    }

    /** FIPS 180-2, appendix B.1 (from memory): the SHA-256 of "abc", which makes one pixel. */
    @Test
    void hashesAsPublished() throws IOException {
        DigestSink sink = new DigestSink();
        sink.frame(0, "abc".getBytes(StandardCharsets.US_ASCII));
        assertThatThrownBy(sink::sha256Hex).isInstanceOf(IllegalStateException.class);
        sink.finish();
        assertThat(sink.sha256Hex()).isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    }

    /** The SHA-256 of no bytes at all: NIST's algorithm validation vectors, length 0 (from memory). */
    @Test
    void hashesNothingAsPublished() {
        DigestSink sink = new DigestSink();
        sink.finish();
        assertThat(sink.sha256Hex()).isEqualTo("e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
    }

    @Test
    void hashesWhatIsInTheFile() throws Exception {
        Path target = folder.resolve("frames.rgb");
        Random random = new Random(7);
        DigestSink digest = new DigestSink();
        try (FrameSink sink = new RgbKind().into(StagedFile.open(target, IfExists.REFUSE))) {
            sink.begin(run(854, 0, 300));
            byte[] frame = new byte[3 * 854];
            for (long n = 0; n < 300; n++) {
                random.nextBytes(frame);
                sink.frame(n, frame);
                digest.frame(n, frame);
            }
            sink.finish();
            digest.finish();
        }
        byte[] whole = Files.readAllBytes(target);
        assertThat(whole).hasSize(300 * 3 * 854);
        assertThat(HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(whole)))
                .isEqualTo(digest.sha256Hex());
    }

    @Test
    void refusesFramesThatDoNotFollow() throws IOException {
        try (FrameSink sink = new RgbKind().into(open())) {
            sink.begin(run(1, 10, 14));
            byte[] frame = new byte[3];
            assertThatThrownBy(() -> sink.frame(0, frame)).isInstanceOf(IllegalArgumentException.class);
            sink.frame(10, frame);
            assertThatThrownBy(() -> sink.frame(12, frame)).isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> sink.frame(11, new byte[6])).isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(sink::finish).isInstanceOf(IllegalStateException.class);
        }
        assertThat(namesIn(folder)).isEmpty();
    }

    @Test
    void refusesARunThatLeavesFramesOut() throws IOException {
        RunInfo thinned = run(1, 0, 9).only(FrameList.of(0, 4, 8));
        try (FrameSink sink = new RgbKind().into(open())) {
            assertThatThrownBy(() -> sink.begin(thinned)).isInstanceOf(IllegalArgumentException.class);
        }
    }

    @Test
    void aBatchIsWrittenInOnePiece() throws IOException {
        FrameBatch one = FrameBatch.of(3, new byte[] {7, 8, 9});
        assertThat(one.count()).isEqualTo(1);
        assertThat(one.bytes()).isEqualTo(3);
        assertThat(one.frame(0)).isEqualTo(3);
    }

    private static RunInfo run(int pixels, long first, long end) {
        return RunInfo.ofWhole("", FrameRate.of(40), end, FramePixels.unnamed(pixels))
                .only(FrameList.of(new FrameSpan(first, end)));
    }

    private StagedFile open() throws IOException {
        return StagedFile.open(folder.resolve("frames.rgb"), IfExists.REFUSE);
    }
}
